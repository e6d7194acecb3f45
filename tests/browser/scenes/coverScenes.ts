import type { Settings } from '../../../shared/records/settings';
import { SETTINGS_LOG } from '../../../src/station/logNames';
import type { Logs } from '../memory';
import { fullSalon, minuteMs, nowMs, until } from './clients';
import { alone, emptyHouse, fullHouse, usualHouse } from './houses';
import type { ScenesOf } from './scene';
import type { SceneHand } from './sceneHand';

/** The same, where a tablet nobody touches is covered after two minutes. */
export const withCover = (logs: () => Logs) => (): Logs => {
  const all = logs();
  const [settings] = (all[SETTINGS_LOG] ?? []) as readonly { readonly settings: Settings }[];
  return {
    ...all,
    [SETTINGS_LOG]: [{ ...settings, settings: { ...(settings?.settings ?? fullSalon), coverAfterMin: 2 } }],
  };
};

/** Nobody touches the tablet for so long, and its clock tells. */
export const idleFor =
  (ms: number) =>
  async ({ page }: SceneHand): Promise<void> => {
    await page.clock.setFixedTime(nowMs + ms);
    await page.evaluate(() => window.dispatchEvent(new Event('focus')));
  };

const covered = '.idle-over[data-idle="covered"] .cover';
const warned = '.idle-over[data-idle="warned"] .idle-warning';
const toCovered = idleFor(2 * minuteMs);

/** Nobody has touched the tablet: warned, then covered. */
export const scenesOfCover: ScenesOf = {
  empty: { logs: withCover(emptyHouse), shows: covered, go: toCovered },
  usual: { logs: withCover(usualHouse), shows: covered, go: toCovered },
  full: { logs: withCover(fullHouse), shows: covered, go: toCovered },
  error: 'it takes nothing but a tap that goes back',
  also: {
    warned: { logs: withCover(usualHouse), shows: warned, go: idleFor(2 * minuteMs - 12_000) },
    calling: {
      logs: withCover(alone(until('STRAND_STARTED'), 4 * minuteMs)),
      shows: `${covered} .silence`,
      go: toCovered,
    },
  },
};
