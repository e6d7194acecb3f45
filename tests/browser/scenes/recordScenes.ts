import { salon } from '../../../seeds/salon';
import { listEditions } from '../../../shared/records/json/carriedSettings';
import { writeConsultations } from '../../../shared/records/json/consultationFile';
import type { Settings } from '../../../shared/records/settings';
import { fullSalon, nowMs, seat, until, steps as whole } from './clients';
import { refuseWrites } from './harms';
import { emptyHouse, fullHouse } from './houses';
import type { Scene } from './scene';
import type { SceneHand } from './sceneHand';

/** A file as another tablet saved it: of these tickets who is done, and who is still open. */
function saveOf(done: readonly string[], open: readonly string[], settings: Settings): string {
  const seated = [...done, ...open].map((ticket, index) =>
    seat({ chair: 12 + index, ticket, steps: index < done.length ? whole : until('DECIDED'), settings }),
  );
  const leaving = seated.map(({ id, record, log }) => ({
    record: { ...record, id },
    log,
    settings: listEditions(log, () => settings),
  }));
  const head = { madeAtMs: nowMs, isDemo: false, from: '2026-03-05', to: '2026-03-05' };
  const write = (atMs: number) => new Date(atMs).toISOString();
  return [...writeConsultations(leaving, { ...head, skinTests: [], unread: [] }, write)].join('');
}

const toRecords = async ({ act, press }: SceneHand): Promise<void> => {
  await act('settings');
  await press('[data-act="who-Opal"]');
  await act('section-backup');
  await act('to-records');
};

/** Opens the page where records come in, and chooses this file there. */
const bring =
  (file: () => string, before: (hand: SceneHand) => Promise<unknown> = async () => undefined) =>
  async (hand: SceneHand): Promise<void> => {
    await toRecords(hand);
    await before(hand);
    const chosen = { name: 'day.json', mimeType: 'application/json', buffer: Buffer.from(file()) };
    await hand.page.locator('[data-file="bring-records"]').setInputFiles(chosen);
  };

const came = '[data-brought="bring-records"]';
const refused = (kind: string) => `.refusal[data-refusal="${kind}"]`;
const wide = ['Wamemwom-QW.', 'Ommwhelm-W.M', 'Momwegwum-WM', 'Mowgwum-M.W.', 'Wemmblum-G.W'];

/** Records that are brought in from a file: what came, who was left out, and why nothing came. */
export const scenesOfRecords: Readonly<Record<string, Scene>> = {
  records: { logs: emptyHouse, shows: '[data-act="bring-records"]', go: toRecords },
  recordsCame: {
    logs: emptyHouse,
    shows: came,
    go: bring(() => saveOf(['Q.F.', 'A.K.'], [], salon)),
  },
  recordsOpen: {
    logs: fullHouse,
    shows: came,
    go: bring(() => saveOf(wide.slice(0, 2), wide, fullSalon)),
  },
  recordsRefused: {
    logs: emptyHouse,
    shows: refused('records'),
    go: bring(() => saveOf(['Q.F.'], [], salon).slice(0, -100)),
  },
  recordsNotSaved: {
    logs: emptyHouse,
    shows: refused('recordsNotSaved'),
    go: bring(
      () => saveOf(['Q.F.', 'A.K.'], [], salon),
      ({ page }) => refuseWrites(page),
    ),
  },
};
