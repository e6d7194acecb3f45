import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { gatherFindings, suggestFor } from '../../../shared/judgement/findings';
import { listPlannedZones } from '../../../shared/judgement/plannedZones';
import type { RawEvent } from '../../../shared/records/classify';
import { fold } from '../../../shared/records/reduce';
import {
  andThen,
  bothHold,
  change,
  day,
  find,
  lowRisk,
  ofStep,
  ofType,
  startAtMs,
  story,
  type Told,
  tell,
  until,
} from '../records/telling';

const again = (name: string, answers: object): RawEvent => {
  const raw = find(ofStep(name));
  return { ...raw, answers: { ...raw.answers, ...answers } } as RawEvent;
};
const gather = ({ record, atMs }: Told, nowMs = atMs) => gatherFindings(record, salon, nowMs);
const suggest = ({ record, atMs }: Told, nowMs = atMs) => suggestFor(record, salon, nowMs);
const atDecision = tell(until('DECIDED'));
const bothAtDecision = tell(until('DECIDED', bothHold));

describe('the plan', () => {
  it('colours two places of a full head, the lengths alone with the ends out, or the roots', () => {
    expect(listPlannedZones('fullHead')).toEqual(['lengths', 'ends']);
    expect(listPlannedZones('endsOut')).toEqual(['lengths']);
    expect(listPlannedZones('roots')).toEqual(['roots']);
    expect(listPlannedZones(undefined)).toEqual([]);
  });
});

describe('the findings of the story', () => {
  it('are what its strands and answers say together', () =>
    expect(gather(atDecision)).toEqual({
      isLifting: true,
      zones: { roots: 'notPlanned', lengths: 'sound', ends: 'broken' },
      risk: 'raised',
      strands: 2,
      shortBy: 0,
      isEven: true,
      stop: 'none',
    }));

  it('leave the ends out, and would not where both strands held', () => {
    expect(suggest(atDecision)).toBe('endsOut');
    expect(suggest(bothAtDecision)).toBe('gentler');
    expect(suggest(tell(until('DECIDED', lowRisk)))).toBe('asPlanned');
  });

  it('are for lightening, the more careful of the two, while nobody has said what she wants', () =>
    expect(gather(tell(story.slice(0, 1)))).toMatchObject({ isLifting: true, strands: 0, shortBy: 0 }));
});

describe('a strand', () => {
  it('counts once it has an outcome, for this plan, within 28 days (ASSUMED)', () => {
    expect(gather(tell(until('OUTCOME_RECORDED'))).zones).toMatchObject({
      lengths: 'untested',
      ends: 'untested',
    });
    const lastMs = (bothAtDecision.record.strands[1]?.ended?.atMs ?? 0) + 28 * day;
    expect(gather(bothAtDecision, lastMs)).toMatchObject({ zones: { lengths: 'sound' }, strands: 2 });
    // The ends came off a second later than the lengths.
    expect(gather(bothAtDecision, lastMs + 1)).toMatchObject({ zones: { lengths: 'untested' }, strands: 1 });
    const otherPlan = andThen(bothAtDecision, again('client', { targetLevel: '7.5' }));
    expect(gather(otherPlan)).toMatchObject({ zones: { lengths: 'untested' }, strands: 0, shortBy: 0 });
    expect(suggest(otherPlan)).toBe('testAgain');
  });

  it('is the newest of its zone, and none while that one runs', () => {
    const running = andThen(bothAtDecision, find(ofType('STRAND_STARTED', 'ends')));
    expect(gather(running).zones.ends).toBe('untested');
    const off = andThen(running, {
      type: 'STRAND_TAKEN_OFF',
      answers: { zone: 'ends', why: 'levelReached' },
    });
    const rough = {
      ...find(ofType('OUTCOME_RECORDED', 'lengths')).answers,
      zone: 'ends',
      fibre: 'rough',
      stretch: 'staysLong',
    };
    const told = andThen(off, { type: 'OUTCOME_RECORDED', answers: rough });
    expect(gather(told)).toMatchObject({ zones: { ends: 'rough' }, strands: 2 });
  });

  it('is used up by its bowl for every later decision, unless that bowl was thrown away', () => {
    const decide: RawEvent = { type: 'DECIDED', answers: { decision: 'endsOut' } };
    const weighed = andThen(andThen(atDecision, decide), find(ofType('BOWL_WEIGHED')));
    expect(gather(weighed).zones.lengths).toBe('sound');
    expect(gather(andThen(weighed, decide)).zones.lengths).toBe('untested');
    expect(gather(andThen(weighed, { type: 'PLAN_CHANGED' })).zones.lengths).toBe('untested');
    const thrown = andThen(weighed, { type: 'BOWL_THROWN', answers: { zone: 'lengths' } });
    expect(gather(andThen(thrown, decide)).zones.lengths).toBe('sound');
  });

  it('that fell short counts by the shortest, that was patchy makes all uneven', () => {
    const short = change(until('DECIDED', bothHold), ofType('OUTCOME_RECORDED', 'lengths'), { level: '5.5' });
    expect(gather(tell(short)).shortBy).toBe(1.5);
    const beyond = change(until('DECIDED', bothHold), ofType('OUTCOME_RECORDED'), { level: '8' });
    expect(gather(tell(beyond)).shortBy).toBe(0);
    for (const evenness of ['patchy', 'banded']) {
      const uneven = change(until('DECIDED', bothHold), ofType('OUTCOME_RECORDED', 'ends'), { evenness });
      expect(gather(tell(uneven)).isEven).toBe(false);
    }
  });
});

describe('a stop', () => {
  const positive: RawEvent = { type: 'SKIN_TEST_NOTED', answers: { putOnAtMs: startAtMs, seen: 'reaction' } };
  const reacted: RawEvent = { type: 'INCOMPATIBILITY_READ', answers: { seen: 'reacted' } };

  it('says no, whether it was answered, read off a test, or handed on', () => {
    const [opened, ...rest] = bothAtDecision.log;
    const inherited = fold('told', [
      { ...opened, tokens: { ...opened?.tokens, inherits: true } },
      ...rest,
    ] as never);
    const stopped: readonly Told[] = [
      andThen(bothAtDecision, again('client', { scalp: 'faceRash' })),
      andThen(bothAtDecision, positive),
      andThen(andThen(bothAtDecision, { type: 'INCOMPATIBILITY_STARTED' }), reacted),
      { ...bothAtDecision, record: inherited },
    ];
    for (const told of stopped) {
      expect(gather(told).stop).toBe('absolute');
      expect(suggest(told)).toBe('weSayNo');
    }
  });

  it('for a judgement says no until a named person lifts it', () => {
    const tight = andThen(bothAtDecision, again('client', { scalp: 'tight' }));
    expect(gather(tight).stop).toBe('judgement');
    const words = { rule: 'judgement.scalpTight', code: 'knowsHerHair', words: 'always so' };
    const lifted = andThen(tight, { type: 'OVERRIDDEN', answers: words });
    expect(gather(lifted).stop).toBe('none');
    expect(gather(andThen(lifted, again('client', { scalp: 'sound' }))).stop).toBe('none');
    const raisedAgain = andThen(andThen(lifted, again('client', {})), again('client', { scalp: 'tight' }));
    expect(gather(raisedAgain).stop).toBe('judgement');
  });

  it('that is absolute is lifted by nobody', () => {
    const broken = andThen(bothAtDecision, again('client', { scalp: 'broken' }));
    const words = { rule: 'stop.scalpBroken', code: 'seniorAgreed', words: 'she signed' };
    expect(gather(andThen(broken, { type: 'OVERRIDDEN', answers: words })).stop).toBe('absolute');
  });
});
