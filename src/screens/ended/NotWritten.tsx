import { createSignal } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import type { SubmitRefusal } from '../../station/submitRefusal';
import type { StepProps } from '../stepProps';

/** It is over, but her record is still to be written to both copies: that is said, and can be tried again. */
export function NotWritten(props: StepProps) {
  const words = useWords();
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const how = () => props.consultation.record.ended?.how ?? 'calledOff';
  const write = async () => {
    const written = await props.finishClosing();
    setRefusal(written.ok ? null : written.error);
  };
  return (
    <StepPage
      page={props.page}
      title={words.ended.title(words.bar.endings[how()])}
      isOver
      actions={
        <>
          <BigButton act="bar-primary" isWay onPress={() => props.page.onBar()}>
            {words.general.bar}
          </BigButton>
          <BigButton kind="primary" act="finish-closing" onPress={() => void write()}>
            {words.ended.writeAgain}
          </BigButton>
        </>
      }
    >
      <section data-panel="not-written">
        <Caution>
          <p>
            <strong>{words.ended.notWritten}</strong> {words.ended.nothingLost}
          </p>
        </Caution>
      </section>
      <p>{words.ended.clears}</p>
      <Refusal refusal={refusal()} />
    </StepPage>
  );
}
