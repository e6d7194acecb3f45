import type { Consultation } from '../../../machines/consultation/consultation';
import {
  type Decision,
  decisions,
  isMixingDecision,
  isToBeSigned,
} from '../../../shared/judgement/decisions';
import {
  ASSUMED_SHORT_FOR_SMALLER_LIFT,
  ASSUMED_STRANDS_WHEN_HIGH,
  type Findings,
  suggestDecision,
} from '../../../shared/judgement/decisionTable';
import { gatherFindings } from '../../../shared/judgement/findings';
import { listRedFlags, type RedFlag } from '../../../shared/judgement/risk';
import { findShortTime } from '../../../shared/judgement/shortTime';
import { isFreerLifted } from '../../../shared/judgement/stops';
import { findStrand, type StrandRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { type Zone, zones } from '../../../shared/records/zones';
import { isOpenNow } from '../isOpenNow';
import { findAnother } from '../strandTest/findAnother';

/** Why the table suggests what it does, beside what each zone shows. Words stand in src/words under the same id. */
export type Reason =
  | 'stopped'
  | 'oneStrandTooFew'
  | 'wellShort'
  | 'short'
  | 'uneven'
  | 'ironedHair'
  | 'careful';

/** What one zone of the plan showed, and whether it was a wrong tap that can be taken back. */
export interface ZoneFound {
  readonly zone: Zone;
  readonly finding: Exclude<Findings['zones'][Zone], 'notPlanned'>;
  readonly strand: StrandRecord | null;
  readonly isRetractable: boolean;
}

/** One thing that may be decided. */
export interface Choice {
  readonly decision: Decision;
  /** `careful`: mixes nothing, or no more than suggested; `freer`: mixes further, and is signed. */
  readonly kind: 'suggested' | 'careful' | 'freer';
  /** The chart would take it now; a freer one only after a named reason. */
  readonly isOpen: boolean;
}

export interface DecisionView {
  readonly found: readonly ZoneFound[];
  /** Zones of the plan for which no strand speaks yet. */
  readonly missing: readonly Zone[];
  readonly flags: readonly RedFlag[];
  readonly reasons: readonly Reason[];
  /** Levels by which the zones that would be mixed fell short; ends that stay out do not count. */
  readonly shortBy: number;
  /** The level of the zone that came out darkest of those that may be mixed, and the one she wants; null: not lifted. */
  readonly reached: number | null;
  readonly target: number | null;
  readonly suggested: Decision;
  /** From where one more strand is asked for, when each zone has its own and that is too few. */
  readonly another: ReturnType<typeof findAnother>;
  readonly choices: readonly Choice[];
  /** A named person has taken it on to decide more freely than suggested. */
  readonly isFreerLifted: boolean;
  /** What was decided already, when that leads to no bowl. */
  readonly decided: Decision | null;
}

/** Which of the findings weighed in, in the order in which they would be said? */
export function listReasons(findings: Findings): readonly Reason[] {
  const { isLifting, risk, shortBy, strands, isEven, stop } = findings;
  const weighed: Readonly<Record<Reason, boolean>> = {
    stopped: stop !== 'none',
    oneStrandTooFew: risk === 'high' && strands < ASSUMED_STRANDS_WHEN_HIGH,
    wellShort: isLifting && shortBy >= ASSUMED_SHORT_FOR_SMALLER_LIFT,
    short: isLifting && shortBy > 0 && shortBy < ASSUMED_SHORT_FOR_SMALLER_LIFT,
    uneven: !isEven,
    ironedHair: risk === 'high',
    careful: risk === 'raised',
  };
  return (Object.keys(weighed) as Reason[]).filter((reason) => weighed[reason]);
}

/** The suggestion, then less and less that is done to the hair, then more and more. */
const nearestFirst = (suggested: Decision): readonly Decision[] => {
  const place = decisions.indexOf(suggested);
  return [...decisions.slice(0, place + 1).reverse(), ...decisions.slice(place + 1)];
};

const kindOf = (decision: Decision, suggested: Decision): Choice['kind'] => {
  if (decision === suggested) return 'suggested';
  return isToBeSigned(decision, suggested) ? 'freer' : 'careful';
};

/** Would the chart take it, were a freer one lifted? A mixing decision must leave a zone that may be mixed. */
const isChoiceOpen = (decision: Decision, found: readonly ZoneFound[]): boolean =>
  !isMixingDecision(decision) || found.some((each) => isLeftToMix(each, decision));

/** Did its strand hold, and does this mixing decision leave it in? */
export const isLeftToMix = ({ zone, finding }: ZoneFound, decision: Decision): boolean =>
  (finding === 'sound' || finding === 'rough') && !(decision === 'endsOut' && zone === 'ends');

/** The findings without what ends show that stay out: how light and how even they came out is no matter then. */
function leaveEndsOut(findings: Findings, found: readonly ZoneFound[], target: number | undefined): Findings {
  const mixed = found
    .filter(({ zone, finding }) => zone !== 'ends' && (finding === 'sound' || finding === 'rough'))
    .flatMap(({ strand }) => strand?.outcome ?? []);
  if (target === undefined || mixed.length === 0) return findings;
  return {
    ...findings,
    shortBy: Math.max(0, target - Math.min(...mixed.map(({ level }) => level ?? 10))),
    isEven: mixed.every(({ evenness }) => evenness === 'even'),
  };
}

/** The findings where every strand failed: what broke is why, and how light or even it came out is no matter. */
const leaveLevels = (findings: Findings): Findings => ({ ...findings, shortBy: 0, isEven: true });

/** What weighed in for what is suggested, without what no longer matters then? */
function weigh(
  findings: Findings,
  found: readonly ZoneFound[],
  suggested: Decision,
  target: number | undefined,
): Findings {
  if (found.every(({ finding }) => finding === 'gummy' || finding === 'broken')) return leaveLevels(findings);
  return suggested === 'endsOut' ? leaveEndsOut(findings, found, target) : findings;
}

/** How light did the darkest zone come out that may be mixed? null where none may. */
function findReached(found: readonly ZoneFound[]): number | null {
  const levels = found
    .filter(({ finding }) => finding === 'sound' || finding === 'rough')
    .flatMap(({ strand }) => strand?.outcome?.level ?? []);
  return levels.length === 0 ? null : Math.min(...levels);
}

/** For how long a zone was proven, where that is less than was planned. */
export interface ShortProof {
  readonly zone: Zone;
  readonly onMin: number;
}

/** Which zones that may be mixed under this decision were proven for less than the planned minutes? */
export const listShortProofs = (found: readonly ZoneFound[], decision: Decision): readonly ShortProof[] =>
  isMixingDecision(decision)
    ? found
        .filter((each) => isLeftToMix(each, decision))
        .flatMap(({ zone, strand }) => {
          const short = strand === null ? null : findShortTime(strand);
          return short === null ? [] : [{ zone, onMin: short.onMin }];
        })
    : [];

/** Is every zone that may be mixed under this decision proven for less than a minute, which is for nothing? */
export const isProvenForNothing = (found: readonly ZoneFound[], decision: Decision): boolean => {
  const left = found.filter((each) => isLeftToMix(each, decision));
  const proofs = listShortProofs(found, decision);
  return left.length > 0 && proofs.length === left.length && proofs.every(({ onMin }) => onMin === 0);
};

/** What was found, what does the table suggest and why, and what else may be chosen? */
export function viewDecision(consultation: Consultation, settings: Settings, nowMs: number): DecisionView {
  const { record } = consultation;
  const findings = gatherFindings(record, settings, nowMs);
  const suggested = suggestDecision(findings);
  const found = zones.flatMap((zone): readonly ZoneFound[] => {
    const finding = findings.zones[zone];
    if (finding === 'notPlanned') return [];
    const answers = { zone, code: 'wrongTap', words: '-' };
    return [
      {
        zone,
        finding,
        strand: findStrand(record, zone) ?? null,
        isRetractable: isOpenNow(consultation, { type: 'OUTCOME_RETRACTED', answers }, settings, nowMs),
      },
    ];
  });
  const decided = record.decision?.decision ?? null;
  const target = record.answers.client?.targetLevel;
  const weighed = weigh(findings, found, suggested, target);
  return {
    found,
    missing: found.filter(({ finding }) => finding === 'untested').map(({ zone }) => zone),
    flags: listRedFlags(record.answers),
    reasons: listReasons(weighed),
    shortBy: weighed.shortBy,
    reached: findReached(found),
    target: findings.isLifting ? (target ?? null) : null,
    suggested,
    another: findAnother(record, settings, nowMs),
    choices: nearestFirst(suggested).map((decision) => ({
      decision,
      kind: kindOf(decision, suggested),
      isOpen: isChoiceOpen(decision, found),
    })),
    isFreerLifted: isFreerLifted(record),
    decided: decided !== null && !isMixingDecision(decided) ? decided : null,
  };
}
