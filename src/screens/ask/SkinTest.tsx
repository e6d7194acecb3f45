import { createMemo, createSignal, Show } from 'solid-js';
import { skinTestForm } from '../../../shared/records/forms/test';
import type { RawForm } from '../../../shared/records/readForm';
import { BigButton } from '../../parts/BigButton';
import { FormFields } from '../../parts/form/FormFields';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { sayFieldRefusal } from '../../words/sayRefusal';
import type { Words } from '../../words/words';
import type { TapRefusal } from '../explainRefusal';
import { createKeptDraft } from '../keptDraft';
import type { StepProps } from '../stepProps';
import { type SkinTestView, viewSkinTest } from './skinTestView';

function sayHow(view: SkinTestView, words: Words): string {
  const { skinTest, moments } = words;
  const at = (ms: number | null) => (ms === null ? '' : moments.dayAndTime(ms));
  switch (view.token) {
    case 'waiting':
      return view.isReadable
        ? skinTest.toRead(at(view.putOnAtMs))
        : skinTest.waiting(at(view.putOnAtMs), at(view.readableAtMs));
    case 'clear':
      return skinTest.clear(at(view.putOnAtMs), at(view.lapsesAtMs));
    case 'lapsed':
      return skinTest.lapsed(at(view.putOnAtMs));
    default:
      return skinTest[view.token];
  }
}

/** The skin test of this client: how it stands, put on, read. It may be read from any step. */
export function SkinTest(props: Pick<StepProps, 'consultation' | 'settings' | 'nowMs' | 'submit'>) {
  const words = useWords();
  const [isEarlierOpen, setIsEarlierOpen] = createSignal(false);
  const [refusal, setRefusal] = createSignal<TapRefusal | null>(null);
  const draft = createKeptDraft(`${props.consultation.id}/skinTest`, {}, props.settings);
  const view = createMemo(() => viewSkinTest(props.consultation.record, props.settings, props.nowMs));
  const fields = () => {
    const refused = refusal();
    return refused?.kind === 'fields' ? refused.fields : [];
  };

  async function note(answers: RawForm): Promise<void> {
    const taken = await props.submit({ type: 'SKIN_TEST_NOTED', answers });
    setRefusal(taken.ok ? null : taken.error);
    if (!taken.ok) return;
    draft.begin({});
    setIsEarlierOpen(false);
  }
  const read = (seen: 'nothing' | 'reaction') => {
    const { skinTest } = props.consultation.record;
    if (skinTest === null) return;
    const { method, site, putOnAtMs } = skinTest;
    void note({ method, site, putOnAtMs, seen });
  };

  return (
    <section class="panel" data-panel="skin-test" data-skin-test={view().token}>
      <h2>{words.skinTest.title}</h2>
      <p>{sayHow(view(), words)}</p>
      <Show when={view().token === 'clear'}>
        <p class="soft">{words.skinTest.neverSafe}</p>
      </Show>
      <div class="options">
        <Show when={view().isReadable}>
          <BigButton act="skin-test-nothing" onPress={() => read('nothing')}>
            {words.skinTest.nothingSeen}
          </BigButton>
        </Show>
        <Show when={view().token === 'waiting'}>
          <HoldButton
            label={words.skinTest.reactionSeen}
            act="skin-test-reaction"
            onHeld={() => read('reaction')}
          />
        </Show>
        <Show when={view().mayPutOn && !isEarlierOpen()}>
          <BigButton
            act="skin-test-put-on"
            onPress={() => void note({ putOnAtMs: props.nowMs, seen: 'notReadYet' })}
          >
            {words.skinTest.putOnNow}
          </BigButton>
          <BigButton act="skin-test-earlier" onPress={() => setIsEarlierOpen(true)}>
            {words.skinTest.earlier}
          </BigButton>
        </Show>
      </div>
      <Show when={isEarlierOpen()}>
        <FormFields
          form={skinTestForm}
          words={words.skinTest.form}
          draft={draft}
          onChange={(_name, value) => {
            if (value === 'reaction') void note(draft.raw());
          }}
          refusals={fields()}
          units={props.settings.units}
          hasAgeLine={props.settings.profile.ageLine !== null}
          nowMs={props.nowMs}
        />
        <div class="options">
          <BigButton act="skin-test-keep" onPress={() => void note(draft.raw())}>
            {words.skinTest.keep}
          </BigButton>
          <BigButton kind="quiet" act="skin-test-cancel" onPress={() => setIsEarlierOpen(false)}>
            {words.general.cancel}
          </BigButton>
        </div>
      </Show>
      <Show when={isEarlierOpen() ? undefined : fields()[0]}>
        {(wrong) => (
          <p class="field-refusal" role="alert">
            {sayFieldRefusal(wrong(), words, props.settings.units)}
          </p>
        )}
      </Show>
      <Refusal refusal={isEarlierOpen() || fields().length === 0 ? refusal() : null} />
    </section>
  );
}
