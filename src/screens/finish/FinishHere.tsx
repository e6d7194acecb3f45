import { createMemo, Show } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import { isOpenNow } from '../isOpenNow';
import type { Sender } from '../sender';
import type { StepProps } from '../stepProps';

/** Would the chart let her go home with a heat plan now? Whatever was rinsed can be finished from everywhere. */
export const mayFinish = ({
  consultation,
  settings,
  nowMs,
}: Pick<StepProps, 'consultation' | 'settings' | 'nowMs'>) =>
  isOpenNow(consultation, { type: 'FINISHED' }, settings, nowMs);

/** The way to her heat plan, where it is open. Checked in tests/src/screens/stopped/stoppedStrands.test.tsx. */
export function FinishHere(
  props: Pick<StepProps, 'consultation' | 'settings' | 'nowMs'> & {
    readonly sender: Sender;
    readonly kind?: 'primary' | 'plain';
    readonly onFinished?: () => void;
  },
) {
  const words = useWords();
  const isOpen = createMemo(() => mayFinish(props));
  const finish = async () => {
    if (await props.sender.send({ type: 'FINISHED' })) props.onFinished?.();
  };
  return (
    <Show when={isOpen()}>
      <BigButton kind={props.kind ?? 'plain'} act="finish" onPress={() => void finish()}>
        {words.finish.goThere}
      </BigButton>
    </Show>
  );
}
