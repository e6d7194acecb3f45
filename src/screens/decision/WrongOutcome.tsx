import { Show } from 'solid-js';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { useMayWrite } from '../../parts/useMayWrite';
import { useWords } from '../../parts/useWords';

/** In the strand's own row: its outcome was a wrong tap. A window that only watches has no room for what it cannot do. */
export function WrongOutcome(props: { readonly zone: Zone; readonly onRetract: (zone: Zone) => void }) {
  const words = useWords();
  const mayWrite = useMayWrite();
  return (
    <Show when={mayWrite()}>
      <BigButton kind="quiet" act={`retract-${props.zone}`} onPress={() => props.onRetract(props.zone)}>
        {words.decision.retract}
      </BigButton>
    </Show>
  );
}
