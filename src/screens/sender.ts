import { type Accessor, createSignal } from 'solid-js';
import type { RawEvent } from '../../shared/records/classify';
import type { TapRefusal } from './explainRefusal';
import type { StepProps } from './stepProps';

/** Hands taps over one at a time, and remembers why the last one was refused. */
export interface Sender {
  readonly refusal: Accessor<TapRefusal | null>;
  readonly isSending: Accessor<boolean>;
  /** Was it taken? A second tap while the first is on its way is none. */
  readonly send: (raw: RawEvent, by?: string) => Promise<boolean>;
  /** What to say instead of sending; null says nothing. */
  readonly say: (refusal: TapRefusal | null) => void;
}

/** Makes a sender for one screen. */
export function createSender(props: Pick<StepProps, 'submit'>): Sender {
  const [refusal, setRefusal] = createSignal<TapRefusal | null>(null);
  const [isSending, setIsSending] = createSignal(false);
  return {
    refusal,
    isSending,
    say: (said) => setRefusal(said),
    send: async (raw, by) => {
      if (isSending()) return false;
      setIsSending(true);
      try {
        const taken = await props.submit(raw, by);
        setRefusal(taken.ok ? null : taken.error);
        return taken.ok;
      } finally {
        setIsSending(false);
      }
    },
  };
}
