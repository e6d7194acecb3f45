import { isGrowthPossible } from '../heat/growth';
import { type CarryRefusal, findCarryRefusal } from '../judgement/carried';
import { type MixtureRefusal, mixture, orderForStrand } from '../judgement/mixture';
import { issuePermit, issueTestPermit, issueTonerPermit } from '../judgement/permit';
import { findGivenWayRefusal, type PermitRefusal } from '../judgement/permitRefusal';
import { type RuleId, rules } from '../judgement/rules';
import { isMixOfLift } from '../judgement/service';
import { findReadableAtMs } from '../judgement/skinTest';
import { isLifting } from '../judgement/stops';
import { findTonerLineRefusal } from '../judgement/tonerLine';
import { findWeighedRefusal } from '../judgement/weighedBowl';
import { brand } from '../units/brand';
import type { Centimetre } from '../units/length';
import { findShownLimits } from '../units/numberField';
import { isCallOwed } from './callOwed';
import type { AnsweredPayload, ConsultationEvent } from './event';
import type { Form } from './form';
import { askForms } from './forms/asked';
import { type StrandAnswers, strandForm } from './forms/test';
import { hasBadSigns, hasHeldStrand } from './gradeOutcome';
import { isAsked } from './isAsked';
import type { JudgingContext } from './judge';
import { listNotHome } from './notHomeYet';
import type { ConflictCode, FieldRefusal } from './readForm';
import { type ConsultationRecord, findBowl, findStrand } from './record';
import { INCOMPATIBILITY_MS } from './reduce/answers';
import type { Settings } from './settings';
import { listAbsoluteOptions } from './standingStop';
import { findUseByMs } from './useWithin';

/** Why a tap did not become an event. `fields` are said at the field; the rest on the screen. */
export type ClassifyRefusal =
  | { readonly kind: 'fields'; readonly fields: readonly FieldRefusal[] }
  | { readonly kind: 'permit'; readonly permit: PermitRefusal }
  | { readonly kind: 'mixture'; readonly mixture: MixtureRefusal }
  | { readonly kind: 'carry'; readonly carry: CarryRefusal | { readonly code: 'notRetractable' } }
  | { readonly kind: 'clockWentBack'; readonly newestAtMs: number }
  | { readonly kind: 'bowlTooOld'; readonly useByMs: number }
  | { readonly kind: 'skinNotCalm' }
  | { readonly kind: 'notLastTime' }
  | { readonly kind: 'nobody' }
  | { readonly kind: 'unknownEvent' };

const atField = (path: string, code: ConflictCode): ClassifyRefusal => ({
  kind: 'fields',
  fields: [{ path, code }],
});

/** At the bottle, with what this house allows: from where to where stands in the station's figures. */
const tooStrongHere = ({ profile, units }: Settings): ClassifyRefusal => {
  const field = { ...strandForm.developerPercent.field, max: profile.ceilingPercent };
  const fields = [{ path: 'developerPercent', code: 'tooHigh', ...findShownLimits(field, units) }] as const;
  return { kind: 'fields', fields };
};

/** Has hair ever grown so fast, or so slowly? Only once length and time are told: an older model asked neither. */
function isGrowthTold({ step, answers }: AnsweredPayload): boolean {
  if (step !== 'hotTools') return true;
  const { regrowthCm, regrowthWeeks } = answers;
  const isTold = typeof regrowthCm === 'number' && typeof regrowthWeeks === 'number';
  return !isTold || isGrowthPossible(brand<Centimetre>(regrowthCm), regrowthWeeks);
}

/** What one event asks of the record beyond its own fields: times, limits, a permit and a mixture within it. */
export function findConflict(
  record: ConsultationRecord,
  event: ConsultationEvent,
  context: Pick<JudgingContext, 'settings' | 'atMs'>,
): ClassifyRefusal | null {
  const { settings, atMs } = context;
  switch (event.type) {
    case 'ANSWERED': {
      const lost = findLostStop(record, event.payload, settings);
      if (lost !== null) return atField(lost, 'needsCorrection');
      return isGrowthTold(event.payload) ? null : atField('regrowthCm', 'growsSo');
    }
    case 'SKIN_TEST_NOTED': {
      const { putOnAtMs, seen, skinTestId, readAtMs = atMs } = event.payload;
      const isAnother = skinTestId !== undefined && skinTestId !== record.skinTest?.skinTestId;
      if (!isAnother && putOnAtMs < (record.skinTest?.putOnAtMs ?? 0)) {
        return atField('putOnAtMs', 'earlierThanNoted');
      }
      const isEarly = readAtMs > atMs || readAtMs < findReadableAtMs(event.payload, settings.profile);
      return seen === 'nothing' && isEarly ? atField('seen', 'readTooEarly') : null;
    }
    case 'INCOMPATIBILITY_READ': {
      const running = record.clocks.findLast(
        ({ kind, endedAtMs }) => kind === 'incompatibility' && endedAtMs === null,
      );
      const isEarly = atMs - (running?.startedAtMs ?? atMs) < INCOMPATIBILITY_MS;
      return event.payload.seen === 'nothing' && isEarly ? atField('seen', 'readTooEarly') : null;
    }
    case 'OVERRIDDEN': {
      const { code, rule } = event.payload;
      return code === 'strandHeld' && !mayCiteStrand(record, rule) ? atField('code', 'noStrandHeld') : null;
    }
    case 'STRAND_STARTED': {
      if (event.payload.minutes > event.payload.makersLimitMin) return atField('minutes', 'overLimit');
      const permit = issueTestPermit(record, settings);
      if (!permit.ok) return { kind: 'permit', permit: permit.error };
      if (isAnotherService(record, event.payload, settings)) return atField('line', 'anotherService');
      const made = mixture(permit.value, orderForStrand(event.payload), settings.scaleStepG);
      if (made.ok) return null;
      return made.error.code === 'overHouseCeiling'
        ? tooStrongHere(settings)
        : { kind: 'mixture', mixture: made.error };
    }
    case 'STRAND_TAKEN_OFF': {
      const clock = record.clocks.find(({ id }) => id === findStrand(record, event.payload.zone)?.clock);
      const isEarly = clock !== undefined && atMs < clock.dueAtMs;
      return event.payload.why === 'timeIsUp' && isEarly ? atField('why', 'timeNotUp') : null;
    }
    case 'STRAND_DISCARDED': {
      const strand = findStrand(record, event.payload.zone);
      return strand !== undefined && hasBadSigns(strand) ? atField('why', 'hasBadSigns') : null;
    }
    case 'OUTCOME_CARRIED': {
      const permit = issueTestPermit(record, settings);
      if (!permit.ok) return { kind: 'permit', permit: permit.error };
      const carry = findCarryRefusal(record, settings, atMs);
      return carry === null ? null : { kind: 'carry', carry };
    }
    case 'OUTCOME_RETRACTED':
      // Nobody felt it today, so nobody can have tapped it wrongly: a strand of today takes its place.
      return findStrand(record, event.payload.zone)?.carried == null
        ? null
        : { kind: 'carry', carry: { code: 'notRetractable' } };
    case 'BOWL_WEIGHED': {
      const permit = issuePermit(record, event.payload.zone, settings, atMs);
      if (!permit.ok) return { kind: 'permit', permit: permit.error };
      const made = mixture(permit.value, event.payload, settings.scaleStepG);
      if (!made.ok) return { kind: 'mixture', mixture: made.error };
      const weighed = findWeighedRefusal(event.payload, settings);
      return weighed === null ? null : atField('weighed', weighed);
    }
    case 'TONER_WEIGHED': {
      const permit = issueTonerPermit(record, event.payload.zone, settings, atMs);
      if (!permit.ok) return { kind: 'permit', permit: permit.error };
      const line = findTonerLineRefusal(record, event.payload, settings);
      if (line !== null) return atField('line', line);
      const made = mixture(permit.value, { ...event.payload, heat: 'none' }, settings.scaleStepG);
      return made.ok ? null : { kind: 'mixture', mixture: made.error };
    }
    case 'BOWL_APPLIED': {
      if (event.payload.skinFirst === 'notCalm') return { kind: 'skinNotCalm' };
      const bowl = findBowl(record, event.payload.zone);
      if (bowl === undefined) return null;
      const useByMs = findUseByMs(bowl, settings, event.modelVersion);
      if (atMs > useByMs) return { kind: 'bowlTooOld', useByMs };
      if (bowl.kind !== 'toner') {
        const givenWay = findGivenWayRefusal(record, atMs);
        return givenWay === null ? null : { kind: 'permit', permit: givenWay };
      }
      const permit = issueTonerPermit(record, bowl.zone, settings, atMs);
      return permit.ok ? null : { kind: 'permit', permit: permit.error };
    }
    case 'CARE_GIVEN':
      return event.modelVersion >= 5 && isCallOwed(record, event.payload.care)
        ? atField('care', 'callFirst')
        : null;
    case 'PLAN_GIVEN': {
      const [first] = listNotHome(event.payload);
      return first === undefined ? null : atField(first.path, first.code);
    }
    default:
      return null;
  }
}

/** Which answer that stopped for good would this one take back? Only a named correction does that. */
function findLostStop(
  { answers }: ConsultationRecord,
  { step, answers: said }: AnsweredPayload,
  { profile }: Settings,
): string | null {
  const form: Form = askForms[step];
  const before: Readonly<Record<string, unknown>> = answers[step] ?? {};
  const now: Readonly<Record<string, unknown>> = said;
  const lost = Object.entries(form).find(([name, question]) => {
    if (!isAsked(question, now, { hasAgeLine: profile.ageLine !== null })) return false;
    const stays = listAbsoluteOptions(question, now[name]);
    return listAbsoluteOptions(question, before[name]).some((option) => !stays.includes(option));
  });
  return lost === undefined ? null : lost[0];
}

/** May "a strand held" be the reason to lift this stop? It says nothing of skin, and one must have held. */
export const mayCiteStrand = ({ strands }: Pick<ConsultationRecord, 'strands'>, rule: RuleId): boolean =>
  rules[rule].step !== 'client' && rule !== 'judgement.onScalp' && hasHeldStrand(strands);

/** Is this the mix of a lift under the name of a gloss? Then what she wants has to be said anew. */
const isAnotherService = ({ answers }: ConsultationRecord, mix: StrandAnswers, settings: Settings): boolean =>
  !isLifting(answers.client?.service ?? '') && isMixOfLift(mix, settings);
