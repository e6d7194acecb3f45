import type { Locator } from 'playwright-core';
import type { Raw, RawForm } from '../../shared/records/readForm';
import type { Person } from './person';

/** Whoever presses, holds and types. */
type Typist = Pick<Person, 'page' | 'press' | 'hold' | 'type'>;

const twoDigits = (value: number): string => String(value).padStart(2, '0');

/** A moment as it is typed into a date-time field, in the zone of the tests, which is the tablet's. */
function writeLocal(atMs: number): string {
  const at = new Date(atMs);
  const day = `${at.getFullYear()}-${twoDigits(at.getMonth() + 1)}-${twoDigits(at.getDate())}`;
  return `${day}T${twoDigits(at.getHours())}:${twoDigits(at.getMinutes())}`;
}

const isRows = (value: Raw): value is readonly RawForm[] =>
  Array.isArray(value) && value.some((row) => typeof row === 'object');

const isNone = (value: Raw): boolean => Array.isArray(value) && value.length === 0;

/** The field of one question: brought onto its sheet by its line, or out from behind "more". */
export async function findField(person: Typist, path: string): Promise<Locator> {
  const field = person.page.locator(`[data-question="${path}"]`);
  if ((await field.count()) > 0) return field;
  if ((await person.page.locator('.sheet').count()) > 0) {
    const everything = person.page.locator('[data-act="all-questions"]');
    if (await everything.isVisible()) await person.press(everything);
    const line = person.page.locator(`.ledger [data-ledger="${path}"]`);
    const [, list, row] = /^(.+)\.(\d+)\./.exec(path) ?? [];
    if (list !== undefined && (await line.count()) === 0) {
      await findField(person, list);
      await person.press(person.page.locator(`[data-row="${row}"] [data-ledger]`));
      if ((await field.count()) > 0) return field;
    }
    const more = person.page.locator('.ledger [data-act="more-questions"]');
    if (!(await line.isVisible()) && (await more.count()) > 0) await person.press(more);
    await person.press(line);
    return field;
  }
  const [row] = /\.\d+\./.exec(path) ?? [];
  const place =
    row === undefined
      ? person.page.locator('.form > [data-act="more"]')
      : person.page.locator(`[data-row="${row.replaceAll('.', '')}"] > [data-act="more"]`);
  await person.press(place);
  return field;
}

/** So many half steps are pressed rather than typed. */
const FEW_HALF_STEPS = 3;

/** Half a level is a few taps from where the dial stands; false where there is no dial, or it is too far to turn. */
async function turnDial({ press }: Typist, field: Locator, value: number): Promise<boolean> {
  const dial = field.locator('[role="slider"]');
  if ((await dial.count()) === 0) return false;
  const halves = (value - Number(await dial.getAttribute('aria-valuenow'))) * 2;
  if (!Number.isInteger(halves) || Math.abs(halves) > FEW_HALF_STEPS) return false;
  const way = field.locator(`[data-act="${halves < 0 ? 'half-less' : 'half-more'}"]`);
  for (let step = 0; step < Math.abs(halves); step += 1) await press(way);
  await press(field.locator('[data-act="take-level"]'));
  return true;
}

/** Says one answer with fingers: the button that offers it, held where it stops everything, else typed. */
async function answerOne(person: Typist, path: string, value: string): Promise<void> {
  const field = await findField(person, path);
  const offered = field.locator(`[data-option="${value}"]`);
  if ((await offered.count()) === 0) {
    if (await turnDial(person, field, Number(value))) return;
    const pad = field.locator('[data-act="another-number"]');
    if ((await pad.count()) > 0) await person.press(pad);
    return person.type(field.locator('input, textarea'), value);
  }
  if ((await offered.getAttribute('data-act')) === 'absolute') return person.hold(offered);
  return person.press(offered);
}

/** Says the answer to one question. `each` wraps every tap that the station keeps by itself. */
export async function answer(
  person: Typist,
  path: string,
  value: Raw,
  each: (what: () => Promise<void>) => Promise<void> = (what) => what(),
): Promise<void> {
  if (value === undefined || value === null) return;
  if (typeof value === 'number') {
    await findField(person, path);
    return each(() =>
      person.page.locator(`[data-question="${path}"] input[type="datetime-local"]`).fill(writeLocal(value)),
    );
  }
  if (typeof value === 'string') return each(() => answerOne(person, path, value));
  if (isNone(value)) return each(() => answerOne(person, path, 'none'));
  if (!isRows(value)) {
    for (const option of value as readonly string[]) await each(() => answerOne(person, path, option));
    return;
  }
  for (const [index, row] of value.entries()) await each(() => answerRow(person, path, index, row));
}

async function answerRow(person: Typist, path: string, index: number, row: RawForm): Promise<void> {
  const field = await findField(person, path);
  const isBegun = (await field.locator(`[data-row="${index}"]`).count()) > 0;
  const [first, ...rest] = Object.entries(row);
  const thing = field.locator(`.sheet-tile[data-option="${first?.[1]}"]`);
  if (!isBegun && (await thing.count()) > 0) await person.press(thing);
  else {
    if (!isBegun) await person.press(field.locator('[data-act="add-row"]'));
    if (first !== undefined) await answer(person, `${path}.${index}.${first[0]}`, first[1]);
  }
  for (const [name, value] of rest) await answer(person, `${path}.${index}.${name}`, value);
}

/** Fills a form in, question by question; `not` names what stands there already. */
export async function fill(person: Typist, answers: RawForm, not: readonly string[] = []): Promise<void> {
  for (const [name, value] of Object.entries(answers)) {
    if (!not.includes(name)) await answer(person, name, value);
  }
}
