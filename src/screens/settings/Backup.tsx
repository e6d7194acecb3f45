import { createSignal, Show } from 'solid-js';
import type { Result } from '../../../shared/result';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Refusal } from '../../parts/Refusal';
import { useIsDemo } from '../../parts/useIsDemo';
import { useWords } from '../../parts/useWords';
import type { BroughtIn } from '../../station/bringIn';
import type { SubmitRefusal } from '../../station/submitRefusal';
import type { HandedFile } from '../../tablet/handOver';
import { nameDay } from '../day/dayRecords';
import { saveText } from '../day/saveText';
import { HandOverWays } from '../handOver/HandOverWays';

/** The whole station as a file, and back. */
export interface BackupInUse {
  /** In pieces, in their order. */
  readonly backUp: () => Iterable<string>;
  readonly bringIn: (file: string) => Promise<Result<BroughtIn, SubmitRefusal>>;
}

/** Saves the whole station to one file, and brings such a file in. Checked in tests/src/screens/settings/backup.test.tsx. */
export function Backup(props: {
  readonly backup: BackupInUse;
  readonly units: UnitSettings;
  readonly nowMs: number;
}) {
  const words = useWords();
  const said = () => words.settings.backup;
  const isDemo = useIsDemo();
  const [savedAs, setSavedAs] = createSignal<string | null>(null);
  const [brought, setBrought] = createSignal<BroughtIn | null>(null);
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const [isReading, setIsReading] = createSignal(false);
  let picker!: HTMLInputElement;
  const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
  const makeFile = (): HandedFile => ({
    name: `strandproof-${isDemo() ? 'demo-' : ''}backup-${nameDay(props.nowMs)}.txt`,
    type: 'text/plain',
    text: () => props.backup.backUp(),
  });
  const save = () => {
    const file = makeFile();
    saveText(file.name, file.text(), file.type);
    setSavedAs(file.name);
  };
  const take = async (file: File | undefined) => {
    if (file === undefined) return;
    setIsReading(true);
    setBrought(null);
    try {
      const taken = await props.backup.bringIn(await file.text());
      setRefusal(taken.ok ? null : taken.error);
      setBrought(taken.ok ? taken.value : null);
    } catch {
      // The file is gone, or may not be read: nothing came in.
      setRefusal({ kind: 'backup', why: 'notRead' });
    } finally {
      setIsReading(false);
      picker.value = '';
    }
  };
  return (
    <>
      <div class="columns">
        <section class="panel" data-panel="backup-save">
          <h2>{said().saveTitle}</h2>
          <p>{said().saveHint}</p>
          <BigButton act="save-station" isWay onPress={save}>
            {said().save}
          </BigButton>
          <HandOverWays files={() => [makeFile()]} />
          <p role="status">
            <Show when={savedAs()}>{(name) => <strong>{words.day.downloaded(name())}</strong>}</Show>
          </p>
        </section>
        <section class="panel" data-panel="backup-bring">
          <h2>{said().bringTitle}</h2>
          <p>{said().bringHint}</p>
          <input
            ref={picker}
            type="file"
            accept=".txt,text/plain"
            hidden
            onChange={(event) => void take(event.currentTarget.files?.[0])}
          />
          <BigButton act="bring-in" isDisabled={isReading()} onPress={() => picker.click()}>
            {said().bring}
          </BigButton>
          <p role="status">
            <Show when={brought()}>
              {(what) => <strong data-brought>{said().moved(write(what().closed))}</strong>}
            </Show>
          </p>
          <Refusal refusal={refusal()} />
        </section>
      </div>
      <Caution kind="plain">
        <p>{said().care}</p>
      </Caution>
    </>
  );
}
