import type { Accessor, JSX } from 'solid-js';
import type { Form, Question } from '../../../shared/records/form';
import type { RawForm } from '../../../shared/records/readForm';
import type { AnyFormWords } from '../../words/formWords';
import { ChoiceField, ChoicesField } from './ChoiceField';
import { Field } from './Field';
import type { FieldProps } from './field';
import { ListField, type RenderInRow } from './ListField';
import { NumberField } from './NumberField';
import { listNumberPicks } from './numberPicks';
import { TextField } from './TextField';
import { TimeField } from './TimeField';

/** How a row of a list is asked: a form within the form. */
export type RenderRow = (row: {
  readonly form: Form;
  readonly words: AnyFormWords;
  readonly raw: Accessor<RawForm>;
  readonly prefix: string;
  readonly onChange: (raw: RawForm) => void;
}) => JSX.Element;

interface OneQuestionProps {
  readonly field: Omit<FieldProps<Question>, 'question'>;
  readonly question: Question;
  readonly renderRow: RenderRow;
  readonly renderInRow?: RenderInRow | undefined;
}

/** One question of a form with the control of its kind. A form's questions never change while it is shown. */
export function OneQuestion(props: OneQuestionProps) {
  return (
    <Field
      path={props.field.path}
      words={props.field.words}
      refusals={props.field.refusals}
      units={props.field.units}
      kind={props.question.kind}
      offers={countOffers(props)}
    >
      {renderControl(props)}
    </Field>
  );
}

function countOffers({ field, question }: OneQuestionProps): number {
  if (question.kind === 'number') {
    return listNumberPicks(field.name, question, field.units, field.picks).length;
  }
  return 'options' in question ? question.options.length : 0;
}

function renderControl({ field, question, renderRow, renderInRow }: OneQuestionProps): JSX.Element {
  switch (question.kind) {
    case 'choice':
      return <ChoiceField {...field} question={question} />;
    case 'choices':
      return <ChoicesField {...field} question={question} />;
    case 'number':
      return <NumberField {...field} question={question} />;
    case 'text':
      return <TextField {...field} question={question} />;
    case 'time':
      return <TimeField {...field} question={question} />;
    case 'list':
      return (
        <ListField
          {...field}
          question={question}
          renderInRow={renderInRow}
          renderRow={(raw, index, change) =>
            renderRow({
              form: question.of,
              words: field.words.rows ?? {},
              raw,
              prefix: `${field.path}.${index}.`,
              onChange: change,
            })
          }
        />
      );
  }
}
