import { type Accessor, createEffect, createSignal } from 'solid-js';
import type { RawEvent } from '../../../shared/records/classify';
import type { TapRefusal } from '../explainRefusal';
import type { StepProps } from '../stepProps';

const suspected: RawEvent = { type: 'REACTION_SUSPECTED' };

/** The rinse steps, open from the tap on: what the store says comes after what she does. */
export interface RinseSteps {
  /** They are shown here; the record may not say so yet. */
  readonly isOpen: Accessor<boolean>;
  /** Why it could not be written. */
  readonly refusal: Accessor<TapRefusal | null>;
  /** Opens them, then writes what was tapped: that she reacts, or a look that says that it stings. */
  readonly open: (raw?: RawEvent) => void;
  /** Tries once more to write that she reacts, where that is not written. */
  readonly write: () => Promise<void>;
  /** It was none; what is written is taken back by its own event. */
  readonly close: () => void;
}

/** Makes the rinse steps of one client. Checked in tests/src/screens/reaction/rinseSteps.test.tsx. */
export function createRinseSteps(props: Pick<StepProps, 'consultation' | 'submit'>): RinseSteps {
  const [isOpen, setIsOpen] = createSignal(false);
  const [refusal, setRefusal] = createSignal<TapRefusal | null>(null);
  const isWritten = () => props.consultation.state.context.facts.care !== 'calm';
  const close = (): void => {
    setIsOpen(false);
    setRefusal(null);
  };
  const submit = async (raw: RawEvent): Promise<void> => {
    const taken = await props.submit(raw);
    setRefusal(taken.ok || isWritten() ? null : taken.error);
  };
  createEffect(() => {
    if (isWritten()) close();
  });
  return {
    isOpen,
    refusal,
    open: (raw = suspected) => {
      setIsOpen(true);
      void submit(raw);
    },
    write: async () => {
      if (!isWritten()) await submit(suspected);
    },
    close,
  };
}
