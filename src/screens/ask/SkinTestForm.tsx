import { skinTestForm } from '../../../shared/records/forms/test';
import { BigButton } from '../../parts/BigButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { PartForm } from '../PartForm';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';

const { method, site, putOnAtMs, seen } = skinTestForm;

/** Where and how it was done is asked each time: nothing stands chosen before anybody said it. */
const placeForm = {
  method: { kind: method.kind, options: method.options },
  site: { kind: site.kind, options: site.options },
} as const;

/** `now` asks how and where; `earlier` also asks when, and what is seen. */
const forms = { now: placeForm, earlier: { ...placeForm, putOnAtMs, seen } } as const;

export type SkinTestAsked = keyof typeof forms;

/** A skin test that is put on now, or was put on earlier, until it is kept. */
export function SkinTestForm(
  props: StepProps & { readonly asked: SkinTestAsked; readonly onDone: () => void },
) {
  const words = useWords();
  const which = props.asked;
  const asked = createEventForm(props, forms[which], `${props.consultation.id}/skinTest/${which}`, {});
  const urgent = createSender(props);
  const refusals = () => {
    const refusal = urgent.refusal();
    return [...asked.refusals(), ...(refusal?.kind === 'fields' ? refusal.fields : [])];
  };
  const keep = async () => {
    const also = which === 'now' ? { putOnAtMs: props.nowMs, seen: 'notReadYet' } : {};
    if (await asked.send('SKIN_TEST_NOTED', also)) props.onDone();
  };
  /** A reaction is kept as soon as it is held; where it was put on may be missing still. */
  const keepReaction = async () => {
    const answers = asked.draft.raw();
    if (await urgent.send({ type: 'SKIN_TEST_NOTED', answers })) {
      asked.draft.begin({});
      props.onDone();
    }
  };
  const cancel = () => {
    asked.draft.begin({});
    props.onDone();
  };
  return (
    <>
      <PartForm
        step={props}
        form={{
          ...asked,
          refusals,
          onChange: (name, value) => {
            asked.onChange(name, value);
            urgent.say(null);
            if (value === 'reaction') void keepReaction();
          },
        }}
        questions={forms[which]}
        words={words.skinTest.form}
      />
      <div class="options">
        <BigButton act="skin-test-keep" onPress={() => void keep()}>
          {which === 'now' ? words.skinTest.keepNow : words.skinTest.keep}
        </BigButton>
        <BigButton kind="quiet" act="skin-test-cancel" onPress={cancel}>
          {words.general.cancel}
        </BigButton>
      </div>
      <Refusal refusal={urgent.refusal() ?? asked.refusal()} />
    </>
  );
}
