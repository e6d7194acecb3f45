import { salon } from '../../../seeds/salon';
import { writeBackup } from '../../../shared/records/backupFile';
import { closeRecord } from '../../../shared/records/closedRecord';
import type { Settings } from '../../../shared/records/settings';
import { nameClosedLog, nameOpenLog, SETTINGS_LOG } from '../../../src/station/logNames';
import { fullSalon, nowMs, seat, until, steps as whole } from './clients';
import { refuseWrites } from './harms';
import { fullHouse } from './houses';
import type { Scene } from './scene';
import type { SceneHand } from './sceneHand';

/** The backup of another tablet of the salon: of these tickets who is done, and who is still open. */
function backUp(done: readonly string[], open: readonly string[], settings: Settings): string {
  const logs = new Map<string, unknown[]>([[SETTINGS_LOG, [{ settings }]]]);
  for (const [index, ticket] of [...done, ...open].entries()) {
    const isDone = index < done.length;
    const seated = seat({ chair: 12 + index, ticket, steps: isDone ? whole : until('DECIDED'), settings });
    const { id, record } = seated;
    const log = seated.log.map((entry) => ({ ...entry, settingsId: 0 }));
    const closed = closeRecord({ ...record, id }, log);
    const name = closed === null ? nameOpenLog(id) : nameClosedLog(closed.endedAtMs);
    logs.set(name, [...(logs.get(name) ?? []), ...(closed === null ? log : [closed])]);
  }
  return [...writeBackup(logs, { madeAtMs: nowMs, isDemo: false })].join('');
}

const bring =
  (file: () => string, before: (hand: SceneHand) => Promise<unknown> = async () => undefined) =>
  async (hand: SceneHand): Promise<void> => {
    await hand.act('settings');
    await hand.press('[data-act="who-Opal"]');
    await hand.act('section-backup');
    await before(hand);
    const chosen = { name: 'backup.txt', mimeType: 'text/plain', buffer: Buffer.from(file()) };
    await hand.page.locator('[data-file="bring-in"]').setInputFiles(chosen);
  };

const came = '[data-brought="bring-in"]';
const wide = ['Wamemwom-QW.', 'Ommwhelm-W.M', 'Momwegwum-WM', 'Mowgwum-M.W.', 'Wemmblum-G.W'];

/** A backup that comes in beside clients: what came, who was left out, and why it stopped half way. */
export const scenesOfBackup: Readonly<Record<string, Scene>> = {
  backupCame: { logs: fullHouse, shows: came, go: bring(() => backUp(['Q.F.', 'A.K.'], [], salon)) },
  backupOpen: {
    logs: fullHouse,
    shows: came,
    go: bring(() => backUp(wide.slice(0, 2), wide, fullSalon)),
  },
  backupNotSaved: {
    logs: fullHouse,
    shows: '.refusal[data-refusal="recordsNotSaved"]',
    go: bring(
      () => backUp(['Q.F.', 'A.K.'], [], salon),
      ({ page }) => refuseWrites(page),
    ),
  },
};
