import { createSignal, Show } from 'solid-js';
import { openedForm } from '../../../shared/records/forms/course';
import { type FieldRefusal, type RawForm, readForm } from '../../../shared/records/readForm';
import type { Settings } from '../../../shared/records/settings';
import type { Result } from '../../../shared/result';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { createDraft, listMistakes } from '../../parts/form/draft';
import { FormFields } from '../../parts/form/FormFields';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { SubmitRefusal } from '../../station/submitRefusal';
import { makeReading } from '../ask/readContext';
import './start.css';

/** Whose consultation is it, and at which chair? */
export function Start(props: {
  readonly settings: Settings;
  readonly nowMs: number;
  readonly freeChairs: readonly string[];
  readonly chair: string | null;
  readonly open: (answers: RawForm) => Promise<Result<string, SubmitRefusal>>;
  readonly onOpened: (id: string) => void;
  readonly onBar: () => void;
}) {
  const words = useWords();
  const draft = createDraft(props.chair === null ? {} : { chair: props.chair });
  const [isTried, setIsTried] = createSignal(false);
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const refusals = (): readonly FieldRefusal[] => {
    const reading = makeReading(props.settings, props.nowMs);
    if (!isTried()) return listMistakes(openedForm, draft.raw(), reading);
    const read = readForm(openedForm, draft.raw(), reading);
    return read.ok ? [] : read.error;
  };

  async function go(): Promise<void> {
    setIsTried(true);
    if (refusals().length > 0) return;
    const opened = await props.open(draft.raw());
    if (opened.ok) props.onOpened(opened.value);
    else setRefusal(opened.error);
  }

  return (
    <main class="start-page">
      <h1>{words.start.title}</h1>
      <div class="start-content">
        <FormFields
          form={openedForm}
          words={words.start.form}
          draft={draft}
          refusals={refusals()}
          units={props.settings.units}
          hasAgeLine={false}
          nowMs={props.nowMs}
          picks={{ chair: props.freeChairs }}
        />
        <Show when={props.freeChairs.length === 0}>
          <Caution>
            <p>{words.start.noFreeChair}</p>
          </Caution>
        </Show>
        <Refusal refusal={refusal()} />
      </div>
      <footer class="step-actions">
        <BigButton act="cancel" onPress={() => props.onBar()}>
          {words.general.cancel}
        </BigButton>
        <BigButton kind="primary" act="open" onPress={() => void go()}>
          {words.start.go}
        </BigButton>
      </footer>
    </main>
  );
}
