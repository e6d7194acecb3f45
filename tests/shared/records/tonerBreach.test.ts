import { describe, expect, it } from 'vitest';
import { ASSUMED_TONER_MAX_MIN, TONER_MAX_PERCENT } from '../../../shared/judgement/tonerLimits';
import type { RawEvent } from '../../../shared/records/classify';
import { findGateBreach } from '../../../shared/records/gateBreach';
import type { BowlRecord } from '../../../shared/records/record';
import { andThen, find, ofType, tell, until } from './telling';

const zone = 'lengths';
const way: readonly RawEvent[] = [
  find(ofType('BOWL_WEIGHED')),
  { type: 'BOWL_APPLIED', answers: { zone, skinFirst: 'calm' } },
  { type: 'BOWL_RINSED', answers: { zone } },
  { type: 'STRETCH_NOTED', answers: { zone, stretch: 'springsBack', before: 'stands' } },
  {
    type: 'TONER_WEIGHED',
    answers: {
      ...{ zone, line: 'Sandbar cream', developerPercent: '3', ratio: '2', minutes: '20' },
      shades: [{ shade: 'Toner', parts: '1' }],
    },
  },
];
const { record } = way.reduce((told, raw) => andThen(told, raw), tell(until('BOWL_WEIGHED')));
const toner = record.bowls.at(-1) as BowlRecord;
const proof = toner.toner as NonNullable<BowlRecord['toner']>;
const breachOf = (change: Partial<BowlRecord>) =>
  findGateBreach({ ...record, bowls: [...record.bowls.slice(0, -1), { ...toner, ...change }] });

describe('a record that claims a toner', () => {
  it('is taken with what stood in its log', () => {
    expect(toner).toMatchObject({ kind: 'toner', heat: 'none', toner: { stretch: 'springsBack' } });
    expect(findGateBreach(record)).toBeNull();
  });

  it('is refused without a stretch, on weak hair, before the rinse, and where nothing was rinsed', () => {
    expect(breachOf({ toner: null })).toBe('tonerWithoutStretch');
    for (const stretch of ['staysLong', 'snaps'] as const) {
      expect(breachOf({ toner: { ...proof, stretch } }), stretch).toBe('tonerOnWeakHair');
    }
    expect(breachOf({ toner: { ...proof, stretchSeq: proof.rinsedSeq - 1 } })).toBe('tonerBeforeRinse');
    expect(breachOf({ toner: { ...proof, stretchSeq: toner.seq + 1 } })).toBe('tonerBeforeRinse');
    expect(breachOf({ zone: 'ends' })).toBe('tonerWithoutRinse');
    expect(breachOf({ toner: { ...proof, rinsedSeq: proof.rinsedSeq - 1 } })).toBe('tonerWithoutRinse');
  });

  it('is refused in a line that a strand was in before it, and in no other', () => {
    const [strand] = record.strands;
    if (strand === undefined) throw new Error('no strand');
    const withStrand = (seq: number, line = toner.line) =>
      findGateBreach({ ...record, strands: [...record.strands, { ...strand, number: 9, line, seq }] });
    expect(withStrand(toner.seq - 1)).toBe('tonerOfTestedLine');
    expect(withStrand(toner.seq + 1)).toBeNull();
    expect(withStrand(toner.seq - 1, 'Gravel gloss')).toBeNull();
  });

  it('is refused beyond its limits, by the smallest step', () => {
    expect(breachOf({ developerPercent: TONER_MAX_PERCENT + 0.1 })).toBe('tonerTooStrong');
    expect(breachOf({ minutes: ASSUMED_TONER_MAX_MIN + 1 })).toBe('tonerTooStrong');
    expect(breachOf({ heat: 'foil' })).toBe('tonerTooStrong');
  });
});
