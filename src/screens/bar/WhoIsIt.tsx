import { createSignal, For, Show } from 'solid-js';
import type { Form } from '../../../shared/records/form';
import { readForm } from '../../../shared/records/readForm';
import type { Settings } from '../../../shared/records/settings';
import type { Result } from '../../../shared/result';
import { BigButton } from '../../parts/BigButton';
import { createDraft } from '../../parts/form/draft';
import { FormFields } from '../../parts/form/FormFields';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { SubmitRefusal } from '../../station/submitRefusal';
import { makeReading } from '../ask/readContext';

const nameForm = { name: { kind: 'text', maxLength: 20 } } as const satisfies Form;

/** Who is at the station: one tap, or a first name that is kept from then on. Checked in tests/src/screens/app.test.tsx. */
export function WhoIsIt(props: {
  readonly settings: Settings;
  readonly nowMs: number;
  readonly by: string;
  readonly onChoose: (name: string) => void;
  readonly saveSettings: (by: string, settings: Settings) => Promise<Result<void, SubmitRefusal>>;
}) {
  const words = useWords();
  const draft = createDraft();
  const isListed = () => props.settings.staff.length > 0;
  const [isTyping, setIsTyping] = createSignal(false);
  const [isTried, setIsTried] = createSignal(false);
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const read = () => readForm(nameForm, draft.raw(), makeReading(props.settings, props.nowMs));
  const refusals = () => {
    const answers = read();
    return isTried() && !answers.ok ? answers.error : [];
  };

  async function keep(): Promise<void> {
    setIsTried(true);
    const answers = read();
    if (!answers.ok) return;
    const { name } = answers.value;
    const { staff } = props.settings;
    const kept = staff.find((each) => each.toLowerCase() === name.toLowerCase());
    if (kept !== undefined) return props.onChoose(kept);
    const saved = await props.saveSettings(name, { ...props.settings, staff: [...staff, name] });
    if (saved.ok) props.onChoose(name);
    else setRefusal(saved.error);
  }

  return (
    <>
      <p>{words.bar.whoHint}</p>
      <Show when={isListed()}>
        <div class="options names">
          <For each={props.settings.staff}>
            {(name) => (
              <BigButton
                act={`who-${name}`}
                isPressed={props.by === name}
                onPress={() => props.onChoose(name)}
              >
                {name}
              </BigButton>
            )}
          </For>
        </div>
      </Show>
      <Show when={isListed() && !isTyping()}>
        <BigButton kind="quiet" act="name-not-here" onPress={() => setIsTyping(true)}>
          {words.bar.notHere}
        </BigButton>
      </Show>
      <Show when={!isListed() || isTyping()}>
        <FormFields
          form={nameForm}
          words={{ name: { ask: words.bar.newName } }}
          draft={draft}
          refusals={refusals()}
          units={props.settings.units}
          hasAgeLine={false}
          nowMs={props.nowMs}
        />
        <div class="dialog-actions">
          <BigButton kind="primary" act="keep-name" onPress={() => void keep()}>
            {words.bar.keepName}
          </BigButton>
        </div>
      </Show>
      <Refusal refusal={refusal()} />
    </>
  );
}
