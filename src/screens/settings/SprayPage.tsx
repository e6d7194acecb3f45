import { createMemo } from 'solid-js';
import { readIngredientList } from '../../../shared/chemistry/ingredients/readIngredientList';
import { shelfForm } from '../../../shared/records/forms/shelf';
import { readNumber } from '../../../shared/units/numberField';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { Field } from '../../parts/form/Field';
import { NumberField } from '../../parts/form/NumberField';
import { useMayWrite } from '../../parts/useMayWrite';
import { useWords } from '../../parts/useWords';
import type { Editing } from './editing';
import { ListQuestion } from './ListQuestion';
import { ListReading } from './ListReading';
import './sprayPage.css';
import { sayLastTrial } from './sprayRow';

const { unknown: _unknown, or: _or, ...makerSays } = shelfForm.makerSaysUpToC;

/** One spray of the shelf: its list as it is on the pack, what its maker claims, and how its warmth trial went. */
export function SprayPage(props: {
  readonly editing: Editing;
  readonly row: number;
  readonly units: UnitSettings;
  readonly nowMs: number;
  readonly onTrial: () => void;
}) {
  const words = useWords();
  const mayWrite = useMayWrite();
  const asks = () => words.settings.questions.shelf.rows;
  const row = () => props.editing.row(props.row);
  const path = (name: string) => `shelf.${props.row}.${name}`;
  const typed = createMemo(() => String(row().ingredients ?? ''));
  const list = createMemo(() => {
    const read = readIngredientList(typed().trim());
    return read.ok ? read.value : [];
  });
  const makerSaysUpToC = () => {
    const read = readNumber(String(row().makerSaysUpToC ?? ''), makerSays.field, props.units);
    return read.ok ? read.value : undefined;
  };
  const saysTrial = () => {
    const last = sayLastTrial(row(), words, props.units);
    if (last === null) return words.warmthTrial.noneYet;
    return props.editing.isTrialSaved(props.row) ? last : words.warmthTrial.unsaved(last);
  };
  const change = (name: string) => (value: unknown) =>
    props.editing.changeRow(props.row, name, value === '' ? undefined : String(value));
  return (
    <fieldset class="form spray-page" disabled={!mayWrite()}>
      <div class="spray-typed">
        <ListQuestion
          path={path('ingredients')}
          typed={typed()}
          units={props.units}
          isMalformed={props.editing.refusals().some(({ path: at }) => at === path('ingredients'))}
          onChange={change('ingredients')}
        />
        <Field
          path={path('makerSaysUpToC')}
          words={asks().makerSaysUpToC}
          refusals={props.editing.refusals()}
          units={props.units}
          kind="number"
          offers={0}
        >
          <NumberField
            path={path('makerSaysUpToC')}
            name="makerSaysUpToC"
            question={makerSays}
            words={asks().makerSaysUpToC}
            value={row().makerSaysUpToC ?? ''}
            onChange={change('makerSaysUpToC')}
            refusals={props.editing.refusals()}
            units={props.units}
            nowMs={props.nowMs}
            picks={undefined}
          />
        </Field>
        <div class="last-trial">
          <p data-line="trial">{saysTrial()}</p>
          <BigButton act="warmth-trial" onPress={props.onTrial}>
            {words.warmthTrial.open}
          </BigButton>
        </div>
      </div>
      <ListReading
        list={list()}
        isRefused={list().length === 0 && typed().trim() !== ''}
        makerSaysUpToC={makerSaysUpToC()}
        units={props.units}
      />
    </fieldset>
  );
}
