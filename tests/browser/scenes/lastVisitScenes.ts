import type { StoryStep } from '../../../seeds/story';
import { closeRecord } from '../../../shared/records/closedRecord';
import { nameClosedLog } from '../../../src/station/logNames';
import type { Logs } from '../memory';
import { bothOn, event, fullSalon, hourMs, longestAtHome, minuteMs, nowMs, seat, steps } from './clients';
import { emptyHouse, usualHouse, withClosed } from './houses';
import type { ScenesOf } from './scene';
import type { SceneHand } from './sceneHand';

/** At the free chair, so much of a ticket is tapped. */
export const toTicket = (typed: string) => async (hand: SceneHand) => {
  await hand.press('.place-free');
  await hand.press('[data-act="who-Opal"]');
  for (const letter of typed) await hand.press(`[data-key="${letter}"]`);
};

const toLast = async (hand: SceneHand) => {
  await toTicket('LM')(hand);
  await hand.act('last-visit');
};

const burnt: readonly StoryStep[] = [
  ...bothOn,
  event('REACTION_SUSPECTED', {}, 5 * minuteMs),
  event('REACTION_RECORDED', { signs: ['burning', 'hives'] }),
  event('BOWL_RINSED', { zone: 'lengths' }),
  event('BOWL_RINSED', { zone: 'ends' }),
  event('CARE_GIVEN', { care: 'rinsedAndDoctor' }, 20 * minuteMs),
];
const wholeLongest = [...longestAtHome, ...steps.slice(-1)];

/** L.M. was here an hour ago, and this is what was done. */
const after =
  (told: readonly StoryStep[], settings = fullSalon, house: () => Logs = emptyHouse) =>
  (): Logs => {
    const { record, log } = seat({ chair: 20, ticket: 'L.M.', steps: told, agoMs: hourMs, settings });
    return { ...house(), [nameClosedLog(nowMs)]: [closeRecord(record, log)] };
  };

const page = '.last-visit';

export const scenesOfLastVisit: ScenesOf = {
  empty: {
    logs: after([...steps.slice(0, 2), event('CLIENT_SAID_NO', { reason: 'noTime' })]),
    shows: page,
    go: toLast,
  },
  usual: { logs: withClosed(usualHouse, ['LM']), shows: page, go: toLast },
  full: { logs: after(burnt), shows: '[data-line="standing-stop"]', go: toLast },
  error: 'it shows what is stored and takes nothing',
  also: {
    longest: { logs: after(wholeLongest), shows: page, go: toLast },
    overStep: {
      logs: after(burnt),
      shows: '[data-act="last-visit-back"]',
      go: async (hand) => {
        await toTicket('LM')(hand);
        await hand.act('open-same');
        await hand.act('more-for-client');
        await hand.press('dialog [data-act="last-visit"]');
      },
    },
  },
};

const many = ['MM', 'MW', 'M.W.', 'Mowgwum-M.W.', 'Momwegwum-WM', 'MUMMENWAM', 'MA', 'MB', 'MC'];
const toList = async (hand: SceneHand) => {
  await toTicket('M')(hand);
  await hand.act('earlier-clients');
};

export const scenesOfEarlier: ScenesOf = {
  empty: 'where nobody begins so the way there is not offered',
  usual: {
    logs: withClosed(usualHouse, ['M.W.', 'MB']),
    shows: '[data-act="earlier-client"]',
    go: toList,
  },
  full: { logs: withClosed(emptyHouse, many, fullSalon), shows: '[data-act="more-earlier"]', go: toList },
  error: 'it shows what is stored and takes nothing',
  also: {
    offered: {
      logs: withClosed(emptyHouse, many, fullSalon),
      shows: '[data-act="earlier-clients"]',
      go: toTicket('M'),
    },
    offeredFull: {
      logs: withClosed(usualHouse, ['M', ...many]),
      shows: '[data-act="last-visit"] + [data-act="earlier-clients"]',
      go: toTicket('M'),
    },
  },
};
