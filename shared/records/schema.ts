import * as v from 'valibot';
import type { Form, Question } from './form';

/** The valibot schema of one stored answer. */
function schemaOfQuestion(question: Question): v.GenericSchema {
  switch (question.kind) {
    case 'choice':
      return v.picklist(question.options);
    case 'choices':
      return v.pipe(
        v.array(v.picklist(question.options)),
        v.minLength(1),
        v.check((chosen) => chosen.length === 1 || !chosen.includes(question.none), 'none and others'),
      );
    case 'number': {
      const number = v.pipe(
        v.number(),
        v.finite(),
        v.minValue(question.field.min),
        v.maxValue(question.field.max),
      );
      return question.unknown === true ? v.union([number, v.literal('unknown')]) : number;
    }
    case 'text':
      return v.pipe(v.string(), v.maxLength(question.maxLength * 2));
    case 'time':
      return v.pipe(v.number(), v.safeInteger());
    case 'list':
      return v.pipe(v.array(schemaOfForm(question.of)), v.minLength(question.min), v.maxLength(question.max));
  }
}

/** May a stored log lack the answer to this question? Asked only sometimes, or not yet when the log was written,
 * or the station had nothing to add. */
export const mayBeAbsent = ({ when, whenAgeLine, addedIn, stamped }: Question): boolean =>
  when !== undefined || whenAgeLine === true || addedIn !== undefined || stamped === true;

/**
 * The schema of a form's stored answers, derived from the same table that asks them; partial: any may be absent.
 * `more` is what the station itself adds beside them.
 */
export const schemaOfForm = (
  form: Form,
  whole: 'whole' | 'partial' = 'whole',
  more: v.ObjectEntries = {},
): v.GenericSchema =>
  v.pipe(
    v.custom<object>((answers) => !Array.isArray(answers)),
    v.strictObject({
      ...Object.fromEntries(
        Object.entries(form).map(([name, question]) => {
          const schema = schemaOfQuestion(question);
          return [name, whole === 'partial' || mayBeAbsent(question) ? v.optional(schema) : schema];
        }),
      ),
      ...more,
    }),
  );
