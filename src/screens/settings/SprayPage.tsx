import { shelfForm } from '../../../shared/records/forms/shelf';
import type { UnitSettings } from '../../../shared/units/quantity';
import { Field } from '../../parts/form/Field';
import { NumberField } from '../../parts/form/NumberField';
import { useMayWrite } from '../../parts/useMayWrite';
import { useWords } from '../../parts/useWords';
import type { Editing } from './editing';
import { ListBox } from './ListBox';
import './sprayPage.css';
import { sayLastTrial } from './sprayRow';

const { unknown: _unknown, or: _or, ...makerSays } = shelfForm.makerSaysUpToC;

/** One spray of the shelf: its list as it is on the pack, what its maker claims, and how its warmth trial went. */
export function SprayPage(props: {
  readonly editing: Editing;
  readonly row: number;
  readonly units: UnitSettings;
  readonly nowMs: number;
}) {
  const words = useWords();
  const mayWrite = useMayWrite();
  const asks = () => words.settings.questions.shelf.rows;
  const row = () => props.editing.row(props.row);
  const path = (name: string) => `shelf.${props.row}.${name}`;
  const list = () => String(row().ingredients ?? '');
  const change = (name: string) => (value: unknown) =>
    props.editing.changeRow(props.row, name, value === '' ? undefined : (value as string));
  return (
    <fieldset class="form spray-page" disabled={!mayWrite()}>
      <div class="spray-typed">
        <Field
          path={path('ingredients')}
          words={asks().ingredients}
          refusals={props.editing.refusals()}
          units={props.units}
          kind="text"
          offers={0}
        >
          <ListBox
            ask={asks().ingredients.ask}
            path={path('ingredients')}
            value={list()}
            isRefused={props.editing.refusals().some((each) => each.path === path('ingredients'))}
            onChange={change('ingredients')}
          />
        </Field>
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
        <p data-line="trial">{sayLastTrial(row(), words, props.units) ?? words.warmthTrial.noneYet}</p>
      </div>
    </fieldset>
  );
}
