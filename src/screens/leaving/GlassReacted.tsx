import type { RawEvent } from '../../../shared/records/classify';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { isOpenNow } from '../isOpenNow';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';

const reacted = { type: 'INCOMPATIBILITY_READ', answers: { seen: 'reacted' } } as const satisfies RawEvent;

/** A cutting of hers stands in its glass, or stood there clear: would it be taken now that it reacts after all? */
export const mayReactInGlass = ({
  consultation,
  settings,
  nowMs,
}: Pick<StepProps, 'consultation' | 'settings' | 'nowMs'>): boolean =>
  isOpenNow(consultation, reacted, settings, nowMs);

/**
 * The cutting reacts or breaks while she is long somewhere else: held, since it stops her for good.
 * Checked in tests/src/screens/everyEdge.test.tsx.
 */
export function GlassReacted(props: StepProps & { readonly onTold: () => void }) {
  const words = useWords();
  const said = () => words.strandTest.glass;
  const sender = createSender(props);
  const tell = async () => {
    if (await sender.send(reacted)) props.onTold();
  };
  return (
    <section class="panel leaving-part" data-panel="glass-reacted">
      <h3>{said().lateTitle}</h3>
      <p>{said().reactedHint}</p>
      <div class="options">
        <HoldButton label={said().readReacted} act="glass-reacted" onHeld={() => void tell()} />
      </div>
      <Refusal refusal={sender.refusal()} />
    </section>
  );
}
