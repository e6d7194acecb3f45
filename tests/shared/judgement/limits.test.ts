import { describe, expect, it } from 'vitest';
import { type Decision, decisions, isMixingDecision } from '../../../shared/judgement/decisions';
import { type Findings, suggestDecision } from '../../../shared/judgement/decisionTable';
import { suggestWithoutEnds } from '../../../shared/judgement/findings';
import {
  ASSUMED_GENTLER_TIME,
  findLimits,
  type Limits,
  limitBy,
  limitZone,
} from '../../../shared/judgement/limits';
import type { Mix } from '../../../shared/judgement/mixes';
import type { RawForm } from '../../../shared/records/readForm';
import { findStrand } from '../../../shared/records/record';
import {
  andThen,
  bothHold,
  change,
  lowRisk,
  minute,
  ofType,
  type story,
  tell,
  until,
} from '../records/telling';
import { findBreaches, listFindings, listWorse } from './monotone';

const mixOf = (developerPercent: number): Mix => ({
  line: 'Sandbar powder',
  developerPercent,
  ratio: 2,
  heat: 'none',
  minutes: 25,
});
const most = (decision: Decision, percent: number): readonly number[] => {
  const { maxDeveloperPercent, maxMinutes } = limitBy(decision, mixOf(percent));
  return [maxDeveloperPercent, maxMinutes];
};

describe('what a decision leaves of what was tested', () => {
  /** Bottles there are: 5, 10, 20, 30 and 40 vol as 1.5, 3, 6, 9 and 12 %, the trade's nominal table. */
  it('goes down to a bottle at least a quarter weaker, else to three quarters of the time (ASSUMED), in whole minutes', () => {
    expect(ASSUMED_GENTLER_TIME).toBe(0.75);
    for (const [tested, weaker] of [
      [12, 9],
      [9, 6],
      [6, 3],
      [3, 1.5],
      [11.9, 6],
      [9.1, 6],
      [8, 6],
      [7.9, 3],
      [6.1, 3],
      [4, 3],
      [2, 1.5],
    ] as const) {
      expect(most('asPlanned', tested)).toEqual([tested, 25]);
      expect(most('gentler', tested)).toEqual([weaker, 25]);
    }
    for (const weakest of [1.9, 1.5, 0.5]) expect(most('gentler', weakest)).toEqual([weakest, 18]);
    for (const [minutes, shorter] of [
      [10, 7],
      [30, 22],
      [20, 15],
      [2, 1],
      [1, 1],
    ] as const) {
      expect(limitBy('gentler', { ...mixOf(1.5), minutes }).maxMinutes).toBe(shorter);
    }
  });

  it('was the next weaker bottle and the bare share of the time before model 5', () => {
    const beforeModel5 = (percent: number) => limitBy('gentler', mixOf(percent), 4);
    expect(beforeModel5(6.1)).toEqual({ maxDeveloperPercent: 6, maxMinutes: 25 });
    expect(beforeModel5(1.5)).toEqual({ maxDeveloperPercent: 1.5, maxMinutes: 18.75 });
  });

  it('lifts less with 20 vol at most (common practice, no source), and is gentler as well', () => {
    expect(most('smallerLift', 12)).toEqual([6, 25]);
    expect(most('smallerLift', 9)).toEqual([6, 25]);
    expect(most('smallerLift', 6)).toEqual([3, 25]);
    expect(most('smallerLift', 1.5)).toEqual([1.5, 18]);
  });

  it('is nothing where nothing is mixed, and for ends that are left out', () => {
    for (const decision of decisions) {
      if (decision === 'endsOut' || !isMixingDecision(decision)) expect(most(decision, 12)).toEqual([0, 0]);
    }
  });
});

describe('the limits of a zone', () => {
  const isWithin = (one: Limits, other: Limits): boolean =>
    one.maxDeveloperPercent <= other.maxDeveloperPercent && one.maxMinutes <= other.maxMinutes;

  it('are the more careful of what was decided and what the table says', () => {
    const six = mixOf(6);
    expect(limitZone('asPlanned', 'gentler', six)).toEqual(limitBy('gentler', six));
    expect(limitZone('gentler', 'asPlanned', six)).toEqual(limitBy('gentler', six));
    expect(limitZone('endsOut', 'smallerLift', six)).toEqual(limitBy('smallerLift', six));
    expect(limitZone('endsOut', 'asPlanned', six)).toEqual(limitBy('asPlanned', six));
    expect(limitZone('endsOut', 'endsOut', six)).toEqual(limitBy('weSayNo', six));
  });

  it('never give a stronger developer or a longer time when the ends are left out than when they are not', () => {
    const breaches: string[] = [];
    const careful = listFindings().filter((each) => isMixingDecision(suggestDecision(each)));
    for (const findings of careful) {
      const suggested = suggestDecision(findings);
      if (suggested === 'endsOut') continue;
      const without = suggestWithoutEnds(findings);
      for (const percent of [1.5, 3, 6, 9, 12]) {
        const mix = mixOf(percent);
        const stay = limitZone(suggested, without, mix);
        if (!isWithin(limitZone('endsOut', without, mix), stay)) breaches.push(JSON.stringify(findings));
      }
    }
    expect(careful.length).toBeGreaterThan(1000);
    expect(breaches.slice(0, 3)).toEqual([]);
  });

  /** Every combination of findings, and everything that is one step worse. */
  it('are monotone: a worse finding never gives a stronger developer or a longer time', () => {
    expect(findBreaches(suggestWithoutEnds)).toEqual([]);
    const mixes = [0.5, 1.5, 3, 4, 6, 9, 12].map(mixOf);
    const known = new Map<string, readonly Limits[]>();
    const limitsOf = (findings: Findings): readonly Limits[] => {
      const decided = suggestDecision(findings);
      const without = suggestWithoutEnds(findings);
      const key = `${decided} ${without}`;
      const limits = known.get(key) ?? mixes.map((mix) => limitZone(decided, without, mix));
      known.set(key, limits);
      return limits;
    };
    const breaches: string[] = [];
    for (const findings of listFindings()) {
      const own = limitsOf(findings);
      for (const worse of listWorse(findings)) {
        const isBreach = limitsOf(worse).some((limits, index) => !isWithin(limits, own[index] as Limits));
        if (isBreach) breaches.push(`${JSON.stringify(findings)} < ${JSON.stringify(worse)}`);
      }
      if (breaches.length > 2) break;
    }
    expect(breaches).toEqual([]);
    expect(known.size).toBeGreaterThan(6);
  });
});

describe('the limits of a record', () => {
  const ends = (answers: RawForm, steps = lowRisk) =>
    change(until('BOWL_WEIGHED', steps), ofType('OUTCOME_RECORDED', 'ends'), answers);
  const decide = (steps: typeof story, decision: string) =>
    tell(change(steps, ofType('DECIDED'), { decision }));
  const limits = ({ record, atMs }: ReturnType<typeof tell>, zone: 'lengths' | 'ends' = 'lengths') => {
    const strand = findStrand(record, zone);
    if (strand === undefined) throw new Error('no strand');
    const { maxDeveloperPercent, maxMinutes } = findLimits(record, strand, atMs);
    return [maxDeveloperPercent, maxMinutes];
  };
  const failed = { fibre: 'broken', stretch: 'snaps' };

  it('are nothing before anything is decided', () =>
    expect(limits(tell(until('DECIDED', lowRisk)))).toEqual([0, 0]));

  it('are what was tested where both zones are sound and nothing speaks against the hair', () => {
    expect(limits(decide(ends({}), 'asPlanned'))).toEqual([6, 25]);
    expect(limits(decide(ends({}), 'endsOut'))).toEqual([6, 25]);
    expect(limits(decide(ends({}), 'gentler'))).toEqual([3, 25]);
  });

  it('do not grow for the lengths because the ends are rough, patchy, short or broken, and left out', () => {
    for (const answers of [{ fibre: 'rough' }, { evenness: 'patchy' }, { level: '6' }, failed]) {
      expect(limits(decide(ends(answers), 'endsOut')), JSON.stringify(answers)).toEqual([3, 25]);
    }
  });

  it('are those of the time the strand was really on', () => {
    const told = tell(
      until('BOWL_WEIGHED', lowRisk).map((step) =>
        step.raw.type === 'STRAND_TAKEN_OFF' && step.raw.answers?.zone === 'lengths'
          ? {
              ...step,
              afterMs: step.afterMs - 5 * minute,
              raw: { ...step.raw, answers: { zone: 'lengths', why: 'levelReached' } },
            }
          : step,
      ),
    );
    expect(findStrand(told.record, 'lengths')?.minutesOn).toBe(20);
    expect(limits(told)).toEqual([6, 20]);
  });

  it('are lifted to what was decided, and never beyond what was tested, by a named person alone', () => {
    const atDecision = tell(until('DECIDED', bothHold));
    const asPlanned = { type: 'DECIDED', answers: { decision: 'asPlanned' } } as const;
    expect(limits(andThen(atDecision, asPlanned))).toEqual([3, 25]);
    const words = { rule: 'judgement.freerThanSuggested', code: 'knowsHerHair', words: 'seen weekly' };
    const lifted = andThen(atDecision, { type: 'OVERRIDDEN', answers: words });
    expect(limits(andThen(lifted, asPlanned))).toEqual([6, 25]);
    expect(limits(andThen(lifted, { type: 'DECIDED', answers: { decision: 'gentler' } }))).toEqual([3, 25]);
    const other = { ...words, rule: 'judgement.scalpTight' };
    expect(limits(andThen(andThen(atDecision, { type: 'OVERRIDDEN', answers: other }), asPlanned))).toEqual([
      3, 25,
    ]);
  });
});
