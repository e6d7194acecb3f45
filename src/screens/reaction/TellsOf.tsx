import { createMemo, createSignal, For, Show } from 'solid-js';
import { listTellable, type Tellable, tellLate } from '../../../shared/records/toldLate';
import { BigButton } from '../../parts/BigButton';
import { Dialog } from '../../parts/Dialog';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { isOpenNow } from '../isOpenNow';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import './tellsOf.css';

/** Which of what she may still tell would be taken now? Asks the judge and the chart that will take it. */
const listOpen = ({
  consultation,
  settings,
  nowMs,
}: Pick<StepProps, 'consultation' | 'settings' | 'nowMs'>) =>
  listTellable(settings.profile).filter((reaction) => {
    const raw = tellLate(consultation.record, reaction, settings.units);
    return raw !== null && isOpenNow(consultation, raw, settings, nowMs);
  });

/** Is there anything she may still tell of? */
export const mayTell = (props: Parameters<typeof listOpen>[0]): boolean => listOpen(props).length > 0;

/**
 * She tells of hives, swelling or a black tattoo only now: a tile each, held, since each of them stops for good.
 * Checked in tests/src/screens/reaction/tellsOf.test.tsx.
 */
export function TellsOf(
  props: StepProps & { readonly isOpenAtFirst?: boolean; readonly onTold?: () => void },
) {
  const words = useWords();
  const said = () => words.reaction.tells;
  const [isOpen, setIsOpen] = createSignal(false);
  const open = createMemo(() => listOpen(props), [], {
    equals: (one, other) => one.join() === other.join(),
  });
  const sender = createSender(props);
  const tell = async (reaction: Tellable) => {
    const raw = tellLate(props.consultation.record, reaction, props.settings.units);
    if (raw !== null && (await sender.send(raw))) props.onTold?.();
  };
  const tiles = () => (
    <div class="tells-of-tiles">
      <For each={open()}>
        {(reaction) => (
          <HoldButton
            label={words.asked.client.reactions.options[reaction]}
            act={`tells-${reaction}`}
            onHeld={() => void tell(reaction)}
          />
        )}
      </For>
    </div>
  );
  return (
    <Show when={open().length > 0}>
      <section class="tells-of" data-panel="tells-of">
        <Show
          when={props.isOpenAtFirst === true}
          fallback={
            <>
              <BigButton kind="quiet" act="tells-of" isWay onPress={() => setIsOpen(true)}>
                {said().open}
              </BigButton>
              <Dialog isOpen={isOpen()} title={said().title} onClose={() => setIsOpen(false)}>
                {tiles()}
                <Refusal refusal={sender.refusal()} />
              </Dialog>
            </>
          }
        >
          <h2>{said().title}</h2>
          {tiles()}
          <Refusal refusal={sender.refusal()} />
        </Show>
      </section>
    </Show>
  );
}
