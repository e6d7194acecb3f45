import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';

/** In the strand's own row: its outcome was a wrong tap. */
export function WrongOutcome(props: { readonly zone: Zone; readonly onRetract: (zone: Zone) => void }) {
  const words = useWords();
  return (
    <BigButton kind="quiet" act={`retract-${props.zone}`} onPress={() => props.onRetract(props.zone)}>
      {words.decision.retract}
    </BigButton>
  );
}
