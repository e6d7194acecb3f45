import { createMemo, createSignal, Show } from 'solid-js';
import type { StepProps } from '../stepProps';
import { Discard } from './Discard';
import { OneOutcome } from './OneOutcome';
import { listAwaitingOutcome } from './viewProcessing';

/** Every strand that is off says what it said, one after the other. */
export function Outcome(props: StepProps) {
  const [discarding, setDiscarding] = createSignal<number | null>(null);
  const awaiting = createMemo(() => listAwaitingOutcome(props.consultation));
  const first = createMemo(() => awaiting()[0], undefined, {
    equals: (one, other) => one?.number === other?.number,
  });
  return (
    <Show when={first()} keyed>
      {(strand) => (
        <Show
          when={discarding() === strand.number}
          fallback={
            <OneOutcome
              {...props}
              strand={strand}
              others={awaiting().length - 1}
              onDiscard={() => setDiscarding(strand.number)}
            />
          }
        >
          <Discard {...props} zone={strand.zone} onClose={() => setDiscarding(null)} />
        </Show>
      )}
    </Show>
  );
}
