import { type Accessor, createMemo, createSignal } from 'solid-js';
import type { RawEvent } from '../../shared/records/classify';
import type { Form } from '../../shared/records/form';
import { type FieldRefusal, type Raw, type RawForm, readForm } from '../../shared/records/readForm';
import { listMistakes } from '../parts/form/draft';
import type { TapRefusal } from './explainRefusal';
import { createKeptDraft, type KeptDraft } from './keptDraft';
import type { Lasting } from './lastingDrafts';
import { createSender } from './sender';
import { showFirstRefused } from './showFirstRefused';
import type { StepProps } from './stepProps';

/** One event's form: what was typed, what is wrong with it, and the sending. */
export interface EventForm {
  readonly draft: KeptDraft;
  /** Said at the fields: at once what was typed wrong, once sent also what is missing. */
  readonly refusals: Accessor<readonly FieldRefusal[]>;
  /** Nothing is missing and nothing is wrong: sending is what there is to do. */
  readonly isComplete: Accessor<boolean>;
  /** Said on the screen. */
  readonly refusal: Accessor<TapRefusal | null>;
  /** Something went into the draft: what the station said of the last try is no longer true. The sheet sets it by itself. */
  readonly onChange: (name: string, value: Raw) => void;
  /** Sends what stands in the fields, together with `also`. Was it taken? Only then it begins anew. */
  readonly send: (
    type: Exclude<RawEvent['type'], 'ANSWERED'>,
    also?: RawForm,
    by?: string,
  ) => Promise<boolean>;
}

/**
 * Makes the form of one event. `form` is what the fields ask; `name` keeps its draft apart from every other.
 * What was typed stays as it was typed, however often it is refused. Checked in tests/src/screens/strandTest/strandScreens.test.tsx.
 */
export function createEventForm(
  props: Pick<StepProps, 'submit' | 'settings' | 'nowMs'>,
  form: Form,
  name: string,
  initial: RawForm,
  store?: Lasting,
): EventForm {
  const draft = createKeptDraft(name, initial, props.settings, store);
  const sender = createSender(props);
  const [hasTried, setHasTried] = createSignal(false);
  const context = () => ({ units: props.settings.units, hasAgeLine: false, nowMs: props.nowMs });
  const ownRefusals = createMemo(() => {
    if (!hasTried()) return listMistakes(form, draft.raw(), context());
    const read = readForm(form, draft.raw(), context());
    return read.ok ? [] : read.error;
  });
  return {
    draft,
    isComplete: createMemo(() => readForm(form, draft.raw(), context()).ok),
    refusal: sender.refusal,
    refusals: () => {
      const refusal = sender.refusal();
      const said = refusal?.kind === 'fields' ? refusal.fields : [];
      return [...ownRefusals(), ...said];
    },
    onChange: () => sender.say(null),
    send: async (type, also = {}, by) => {
      setHasTried(true);
      const fields = ownRefusals();
      if (fields.length > 0) {
        sender.say({ kind: 'fields', fields });
        showFirstRefused();
        return false;
      }
      const isTaken = await sender.send({ type, answers: { ...draft.raw(), ...also } }, by);
      if (isTaken) {
        draft.begin(initial);
        setHasTried(false);
      } else if (sender.refusal()?.kind === 'fields') {
        showFirstRefused();
      }
      return isTaken;
    },
  };
}
