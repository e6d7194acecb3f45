import { createMemo, createSignal, For, Show } from 'solid-js';
import { findCarryRefusal } from '../../../shared/judgement/carried';
import { feelHairForm } from '../../../shared/records/forms/feelHair';
import { hotToolsForm } from '../../../shared/records/forms/hotTools';
import type { LastTime } from '../../../shared/records/lastTime';
import { type AskedToday, tellNothingNew } from '../../../shared/records/nothingNew';
import { writeForm } from '../../../shared/records/writeForm';
import { BigButton } from '../../parts/BigButton';
import { sayAnswer, sayRow } from '../../parts/form/sheet/sayAnswer';
import '../../parts/form/sheet/sheet.css';
import { Tile } from '../../parts/form/sheet/Tile';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import type { TapRefusal } from '../explainRefusal';
import { sayLastTime } from '../start/sayLastTime';
import type { StepProps } from '../stepProps';
import './nothingNew.css';

/**
 * Anything new since last time? Read aloud, line by line; nothing new, and the wet stretch of today, is all there is to
 * tap. Whatever is new is asked by the steps, with last time's answers where nothing has to be asked anew.
 * Checked in tests/src/screens/nothingNew.test.tsx.
 */
export function NothingNew(
  props: StepProps & { readonly last: LastTime; readonly onSomethingNew: () => void },
) {
  const words = useWords();
  const said = () => words.nothingNew;
  const [refusal, setRefusal] = createSignal<TapRefusal | null>(null);
  const [stretch, setStretch] = createSignal<string | null>(null);
  const saying = () => ({ words, units: props.settings.units });
  const tools = createMemo(() => {
    const { habits } = writeForm(hotToolsForm, props.last.answers.hotTools ?? {}, props.settings.units);
    const rows = Array.isArray(habits) ? habits : [];
    const { habits: asked } = words.asked.hotTools;
    if (rows.length === 0) return asked.noRows ?? '';
    return rows.map((row) => sayRow(hotToolsForm.habits.of, asked.rows, row as never, saying())).join('; ');
  });
  const history = () =>
    sayAnswer(
      hotToolsForm.history,
      words.asked.hotTools.history,
      props.last.answers.hotTools?.history ?? [],
      saying(),
    );
  const lines = () => [
    { id: 'reactions', name: said().reactions, value: said().noReaction },
    { id: 'scalp', name: said().scalp, value: said().scalpSound },
    { id: 'tools', name: said().tools, value: tools() },
    { id: 'history', name: said().history, value: said().nothingElse(history()) },
    { id: 'hair', name: said().hair, value: said().hairDry },
  ];
  const tell = async () => {
    const wetStretch = stretch();
    if (wetStretch === null) return;
    const hasAgeLine = props.settings.profile.ageLine !== null;
    const today: AskedToday = {
      reactions: ['none'],
      scalp: 'sound',
      ...(hasAgeLine ? { ageBand: 'over' } : {}),
      ...{ nape: 'dry', mid: 'dry', ends: 'dry', breakage: 'no', wetStretch },
    };
    const told = await props.submitAll(tellNothingNew(props.last, today, props.settings.units));
    setRefusal(told.ok ? null : told.error);
    if (!told.ok) return;
    const { record } = props.consultation;
    if (findCarryRefusal(record, props.settings, props.nowMs) !== null) return;
    await props.submit({ type: 'OUTCOME_CARRIED' });
  };
  const { wetStretch } = feelHairForm;

  return (
    <StepPage
      page={props.page}
      title={said().title}
      also={sayLastTime(props.last, words)}
      actions={
        <>
          <BigButton act="something-new" onPress={() => props.onSomethingNew()}>
            {said().somethingNew}
          </BigButton>
          <BigButton
            kind="primary"
            act="nothing-new"
            isDisabled={stretch() === null}
            onPress={() => void tell()}
          >
            {said().nothingNew}
          </BigButton>
        </>
      }
    >
      <dl class="nothing-new">
        <For each={lines()}>
          {(line) => (
            <div class="nothing-new-line" data-line={line.id}>
              <dt>{line.name}</dt>
              <dd>{line.value}</dd>
            </div>
          )}
        </For>
        <Show when={props.settings.profile.ageLine !== null}>
          <div class="nothing-new-line" data-line="age">
            <dt>{said().age}</dt>
            <dd>{said().oldEnough}</dd>
          </div>
        </Show>
      </dl>
      <fieldset class="sheet-question" data-question="wetStretch">
        <legend>
          <h2 class="sheet-ask">{said().stretch}</h2>
        </legend>
        <div class="sheet-tiles" data-columns="4">
          <For each={wetStretch.options}>
            {(option) => (
              <Tile
                option={option}
                label={words.asked.feelHair.wetStretch.options[option]}
                isChosen={stretch() === option}
                onChoose={() => setStretch(option)}
              />
            )}
          </For>
        </div>
      </fieldset>
      <Refusal refusal={refusal()} />
    </StepPage>
  );
}
