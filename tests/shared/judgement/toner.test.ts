import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { mixture } from '../../../shared/judgement/mixture';
import { isIssued, issuePermit, issueTonerPermit, type TonerPermit } from '../../../shared/judgement/permit';
import {
  ASSUMED_FELT_FOR_MIN,
  ASSUMED_TONER_MAX_MIN,
  TONER_MAX_PERCENT,
} from '../../../shared/judgement/tonerLimits';
import type { RawEvent } from '../../../shared/records/classify';
import { classify } from '../../../shared/records/classify';
import type { StrandRecord } from '../../../shared/records/record';
import { msPerMinute } from '../../../shared/units/time';
import { andThen, find, hour, ofType, type Told, tell, until } from '../records/telling';

const zone = 'lengths';
const play = (told: Told, ...raws: readonly RawEvent[]) => raws.reduce((at, raw) => andThen(at, raw), told);
const rinse: RawEvent = { type: 'BOWL_RINSED', answers: { zone } };
const apply: RawEvent = { type: 'BOWL_APPLIED', answers: { zone, skinFirst: 'calm' } };
const feel = (stretch: string, before = 'stands'): RawEvent => ({
  type: 'STRETCH_NOTED',
  answers: { zone, stretch, before, ...(before === 'wrongTap' ? { code: 'wrongTap' } : {}) },
});
const toner = (change: object = {}): RawEvent => ({
  type: 'TONER_WEIGHED',
  answers: {
    ...{ zone, line: 'Sandbar cream', developerPercent: '1.5', ratio: '2', minutes: '10' },
    shades: [{ shade: 'Toner', parts: '1' }],
    ...change,
  },
});
const rinsed = play(tell(until('BOWL_WEIGHED')), find(ofType('BOWL_WEIGHED')), apply, rinse);
const springs = play(rinsed, feel('springsBack'));
const ask = ({ record, atMs }: Told, afterMs = 0) => issueTonerPermit(record, zone, salon, atMs + afterMs);
const codeOf = (told: Told, afterMs = 0) => {
  const permit = ask(told, afterMs);
  return permit.ok ? 'allowed' : permit.error.code;
};
const refusalOf = ({ record, atMs }: Told, raw: RawEvent) => {
  const context = { settings: salon, settingsId: 1, by: 'Opal', atMs, inheritsStop: false };
  const event = classify(record, raw, context);
  return event.ok ? null : event.error;
};

describe('the permit of a toner', () => {
  it('is given to hair that springs back after its rinse, and to no other', () => {
    expect(codeOf(rinsed)).toBe('stretchUnfelt');
    expect(codeOf(springs)).toBe('allowed');
    for (const stretch of ['staysLong', 'snaps']) {
      expect(codeOf(play(rinsed, feel(stretch))), stretch).toBe('stretchFails');
    }
  });

  it('is given to no hair that broke under the bowl before it, whatever is felt and taken back', () => {
    const on = play(tell(until('BOWL_WEIGHED')), find(ofType('BOWL_WEIGHED')), apply);
    const look = (hair: string): RawEvent => ({
      type: 'LOOKED',
      answers: { of: 'head', zone, stinging: 'no', hair },
    });
    const broken = play(on, look('breaking'), rinse);
    expect(codeOf(broken)).toBe('stretchFails');
    expect(codeOf(play(broken, feel('springsBack')))).toBe('stretchFails');
    expect(codeOf(play(broken, feel('springsBack', 'wrongTap')))).toBe('stretchFails');
    expect(codeOf(play(on, look('stretchy'), rinse))).toBe('stretchUnfelt');
  });

  it('with it everything else is kept from hair that is weak after its rinse', () => {
    const codeOfMix = (told: Told) => {
      const permit = issuePermit(told.record, zone, salon, told.atMs);
      return permit.ok ? 'allowed' : permit.error.code;
    };
    expect(codeOfMix(springs)).toBe('strandUsed');
    expect(codeOfMix(play(springs, feel('staysLong')))).toBe('stretchFails');
    expect(codeOfMix(play(springs, feel('staysLong'), feel('springsBack', 'wrongTap')))).toBe('strandUsed');
  });

  it('is given by the worst since the rinse, however it feels later, unless that was a wrong tap', () => {
    for (const weak of ['staysLong', 'snaps']) {
      const felt = play(springs, feel(weak));
      expect(codeOf(play(felt, feel('springsBack'))), weak).toBe('stretchFails');
      expect(codeOf(play(felt, feel('springsBack', 'wrongTap'))), weak).toBe('allowed');
      // A wrong tap takes back the one before it, and no other.
      expect(codeOf(play(felt, feel('snaps'), feel('springsBack', 'wrongTap'))), weak).toBe('stretchFails');
    }
    expect(codeOf(play(springs, feel('staysLong', 'wrongTap')))).toBe('stretchFails');
  });

  it('is given while what was felt is fresh, to the millisecond', () => {
    expect(codeOf(springs, ASSUMED_FELT_FOR_MIN * msPerMinute)).toBe('allowed');
    expect(codeOf(springs, ASSUMED_FELT_FOR_MIN * msPerMinute + 1)).toBe('stretchDried');
    const later = { ...springs, atMs: springs.atMs + ASSUMED_FELT_FOR_MIN * msPerMinute + 1 };
    expect(codeOf(play(later, feel('springsBack')))).toBe('allowed');
  });

  it('asks for the skin test of a toner, whatever that of the lift was', () => {
    const askIn = (skinTestFor: typeof salon.profile.skinTestFor, noted = springs.record.skinTest) => {
      const settings = { ...salon, profile: { ...salon.profile, skinTestFor } };
      const permit = issueTonerPermit({ ...springs.record, skinTest: noted }, zone, settings, springs.atMs);
      return permit.ok ? 'allowed' : permit.error.code;
    };
    expect(askIn(['tone'])).toBe('allowed');
    expect(askIn(['tone'], null)).toBe('skinTestMissing');
    expect(askIn(['lighten'], null)).toBe('skinTestMissing');
    expect(askIn([], null)).toBe('allowed');
  });

  it('allows no more than the strongest bottle of the house', () => {
    const most = (ceilingPercent: number) => {
      const profile = { ...salon.profile, ceilingPercent };
      const permit = issueTonerPermit(springs.record, zone, { ...salon, profile }, springs.atMs);
      return permit.ok ? permit.value.maxDeveloperPercent : permit.error.code;
    };
    expect([1.5, TONER_MAX_PERCENT, 12].map(most)).toEqual([1.5, TONER_MAX_PERCENT, TONER_MAX_PERCENT]);
  });

  it('is given anew only to hair that is felt anew, after each bowl', () => {
    const tonedOnce = play(springs, toner(), apply);
    expect(codeOf(tonedOnce)).toBe('notRinsed');
    expect(codeOf(play(tonedOnce, rinse))).toBe('stretchUnfelt');
    expect(codeOf(play(springs, toner(), { type: 'BOWL_THROWN', answers: { zone } }))).toBe('allowed');
  });

  it('is given neither on another day, nor after a reaction, nor with a stop open', () => {
    expect(codeOf(springs, 13 * hour)).toBe('anotherDay');
    expect(codeOf(play(springs, { type: 'REACTION_SUSPECTED' }))).toBe('reaction');
    const noted = { putOnAtMs: springs.atMs - 49 * hour, seen: 'reaction' };
    expect(codeOf(play(springs, { type: 'SKIN_TEST_NOTED', answers: noted }))).toBe('stopped');
  });

  it('binds to its zone, its strength, its minutes and no heat; a forged one mixes nothing', () => {
    const permit = ask(springs);
    if (!permit.ok) throw new Error('no permit');
    const order = {
      ...{ line: 'Sandbar cream', developerPercent: TONER_MAX_PERCENT, ratio: 2 },
      ...{ minutes: ASSUMED_TONER_MAX_MIN, colourG: 30, shades: [{ shade: 'Toner', parts: 1 }] },
      heat: 'none' as const,
      zone: 'lengths' as const,
    };
    const codeFor = (change: object, given: TonerPermit = permit.value) => {
      const made = mixture(given, { ...order, ...change }, 1);
      return made.ok ? 'mixed' : made.error.code;
    };
    expect(isIssued(permit.value)).toBe(true);
    expect(codeFor({})).toBe('mixed');
    expect(codeFor({ zone: 'ends' })).toBe('anotherZone');
    expect(codeFor({ developerPercent: TONER_MAX_PERCENT + 0.1 })).toBe('stronger');
    expect(codeFor({ minutes: ASSUMED_TONER_MAX_MIN + 1 })).toBe('longer');
    expect(codeFor({ heat: 'foil' })).toBe('hotter');
    expect(codeFor({}, { ...permit.value })).toBe('forged');
  });
});

describe('a toner at the door', () => {
  it('is taken, but no lightener under its name, none stronger or longer', () => {
    expect(refusalOf(springs, toner())).toBeNull();
    expect(refusalOf(springs, toner({ line: 'sandbar POWDER' }))).toEqual({
      kind: 'fields',
      fields: [{ path: 'line', code: 'tonerLifts' }],
    });
    for (const beyond of [{ developerPercent: '3.1' }, { minutes: '21' }]) {
      expect(refusalOf(springs, toner(beyond))).toMatchObject({
        kind: 'fields',
        fields: [{ code: 'tooHigh' }],
      });
    }
    expect(refusalOf(rinsed, toner())).toEqual({ kind: 'permit', permit: { code: 'stretchUnfelt' } });
  });

  it('is of a colour of the shelf that no strand of today was in', () => {
    const codeFor = (line: string, told = springs) => {
      const refusal = refusalOf(told, toner({ line }));
      return refusal?.kind === 'fields' ? refusal.fields[0]?.code : refusal;
    };
    expect(codeFor('sandbar  CREAM')).toBeNull();
    expect(codeFor('Gravel gloss')).toBe('tonerNotOnShelf');
    expect(codeFor('Cove mist')).toBe('tonerNotOnShelf');
    expect(codeFor('Sandbar powder')).toBe('tonerLifts');
    const isIn = { ...springs.record.strands[0], line: 'Sandbar Cream' } as StrandRecord;
    const tested = { ...springs, record: { ...springs.record, strands: [...springs.record.strands, isIn] } };
    expect(codeFor('Sandbar cream', tested)).toBe('tonerTested');
  });

  it('goes on no hair that was felt again and stays long', () => {
    const weighed = play(springs, toner());
    expect(refusalOf(weighed, apply)).toBeNull();
    expect(refusalOf(play(weighed, feel('staysLong')), apply)).toEqual({
      kind: 'permit',
      permit: { code: 'stretchFails' },
    });
  });
});
