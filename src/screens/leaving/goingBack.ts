import { type Accessor, createSignal } from 'solid-js';
import type { BackStep } from '../../../shared/records/steps';
import type { TapRefusal } from '../explainRefusal';
import { isOpenNow } from '../isOpenNow';
import type { StepProps } from '../stepProps';
import { costsToGoBack } from './whatFalls';

/** Going back to a step, past the question what that costs. */
export interface GoingBack {
  /** The step that is asked about, null where none is. */
  readonly to: Accessor<BackStep | null>;
  /** Why it was not taken. */
  readonly refusal: Accessor<TapRefusal | null>;
  /** Would judge and chart take it now? */
  readonly mayGo: (to: BackStep) => boolean;
  /** Where nothing falls by it, back is one tap. */
  readonly ask: (to: BackStep) => void;
  /** Yes, to where was asked about. */
  readonly go: () => void;
  readonly stay: () => void;
}

/** Makes the ways back of one client. Checked in tests/src/screens/goingBack.test.tsx. */
export function createGoingBack(
  props: Pick<StepProps, 'consultation' | 'settings' | 'nowMs' | 'submit'>,
): GoingBack {
  const [to, setTo] = createSignal<BackStep | null>(null);
  const [refusal, setRefusal] = createSignal<TapRefusal | null>(null);
  const take = async (step: BackStep): Promise<void> => {
    const taken = await props.submit({ type: 'REOPENED', answers: { step } });
    setRefusal(taken.ok ? null : taken.error);
    setTo(taken.ok ? null : step);
  };
  return {
    to,
    refusal,
    mayGo: (step) =>
      isOpenNow(props.consultation, { type: 'REOPENED', answers: { step } }, props.settings, props.nowMs),
    ask: (step) => {
      setRefusal(null);
      if (costsToGoBack(props.consultation)) setTo(step);
      else void take(step);
    },
    go: () => {
      const step = to();
      if (step !== null) void take(step);
    },
    stay: () => setTo(null),
  };
}
