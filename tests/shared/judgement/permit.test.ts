import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { isMixingDecision, mixingDecisions } from '../../../shared/judgement/decisions';
import { ASSUMED_OUTCOME_LAPSES_DAYS } from '../../../shared/judgement/lapse';
import { ASSUMED_GENTLER_TIME } from '../../../shared/judgement/limits';
import { issuePermit, issueTestPermit } from '../../../shared/judgement/permit';
import type { RawEvent } from '../../../shared/records/classify';
import { fold } from '../../../shared/records/reduce';
import type { Settings } from '../../../shared/records/settings';
import { type Zone, zones } from '../../../shared/records/zones';
import {
  andThen,
  bothHold,
  change,
  day,
  hour,
  lowRisk,
  ofStep,
  ofType,
  startAtMs,
  story,
  type Told,
  tell,
  tryRaw,
  until,
} from '../records/telling';

const atMix = tell(until('BOWL_WEIGHED'));
const bothAtMix = tell(until('BOWL_WEIGHED', lowRisk));
const noSkinTest: Settings = { ...salon, profile: { ...salon.profile, skinTestFor: [] } };

/** What is allowed, or the code of the refusal. */
const ask = (told: Told, zone: Zone = 'lengths', nowMs = told.atMs, settings: Settings = salon) => {
  const permit = issuePermit(told.record, zone, settings, nowMs);
  return permit.ok ? 'allowed' : permit.error.code;
};
const decide = (decision: string): RawEvent => ({ type: 'DECIDED', answers: { decision } });
const override = (rule: string): RawEvent => ({
  type: 'OVERRIDDEN',
  answers: { rule, code: 'seniorAgreed', words: 'I know this hair' },
});

describe('a mix permit', () => {
  it('is given for what was tested and decided, and says all of it', () => {
    const permit = issuePermit(atMix.record, 'lengths', salon, atMix.atMs);
    expect(permit).toEqual({
      ok: true,
      value: {
        kind: 'mix',
        zone: 'lengths',
        strand: 2,
        decision: 'endsOut',
        tested: { line: 'Sandbar powder', developerPercent: 6, ratio: 2, heat: 'none', minutes: 25 },
        // Ironed wet: one sign of damage, so the lengths get the next weaker bottle (decision table, ASSUMED).
        maxDeveloperPercent: 3,
        maxMinutes: 25,
        maxHeat: 'none',
        // Lightener that lies on the scalp: 20 vol (common practice, no source), which this is below anyway.
        scalpPercent: 6,
        isLowered: false,
      },
    });
  });

  it('is given for each zone whose strand held, and for no other', () => {
    expect(zones.map((zone) => ask(atMix, zone))).toEqual(['zoneNotPlanned', 'allowed', 'endsLeftOut']);
    expect(zones.map((zone) => ask(bothAtMix, zone))).toEqual(['zoneNotPlanned', 'allowed', 'allowed']);
  });

  it('is never given earlier in the story than after the decision', () => {
    const decidedAt = story.findIndex(({ raw }) => raw.type === 'DECIDED');
    const codes = story.slice(0, decidedAt).map((_step, index) => ask(tell(story.slice(0, index))));
    expect(codes).not.toContain('allowed');
    expect(new Set(codes)).toEqual(new Set(['closed', 'stepUnsaid', 'noOutcome']));
  });

  it('changes nothing in the record it is asked of', () => {
    const before = JSON.stringify(atMix.record);
    ask(atMix);
    expect(JSON.stringify(atMix.record)).toBe(before);
  });
});

/** Asked anew at this moment for what holds for the day, and decided anew. */
const askAnew = (told: Told, atMs: number, settings = salon): Told => {
  const client = story.find(({ raw }) => ofStep('client')(raw))?.raw as RawEvent;
  const decide = story.find(({ raw }) => raw.type === 'DECIDED')?.raw as RawEvent;
  return andThen(andThen(told, client, atMs - told.atMs, settings), decide, 1000, settings);
};

describe('an outcome', () => {
  const lapseMs = ASSUMED_OUTCOME_LAPSES_DAYS * day;
  const endedAtMs = atMix.record.strands[1]?.ended?.atMs ?? 0;

  it('stands for exactly 28 days from when its strand came off (ASSUMED)', () => {
    expect(ASSUMED_OUTCOME_LAPSES_DAYS).toBe(28);
    const anew = askAnew(atMix, endedAtMs + lapseMs - hour, noSkinTest);
    expect(ask(anew, 'lengths', endedAtMs + lapseMs, noSkinTest)).toBe('allowed');
    expect(ask(anew, 'lengths', endedAtMs + lapseMs + 1, noSkinTest)).toBe('outcomeLapsed');
  });

  it('does not stay young when the tablet’s clock is set back', () => {
    const back = andThen(
      atMix,
      { type: 'CLOCK_CORRECTED', answers: { shiftMs: String(-5 * day) } },
      -5 * day + 60_000,
    );
    const realAgeMs = (nowMs: number) => nowMs + 5 * day - endedAtMs;
    const lastMs = endedAtMs + lapseMs - 5 * day;
    expect(realAgeMs(lastMs)).toBe(lapseMs);
    const anew = askAnew(back, lastMs - hour, noSkinTest);
    expect(ask(anew, 'lengths', lastMs, noSkinTest)).toBe('allowed');
    expect(ask(anew, 'lengths', lastMs + 1, noSkinTest)).toBe('outcomeLapsed');
  });

  it('does not lapse with the plan changed and changed back, but asks for a decision anew', () => {
    const client = story.find(({ raw }) => ofStep('client')(raw))?.raw as RawEvent;
    const other = { ...client, answers: { ...client.answers, targetLevel: '7.5' } } as RawEvent;
    const changed = andThen(atMix, other);
    const back = andThen(changed, client);
    expect(ask(changed)).toBe('outcomeOfAnotherPlan');
    expect(ask(back)).toBe('notDecided');
    expect(ask(andThen(back, decide('endsOut')))).toBe('allowed');
  });

  it('is of no use to a decision made for another plan, even when the log denies that it was another', () => {
    const other = change(until('BOWL_WEIGHED'), ofStep('client'), { targetLevel: '6.5' });
    const client = story.find(({ raw }) => ofStep('client')(raw))?.raw as RawEvent;
    const told = tell(other);
    const back = tryRaw(told, client, told.atMs);
    if (!back.ok) throw new Error('refused');
    const denied = { ...back.value, tokens: { ...back.value.tokens, bearsOnPlan: false } };
    const record = fold('told', [...told.log, denied as never]);
    const strands = record.strands.map((strand) => ({
      ...strand,
      planKey: atMix.record.strands[1]?.planKey,
    }));
    const bent = { ...record, strands: strands as typeof record.strands };
    expect(issuePermit(bent, 'lengths', salon, told.atMs)).toMatchObject({ error: { code: 'notDecided' } });
  });
});

describe('the skin test', () => {
  const putOnAtMs = atMix.record.skinTest?.putOnAtMs ?? 0;
  const waiting = (skinTestWaitH: number): Settings => ({
    ...salon,
    profile: { ...salon.profile, skinTestWaitH },
  });
  /** How long it had been on when it was read, in hours: the longest wait that this reading answers. */
  const readH = ((atMix.record.skinTest?.atMs ?? 0) - putOnAtMs) / hour;

  it('must have been read after the whole wait of the local profile, to the millisecond', () => {
    expect(ask(atMix, 'lengths', atMix.atMs, waiting(readH))).toBe('allowed');
    expect(ask(atMix, 'lengths', atMix.atMs, waiting(readH + 1 / 3_600_000))).toBe('skinTestWaiting');
    expect(ask(atMix, 'lengths', atMix.atMs + 10 * hour, waiting(readH + 1))).toBe('skinTestWaiting');
  });

  it('lapses 28 days after it was put on (ASSUMED), to the millisecond', () => {
    expect(startAtMs - putOnAtMs).toBe(49 * hour);
    const anew = askAnew(atMix, putOnAtMs + 28 * day - hour);
    expect(ask(anew, 'lengths', putOnAtMs + 28 * day)).toBe('allowed');
    expect(ask(anew, 'lengths', putOnAtMs + 28 * day + 1)).toBe('skinTestLapsed');
  });

  it('may still be waiting when a strand is tested: the strand is off the head', () => {
    const unread = tell(change(until('STRAND_STARTED'), ofType('SKIN_TEST_NOTED'), { seen: 'notReadYet' }));
    expect(issueTestPermit(unread.record, salon).ok).toBe(true);
    const missing = tell(until('STRAND_STARTED').filter(({ raw }) => raw.type !== 'SKIN_TEST_NOTED'));
    expect(issueTestPermit(missing.record, salon).ok).toBe(true);
  });
});

describe('a test permit', () => {
  it('is refused for whatever stops the client or leaves a step unsaid, and asks for no outcome', () => {
    const ready = tell(until('STRAND_STARTED'));
    const refusal = (told: Told) => {
      const permit = issueTestPermit(told.record, salon);
      return permit.ok ? 'allowed' : permit.error.code;
    };
    expect(refusal(ready)).toBe('allowed');
    expect(refusal(tell(story.slice(0, 0)))).toBe('closed');
    expect(refusal(tell(story.slice(0, 2)))).toBe('stepUnsaid');
    expect(refusal(andThen(ready, { type: 'REACTION_SUSPECTED' }))).toBe('reaction');
    const positive: RawEvent = {
      type: 'SKIN_TEST_NOTED',
      answers: { putOnAtMs: startAtMs, seen: 'reaction' },
    };
    expect(refusal(andThen(ready, positive))).toBe('stopped');
  });
});

describe('a decision', () => {
  const raised = until('DECIDED', bothHold);
  const under = (decision: string, tested: object = {}) => {
    const inFoil = { ...tested, heat: 'foil' };
    const started = change(until('DECIDED', lowRisk), ofType('STRAND_STARTED'), inFoil);
    const steps = change(started, ofType('STRAND_TAKEN_OFF'), { why: 'levelReached' });
    return issuePermit(andThen(tell(steps), decide(decision)).record, 'lengths', salon, atMix.atMs);
  };

  it('freer than suggested gives no permit, unless a named person took it on', () => {
    expect(ask(andThen(tell(raised), decide('gentler')))).toBe('allowed');
    expect(ask(andThen(tell(raised), decide('asPlanned')))).toBe('freerThanSuggested');
    const lifted = andThen(tell(raised), override('judgement.freerThanSuggested'));
    expect(ask(andThen(lifted, decide('asPlanned')))).toBe('allowed');
  });

  it('loses that leave when the step is opened again', () => {
    const lifted = andThen(tell(raised), override('judgement.freerThanSuggested'));
    const reopened = andThen(lifted, { type: 'REOPENED', answers: { step: 'strandTest' } });
    expect(ask(andThen(reopened, decide('asPlanned')))).toBe('freerThanSuggested');
  });

  it.each(mixingDecisions)('%s never allows more than was tested, at any strength and time', (decision) => {
    for (const developerPercent of ['0.5', '1.9', '3', '3.1', '6', '9', '12']) {
      for (const minutes of ['1', '25', '45']) {
        const permit = under(decision, { developerPercent, minutes });
        const value = permit.ok ? permit.value : undefined;
        expect(value?.maxDeveloperPercent, developerPercent).toBeLessThanOrEqual(Number(developerPercent));
        expect(value?.maxMinutes).toBeLessThanOrEqual(Number(minutes));
        expect(value?.maxDeveloperPercent).toBeGreaterThan(0);
      }
    }
  });

  it.each<[string, string, number, number]>([
    // Bottles of 1.5, 3, 6, 9 and 12 %: the trade's nominal table, common practice, no source.
    ['asPlanned', '9', 9, 25],
    ['endsOut', '9', 9, 25],
    ['gentler', '9', 6, 25],
    ['gentler', '4', 3, 25],
    ['gentler', '3.1', 1.5, 25],
    ['gentler', '3', 1.5, 25],
    ['gentler', '1.5', 1.5, Math.floor(25 * ASSUMED_GENTLER_TIME)],
    ['smallerLift', '12', 6, 25],
    ['smallerLift', '9', 6, 25],
    ['smallerLift', '6', 3, 25],
    ['smallerLift', '1.5', 1.5, Math.floor(25 * ASSUMED_GENTLER_TIME)],
  ])('%s after %s %% allows %d %% for %d minutes', (decision, developerPercent, mostPercent, mostMinutes) => {
    const permit = under(decision, { developerPercent });
    expect(permit.ok && permit.value.maxDeveloperPercent).toBeCloseTo(mostPercent, 9);
    expect(permit.ok && permit.value.maxMinutes).toBe(mostMinutes);
  });

  it('that does not mix gives no permit', () => {
    for (const decision of ['weSayNo', 'testAgain', 'cutFirst', 'severalVisits', 'depositOnly'] as const) {
      expect(isMixingDecision(decision)).toBe(false);
      expect(ask(andThen(tell(raised), decide(decision))), decision).toBe('notDecided');
    }
  });
});
