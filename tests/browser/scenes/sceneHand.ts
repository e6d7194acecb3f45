import type { Locator, Page } from 'playwright-core';
import { ASSUMED_HOLD_MS } from '../../../src/parts/hold';

/** A finger on a tablet whose clock stands and whose timers run. */
export interface SceneHand {
  readonly page: Page;
  readonly press: (what: string | Locator) => Promise<void>;
  /** Presses the button of this name. */
  readonly act: (act: string) => Promise<void>;
  readonly hold: (what: string | Locator) => Promise<void>;
  readonly type: (into: string | Locator, text: string) => Promise<void>;
  /** Her place on the bar, and who is at the tablet, where that is asked. */
  readonly open: (chair: number, name?: string) => Promise<void>;
  /** Says who is at the tablet, where that is asked before this shows. */
  readonly answerWho: (orShows?: string, name?: string) => Promise<void>;
  /** Somebody at the bar says who she is. */
  readonly sayWho: (name?: string) => Promise<void>;
}

export function makeSceneHand(page: Page): SceneHand {
  const find = (what: string | Locator): Locator =>
    typeof what === 'string' ? page.locator(what).first() : what;
  const press = (what: string | Locator) => find(what).tap();
  const act = (name: string) => press(`[data-act="${name}"]`);
  const answerWho = async (orShows = '.refusal:not(:empty)', name = 'Opal'): Promise<void> => {
    const asks = page.locator(`[data-act="who-${name}"]`);
    await asks.or(page.locator(orShows)).filter({ visible: true }).first().waitFor();
    if (await asks.isVisible()) await press(asks);
  };
  return {
    page,
    press,
    act,
    answerWho,
    type: (into, text) => find(into).fill(text),
    hold: async (what) => {
      const target = find(what);
      await target.scrollIntoViewIfNeeded();
      const box = await target.boundingBox();
      if (box === null) throw new Error('Nothing to hold');
      const touch = await page.context().newCDPSession(page);
      const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
      await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [at] });
      await page.waitForTimeout(ASSUMED_HOLD_MS + 100);
      await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    },
    open: async (chair, name = 'Opal') => {
      await press(`.place[data-chair="${chair}"]`);
      const main = 'main[data-consultation]';
      await answerWho(main, name);
      await page.locator(main).waitFor();
    },
    sayWho: async (name = 'Opal') => {
      await act('who');
      await press(`[data-act="who-${name}"]`);
    },
  };
}

/** All that is said at the finish, one tile after the other. */
export async function sayPlan({ press }: SceneHand): Promise<void> {
  for (const option of ['weeks6', 'calm', 'offCooling', 'saidItBack', 'byHand'])
    await press(`.sheet [data-option="${option}"]`);
}
