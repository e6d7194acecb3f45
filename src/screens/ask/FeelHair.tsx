import { Show } from 'solid-js';
import { isIncompatibilityDue } from '../../../shared/judgement/stops';
import { Caution } from '../../parts/Caution';
import { useWords } from '../../parts/useWords';
import { isDamp } from '../explainRefusal';
import type { StepProps } from '../stepProps';
import { AskPage } from './AskPage';

/** What fingers find; damp hair is dried and felt again, and whether a glass test is due. */
export function FeelHair(props: StepProps) {
  const words = useWords();
  const { asking } = words;
  const sayGlass = () => {
    if (!isIncompatibilityDue(props.consultation.record.answers)) return asking.glassNotDue;
    return props.consultation.state.context.facts.incompatibility === 'clear'
      ? asking.glassDone
      : asking.glassDue;
  };
  const isGlassDue = () => sayGlass() === asking.glassDue;
  return (
    <AskPage
      {...props}
      step="feelHair"
      summary={asking.glassTitle}
      heldUp={isDamp(props.consultation.record) ? asking.dampTitle : null}
    >
      <Show when={isDamp(props.consultation.record)}>
        <Caution>
          <p>
            <strong>{asking.dampTitle}</strong> {asking.damp}
          </p>
        </Caution>
      </Show>
      <section data-panel="glass" data-glass={isGlassDue() ? 'due' : 'notDue'}>
        <Caution kind={isGlassDue() ? 'attention' : 'plain'}>
          <p>{sayGlass()}</p>
        </Caution>
      </section>
    </AskPage>
  );
}
