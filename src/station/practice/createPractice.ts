import { type Accessor, createSignal } from 'solid-js';
import { readPracticeNow } from '../../../machines/practice/practiceClock';
import { defaultSettings, type Settings } from '../../../shared/records/settings';
import { accept, type Result } from '../../../shared/result';
import type { School } from '../../demo/lessons';
import { type Edition, places } from '../../storage/edition';
import { openStore } from '../../storage/openStore';
import { markPractice, unmarkPractice } from '../../storage/practiceMark';
import { makeId } from '../makeId';
import { makeStation } from '../makeStation';
import type { SubmitRefusal } from '../submitRefusal';

/** Practice on this tablet: is it what is shown, how it is entered, and how it is left. */
export interface PracticeInUse {
  readonly isOn: boolean;
  /** What is practised with; null while it is fetched, and where this is no practice. */
  readonly school: Accessor<School | null>;
  /** Takes this salon's people and units along and starts the station anew; false when that failed, and the salon is shown. */
  readonly enter: (by: string, salon: Settings) => Promise<boolean>;
  /** Starts the station anew with the salon's own; what was practised stays. False when that failed. */
  readonly leave: () => Promise<boolean>;
}

const ignore = (): void => undefined;

/** What a lesson is judged under is its own; units, language and who works here are the salon's. */
export const settlePractice = ({
  units,
  locale,
  scaleStepG,
  staff,
  spoken,
  profile,
}: Settings): Settings => ({
  ...defaultSettings,
  profile,
  units,
  locale,
  scaleStepG,
  staff,
  spoken,
});

/** The store of practice is opened, told who is coming, and let go of again: the next start opens it. */
async function prepare(by: string, salon: Settings): Promise<boolean> {
  const station = makeStation({
    store: openStore('practice'),
    now: () => readPracticeNow(station.readState().practice?.changes ?? [], Date.now()),
    makeId,
    practice: { readWallMs: Date.now },
    publish: ignore,
    onAcknowledged: ignore,
    onDropped: ignore,
  });
  const tell = async (): Promise<Result<void, SubmitRefusal>> => {
    await station.startWriting();
    const isNew = station.readState().open.size === 0;
    const saved = isNew ? await station.saveSettings(by, settlePractice(salon)) : accept(undefined);
    // Whatever was left on, nobody comes into a clock that runs away.
    return saved.ok ? station.setSpeed(by, 1) : saved;
  };
  const told = await tell().finally(() => station.stopWriting());
  return told.ok;
}

/**
 * Practice on this tablet, in a store of its own that stays when it is left. One file says that it is shown, set last on
 * entering: whatever stops that half way, the salon is shown. Checked in tests/browser/practice.test.ts.
 */
export function createPractice(edition: Edition, startAnew: () => void): PracticeInUse {
  const [school, setSchool] = createSignal<School | null>(null);
  const isOn = edition === 'practice';
  if (isOn) void import('../../demo/lessons').then(({ openSchool }) => setSchool(openSchool()));
  return {
    isOn,
    school,
    async enter(by, salon) {
      const alone = navigator.locks.request(places.practice.lock, async () => {
        const isReady = await prepare(by, salon);
        if (isReady) await markPractice(navigator.storage);
        return isReady;
      });
      const isIn = await (alone as Promise<boolean>).catch(() => false);
      if (isIn) startAnew();
      return isIn;
    },
    async leave() {
      const isOut = await unmarkPractice(navigator.storage).then(
        () => true,
        () => false,
      );
      if (isOut) startAnew();
      return isOut;
    },
  };
}
