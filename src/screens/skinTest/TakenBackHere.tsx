import type { JSX } from 'solid-js';
import type { Form } from '../../../shared/records/form';
import { correctedForm } from '../../../shared/records/forms/course';
import type { RawForm } from '../../../shared/records/readForm';
import { BigButton } from '../../parts/BigButton';
import { Sheet } from '../../parts/form/Sheet';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import type { StepProps } from '../stepProps';
import { BeforeCorrection } from '../stopped/BeforeCorrection';

const { code, words: ownWords } = correctedForm;

/** That it is another client's has a page of its own: it says nothing of the test. */
const wrongNote: Form = {
  code: { kind: code.kind, options: code.options.filter((option) => option !== 'wrongClient') },
  words: ownWords,
};

/** What was noted of her skin test was wrong: the test's own record says so first, then every consultation. */
export function WronglyNoted(props: StepProps & { readonly onBack: () => void }) {
  const words = useWords();
  return (
    <TakenBackHere
      {...props}
      form={wrongNote}
      given={{}}
      title={words.skinTest.correctTitle}
      hold={words.leaving.holdToCorrect}
      act="correct"
    >
      <BeforeCorrection {...props} answer="skinTest" />
    </TakenBackHere>
  );
}

/** Two clients may share a ticket: the test stays in its own record, and is cited for this one no more. */
export function NotHers(props: StepProps & { readonly onBack: () => void }) {
  const words = useWords();
  return (
    <TakenBackHere
      {...props}
      form={{ words: ownWords }}
      given={{ code: 'wrongClient' }}
      title={words.skinTest.notHersTitle(props.consultation.record.ticket)}
      hold={words.skinTest.notHers}
      act="not-hers"
    >
      <p>{words.skinTest.notHersLead}</p>
    </TakenBackHere>
  );
}

/** A named correction of the skin test, held; once it is taken the page goes back to what stands then. */
function TakenBackHere(
  props: StepProps & {
    readonly form: Form;
    readonly given: RawForm;
    readonly title: string;
    readonly hold: string;
    readonly act: string;
    readonly children: JSX.Element;
    readonly onBack: () => void;
  },
) {
  const words = useWords();
  const name = `${props.consultation.id}/skinTest/${props.act}`;
  const asked = createEventForm(props, props.form, name, {});
  const takeBack = async () => {
    if (await asked.send('CORRECTED', { answer: 'skinTest', ...props.given })) props.onBack();
  };
  return (
    <StepPage
      page={props.page}
      title={props.title}
      actions={
        <BigButton act="skin-test-leave" isWay onPress={props.onBack}>
          {words.skinTest.leaveIt}
        </BigButton>
      }
    >
      <Sheet
        form={props.form}
        words={words.leaving.correctedForm}
        draft={asked.draft}
        onChange={asked.onChange}
        refusals={asked.refusals()}
        units={props.settings.units}
        hasAgeLine={false}
        nowMs={props.nowMs}
        summary={props.hold}
      >
        <p>{words.leaving.correctLead(props.by)}</p>
        {props.children}
        <div class="taken-back">
          <HoldButton label={props.hold} act={props.act} onHeld={() => void takeBack()} />
        </div>
      </Sheet>
      <Refusal refusal={asked.refusal()} />
    </StepPage>
  );
}
