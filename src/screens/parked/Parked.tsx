import { createSignal } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import type { TapRefusal } from '../explainRefusal';
import { TellsOf } from '../reaction/TellsOf';
import { SkinTestOpener } from '../skinTest/SkinTestOpener';
import '../layout.css';
import type { StepProps } from '../stepProps';
import { ParkedFacts } from './ParkedFacts';

/** Between visits: until when, what she is to come back for, what stands until then, and taking her up again. */
export function Parked(props: StepProps) {
  const words = useWords();
  const [refusal, setRefusal] = createSignal<TapRefusal | null>(null);
  const sayWhen = () => {
    const untilAtMs = props.consultation.record.parked?.untilAtMs ?? props.nowMs;
    const when = words.moments.dayAndTime(untilAtMs);
    return untilAtMs < props.nowMs ? words.leaving.isOverdue(when) : words.leaving.backAt(when);
  };
  async function resume(): Promise<void> {
    const taken = await props.submit({ type: 'RESUMED' });
    setRefusal(taken.ok ? null : taken.error);
  }
  return (
    <StepPage
      page={props.page}
      title={words.leaving.parkedTitle}
      actions={
        <>
          <Refusal refusal={refusal()} />
          <BigButton kind="primary" act="resume" onPress={() => void resume()}>
            {words.leaving.resume}
          </BigButton>
        </>
      }
    >
      <p class="parked-when">{sayWhen()}</p>
      <div class="columns">
        <ParkedFacts {...props} />
        <div class="column parked-aside">
          <SkinTestOpener {...props} />
          <p class="soft">{words.leaving.askedAnew}</p>
          <TellsOf {...props} />
        </div>
      </div>
    </StepPage>
  );
}
