import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import { issuePermit, issueTonerPermit } from '../../../shared/judgement/permit';
import type { PermitRefusal } from '../../../shared/judgement/permitRefusal';
import type { RuleId } from '../../../shared/judgement/rules';
import type { RawEvent } from '../../../shared/records/classify';
import { formPlanKey } from '../../../shared/records/planKey';
import { fold } from '../../../shared/records/reduce';
import type { Settings } from '../../../shared/records/settings';
import type { Zone } from '../../../shared/records/zones';
import { askAgain, carry, settings as glossSalon, last, openAgain } from '../records/returning';
import {
  andThen,
  bothHold,
  change,
  day,
  find,
  hour,
  lowRisk,
  minute,
  ofStep,
  ofType,
  startAtMs,
  story,
  type Told,
  tell,
  until,
} from '../records/telling';

type Code = PermitRefusal['code'];

const atMix = tell(until('BOWL_WEIGHED'));
const noSkinTest: Settings = { ...salon, profile: { ...salon.profile, skinTestFor: [] } };
const ask = ({ record, atMs }: Told, zone: Zone = 'lengths', settings = salon, nowMs = atMs) => {
  const permit = issuePermit(record, zone, settings, nowMs);
  return permit.ok ? 'allowed' : permit.error;
};
const askToner = ({ record, atMs }: Told, afterMs = 0) => {
  const permit = issueTonerPermit(record, 'lengths', salon, atMs + afterMs);
  return permit.ok ? 'allowed' : permit.error;
};
const feel = (stretch: string, before = 'stands'): RawEvent => ({
  type: 'STRETCH_NOTED',
  answers: { zone: 'lengths', stretch, before, ...(before === 'wrongTap' ? { code: 'wrongTap' } : {}) },
});
const step = (raw: RawEvent, afterMs = 1000): StoryStep => ({ afterMs, by: 'Opal', raw });
const again = (name: string, answers: object): RawEvent => {
  const raw = find(ofStep(name));
  return { ...raw, answers: { ...raw.answers, ...answers } } as RawEvent;
};
const insertBefore = (type: RawEvent['type'], steps: readonly StoryStep[], ...more: readonly StoryStep[]) => {
  const before = until(type, steps);
  return [...before, ...more, ...steps.slice(before.length)];
};
const weighLengths = find(ofType('BOWL_WEIGHED'));
const startLengths = find(ofType('STRAND_STARTED', 'lengths'));
const soundLengths = find(ofType('OUTCOME_RECORDED', 'lengths'));
const rinsed = [
  weighLengths,
  { type: 'BOWL_APPLIED', answers: { zone: 'lengths', skinFirst: 'calm' } } as const,
  { type: 'BOWL_RINSED', answers: { zone: 'lengths' } } as const,
].reduce((told, raw) => andThen(told, raw), atMix);
const springs = andThen(rinsed, feel('springsBack'));
const takeOff: RawEvent = { type: 'STRAND_TAKEN_OFF', answers: { zone: 'lengths', why: 'levelReached' } };

/** The story on hair with a metallic colour on it: a cutting meets peroxide first. */
const metallic = change(until('BOWL_WEIGHED'), ofStep('hotTools'), { history: ['metallicColour'] });
const incompatibility = (seen: string) => [
  step({ type: 'INCOMPATIBILITY_STARTED' }),
  step({ type: 'INCOMPATIBILITY_READ', answers: { seen } }, 30 * minute),
];
const metallicCleared = tell(insertBefore('STRAND_STARTED', metallic, ...incompatibility('nothing')));

/** The lengths once more, tested twice with the same mix: the first strand ends like this. */
const testedTwice = (first: RawEvent, afterMs: number, ...outcome: readonly StoryStep[]) =>
  tell([
    ...until('DECIDED'),
    step(startLengths),
    step(first, afterMs),
    ...outcome,
    step(startLengths),
    step(takeOff, 20 * minute),
    step(soundLengths),
    step(find(ofType('DECIDED'))),
  ]);

/** One more strand of the lengths, that comes off sound after so long. */
const testedFor = (onMs: number) =>
  tell([
    ...until('DECIDED'),
    step(startLengths),
    step(takeOff, onMs),
    step(soundLengths),
    step(find(ofType('DECIDED'))),
  ]);

/** A gloss on last time's strand, decided; the same on the last day of that strand. */
const toDecided = (told: Told): Told =>
  [carry, { type: 'DECIDED', answers: { decision: 'asPlanned' } } as const].reduce(
    (before, raw) => andThen(before, raw, 1000, glossSalon),
    told,
  );
const strandAtMs = last.zones[0]?.strandAtMs ?? 0;
const carried = toDecided(askAgain());
const carriedLate = toDecided(askAgain(undefined, openAgain(last, strandAtMs + 84 * day - hour)));
const glossWithoutSkinTest: Settings = { ...glossSalon, profile: { ...glossSalon.profile, skinTestFor: [] } };
const withService = (service: 'lighten' | 'gloss'): Told => {
  const { record } = carried;
  const answers = { ...record.answers, client: { ...record.answers.client, service } };
  const planKey = formPlanKey(answers);
  return {
    ...carried,
    record: {
      ...record,
      answers,
      strands: record.strands.map((strand) => ({ ...strand, planKey })),
      decision: record.decision && { ...record.decision, planKey },
    },
  };
};

/** Asked anew so much later for what holds for the day, and decided anew. */
const askedAnew = (afterMs: number): Told =>
  andThen(
    andThen(atMix, again('client', {}), afterMs, noSkinTest),
    find(ofType('DECIDED')),
    1000,
    noSkinTest,
  );
/** When she was asked for what holds for the day. */
const askedAtMs = atMix.record.todayAtMs ?? 0;

/** A bowl is on the lengths, the ends are open; at a look the hair under it was found to be so. */
const lookedAt = (hair: string): Told =>
  [
    weighLengths,
    { type: 'BOWL_APPLIED', answers: { zone: 'lengths', skinFirst: 'calm' } } as const,
    { type: 'LOOKED', answers: { of: 'head', zone: 'lengths', stinging: 'no', hair } } as const,
  ].reduce((told, raw) => andThen(told, raw), tell(until('BOWL_WEIGHED', lowRisk)));
const rinseLengths: RawEvent = { type: 'BOWL_RINSED', answers: { zone: 'lengths' } };

/** For each code: the smallest change to what would be allowed, and its neighbour that is. */
const cases: Readonly<
  Record<Code, readonly [refused: () => ReturnType<typeof ask>, allowed: () => unknown]>
> = {
  closed: [
    () => ask(andThen(atMix, { type: 'CALLED_OFF', answers: { reason: 'noTime' } })),
    () => ask(atMix),
  ],
  parked: [
    () => ask(andThen(atMix, { type: 'PARKED', answers: { untilAtMs: atMix.atMs + day } })),
    () =>
      ask(
        andThen(andThen(atMix, { type: 'PARKED', answers: { untilAtMs: atMix.atMs + day } }), {
          type: 'RESUMED',
        }),
      ),
  ],
  reaction: [
    () => ask(andThen(atMix, { type: 'REACTION_SUSPECTED' })),
    () => ask(andThen(andThen(atMix, { type: 'REACTION_SUSPECTED' }), { type: 'NO_REACTION' })),
  ],
  stopped: [
    () => ask(andThen(atMix, again('client', { scalp: 'broken' }))),
    () => ask(andThen(atMix, again('client', {}))),
  ],
  forAJudgement: [
    () => ask({ ...tell(change(until('STRAND_STARTED'), ofStep('client'), { scalp: 'tight' })) }),
    () => {
      const words = { rule: 'judgement.scalpTight', code: 'makerAllows', words: 'sits loose by now' };
      const tight = change(until('BOWL_WEIGHED'), ofStep('client'), { scalp: 'tight' });
      return ask(tell(insertBefore('STRAND_STARTED', tight, step({ type: 'OVERRIDDEN', answers: words }))));
    },
  ],
  stepUnsaid: [
    () => ask(andThen(atMix, again('feelHair', { mid: 'damp' }))),
    () => ask(andThen(atMix, again('feelHair', { mid: 'dry' }))),
  ],
  incompatibilityOpen: [
    () => ask(andThen(metallicCleared, again('hotTools', { history: ['metallicColour', 'henna'] }))),
    () => ask(metallicCleared),
  ],
  skinTestMissing: [
    () => ask(tell(until('BOWL_WEIGHED').filter(({ raw }) => raw.type !== 'SKIN_TEST_NOTED'))),
    () =>
      ask(
        tell(until('BOWL_WEIGHED', story).filter(({ raw }) => raw.type !== 'SKIN_TEST_NOTED')),
        'lengths',
        noSkinTest,
      ),
  ],
  skinTestWaiting: [
    () => ask(tell(change(until('BOWL_WEIGHED'), ofType('SKIN_TEST_NOTED'), { seen: 'notReadYet' }))),
    () =>
      ask(
        tell(change(until('BOWL_WEIGHED'), ofType('SKIN_TEST_NOTED'), { putOnAtMs: startAtMs - 48 * hour })),
      ),
  ],
  skinTestLapsed: [
    () =>
      ask(
        tell(change(until('BOWL_WEIGHED'), ofType('SKIN_TEST_NOTED'), { putOnAtMs: startAtMs - 28 * day })),
      ),
    () =>
      ask(
        tell(change(until('BOWL_WEIGHED'), ofType('SKIN_TEST_NOTED'), { putOnAtMs: startAtMs - 27 * day })),
      ),
  ],
  zoneNotPlanned: [() => ask(atMix, 'roots'), () => ask(atMix, 'lengths')],
  noOutcome: [
    () => {
      const retracted = { zone: 'lengths', code: 'wrongTap', words: 'wrong row' };
      return ask(andThen(atMix, { type: 'OUTCOME_RETRACTED', answers: retracted }));
    },
    () => ask(atMix),
  ],
  outcomeOfAnotherPlan: [
    () => ask(andThen(atMix, again('client', { targetLevel: '7.5' }))),
    () => ask(andThen(atMix, again('client', { targetLevel: '7' }))),
  ],
  outcomeLapsed: [
    () => ask(atMix, 'lengths', noSkinTest, atMix.atMs + 28 * day),
    () => ask(askedAnew(27 * day), 'lengths', noSkinTest),
  ],
  carriedOff: [
    () => ask(carried, 'lengths', { ...glossSalon, carried: false }),
    () => ask(carried, 'lengths', glossSalon),
  ],
  carriedTooOld: [
    () => ask(carriedLate, 'lengths', glossSalon, strandAtMs + 84 * day + 1),
    () => ask(carriedLate, 'lengths', glossSalon, strandAtMs + 84 * day),
  ],
  carriedNotToday: [
    () => ask(carried, 'lengths', glossSalon, carried.atMs + 13 * hour),
    () => ask(carried, 'lengths', glossSalon, carried.atMs + 11 * hour),
  ],
  // No way leads here, since what she wants bears on the plan: the permit looks for itself.
  carriedLifts: [
    () => ask(withService('lighten'), 'lengths', glossWithoutSkinTest),
    () => ask(withService('gloss'), 'lengths', glossWithoutSkinTest),
  ],
  anotherDay: [
    () => ask(atMix, 'lengths', salon, askedAtMs + 12 * hour + 1),
    () => ask(atMix, 'lengths', salon, askedAtMs + 12 * hour),
  ],
  strandTooShort: [() => ask(testedFor(minute - 1)), () => ask(testedFor(minute))],
  strandFailed: [
    () => ask(tell(until('DECIDED')), 'ends'),
    () => ask(tell(until('BOWL_WEIGHED', lowRisk)), 'ends'),
  ],
  mixClosed: [
    () =>
      ask(
        testedTwice({ type: 'STRAND_BROKE', answers: { zone: 'lengths' } }, 9 * minute, step(soundLengths)),
      ),
    () => ask(testedTwice(takeOff, 9 * minute, step(soundLengths))),
  ],
  strandUsed: [
    () => ask(andThen(atMix, weighLengths)),
    () => ask(andThen(andThen(atMix, weighLengths), { type: 'BOWL_THROWN', answers: { zone: 'lengths' } })),
  ],
  notDecided: [() => ask(tell(until('DECIDED'))), () => ask(atMix)],
  freerThanSuggested: [
    () =>
      ask(
        tell([...until('DECIDED', bothHold), step({ type: 'DECIDED', answers: { decision: 'asPlanned' } })]),
      ),
    () =>
      ask(tell([...until('DECIDED', bothHold), step({ type: 'DECIDED', answers: { decision: 'gentler' } })])),
  ],
  notRinsed: [() => askToner(andThen(atMix, feel('springsBack'))), () => askToner(springs)],
  stretchUnfelt: [() => askToner(rinsed), () => askToner(springs)],
  stretchFails: [
    () => askToner(andThen(springs, feel('staysLong'))),
    () => askToner(andThen(andThen(springs, feel('staysLong')), feel('springsBack', 'wrongTap'))),
  ],
  // ASSUMED_FELT_FOR_MIN.
  stretchDried: [() => askToner(springs, 30 * minute + 1), () => askToner(springs, 30 * minute)],
  hairBroke: [() => ask(lookedAt('breaking'), 'ends'), () => ask(lookedAt('sound'), 'ends')],
  hairStretchy: [
    () => ask(andThen(lookedAt('stretchy'), rinseLengths), 'ends'),
    () => ask(andThen(andThen(lookedAt('stretchy'), rinseLengths), feel('springsBack')), 'ends'),
  ],
  endsLeftOut: [
    () =>
      ask(tell(change(until('BOWL_WEIGHED', lowRisk), ofType('DECIDED'), { decision: 'endsOut' })), 'ends'),
    () =>
      ask(
        tell(change(until('BOWL_WEIGHED', lowRisk), ofType('DECIDED'), { decision: 'endsOut' })),
        'lengths',
      ),
  ],
};

describe('one smallest change to a record that is allowed', () => {
  it.each(Object.entries(cases))('%s is refused, and its neighbour is not', (code, [refused, allowed]) => {
    expect(refused()).toMatchObject({ code });
    expect(allowed()).toBe('allowed');
  });
});

it('says of ends that were left out no more than that, whatever their strand came to', () =>
  expect(ask(atMix, 'ends')).toEqual({ code: 'endsLeftOut' }));

describe('what stops a client', () => {
  const rulesOf = (told: Told): readonly RuleId[] => {
    const refusal = ask(told);
    return refusal !== 'allowed' && 'rules' in refusal ? refusal.rules : [];
  };

  it('is named by its rule', () => {
    expect(rulesOf(andThen(atMix, again('client', { reactions: ['hives', 'rash'] })))).toEqual([
      'stop.persulfateReaction',
      'stop.reactionEver',
    ]);
    const positive = { putOnAtMs: startAtMs - 49 * hour, seen: 'reaction' };
    expect(rulesOf(andThen(atMix, { type: 'SKIN_TEST_NOTED', answers: positive }))).toEqual([
      'stop.skinTestPositive',
    ]);
    const reacted = tell(
      insertBefore('STRAND_STARTED', until('DECIDED', metallic), ...incompatibility('nothing')),
    );
    const read: RawEvent = { type: 'INCOMPATIBILITY_READ', answers: { seen: 'reacted' } };
    expect(rulesOf(andThen(reacted, read))).toEqual(['stop.incompatibilityReacted']);
    const [opened, ...rest] = atMix.log;
    const inherited = [{ ...opened, tokens: { ...opened?.tokens, inherits: true } }, ...rest];
    expect(rulesOf({ ...atMix, record: fold('told', inherited as never) })).toEqual(['stop.inherited']);
  });

  it('cannot be overridden: an override of an absolute rule lifts nothing', () => {
    const words = { rule: 'stop.scalpBroken', code: 'seniorAgreed', words: 'she signed' };
    const broken = andThen(atMix, again('client', { scalp: 'broken' }));
    expect(rulesOf(andThen(broken, { type: 'OVERRIDDEN', answers: words }))).toEqual(['stop.scalpBroken']);
  });

  it('takes strands and decision along when it is corrected: the permit does not come back by itself', () => {
    const broken = andThen(atMix, again('client', { scalp: 'broken' }));
    const words = { answer: 'client', code: 'wrongTap', words: 'meant the row below' };
    const corrected = andThen(broken, { type: 'CORRECTED', answers: words });
    expect(ask(corrected)).toEqual({ code: 'stepUnsaid' });
    const said = andThen(corrected, again('client', {}));
    expect(ask(said)).toEqual({ code: 'outcomeOfAnotherPlan' });
    expect(ask(andThen(said, find(ofType('DECIDED'))))).toEqual({ code: 'outcomeOfAnotherPlan' });
  });
});

describe('a bowl', () => {
  it('uses its strand up, once it is on and after it was rinsed', () => {
    const weighed = andThen(atMix, weighLengths);
    const on = andThen(weighed, { type: 'BOWL_APPLIED', answers: { zone: 'lengths', skinFirst: 'calm' } });
    const rinsed = andThen(on, { type: 'BOWL_RINSED', answers: { zone: 'lengths' } });
    expect([weighed, on, rinsed].map((told) => ask(told))).toEqual(Array(3).fill({ code: 'strandUsed' }));
  });

  it('is allowed again by a new strand and a new decision, not by either alone', () => {
    const used = andThen(atMix, weighLengths);
    const decided = andThen(used, find(ofType('DECIDED')));
    expect(ask(decided)).toEqual({ code: 'strandUsed' });
    const tested = [startLengths, takeOff, soundLengths].reduce(
      (told, raw) => andThen(told, raw, minute),
      used,
    );
    expect(ask(tested)).toEqual({ code: 'notDecided' });
    expect(ask(andThen(tested, find(ofType('DECIDED'))))).toBe('allowed');
  });
});
