import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { judgeTold } from '../../../machines/consultation/bringIn';
import type { Consultation } from '../../../machines/consultation/consultation';
import { replay } from '../../../machines/consultation/replay';
import { MODEL_VERSION } from '../../../shared/records/event';
import type { ToldConsultation } from '../../../shared/records/json/consultationFile';
import { consultationsSchema } from '../../../shared/records/json/consultationSchema';
import { fold } from '../../../shared/records/reduce';
import { leave, readAtOnce, shipped, write } from '../../shared/records/json/leaving';
import type { ShippedLog } from '../../shared/records/shippedLogs';
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

/** What another station reads of a file. */
function read(text: string): readonly ToldConsultation[] {
  const told = readAtOnce(text);
  if (!told.ok) throw new Error(told.error);
  return told.value.told;
}
const file = write(lived.map((each) => leave(each, findSettings)));
const told = read(file);
const [first] = told;
const [last] = told.filter(({ settings }) => settings.some(({ id }) => id > 0));
if (first === undefined || last === undefined) throw new Error('no walk under other settings has a log');
const judged = (one: ToldConsultation): Consultation => {
  const consultation = judgeTold(one);
  if (!consultation.ok) throw new Error(`${one.id}: ${JSON.stringify(consultation.error)}`);
  return consultation.value;
};
/** One entry of a log told otherwise. */
const forge = (one: ToldConsultation, seq: number, change: object): ToldConsultation => ({
  ...one,
  log: one.log.map((entry, index) => (index === seq ? { ...(entry as object), ...change } : entry)),
});
const listFaults = (text: string): readonly string[] =>
  (v.safeParse(consultationsSchema, JSON.parse(text)).issues ?? []).map(
    (issue) => `${v.getDotPath(issue)}: ${issue.message}`,
  );
const asJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('consultations of a file', () => {
  test('of random walks make the records and the logs that left, under the settings that came along', () => {
    expect(told.length).toBeGreaterThan(30);
    for (const [index, one] of told.entries()) {
      const { record, log } = judged(one);
      expect(record).toEqual(lived[index]?.record);
      expect(log).toEqual(lived[index]?.log);
    }
  });

  test.each(shipped.map((each) => [each.record.id, each] as const))(
    '%s, as this model leaves it behind, makes the record that left',
    (_, leaving) => {
      const [one] = read(write([leaving]));
      expect(one && asJson(judged(one).record)).toEqual(asJson(leaving.record));
    },
  );

  test.each(Array.from({ length: MODEL_VERSION }, (_, index) => index + 1))(
    'that model %i left behind make the records they make here, and are what the JSON Schema says',
    (version) => {
      const fixture = join(import.meta.dirname, `../../shared/records/fixtures/modelVersion${version}.json`);
      const kept = JSON.parse(readFileSync(fixture, 'utf8')) as readonly ShippedLog[];
      const leaving = kept.map(({ log, settings }, index) =>
        leave({ log, record: fold(`old${index}`, log) }, () => settings),
      );
      const text = write(leaving);
      expect(listFaults(text)).toEqual([]);
      const again = read(text).map((one) => judged(one).record);
      const here = kept.map(({ log, settings }, index) => replay(`old${index}`, log, () => settings));
      expect(here.map((each) => each.ok && each.value.record)).toEqual(again);
    },
  );

  test('of random walks are what the JSON Schema beside the file says, member by member', () => {
    expect(listFaults(file)).toEqual([]);
  });

  test('are judged under no settings but their own', () => {
    const under = (ageLine: number): ToldConsultation => ({
      ...last,
      settings: last.settings.map(({ id, settings }) => ({
        id,
        settings: {
          ...settings,
          profile: { ...settings.profile, ageLine, skinTestFor: [], skinTestWaitH: 1 },
        },
      })),
    });
    expect(judgeTold(last).ok).toBe(true);
    expect(judgeTold(under(21))).toMatchObject({ ok: false, error: { code: 'saysOtherwise' } });
  });

  test('that the judge refuses are refused, by their entry', () => {
    expect(judgeTold(forge(first, 0, { tokens: {} }))).toMatchObject({ ok: false, error: { seq: 0 } });
  });

  test('of next year’s model are refused, though their file does not say so', () => {
    const later = forge(first, 0, { modelVersion: MODEL_VERSION + 1 });
    expect(judgeTold(later)).toMatchObject({ ok: false, error: { code: 'newerVersion' } });
  });
});
