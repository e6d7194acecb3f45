import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MODEL_VERSION } from '../../../../shared/records/event';
import {
  CONSULTATIONS_VERSION,
  type LeavingConsultation,
} from '../../../../shared/records/json/consultationFile';
import { writeCsv } from '../../../../shared/records/table/csv';
import { holds } from '../../seeded';
import { head, readAtOnce, shipped, write } from './leaving';

const [first] = shipped;
if (first === undefined) throw new Error('no log was shipped');
const file = write(shipped);
const verdictOn = (text: string) => {
  const read = readAtOnce(text);
  return read.ok ? `${read.value.told.length} read` : read.error;
};
/** The file with one word of it written otherwise. */
const instead = (one: string, other: string): string => {
  expect(file).toContain(one);
  return file.replace(one, other);
};
const asJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
const called = (ticket: string): LeavingConsultation => ({ ...first, record: { ...first.record, ticket } });

describe('consultations as JSON', () => {
  it('are read as they were written, log and settings, and when that was', () => {
    expect(readAtOnce(file)).toMatchObject({
      ok: true,
      value: {
        told: asJson(shipped.map(({ log, record, settings }) => ({ id: record.id, settings, log }))),
        made: { madeAtMs: head.madeAtMs, isDemo: false },
      },
    });
    expect(shipped.length).toBeGreaterThan(5);
  });

  it('are read whatever words stand in them, with a mark in front and without', () => {
    holds(
      fc.property(fc.string({ unit: 'binary' }), fc.constantFrom('', '\ufeff'), (ticket, mark) => {
        const text = `${mark}${write([called(ticket)])}`;
        expect(verdictOn(text)).toBe('1 read');
        expect(JSON.parse(text.slice(mark.length)).consultations[0].record.ticket).toBe(ticket);
      }),
      200,
    );
  });

  it('are read when another program set them out otherwise, with the same contents', () => {
    expect(verdictOn(JSON.stringify(JSON.parse(file), null, 4))).toBe(`${shipped.length} read`);
  });

  it('say each moment for people too, with its offset', () => {
    const [told] = JSON.parse(file).consultations;
    expect(told.log[0].at).toMatch(/^2026-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}\+00:00$/);
    expect(Date.parse(told.log[0].at)).toBe(told.log[0].entry.atMs);
  });

  it('carry the settings that their entries name, and of them nobody who works there', () => {
    const [told] = JSON.parse(file).consultations;
    const named = new Set(told.log.map(({ entry }: { entry: { settingsId: number } }) => entry.settingsId));
    expect(new Set(told.settings.map(({ id }: { id: number }) => id))).toEqual(named);
    // Who adds one raises CONSULTATIONS_VERSION: stations of before could not read it.
    expect(Object.keys(told.settings[0].settings).sort()).toEqual([
      'altitudeM',
      'carried',
      'chairs',
      'figuresByStylist',
      'locale',
      'profile',
      'scaleStepG',
      'shelf',
      'spoken',
      'units',
    ]);
    expect(JSON.stringify(told.settings)).not.toContain('ingredients');
  });

  it('of the first edition are read too, and let no figure name anybody', () => {
    const settings = first.settings.map(({ id, settings: { figuresByStylist: _none, ...before } }) => ({
      id,
      settings: before as (typeof first.settings)[number]['settings'],
    }));
    const old = write([{ ...first, settings }]).replace(`"v":${CONSULTATIONS_VERSION}`, '"v":1');
    expect(old).not.toContain('figuresByStylist');
    const read = readAtOnce(old);
    if (!read.ok) throw new Error(read.error);
    expect(read.value.told[0]?.settings.map((each) => each.settings.figuresByStylist)).toEqual(
      settings.map(() => false),
    );
  });

  it('of nobody are a file too', () => expect(verdictOn(write([]))).toBe('0 read'));

  it('that were cut off anywhere give none, in the middle of a letter too', () => {
    const end = file.trimEnd().length;
    for (let length = 1; length < end; length += length < 400 || length > end - 400 ? 1 : 997) {
      expect(verdictOn(file.slice(0, length)), file.slice(0, length).slice(-20)).toBe('cutOff');
      expect(verdictOn(`${file.slice(0, length)}\ufffd`)).toBe('cutOff');
    }
  });

  it('of which one letter was changed give none', () => {
    const from = file.indexOf('"consultations":[') + 20;
    const end = file.trimEnd().length - 3;
    holds(
      fc.property(fc.integer({ min: from, max: end }), (at) => {
        const other = file[at] === 'x' ? 'y' : 'x';
        expect(['damaged', 'cutOff']).toContain(verdictOn(file.slice(0, at) + other + file.slice(at + 1)));
      }),
      300,
    );
  });

  it.each([
    ['nothing', '', 'anotherProgram'],
    ['the table of another program', 'Date,Client,Formula\r\n', 'anotherProgram'],
    ['the station’s own table', [...writeCsv([], { temperature: 'C', mass: 'g' })].join(''), 'table'],
    ['a backup', '{"strandproof":"backup","v":1}\n{"log":"settings"}\nend 2 00000000\n', 'backup'],
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
    ['no log', write([{ ...first, log: [] }]), 'damaged'],
    ['a moment without its offset', instead('+00:00"', '"'), 'damaged'],
    ['a log without the settings it names', write([{ ...first, settings: [] }]), 'damaged'],
    [
      'a log whose record was told otherwise',
      instead('"record":{"id":"shipped0"', '"record":{"id":"x"'),
      'damaged',
    ],
    ['one whose name is no name', write([{ ...first, record: { ...first.record, id: '../x' } }]), 'damaged'],
  ])('%s is refused', (_, text, code) => expect(verdictOn(text)).toBe(code));
});
