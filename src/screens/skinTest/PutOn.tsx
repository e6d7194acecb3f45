import { Show } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import { findReadableAtMs } from '../../../shared/judgement/skinTest';
import type { Form } from '../../../shared/records/form';
import { skinTestForms } from '../../../shared/records/forms/skinTest';
import { readForm } from '../../../shared/records/readForm';
import type { Settings } from '../../../shared/records/settings';
import { BigButton } from '../../parts/BigButton';
import type { Picks } from '../../parts/form/field';
import { Sheet } from '../../parts/form/Sheet';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { makeReading } from '../ask/readContext';
import { createEventForm } from '../eventForm';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import type { Frame } from './frame';

const { ticket, method, site, line, putOnAtMs, seen } = skinTestForms.SKIN_TEST_PUT_ON;

/** Where and how it was done is asked each time: nothing stands chosen before anybody said it. */
const placeForm = {
  method: { kind: method.kind, options: method.options },
  site: { kind: site.kind, options: site.options },
  line,
} as const;

/** `now` asks how and where; `earlier` also asks when, and what is seen. */
const forms = { now: placeForm, earlier: { putOnAtMs, seen, ...placeForm } } as const;

export type SkinTestAsked = keyof typeof forms;

/**
 * The lines of the shelf that go on skin in a test: colour alone. A skin test clears no persulfates, so lightener is not
 * offered for one (published: Cosmetics Europe 2023; opinion of one toxicologist).
 */
const listLines = ({ shelf }: Settings): readonly string[] => [
  ...new Set(shelf.filter(({ kind }) => kind === 'colour').map(({ name }) => name)),
];

/**
 * A skin test that is put on now, or was put on earlier, until it is kept. `draft` keeps what is half filled in apart
 * from every other. Without a client (`tickets`) it asks first whose it is.
 */
export function PutOn(
  props: Pick<StepProps, 'submit' | 'settings' | 'nowMs'> & {
    readonly asked: SkinTestAsked;
    readonly draft: string;
    readonly title: string;
    readonly frame: Frame;
    /** The tickets of those who are here, in one tap. */
    readonly tickets?: readonly string[];
    readonly onOther: (asked: SkinTestAsked) => void;
    readonly onDone: () => void;
    readonly onCancel: () => void;
  },
) {
  const words = useWords();
  const which = props.asked;
  const form: Form = props.tickets === undefined ? forms[which] : { ticket, ...forms[which] };
  const asked = createEventForm(props, form, `${props.draft}/skinTest/${which}`, {});
  const urgent = createSender(props);
  const picks = (): Picks => ({ line: listLines(props.settings), ticket: props.tickets ?? [] });
  const refusals = () => {
    const refusal = urgent.refusal();
    return [...asked.refusals(), ...(refusal?.kind === 'fields' ? refusal.fields : [])];
  };
  const keep = async (consent: 'kept' | 'thisVisit') => {
    const also = {
      consent,
      ...(which === 'now' ? { putOnAtMs: props.nowMs, seen: 'notReadYet' } : {}),
    };
    if (await asked.send('SKIN_TEST_NOTED', also)) props.onDone();
  };
  /** A reaction is kept as soon as it is held; how and where it was put on may be missing still. */
  const keepReaction = async () => {
    const answers = asked.draft.raw();
    if (await urgent.send({ type: 'SKIN_TEST_NOTED', answers })) {
      asked.draft.begin({});
      props.onDone();
    }
  };
  const isComplete = () => readForm(form, asked.draft.raw(), makeReading(props.settings, props.nowMs)).ok;
  /** When may it be read? */
  const saysThen = () => {
    const { putOnAtMs: at } = asked.draft.raw();
    const from = which === 'now' || typeof at !== 'number' ? props.nowMs : at;
    const readableAtMs = findReadableAtMs({ putOnAtMs: from }, props.settings.profile);
    return words.skinTest.mayBeRead(words.moments.dayAndTime(readableAtMs));
  };
  const cancel = () => {
    asked.draft.begin({});
    props.onCancel();
  };
  return (
    <Dynamic
      component={props.frame}
      title={props.title}
      actions={
        <>
          <p class="above-actions consent">
            {props.tickets === undefined ? words.skinTest.consent : words.skinTest.consentByTicket}
          </p>
          <BigButton act="skin-test-cancel" isWay onPress={cancel}>
            {words.general.cancel}
          </BigButton>
          <BigButton
            act={which === 'now' ? 'skin-test-earlier' : 'skin-test-put-on'}
            onPress={() => props.onOther(which === 'now' ? 'earlier' : 'now')}
          >
            {which === 'now' ? words.skinTest.earlier : words.skinTest.putOnNow}
          </BigButton>
          <Show when={props.tickets === undefined}>
            <BigButton act="skin-test-keep-visit" onPress={() => void keep('thisVisit')}>
              {which === 'now' ? words.skinTest.keepNowForVisit : words.skinTest.keepForVisit}
            </BigButton>
          </Show>
          <BigButton
            kind={isComplete() ? 'primary' : 'plain'}
            act="skin-test-keep"
            onPress={() => void keep('kept')}
          >
            {which === 'now' ? words.skinTest.keepNow : words.skinTest.keep}
          </BigButton>
        </>
      }
    >
      <Sheet
        form={form}
        words={words.skinTest.form}
        draft={asked.draft}
        onChange={(name, value) => {
          asked.onChange(name, value);
          urgent.say(null);
          if (value === 'reaction') void keepReaction();
        }}
        refusals={refusals()}
        units={props.settings.units}
        hasAgeLine={false}
        nowMs={props.nowMs}
        picks={picks()}
        summary={words.skinTest.whenToRead}
      >
        <p class="big-word">{saysThen()}</p>
        <p class="soft">{words.skinTests.makers}</p>
      </Sheet>
      <Refusal refusal={urgent.refusal() ?? asked.refusal()} />
    </Dynamic>
  );
}
