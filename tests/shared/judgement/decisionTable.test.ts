import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { formatDecisionTable } from '../../../scripts/formatDecisionTable.mjs';
import {
  chooseMoreCareful,
  type Decision,
  decisions,
  isFreer,
  isMixingDecision,
  isToBeSigned,
} from '../../../shared/judgement/decisions';
import {
  ASSUMED_SHORT_FOR_SMALLER_LIFT,
  ASSUMED_STRANDS_WHEN_HIGH,
  type Findings,
  suggestDecision,
  type ZoneFinding,
} from '../../../shared/judgement/decisionTable';
import { type Risk, risks } from '../../../shared/judgement/risk';
import { findBreaches, listFindings, listWorse } from './monotone';

const best: Findings = {
  isLifting: true,
  zones: { roots: 'notPlanned', lengths: 'sound', ends: 'sound' },
  risk: 'low',
  strands: 3,
  shortBy: 0,
  isEven: true,
  stop: 'none',
};
const suggest = (change: Partial<Findings>) => suggestDecision({ ...best, ...change });
const withZone = (zone: string, finding: ZoneFinding) => ({ zones: { ...best.zones, [zone]: finding } });

describe('the order of decisions', () => {
  it('is from saying no to doing as planned (ASSUMED), and only its upper part mixes what was tested', () => {
    expect(decisions.filter(isMixingDecision)).toEqual(['endsOut', 'smallerLift', 'gentler', 'asPlanned']);
    expect(decisions.slice(4)).toEqual(['endsOut', 'depositOnly', 'smallerLift', 'gentler', 'asPlanned']);
    expect(decisions[0]).toBe('weSayNo');
    expect(decisions.at(-1)).toBe('asPlanned');
  });

  it('makes exactly one of two different decisions the freer one, and keeps the more careful', () => {
    for (const [index, one] of decisions.entries()) {
      for (const [place, other] of decisions.entries()) {
        expect(isFreer(one, other)).toBe(index > place);
        expect(isToBeSigned(one, other)).toBe(index > place && isMixingDecision(one));
        expect(chooseMoreCareful(one, other)).toBe(decisions[Math.min(index, place)]);
      }
    }
  });
});

describe('every combination of findings', () => {
  it('gives a decision, and nothing worse ever gives a freer one', () => {
    const all = listFindings();
    const compared = all.reduce((sum, findings) => sum + listWorse(findings).length, 0);
    console.info(`${all.length} combinations, ${compared} comparisons`);
    expect(all).toHaveLength(2 * 6 ** 3 * 3 * 4 * 5 * 2 * 3);
    expect(findBreaches(suggestDecision)).toEqual([]);
  });

  it.each<[string, (findings: Findings, decision: Decision) => Decision | undefined]>([
    [
      'frees the very worst corner',
      (f, d) => (f.zones.ends === 'broken' && f.risk === 'high' ? 'endsOut' : d),
    ],
    ['frees three strands less than two', (f, d) => (f.strands === 3 && f.risk === 'high' ? 'testAgain' : d)],
    [
      'frees what fell three levels short',
      (f, d) => (f.shortBy === 3 && f.stop === 'none' ? 'asPlanned' : d),
    ],
    ['lets an absolute stop pass', (f, d) => (f.stop === 'absolute' ? 'testAgain' : d)],
    ['prefers patchy strands', (f, d) => (f.isEven && d === 'asPlanned' ? 'weSayNo' : d)],
    ['prefers an untested zone', (f, d) => (f.zones.roots === 'sound' && d === 'asPlanned' ? 'cutFirst' : d)],
    [
      // The same outcome of a mere deposit says no, and may not be answered more strictly than that of a lift.
      'offers mere deposit where the lengths gave way gummy under a lift and nothing else failed',
      (f, d) =>
        f.isLifting && f.risk === 'low' && f.zones.lengths === 'gummy' && f.zones.ends === 'sound'
          ? chooseMoreCareful(
              'depositOnly',
              suggestDecision({ ...f, zones: { ...f.zones, lengths: 'rough' } }),
            )
          : d,
    ],
    ['has no answer somewhere', (f, d) => (f.strands === 1 && f.shortBy === 2 ? undefined : d)],
  ])('is found out by this check when the table %s', (_name, plant) =>
    expect(findBreaches((findings) => plant(findings, suggestDecision(findings)))).not.toEqual([]),
  );
});

describe('the two little tables (every cell ASSUMED)', () => {
  const lifting: readonly (readonly [ZoneFinding, Risk, Decision])[] = [
    ['sound', 'low', 'asPlanned'],
    ['sound', 'raised', 'gentler'],
    ['sound', 'high', 'smallerLift'],
    ['rough', 'low', 'gentler'],
    ['rough', 'raised', 'smallerLift'],
    ['rough', 'high', 'severalVisits'],
  ];
  const depositing: readonly (readonly [ZoneFinding, Risk, Decision])[] = [
    ['sound', 'low', 'asPlanned'],
    ['sound', 'raised', 'asPlanned'],
    ['sound', 'high', 'gentler'],
    ['rough', 'low', 'gentler'],
    ['rough', 'raised', 'gentler'],
    ['rough', 'high', 'gentler'],
  ];

  it.each(lifting)('lighten or lift, %s strand, %s risk: %s', (finding, risk, decision) => {
    for (const zone of ['roots', 'lengths', 'ends']) {
      expect(suggest({ ...withZone(zone, finding), risk })).toBe(decision);
    }
  });

  it.each(depositing)('deposit, gloss or tone, %s strand, %s risk: %s', (finding, risk, decision) => {
    for (const zone of ['roots', 'lengths', 'ends']) {
      expect(suggest({ ...withZone(zone, finding), risk, isLifting: false })).toBe(decision);
    }
  });
});

describe('a strand that failed or is missing', () => {
  it('says no anywhere but at the ends', () => {
    for (const risk of risks) {
      for (const failed of ['gummy', 'broken'] as const) {
        expect(suggest({ ...withZone('roots', failed), risk })).toBe('weSayNo');
        expect(suggest({ ...withZone('lengths', failed), risk })).toBe('weSayNo');
        expect(suggest({ ...withZone('ends', failed), risk })).toBe(risk === 'high' ? 'cutFirst' : 'endsOut');
      }
    }
  });

  it('is asked for again, or the ends are left out', () => {
    expect(suggest(withZone('lengths', 'untested'))).toBe('testAgain');
    expect(suggest(withZone('ends', 'untested'))).toBe('endsOut');
    expect(suggest({ strands: 0 })).toBe('testAgain');
  });

  it('is a second one when the risk is high (ASSUMED)', () => {
    const strands = ASSUMED_STRANDS_WHEN_HIGH;
    expect(suggest({ risk: 'high', strands })).toBe('smallerLift');
    expect(suggest({ risk: 'high', strands: strands - 1 })).toBe('testAgain');
    expect(suggest({ risk: 'raised', strands: strands - 1 })).toBe('gentler');
  });
});

describe('what else holds back', () => {
  it('is any stop, of either kind', () => {
    expect(suggest({ stop: 'judgement' })).toBe('weSayNo');
    expect(suggest({ stop: 'absolute' })).toBe('weSayNo');
  });

  it('is patchy lift, and a level missed when it was to go lighter (ASSUMED)', () => {
    expect(suggest({ isEven: false })).toBe('gentler');
    expect(suggest({ shortBy: 0.5 })).toBe('gentler');
    expect(suggest({ shortBy: ASSUMED_SHORT_FOR_SMALLER_LIFT - 0.5 })).toBe('gentler');
    expect(suggest({ shortBy: ASSUMED_SHORT_FOR_SMALLER_LIFT })).toBe('smallerLift');
    expect(suggest({ shortBy: 3, isLifting: false })).toBe('asPlanned');
  });

  it('is the most careful of all of it together', () =>
    expect(suggest({ ...withZone('ends', 'rough'), risk: 'raised', isEven: false, shortBy: 0.5 })).toBe(
      'smallerLift',
    ));
});

describe('the printed table', () => {
  it('has a row for each outcome and risk, and says what the function says', () => {
    const lines = formatDecisionTable(suggestDecision).split('\n');
    expect(lines).toContain('| sound | low | asPlanned | asPlanned | asPlanned | asPlanned |');
    expect(lines).toContain('| rough | high | severalVisits | severalVisits | gentler | gentler |');
    expect(lines).toContain('| gummy | high | weSayNo | cutFirst | weSayNo | cutFirst |');
    expect(lines.filter((line) => /^\| \w+ \| (low|raised|high) \|/.test(line))).toHaveLength(15);
    expect(formatDecisionTable(() => 'weSayNo')).not.toContain('asPlanned');
  });

  it('is what `npm run tables` prints', () => {
    const script = join(import.meta.dirname, '../../../scripts/tables.mjs');
    const printed = execFileSync(process.execPath, [script], { encoding: 'utf8' });
    expect(printed.trim()).toBe(formatDecisionTable(suggestDecision));
  });
});
