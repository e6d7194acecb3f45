import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bringIn } from '../../../machines/consultation/bringIn';
import type { Consultation } from '../../../machines/consultation/consultation';
import { MODEL_VERSION } from '../../../shared/records/event';
import {
  readConsultations,
  type ToldConsultation,
  writeConsultations,
} from '../../../shared/records/json/consultationFile';
import { findSettings } from './walks/rawTaps';
import { drawnWalks, live } from './walks/walk';

const seed = Number(process.env.WALK_SEED ?? 20_260_303);
const lived = fc
  .sample(drawnWalks, { seed, numRuns: 40 })
  .map((drawn, index): Consultation => {
    const { consultation } = live(drawn);
    return { ...consultation, record: { ...consultation.record, id: `walk${index}` } };
  })
  .filter(({ log }) => log.length > 0);

/** Written by a station and read by another. */
function carryOver(consultations: readonly Consultation[]): readonly ToldConsultation[] {
  const pieces = writeConsultations(consultations, 0, (atMs) => new Date(atMs).toISOString());
  const read = readConsultations([...pieces].join(''));
  if (!read.ok) throw new Error(read.error);
  return read.value;
}
const told = carryOver(lived);
const [first, second] = told;
if (first === undefined || second === undefined) throw new Error('no walk has a log');
const held = new Map(lived.map(({ record, log }) => [record.id, log]));
const nobody = () => undefined;
const bring = (
  some: readonly ToldConsultation[],
  findHeld: (id: string) => readonly unknown[] | undefined = nobody,
) => bringIn(some, findSettings, findHeld);
/** One entry of a log told otherwise. */
const forge = (one: ToldConsultation, seq: number, change: object): ToldConsultation => ({
  ...one,
  log: one.log.map((entry, index) => (index === seq ? { ...(entry as object), ...change } : entry)),
});

describe('consultations brought in', () => {
  test('are those that left, and the record beside each log says nothing else', () => {
    expect(told.length).toBeGreaterThan(30);
    const brought = bring(told);
    if (!brought.ok) throw new Error(JSON.stringify(brought.error));
    expect(brought.value.map(({ consultation }) => consultation.record)).toEqual(
      lived.map(({ record }) => record),
    );
    expect(brought.value.map(({ consultation }) => consultation.log)).toEqual(lived.map(({ log }) => log));
    expect(brought.value.flatMap(({ toldOtherwise }) => toldOtherwise)).toEqual([]);
    expect(brought.value.some(({ isHere }) => isHere)).toBe(false);
  });

  test('that are here already are known again, and told twice come once', () => {
    const again = bring([...told, ...told], (id) => held.get(id));
    expect(again.ok && again.value).toHaveLength(told.length);
    expect(again.ok && again.value.every(({ isHere }) => isHere)).toBe(true);
  });

  test('are what their log says, and what the record told otherwise is named', () => {
    const record = { ...first.record, chair: 99, freed: true };
    const brought = bring([{ ...first, record }]);
    expect(brought).toMatchObject({ ok: true, value: [{ toldOtherwise: ['chair', 'freed'] }] });
    expect(brought.ok && brought.value[0]?.consultation.record.chair).toBe(lived[0]?.record.chair);
  });

  test('come all or none: one that the judge refuses refuses them all, by name and entry', () => {
    const forged = forge(second, 0, { tokens: {} });
    expect(bring([first, forged])).toMatchObject({
      ok: false,
      error: { code: 'notJudged', id: second.id, fault: { seq: 0 } },
    });
  });

  test('of next year’s model are refused, though their file does not say so', () => {
    const later = forge(first, 0, { modelVersion: MODEL_VERSION + 1 });
    expect(bring([later])).toMatchObject({ ok: false, error: { code: 'notJudged', id: first.id } });
  });

  test('under the name of another are refused, here and in the file itself', () => {
    const other = { ...first, log: second.log };
    const refusal = { ok: false, error: { code: 'otherContent', id: first.id } };
    expect(bring([second, other], (id) => held.get(id))).toEqual(refusal);
    expect(bring([first, second, other])).toEqual(refusal);
  });

  test('that went on here since they left are refused, and so are those that went on elsewhere', () => {
    const long = told.find(({ log }) => log.length > 3);
    if (long === undefined) throw new Error('no long walk');
    const shorter = { ...long, log: long.log.slice(0, -1) };
    const refusal = { ok: false, error: { code: 'otherContent', id: long.id } };
    expect(bring([shorter], () => long.log)).toEqual(refusal);
    expect(bring([long], () => shorter.log)).toEqual(refusal);
  });
});
