import type { Grade } from '../records/gradeOutcome';
import type { ByZone, Zone } from '../records/zones';
import { zones } from '../records/zones';
import { chooseMoreCareful, type Decision } from './decisions';
import type { Risk } from './risk';

/** What is known of one zone: not part of the plan, not tested yet, or how its strand came out. */
export type ZoneFinding = 'notPlanned' | 'untested' | Grade;

/** Everything the table looks at. */
export interface Findings {
  readonly isLifting: boolean;
  readonly zones: ByZone<ZoneFinding>;
  readonly risk: Risk;
  /** How many strands speak for what would go on: countStrands. */
  readonly strands: number;
  /** Levels by which the strands fell short of the target; 0 when reached. */
  readonly shortBy: number;
  readonly isEven: boolean;
  readonly stop: 'none' | 'judgement' | 'absolute';
}

/** So many strands are asked for when the risk is high. Assumed because one sound strand may not be the worst one. */
export const ASSUMED_STRANDS_WHEN_HIGH = 2;
/** So many levels short, less lift is suggested. Assumed because one visit rarely makes up two levels gently. */
export const ASSUMED_SHORT_FOR_SMALLER_LIFT = 2;

/** Strand grade × risk, for lightening and lift. Every cell ASSUMED: nothing published gives a safe dose. */
const lifting = {
  sound: { low: 'asPlanned', raised: 'gentler', high: 'smallerLift' },
  rough: { low: 'gentler', raised: 'smallerLift', high: 'severalVisits' },
} as const satisfies Record<'sound' | 'rough', Record<Risk, Decision>>;

/** The same for deposit only, gloss and tone. Every cell ASSUMED. */
const depositing = {
  sound: { low: 'asPlanned', raised: 'asPlanned', high: 'gentler' },
  rough: { low: 'gentler', raised: 'gentler', high: 'gentler' },
} as const satisfies Record<'sound' | 'rough', Record<Risk, Decision>>;

/** What one zone alone allows. A failed zone of ends can be left out; anywhere else the answer is no. */
function decideZone(zone: Zone, finding: ZoneFinding, findings: Findings): Decision {
  switch (finding) {
    case 'notPlanned':
      return 'asPlanned';
    case 'untested':
      return zone === 'ends' ? 'endsOut' : 'testAgain';
    case 'gummy':
    case 'broken':
      if (zone !== 'ends') return 'weSayNo';
      return findings.risk === 'high' ? 'cutFirst' : 'endsOut';
    case 'sound':
    case 'rough':
      return (findings.isLifting ? lifting : depositing)[finding][findings.risk];
  }
}

/**
 * What does the table suggest? The most careful of what every zone, the risk, the level and the stops allow.
 * Total, and monotone: nothing worse among the findings ever gives a freer decision
 * (every combination, tests/shared/judgement/decisionTable.test.ts).
 */
export function suggestDecision(findings: Findings): Decision {
  if (findings.stop !== 'none') return 'weSayNo';
  const limits: Decision[] = zones.map((zone) => decideZone(zone, findings.zones[zone], findings));
  if (findings.strands === 0) limits.push('testAgain');
  if (findings.risk === 'high' && findings.strands < ASSUMED_STRANDS_WHEN_HIGH) limits.push('testAgain');
  if (!findings.isEven) limits.push('gentler');
  if (findings.isLifting && findings.shortBy > 0) limits.push('gentler');
  if (findings.isLifting && findings.shortBy >= ASSUMED_SHORT_FOR_SMALLER_LIFT) limits.push('smallerLift');
  return limits.reduce(chooseMoreCareful, 'asPlanned');
}
