import type { Consultation } from '../../../machines/consultation/consultation';
import type { BowlFact } from '../../../machines/consultation/facts';
import {
  issuePermit,
  issueTonerPermit,
  type MixPermit,
  type TonerPermit,
} from '../../../shared/judgement/permit';
import { findGivenWayRefusal, type PermitRefusal } from '../../../shared/judgement/permitRefusal';
import { listPlannedZones } from '../../../shared/judgement/plannedZones';
import { type BowlRecord, findBowl, findStrand, type StrandRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { findUseByMs } from '../../../shared/records/useWithin';
import { type Zone, zones } from '../../../shared/records/zones';
import type { Result } from '../../../shared/result';
import type { Words } from '../../words/words';
import { isOpenNow } from '../isOpenNow';

/** A toner that stands weighed is weighed like any other: `bowl` says that it is one. */
export type BowlState = Exclude<BowlFact, 'tonerWeighed'>;

/** One zone at the scale: its leave to mix or why not, and how its bowl stands. */
export interface ZoneAtScale {
  readonly zone: Zone;
  readonly permit: Result<MixPermit, PermitRefusal>;
  readonly bowlState: BowlState;
  readonly bowl: BowlRecord | null;
  readonly strand: StrandRecord | null;
  /** Leave for a toner or why not, where a bowl was rinsed; null elsewhere. */
  readonly toner: Result<TonerPermit, PermitRefusal> | null;
  /** Until when what stands weighed may be put on; null where nothing does. */
  readonly useByMs: number | null;
  /** Mixed too long ago to go on anybody. */
  readonly isTooOld: boolean;
  /** Hair gave way on this head today: what stands weighed goes on nobody. */
  readonly givenWay: PermitRefusal | null;
}

export interface MixView {
  readonly zones: readonly ZoneAtScale[];
  /** A bowl may be weighed for at least one zone now. */
  readonly isAnyOpen: boolean;
  readonly mayFinish: boolean;
  /** A strand was used up on the head, and a new one may be snipped now. */
  readonly needsStrand: boolean;
  /** The skin test stands in the way: it is not there, not read yet or too old. */
  readonly isSkinTestOpen: boolean;
}

const skinTestCodes: readonly PermitRefusal['code'][] = [
  'skinTestMissing',
  'skinTestWaiting',
  'skinTestLapsed',
];

/** Which zones may be mixed now, within which limits, and what stands against the others? */
export function viewMix(consultation: Consultation, settings: Settings, nowMs: number): MixView {
  const { record, state } = consultation;
  const { bowls } = state.context.facts;
  const planned = listPlannedZones(record.answers.client?.reach);
  const givenWay = findGivenWayRefusal(record, nowMs);
  const shown = zones.filter((zone) => planned.includes(zone) || bowls[zone] !== 'none');
  const atScale = shown.map((zone): ZoneAtScale => {
    const bowl = findBowl(record, zone) ?? null;
    const fact = bowls[zone];
    const useByMs = bowl?.state === 'weighed' ? findUseByMs(bowl, settings) : null;
    return {
      zone,
      permit: issuePermit(record, zone, settings, nowMs),
      bowlState: fact === 'tonerWeighed' ? 'weighed' : fact,
      toner: fact === 'rinsed' ? issueTonerPermit(record, zone, settings, nowMs) : null,
      bowl,
      strand: findStrand(record, zone) ?? null,
      useByMs,
      isTooOld: useByMs !== null && nowMs > useByMs,
      givenWay,
    };
  });
  return {
    zones: atScale,
    isAnyOpen: atScale.some(({ permit, bowlState }) => permit.ok && isFree(bowlState)),
    needsStrand:
      atScale.some(({ permit }) => !permit.ok && permit.error.code === 'strandUsed') &&
      isOpenNow(consultation, { type: 'REOPENED', answers: { step: 'strandTest' } }, settings, nowMs),
    mayFinish: isOpenNow(consultation, { type: 'FINISHED' }, settings, nowMs),
    isSkinTestOpen: atScale.some(({ permit }) => !permit.ok && skinTestCodes.includes(permit.error.code)),
  };
}

/** Is there room for a bowl of this zone at the scale? */
export const isFree = (bowl: BowlState): boolean => bowl === 'none' || bowl === 'rinsed' || bowl === 'thrown';

/** How the bowl of this zone stands, in words; of a toner, that it is one. */
export function sayBowlState(
  { bowl, bowlState }: Pick<ZoneAtScale, 'bowl' | 'bowlState'>,
  { mix }: Words,
): string {
  if (bowlState === 'thrown' && bowl?.isSkinNotCalm === true) return mix.thrownNotCalm;
  const isToner = bowl?.kind === 'toner' && bowl.state === bowlState;
  const said: Partial<Record<BowlState, string>> = isToner ? mix.tonerStates : {};
  return said[bowlState] ?? mix.states[bowlState];
}
