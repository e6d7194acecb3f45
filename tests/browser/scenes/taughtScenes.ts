import { salon } from '../../../seeds/salon';
import { closeRecord } from '../../../shared/records/closedRecord';
import type { ConsultationEvent } from '../../../shared/records/event';
import type { Settings } from '../../../shared/records/settings';
import { nameClosedLog } from '../../../src/station/logNames';
import type { Logs } from '../memory';
import { bothSound, dayMs, event, fullSalon, nowMs, seat } from './clients';
import { breakLearning, refuseWrites } from './harms';
import { emptyHouse, fullHouse } from './houses';
import type { Scene, ScenesOf } from './scene';
import type { SceneHand } from './sceneHand';

/** Four heads of hair, and how many strands of ten break of each. */
const heads = [
  { told: { habits: [], smoke: 'no', bleaches: 0 }, breakOfTen: 1 },
  { told: { smoke: 'no', bleaches: 1 }, breakOfTen: 2 },
  { told: { smoke: 'smokes', bleaches: 2 }, breakOfTen: 6 },
  { told: { smoke: 'smellsBurnt', bleaches: 4 }, breakOfTen: 8 },
] as const;

/** The log of one visit as if its hair had been this, and its strands had come out so. */
const retell = (
  log: readonly ConsultationEvent[],
  told: object,
  shiftMs: number,
  broke: (zone: string) => boolean,
): readonly ConsultationEvent[] =>
  log.map((each) => {
    const moved = { ...each, atMs: each.atMs + shiftMs };
    if (moved.type === 'ANSWERED' && moved.payload.step === 'hotTools')
      return { ...moved, payload: { ...moved.payload, answers: { ...moved.payload.answers, ...told } } };
    if (moved.type === 'OUTCOME_RECORDED')
      return {
        ...moved,
        payload: { ...moved.payload, fibre: broke(moved.payload.zone) ? 'gummy' : 'sound' },
      };
    return moved;
  }) as readonly ConsultationEvent[];

/**
 * So many clients of the months before, two strands each, one client a day; the last left yesterday. Of ten
 * strands `more` break than of the four heads.
 */
export const withTaught =
  (logs: () => Logs, clients: number, settings: Settings = salon, more = 0) =>
  (): Logs => {
    const { record, log } = seat({
      chair: 30,
      ticket: 'S.T.',
      steps: [...bothSound, event('CLIENT_SAID_NO', { reason: 'changedHerMind' })],
      agoMs: dayMs,
      settings,
    });
    const records = Array.from({ length: clients }, (_, at) => {
      const { told, breakOfTen } = heads[at % heads.length] ?? heads[0];
      const told2 = retell(
        log,
        told,
        -dayMs * (clients - 1 - at),
        (zone) => ((at * 7) % 10) + (zone === 'ends' ? 0 : 3) < breakOfTen + more,
      );
      return closeRecord({ ...record, id: `taught${String(at).padStart(6, '0')}` }, told2);
    });
    return { ...logs(), [nameClosedLog(nowMs - 30 * dayMs)]: records };
  };

const reckoned = '[data-strands]';
const toTaught = async ({ act }: SceneHand): Promise<void> => {
  await act('day');
  await act('taught');
};
const scene = (logs: () => Logs, shows: string, go = toTaught): Scene => ({ logs, shows, go });
const back = async (hand: SceneHand): Promise<void> => {
  await toTaught(hand);
  await hand.page.locator(reckoned).waitFor();
  await hand.act('back-to-assumed');
};

/** The page of what strands taught: none, too few, some, years of them, turned off, and a worker that breaks. */
export const scenesOfTaught: ScenesOf = {
  empty: scene(emptyHouse, '[data-taught="taught"]'),
  usual: scene(withTaught(emptyHouse, 74), reckoned),
  full: scene(withTaught(fullHouse, 400, fullSalon), reckoned),
  error: { ...scene(withTaught(emptyHouse, 74), '[data-taught="failed"]'), harm: breakLearning },
  also: {
    tooFew: scene(withTaught(emptyHouse, 6), '[data-too-few]'),
    off: scene(withTaught(emptyHouse, 74), '[data-act="learn-again"]', async (hand) => {
      await back(hand);
      await hand.answerWho('[data-act="learn-again"]');
    }),
    notSaved: scene(withTaught(emptyHouse, 74), '.refusal:not(:empty)', async (hand) => {
      await toTaught(hand);
      await hand.page.locator(reckoned).waitFor();
      await refuseWrites(hand.page);
      await hand.act('back-to-assumed');
      await hand.answerWho();
    }),
  },
};
