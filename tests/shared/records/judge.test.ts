import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { RawEvent } from '../../../shared/records/classify';
import type { RawForm } from '../../../shared/records/readForm';
import {
  andThen,
  day,
  hour,
  lowRisk,
  minute,
  ofStep,
  startAtMs,
  type Told,
  tell,
  tryRaw,
  until,
} from './telling';

const atDecision = tell(until('DECIDED', lowRisk));
const said = (step: 'client' | 'hotTools', answers: RawForm): RawEvent => {
  const raw = lowRisk.find((each) => ofStep(step)(each.raw))?.raw;
  return { ...raw, answers: { ...raw?.answers, ...answers } } as RawEvent;
};

/** What the guards are told of this event. */
function tokensOf(told: Told, raw: RawEvent, atMs = told.atMs + 1000) {
  const event = tryRaw(told, raw, atMs, salon);
  if (!event.ok) throw new Error(JSON.stringify(event.error));
  return event.value.tokens;
}

describe('an answer', () => {
  it('that changes the plan restores nothing; put back as it was, it restores what was tested for it', () => {
    const other = said('client', { targetLevel: '8' });
    expect(tokensOf(atDecision, other)).toMatchObject({ bearsOnPlan: true, restores: [] });
    const back = said('client', {});
    expect(tokensOf(andThen(atDecision, other), back)).toMatchObject({
      bearsOnPlan: true,
      restores: ['lengths', 'ends'],
    });
    const late = atDecision.atMs + 28 * day;
    expect(tokensOf(andThen(atDecision, other), back, late)).toMatchObject({ restores: [] });
  });

  it('about today’s skin bears on no plan', () =>
    expect(tokensOf(atDecision, said('client', { scalp: 'tight', reactions: ['tingled'] }))).toMatchObject({
      bearsOnPlan: false,
      restores: ['lengths', 'ends'],
      said: 'judgement',
    }));
});

describe('the incompatibility test', () => {
  const history = (...items: string[]) => said('hotTools', { history: items });
  const asked = (told: Told, raw: RawEvent) =>
    (tokensOf(told, raw) as { incompatibility?: string }).incompatibility;
  const henna = andThen(atDecision, history('henna'));
  const begun = andThen(henna, { type: 'INCOMPATIBILITY_STARTED' });
  const read = (seen: string) =>
    andThen(begun, { type: 'INCOMPATIBILITY_READ', answers: { seen } }, 30 * minute);

  it('is due for what is told now, and told by the step about chemistry alone', () => {
    expect(asked(atDecision, history('none'))).toBe('notNeeded');
    expect(asked(atDecision, history('henna'))).toBe('due');
    expect(asked(henna, said('client', {}))).toBe('asBefore');
  });

  it('stands as it was begun or read, for this history and for no other', () => {
    expect(asked(begun, history('henna'))).toBe('running');
    expect(asked(read('nothing'), history('henna'))).toBe('clear');
    expect(asked(read('reacted'), history('henna'))).toBe('reacted');
    expect(asked(read('nothing'), history('henna', 'gloss'))).toBe('clear');
    expect(asked(read('nothing'), history('henna', 'metallicColour'))).toBe('due');
    expect(asked(andThen(read('nothing'), history('metallicColour')), history('henna'))).toBe('clear');
    expect(asked(read('nothing'), history('gloss'))).toBe('notNeeded');
  });

  it('that reacted is forgotten for no other history: only a correction takes it back', () => {
    for (const told of ['henna', 'metallicColour', 'gloss', 'none']) {
      expect(asked(read('reacted'), history(told)), told).toBe('reacted');
    }
    const correct: RawEvent = {
      type: 'CORRECTED',
      answers: { answer: 'incompatibility', code: 'wrongTap', words: 'another glass' },
    };
    expect(asked(andThen(read('reacted'), correct), history('henna'))).toBe('due');
    expect(asked(andThen(read('reacted'), correct), history('none'))).toBe('notNeeded');
  });
});

describe('a correction', () => {
  const correct = (answer: string): RawEvent => ({
    type: 'CORRECTED',
    answers: { answer, code: 'wrongTap', words: 'the row above' },
  });

  it('of a skin test voids what was tested only where a reaction is taken back', () => {
    expect(tokensOf(atDecision, correct('skinTest'))).toMatchObject({ answer: 'skinTest', voids: false });
    const positive = andThen(atDecision, {
      type: 'SKIN_TEST_NOTED',
      answers: { putOnAtMs: startAtMs, seen: 'reaction' },
    });
    expect(tokensOf(positive, correct('skinTest'))).toMatchObject({ voids: true });
  });

  it('of any other answer voids it', () => {
    for (const answer of ['client', 'hotTools', 'feelHair', 'heatSpray', 'incompatibility', 'inherited'])
      expect(tokensOf(atDecision, correct(answer)), answer).toMatchObject({ voids: true });
  });
});

describe('a look and an extension', () => {
  it('say whether it stings, and never of a strand', () => {
    const onHead = tell(until('LOOKED', lowRisk));
    const look = (answers: RawForm): RawEvent => ({
      type: 'LOOKED',
      answers: { zone: 'lengths', ...answers },
    });
    expect(tokensOf(onHead, look({ of: 'head', stinging: 'yes' }))).toMatchObject({ stings: true });
    expect(tokensOf(onHead, look({ of: 'head', stinging: 'no' }))).toMatchObject({ stings: false });
    const strand = { of: 'strand', level: '6', feel: 'sound', stinging: 'yes' };
    expect(tokensOf(onHead, look(strand))).toMatchObject({ of: 'strand', stings: false });
  });

  const extend = (clock: string): RawEvent => ({
    type: 'CLOCK_EXTENDED',
    answers: { clock, minutes: '1', reason: 'liftIsSlow' },
  });

  it('say whether the strand was stretchy at any look, also where a later one felt better', () => {
    const running = tell(until('LOOKED', lowRisk));
    const look = (feel: string): RawEvent => ({
      type: 'LOOKED',
      answers: { of: 'strand', zone: 'ends', level: '6', feel },
    });
    const sound = andThen(running, look('rough'));
    expect(tokensOf(sound, extend('strand-ends-1'))).toMatchObject({ hasWeakened: false });
    const healed = andThen(andThen(sound, look('stretchy')), look('sound'));
    expect(tokensOf(healed, extend('strand-ends-1'))).toMatchObject({ hasWeakened: true });
    expect(tokensOf(tell(until('BOWL_RINSED', lowRisk)), extend('head-lengths-1'))).toMatchObject({
      hasWeakened: false,
    });
  });

  it('say whether the clock is one of a head', () => {
    const strand = tell(until('STRAND_TAKEN_OFF', lowRisk));
    expect(tokensOf(strand, extend('strand-ends-1'))).toMatchObject({ isOnHead: false, isWithinLimit: true });
    const limitAtMs = strand.record.clocks.find(({ id }) => id === 'strand-ends-1')?.limitAtMs ?? 0;
    const at = (atMs: number) => tokensOf(strand, extend('strand-ends-1'), atMs);
    expect(at(limitAtMs - 1)).toMatchObject({ isWithinLimit: true });
    expect(at(limitAtMs), 'it has been on for all that the maker allows').toMatchObject({
      isWithinLimit: false,
    });
    const head = tell(until('BOWL_RINSED', lowRisk));
    expect(tokensOf(head, extend('head-lengths-1'))).toMatchObject({ isOnHead: true });
    expect(tokensOf(head, extend('strand-ends-1'))).toMatchObject({ isOnHead: false, isWithinLimit: false });
  });
});

describe('a client who comes back', () => {
  it('is asked anew after more than twelve hours (ASSUMED), to the millisecond', () => {
    const park: RawEvent = { type: 'PARKED', answers: { untilAtMs: atDecision.atMs + 2 * day } };
    const parked = andThen(atDecision, park);
    const back = (afterMs: number) => tokensOf(parked, { type: 'RESUMED' }, parked.atMs + afterMs);
    expect(back(12 * hour)).toMatchObject({ asksAnew: false });
    expect(back(12 * hour + 1)).toMatchObject({ asksAnew: true });
  });
});
