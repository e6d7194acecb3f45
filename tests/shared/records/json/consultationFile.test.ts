import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MODEL_VERSION } from '../../../../shared/records/event';
import {
  CONSULTATIONS_VERSION,
  readConsultations,
  writeConsultations,
} from '../../../../shared/records/json/consultationFile';
import { holds } from '../../seeded';
import { makeShippedLogs } from '../shippedLogs';
import { writeMoment } from '../table/stories';

const leaving = makeShippedLogs().map(({ log, record }, index) => ({
  log,
  record: { ...record, id: `shipped${index}` },
}));
const write = (some: Parameters<typeof writeConsultations>[0]) =>
  [...writeConsultations(some, 0, writeMoment)].join('');
const file = write(leaving);
const verdictOn = (text: string) => {
  const read = readConsultations(text);
  return read.ok ? `${read.value.length} read` : read.error;
};
/** The file with one word of it written otherwise. */
const instead = (one: string, other: string): string => {
  expect(file).toContain(one);
  return file.replace(one, other);
};

describe('consultations as JSON', () => {
  it('are read as they were written, log and record', () => {
    expect(readConsultations(file)).toEqual({
      ok: true,
      value: JSON.parse(JSON.stringify(leaving.map(({ log, record }) => ({ id: record.id, log, record })))),
    });
    expect(leaving.length).toBeGreaterThan(5);
  });

  it('are read whatever words stand in them, with a mark in front and without', () => {
    const [first] = leaving;
    if (first === undefined) throw new Error('no log was shipped');
    holds(
      fc.property(fc.string({ unit: 'binary' }), fc.constantFrom('', '\ufeff'), (ticket, mark) => {
        const read = readConsultations(
          `${mark}${write([{ ...first, record: { ...first.record, ticket } }])}`,
        );
        expect(read).toMatchObject({ ok: true, value: [{ record: { ticket } }] });
      }),
      200,
    );
  });

  it('say each moment for people too, with its offset', () => {
    const [first] = JSON.parse(file).consultations;
    expect(first.log[0].at).toMatch(/^2026-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}\+00:00$/);
    expect(Date.parse(first.log[0].at)).toBe(first.log[0].entry.atMs);
  });

  it('tell nothing but their own names, and no settings', () => {
    const told = JSON.parse(file);
    expect(Object.keys(told).sort()).toEqual(['consultations', 'madeAt', 'modelVersion', 'strandproof', 'v']);
    expect(Object.keys(told.consultations[0]).sort()).toEqual(['id', 'log', 'record']);
  });

  it('of nobody are a file too', () => expect(verdictOn(write([]))).toBe('0 read'));

  it('that were cut off anywhere give none, in the middle of a letter too', () => {
    const end = file.trimEnd().length;
    for (let length = 1; length < end; length += length < 400 || length > end - 400 ? 1 : 997) {
      expect(verdictOn(file.slice(0, length)), file.slice(0, length).slice(-20)).toBe('cutOff');
      expect(verdictOn(`${file.slice(0, length)}\ufffd`)).toBe('cutOff');
    }
  });

  it.each([
    ['nothing', '', 'anotherProgram'],
    ['a table', 'Date,Client,Formula\r\n', 'anotherProgram'],
    ['the JSON of another program', '{"clients":[]}', 'anotherProgram'],
    ['no object', '[]', 'anotherProgram'],
    ['16 bit read as 8', [...file].join('\0'), 'notText'],
    ['a letter of another encoding', instead('"ticket":"', '"ticket":"\ufffd'), 'notText'],
    ['a later edition', instead(`"v":${CONSULTATIONS_VERSION}`, `"v":${CONSULTATIONS_VERSION + 1}`), 'newer'],
    [
      'a later model',
      instead(`"modelVersion":${MODEL_VERSION}`, `"modelVersion":${MODEL_VERSION + 1}`),
      'newer',
    ],
    ['a line that was lost inside', instead('"log":[', '"log":'), 'damaged'],
    ['a word nobody wrote', instead('"madeAt"', '"x":1,"madeAt"'), 'damaged'],
    ['no log', write([{ record: { ...leaving[0]?.record, id: 'empty' } as never, log: [] }]), 'damaged'],
    ['a moment without its offset', instead('+00:00"', '"'), 'damaged'],
  ])('%s is refused', (_, text, code) => expect(verdictOn(text)).toBe(code));
});
