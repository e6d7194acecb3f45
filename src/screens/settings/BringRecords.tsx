import type { Result } from '../../../shared/result';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { Caution } from '../../parts/Caution';
import { useWords } from '../../parts/useWords';
import type { RecordsBrought } from '../../station/bringInRecords';
import type { SubmitRefusal } from '../../station/submitRefusal';
import { BringFile } from './BringFile';

/** A file of records, and what came of it. */
export interface RecordsInUse {
  readonly bringInRecords: (file: string) => Promise<Result<RecordsBrought, SubmitRefusal>>;
}

/**
 * Brings closed records of a file in, beside the clients who are here: says how many came, how many were here already or were erased here, and by
 * name who was still open. Checked in tests/src/screens/settings/backup.test.tsx.
 */
export function BringRecords(props: {
  readonly bring: RecordsInUse['bringInRecords'];
  readonly units: UnitSettings;
}) {
  const words = useWords();
  const said = () => words.records;
  const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
  const sayBrought = ({ came, here, erased, open }: RecordsBrought) =>
    [
      ...(came > 0 ? [said().came(write(came))] : []),
      ...(here > 0 ? [said().here(write(here))] : []),
      ...(erased > 0 ? [said().erased(write(erased))] : []),
      ...(came + here + erased === 0 ? [said().none] : []),
      ...(open.length > 0 ? [said().open(open.join(', '))] : []),
    ].join(' ');
  return (
    <>
      <section class="panel" data-panel="records-bring">
        <p>{said().hint}</p>
        <BringFile
          act="bring-records"
          label={said().choose}
          accept=".json,application/json"
          notRead={{ kind: 'records', why: 'notRead' }}
          bring={props.bring}
        >
          {sayBrought}
        </BringFile>
      </section>
      <Caution kind="plain">
        <p>{said().care}</p>
      </Caution>
    </>
  );
}
