import type { Page } from 'playwright-core';
import type { ConsultationEvent } from '../../../shared/records/event';
import type { ConsultationRecord } from '../../../shared/records/record';
import { readDayFile } from '../readDayFile';
import { chairs, nameConsultation, type Place } from './salonDay';

/** What the station shows after a start. */
export interface ReadBack {
  readonly notices: readonly string[];
  /** Each consultation that is open or closed today, by id, as its day's records hand it out. */
  readonly told: ReadonlyMap<string, Told>;
}

export interface Told {
  readonly isClosed: boolean;
  readonly log: readonly ConsultationEvent[];
  readonly record: ConsultationRecord;
}

/** Waits until the station has read its copies, then reads all it has to tell. */
export async function readBack(page: Page): Promise<ReadBack> {
  await page.locator('main.bar').waitFor();
  await page.locator('[data-mode="starting"]').waitFor({ state: 'detached' });
  const notices = await readNotices(page);
  await tap(page, '[data-act="day"]');
  await page.evaluate(catchBlobs);
  await tap(page, '[data-act="download-day"]');
  await page.waitForFunction(() => 'caught' in globalThis);
  const text = await page.evaluate(async () => {
    const { caught } = globalThis as unknown as { caught: Blob };
    Reflect.deleteProperty(globalThis, 'caught');
    return caught.text();
  });
  await tap(page, '[data-act="bar"]');
  const told = new Map(
    readDayFile(text).map((each): [string, Told] => [
      each.record.id,
      { ...each, isClosed: each.record.ended !== null },
    ]),
  );
  return { notices, told };
}

/** Presses a button as its click handler sees it; for what is not itself under test. */
export const tap = (page: Page, selector: string): Promise<void> =>
  page.locator(selector).first().dispatchEvent('click');

async function readNotices(page: Page): Promise<readonly string[]> {
  if ((await page.locator('[data-act="read-notices"]').count()) === 0) return [];
  await tap(page, '[data-act="read-notices"]');
  const notices = await page.locator('[data-notice]').evaluateAll(readByName);
  await tap(page, 'dialog[open] [data-act="close-dialog"]');
  return notices;
}

/** The day is handed out as a file: what goes into the file is caught on its way. */
function catchBlobs(): void {
  const make = URL.createObjectURL.bind(URL);
  URL.createObjectURL = (blob: Blob) => {
    Object.assign(globalThis, { caught: blob });
    return make(blob);
  };
}

/** What one consultation shows on its own screen. */
export interface Shown {
  readonly id: string;
  readonly length: number;
  readonly step: string;
  /** The options that are pressed, by question. */
  readonly pressed: Readonly<Record<string, string>>;
  readonly dueAtMs: Readonly<Record<string, number>>;
}

/** Says on the bar who is at the tablet, unless that is said already. */
async function sayWho(page: Page): Promise<void> {
  await page.locator('.window-part[data-mode="starting"]').waitFor({ state: 'detached' });
  const who = page.locator('main.bar [data-act="who"]');
  // A window that only watches asks for no name.
  if ((await who.count()) === 0 || (await who.textContent()) === 'Opal') return;
  await tap(page, 'main.bar [data-act="who"]');
  await page.locator('dialog[open] [data-act="who-Opal"]').waitFor();
  await tap(page, 'dialog[open] [data-act="who-Opal"]');
}

/** Opens the consultation at this place from the bar. */
export async function visit(page: Page, place: Place): Promise<Shown> {
  await page.locator('main.bar').waitFor();
  await sayWho(page);
  await tap(page, `.place[data-chair="${chairs[place].chair}"]`);
  await page.locator(`main[data-consultation="${nameConsultation(place)}"]`).waitFor();
  return page.evaluate(readScreen);
}

/** Back to the bar, where every client has her place. */
export const leave = (page: Page): Promise<void> => tap(page, 'main.consultation [data-act="bar"]');

function readScreen(): Shown {
  const main = document.querySelector<HTMLElement>('main[data-consultation]');
  const pressed: Record<string, string> = {};
  const readPressed = (): void => {
    for (const option of document.querySelectorAll<HTMLElement>('[data-question] [aria-pressed="true"]')) {
      const question = option.closest<HTMLElement>('[data-question]')?.dataset.question ?? '';
      pressed[question] = option.dataset.option ?? '';
    }
    for (const dial of document.querySelectorAll<HTMLElement>('[data-question] .dial-value')) {
      const question = dial.closest<HTMLElement>('[data-question]')?.dataset.question ?? '';
      // A dial on which nobody has said anything shows a question mark.
      if (dial.textContent !== '?') pressed[question] ??= dial.textContent ?? '';
    }
  };
  readPressed();
  // A sheet shows one question: each is gone to by its line.
  for (const line of document.querySelectorAll<HTMLElement>('.ledger [data-ledger]')) {
    line.click();
    readPressed();
  }
  const dueAtMs: Record<string, number> = {};
  for (const face of document.querySelectorAll<HTMLElement>('[data-clock][data-due-at]')) {
    dueAtMs[face.dataset.clock ?? ''] = Number(face.dataset.dueAt);
  }
  const { consultation = '', logLength, step = '' } = main?.dataset ?? {};
  return { id: consultation, length: Number(logLength), step, pressed, dueAtMs };
}

/** What an event keeps of this question, as it was tapped. */
export const readAnswer = (event: ConsultationEvent, question: string): string | undefined => {
  const { answers } = event.payload as { readonly answers?: Readonly<Record<string, unknown>> };
  const kept = answers?.[question];
  return kept === undefined ? undefined : String(kept);
};

/** What each notice says, with its client's log in place of what the screen calls her: no ids stand on a screen. */
function readByName(notices: (HTMLElement | SVGElement)[]): string[] {
  return notices.map((notice) => {
    const said = notice.querySelector('p')?.textContent ?? '';
    const { whose, log } = notice.dataset;
    return whose === undefined || log === undefined ? said : said.replace(whose, log);
  });
}
