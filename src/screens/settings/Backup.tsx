import { createSignal, Show } from 'solid-js';
import type { Result } from '../../../shared/result';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { useInvented } from '../../parts/useInvented';
import { useWords } from '../../parts/useWords';
import type { Beside, BroughtIn } from '../../station/bringIn';
import type { SubmitRefusal } from '../../station/submitRefusal';
import type { HandedFile } from '../../tablet/handOver';
import { nameDay } from '../day/dayNames';
import { saveText } from '../day/saveText';
import { useTabletFacts } from '../diagnosis/diagnosisInUse';
import { HandOverWays } from '../handOver/HandOverWays';
import { BringFile } from './BringFile';

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
  const invented = useInvented();
  const facts = useTabletFacts();
  const [savedAs, setSavedAs] = createSignal<string | null>(null);
  const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
  const nameAll = (tickets: readonly string[]) => [...new Set(tickets)].join(', ');
  const sayBeside = (closed: number, { here, tests, toldTwice, open }: Beside) =>
    [
      ...(closed > 0 ? [words.records.came(write(closed))] : []),
      ...(tests > 0 ? [said().tests(write(tests))] : []),
      ...(closed + tests === 0 ? [said().nothingNew] : []),
      ...(here > 0 ? [words.records.here(write(here))] : []),
      ...(toldTwice.length > 0 ? [said().toldTwice(nameAll(toldTwice))] : []),
      ...(open.length > 0 ? [said().open(nameAll(open))] : []),
    ].join(' ');
  const sayBrought = ({ closed, gone, beside }: BroughtIn) =>
    (beside === null ? said().moved(write(closed)) : sayBeside(closed, beside)) + said().gone(write(gone));
  const makeFile = (): HandedFile => ({
    name: `strandproof-${invented() === 'demo' ? 'demo-' : ''}backup-${nameDay(props.nowMs)}.txt`,
    type: 'text/plain',
    text: () => props.backup.backUp(),
  });
  const save = async () => {
    const file = makeFile();
    // At one go: what is tapped in the meantime belongs to the next one.
    await saveText(file.name, [...file.text()], file.type);
    facts?.noteBackup(props.nowMs);
    setSavedAs(file.name);
  };
  return (
    <div class="columns">
      <div class="column">
        <section class="panel" data-panel="backup-save">
          <h2>{said().saveTitle}</h2>
          <p>{said().saveHint}</p>
          <BigButton act="save-station" isWay onPress={() => void save()}>
            {said().save}
          </BigButton>
          <HandOverWays files={() => [makeFile()]} onHanded={() => facts?.noteBackup(props.nowMs)} />
          <p role="status">
            <Show when={savedAs()}>{(name) => <strong>{words.day.downloaded(name())}</strong>}</Show>
          </p>
        </section>
        <Caution kind="plain">
          <p>{said().care}</p>
        </Caution>
      </div>
      <section class="panel" data-panel="backup-bring">
        <h2>{said().bringTitle}</h2>
        <p>{said().bringHint}</p>
        <BringFile
          act="bring-in"
          label={said().bring}
          accept=".txt,text/plain"
          notRead={{ kind: 'backup', why: 'notRead' }}
          bring={props.backup.bringIn}
        >
          {sayBrought}
        </BringFile>
      </section>
    </div>
  );
}
