import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { replay } from '../../../machines/consultation/replay';
import { MODEL_VERSION } from '../../../shared/records/event';
import type { Form, Question } from '../../../shared/records/form';
import { eventForms } from '../../../shared/records/forms/byEvent';
import { allForms } from './goodForms';
import { makeShippedLogs, type ShippedLog } from './shippedLogs';

const fixtures = join(import.meta.dirname, 'fixtures');
const readJson = (file: string): unknown => JSON.parse(readFileSync(file, 'utf8'));
const write = (file: string, content: unknown) =>
  writeFileSync(file, `${JSON.stringify(content, null, 2)}\n`);

/** `WRITE_MODEL=1` writes what a raised MODEL_VERSION leaves behind, once; what is there is never written again. */
const isWriting = process.env.WRITE_MODEL === '1';
const howTo = `Raise MODEL_VERSION in shared/records/event.ts, give a new question addedIn, then run
WRITE_MODEL=1 npx vitest run --project node tests/shared/records/modelVersion.test.ts && npm run fix
and commit what it wrote. Files of earlier versions stay as they are, for ever.`;

const versions = Array.from({ length: MODEL_VERSION }, (_, index) => index + 1);
const fileOf = (version: number) => join(fixtures, `modelVersion${version}.json`);
if (isWriting && !existsSync(fileOf(MODEL_VERSION))) write(fileOf(MODEL_VERSION), makeShippedLogs());

/** A plan's key counts the questions of today, and what is tapped after the start is judged by the model of today. */
const ofToday = ['planKey', 'modelVersion'];
const withoutToday = (record: ShippedLog['record']): object =>
  JSON.parse(JSON.stringify(record), (name, value: unknown) => (ofToday.includes(name) ? undefined : value));

describe('the logs that earlier model versions left behind', () => {
  it.each(versions)('of version %i are there', (version) =>
    expect(existsSync(fileOf(version)), `${fileOf(version)} is missing. ${howTo}`).toBe(true),
  );

  it.each(versions)('of version %i are taken up to the same records', (version) => {
    const shipped = readJson(fileOf(version)) as readonly ShippedLog[];
    for (const { name, settings, log, record } of shipped) {
      const again = replay(name, log, () => settings);
      expect(again.ok ? 'taken up' : again.error, name).toBe('taken up');
      // A record may have learned more since; what it said then it still says.
      expect(again.ok && again.value.record, name).toMatchObject(withoutToday(record));
      expect(new Set(log.map(({ modelVersion }) => modelVersion))).toEqual(new Set([version]));
    }
  });

  it('hold every type of event', () => {
    const shipped = readJson(fileOf(MODEL_VERSION)) as readonly ShippedLog[];
    const held = new Set<string>(shipped.flatMap(({ log }) => log.map(({ type }) => type)));
    expect(['ANSWERED', ...Object.keys(eventForms)].filter((type) => !held.has(type))).toEqual([]);
  });
});

/** All that decides how an answer is stored and read again; what only decides how it is asked is left out. */
function describeQuestion(question: Question): unknown {
  const { kind, when, whenAgeLine, addedIn, stamped } = question;
  const asked = { kind, when, whenAgeLine, addedIn, stamped };
  switch (question.kind) {
    case 'choice':
      return { ...asked, options: question.options };
    case 'choices':
      return { ...asked, options: question.options, none: question.none };
    case 'number':
      return { ...asked, ...question.field, unknown: question.unknown };
    case 'text':
      return { ...asked, maxLength: question.maxLength };
    case 'time':
      return asked;
    case 'list':
      return { ...asked, min: question.min, max: question.max, of: describeForm(question.of) };
  }
}

const describeForm = (form: Form): unknown =>
  Object.entries(form)
    .map(([name, question]) => [name, describeQuestion(question)] as const)
    .sort(([one], [other]) => (one < other ? -1 : 1));

const fingerprint = (form: Form): string =>
  createHash('sha256')
    .update(JSON.stringify(describeForm(form)))
    .digest('hex')
    .slice(0, 12);

interface Shapes {
  readonly modelVersion: number;
  readonly shapes: Readonly<Record<string, string>>;
}
const shapesFile = join(fixtures, 'storedShapes.json');
const today: Shapes = {
  modelVersion: MODEL_VERSION,
  shapes: Object.fromEntries(allForms.map(([name, form]) => [name, fingerprint(form)])),
};
const isRaised = !existsSync(shapesFile) || (readJson(shapesFile) as Shapes).modelVersion < MODEL_VERSION;
if (isWriting && isRaised) write(shapesFile, today);

/** The questions of a form, the rows of its lists among them, each with its path. */
const listQuestions = (path: string, form: Form): readonly (readonly [string, Question])[] =>
  Object.entries(form).flatMap(([name, question]) => [
    [`${path}.${name}`, question] as const,
    ...(question.kind === 'list' ? listQuestions(`${path}.${name}`, question.of) : []),
  ]);

describe('the model version', () => {
  it('is raised whenever a form is stored in another shape', () => {
    const kept = readJson(shapesFile) as Shapes;
    const names = [...new Set([...Object.keys(kept.shapes), ...Object.keys(today.shapes)])];
    const changed = names.filter((name) => kept.shapes[name] !== today.shapes[name]);
    expect(changed, `stored in another shape than version ${kept.modelVersion} did. ${howTo}`).toEqual([]);
    expect(kept.modelVersion, howTo).toBe(MODEL_VERSION);
  });

  it('is not behind any question', () => {
    const questions = allForms.flatMap(([name, form]) => listQuestions(name, form));
    const ahead = questions.filter(([, { addedIn }]) => addedIn !== undefined && addedIn > MODEL_VERSION);
    expect(
      ahead.map(([path]) => path),
      howTo,
    ).toEqual([]);
    expect(questions.length).toBeGreaterThan(80);
  });

  it('sees every part of a stored question in its shape', () => {
    const base = { kind: 'number', field: { quantity: 'count', min: 0, max: 9 } } as const;
    const other: readonly Question[] = [
      { ...base, field: { ...base.field, max: 10 } },
      { ...base, field: { ...base.field, quantity: 'minutes' } },
      { ...base, unknown: true },
      { ...base, addedIn: 2 },
      { ...base, whenAgeLine: true },
      { kind: 'text', maxLength: 9 },
      { kind: 'list', of: { base }, min: 0, max: 1 },
      { kind: 'list', of: { base: { ...base, unknown: true } }, min: 0, max: 1 },
      { kind: 'choice', options: ['a', 'b'] },
      { kind: 'choice', options: ['a'] },
    ];
    const prints = [base, ...other].map((question) => fingerprint({ question }));
    expect(new Set(prints).size).toBe(prints.length);
    const asksOtherwise: readonly Question[] = [
      { ...base, more: true },
      { ...base, or: 3 },
      { ...base, aside: true },
    ];
    for (const question of asksOtherwise) expect(fingerprint({ question })).toBe(prints[0]);
  });
});
