import type { Form } from '../../../shared/records/form';
import type { FieldRefusal, Raw } from '../../../shared/records/readForm';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { AnyFormWords } from '../../words/formWords';
import { useMayWrite } from '../useMayWrite';
import type { Draft } from './draft';
import type { Picks } from './field';
import type { RenderInRow } from './ListField';
import { Questions } from './Questions';
import './form.css';

/**
 * All a form asks, as fields: what is tapped or typed goes into the draft first, then to `onChange`.
 * Refusals are said at the field whose path they name. `picks` offers texts in one tap, by question name.
 * Checked in tests/src/parts/formFields.test.tsx.
 */
export function FormFields(props: {
  readonly form: Form;
  readonly words: AnyFormWords;
  readonly draft: Draft;
  readonly onChange?: (name: string, value: Raw) => void;
  readonly refusals: readonly FieldRefusal[];
  readonly units: UnitSettings;
  readonly hasAgeLine: boolean;
  readonly nowMs: number;
  readonly picks?: Picks;
  /** What else stands in a row of a list, before what takes it off. */
  readonly renderInRow?: RenderInRow;
}) {
  const mayWrite = useMayWrite();
  return (
    <fieldset class="form" disabled={!mayWrite()}>
      <Questions
        form={props.form}
        words={props.words}
        raw={props.draft.raw()}
        prefix=""
        onChange={(name, value) => {
          props.draft.set(name, value);
          props.onChange?.(name, value);
        }}
        refusals={props.refusals}
        units={props.units}
        hasAgeLine={props.hasAgeLine}
        nowMs={props.nowMs}
        picks={props.picks}
        renderInRow={props.renderInRow}
      />
    </fieldset>
  );
}
