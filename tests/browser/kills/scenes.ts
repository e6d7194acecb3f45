import type { Page } from 'playwright-core';
import type { ConsultationEvent } from '../../../shared/records/event';
import type { Chance } from '../chance';
import { readAnswer, tap } from './readBack';
import type { Place } from './salonDay';
import type { Point } from './window';

/** A tap about to be made: where, and what must stand in the log if it was taken. */
export interface ComingTap {
  readonly at: Point;
  readonly makes: string;
  isThis(event: ConsultationEvent): boolean;
}

/** Makes one client's screen ready for a tap that is written down, or several in a row; the screen is hers already. */
type Scene = (page: Page, chance: Chance) => Promise<readonly ComingTap[]>;

/** Which questions get another answer again and again. */
export const answeredQuestions = {
  client: ['reach', 'length', 'targetLevel', 'naturalLevel'],
  feelHair: ['porosity', 'curl', 'breakage', 'wetStretch', 'mid'],
} as const;

/** What is tapped on each client. */
export const scenes: Readonly<Record<Place, Scene>> = {
  client: (page, chance) => answerSome(page, chance, answeredQuestions.client),
  feelHair: (page, chance) => answerSome(page, chance, answeredQuestions.feelHair),
  strands: async (page, chance) => {
    await tap(page, '[data-act="look"]');
    await chooseAny(page, 'level');
    const feel = chance.pick(['sound', 'rough']);
    return [await aim(page, `[data-question="feel"] [data-option="${feel}"]`, 'LOOKED')];
  },
  outcome: async (page) => {
    await choose(page, 'fibre', 'sound');
    await choose(page, 'stretch', 'springsBack');
    await chooseAny(page, 'level');
    await choose(page, 'wentPast30', 'no');
    await choose(page, 'evenness', 'even');
    return [await aim(page, '[data-act="record-outcome"]', 'OUTCOME_RECORDED')];
  },
  decision: async (page) => [await aim(page, '[data-act^="decide-"]', 'DECIDED')],
  bowl: async (page) => [await aim(page, '[data-act="apply"]', 'BOWL_APPLIED')],
  head: async (page) => {
    await tap(page, '[data-act="look"]');
    return [await aim(page, '[data-act="hair-sound"]', 'LOOKED')];
  },
  plan: async (page) => {
    for (const question of ['back', 'toolsNow', 'lateItching']) await chooseAny(page, question);
    await choose(page, 'skinNow', 'calm');
    await choose(page, 'cardNow', 'byHand');
    return [await aim(page, '[data-act="give-plan"]', 'PLAN_GIVEN')];
  },
};

/** The step each of them stands at. Where entries were lost with both copies, she may stand further back. */
export const steps: Readonly<Record<Place, string>> = {
  client: 'client',
  feelHair: 'feelHair',
  strands: 'processing',
  outcome: 'outcome',
  decision: 'decision',
  bowl: 'mix',
  head: 'colourOn',
  plan: 'finish',
};

/** Those that may be tapped again and again; the others lead on to another screen. */
export const lastingPlaces = ['client', 'feelHair', 'strands', 'head'] as const satisfies readonly Place[];
export const passingPlaces = ['outcome', 'decision', 'bowl', 'plan'] as const satisfies readonly Place[];

/** One question gets another answer; a level goes on by one to three half steps, as fast as fingers go. */
async function answerSome(page: Page, chance: Chance, questions: readonly string[]): Promise<ComingTap[]> {
  const question = chance.pick(questions);
  await tap(page, `.ledger [data-ledger="${question}"]`);
  const field = page.locator(`[data-question="${question}"]`);
  await field.waitFor();
  const isThis = (option: string) => (event: ConsultationEvent) =>
    event.type === 'ANSWERED' && readAnswer(event, question) === option;
  const dial = field.locator('.dial-value');
  if ((await dial.count()) > 0) {
    const level = Number(await dial.getAttribute('aria-valuenow'));
    const step = level > 6 ? -0.5 : 0.5;
    const [at] = await findPoints(page, [`[data-act="${step > 0 ? 'half-more' : 'half-less'}"]`]);
    if (!at) throw new Error(`the dial of ${question} lies under something`);
    return Array.from({ length: 1 + chance.drawBelow(3) }, (_, place) => {
      const option = String(level + step * (place + 1));
      return { at, makes: `${question} = ${option}`, isThis: isThis(option) };
    });
  }
  const options = await field
    .locator('button.sheet-tile[aria-pressed="false"]')
    .evaluateAll((buttons) => buttons.map((button) => button.getAttribute('data-option') ?? ''));
  const option = chance.pick(options.filter((each) => each !== 'unknown'));
  const [at] = await findPoints(page, [`[data-question="${question}"] [data-option="${option}"]`]);
  if (!at) throw new Error(`${question} = ${option} lies under something`);
  return [{ at, makes: `${question} = ${option}`, isThis: isThis(option) }];
}

async function aim(page: Page, selector: string, type: ConsultationEvent['type']): Promise<ComingTap> {
  await page.locator(selector).first().waitFor();
  const [at] = await findPoints(page, [selector]);
  if (!at) throw new Error(`${selector} lies under something`);
  return { at, makes: type, isThis: (event) => event.type === type };
}

/** The middle of each, once the first is in sight; null for one that a finger would not reach then. */
const findPoints = (page: Page, selectors: readonly string[]): Promise<readonly (Point | null)[]> =>
  page.evaluate((wanted) => {
    const found = wanted.map((selector) => document.querySelector(selector));
    found[0]?.scrollIntoView({ block: 'nearest' });
    return found.map((element) => {
      if (element === null) return null;
      const { left, top, width, height } = element.getBoundingClientRect();
      const middle = { x: left + width / 2, y: top + height / 2 };
      return element.contains(document.elementFromPoint(middle.x, middle.y)) ? middle : null;
    });
  }, selectors);

/** On a sheet the question is brought up by its line first. */
async function bringUp(page: Page, question: string): Promise<void> {
  const line = page.locator(`.ledger [data-ledger="${question}"]`);
  await page.locator(`.ledger [data-ledger="${question}"], [data-question="${question}"]`).first().waitFor();
  if ((await line.count()) > 0) await tap(page, `.ledger [data-ledger="${question}"]`);
}

async function choose(page: Page, question: string, option: string): Promise<void> {
  await bringUp(page, question);
  await tap(page, `[data-question="${question}"] [data-option="${option}"]`);
}

async function chooseAny(page: Page, question: string): Promise<void> {
  await bringUp(page, question);
  await tap(page, `[data-question="${question}"] button[data-option]:not([data-option="unknown"])`);
}
