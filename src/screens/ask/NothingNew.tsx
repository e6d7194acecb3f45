import { createSignal, For } from 'solid-js';
import { findCarryRefusal } from '../../../shared/judgement/carried';
import { feelHairForm } from '../../../shared/records/forms/feelHair';
import type { LastTime } from '../../../shared/records/lastTime';
import { type AskedToday, tellNothingNew } from '../../../shared/records/nothingNew';
import '../../parts/form/sheet/sheet.css';
import { Tile } from '../../parts/form/sheet/Tile';
import { Tiles } from '../../parts/form/sheet/Tiles';
import { useWords } from '../../parts/useWords';
import type { TapRefusal } from '../explainRefusal';
import { sayLastTime } from '../start/sayLastTime';
import type { StepProps } from '../stepProps';
import { AnythingNew, listHairLines, listReactions, listSkinLines } from './AnythingNew';

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
  const hasAgeLine = () => props.settings.profile.ageLine !== null;
  const reactions = () => props.last.answers.client?.reactions;
  const lines = () => [
    ...listSkinLines(words, hasAgeLine(), reactions(), props.settings.units),
    { id: 'hair', name: said().hair, value: said().hairDry },
    ...listHairLines(props.last.answers.hotTools ?? {}, words, props.settings.units),
  ];
  const tell = async () => {
    const wetStretch = stretch();
    if (wetStretch === null) return;
    const today: AskedToday = {
      reactions: listReactions(reactions()),
      scalp: 'sound',
      ...(hasAgeLine() ? { ageBand: 'over' } : {}),
      ...{ nape: 'dry', mid: 'dry', ends: 'dry', breakage: 'no', wetStretch },
    };
    const told = await props.submitAll(tellNothingNew(props.last, today, props.settings.units, props.nowMs));
    setRefusal(told.ok ? null : told.error);
    if (!told.ok) return;
    const { record } = props.consultation;
    if (findCarryRefusal(record, props.settings, props.nowMs) !== null) return;
    await props.submit({ type: 'OUTCOME_CARRIED' });
  };
  const { wetStretch } = feelHairForm;

  return (
    <AnythingNew
      page={props.page}
      title={said().title}
      also={sayLastTime(props.last, words)}
      lines={lines()}
      isOpen={stretch() === null}
      refusal={refusal()}
      nothingNew={said().nothingNew}
      onSomethingNew={() => props.onSomethingNew()}
      onNothingNew={() => void tell()}
    >
      <fieldset class="sheet-question" data-question="wetStretch">
        <legend>
          <h2 class="sheet-ask">{said().stretch}</h2>
        </legend>
        <Tiles count={wetStretch.options.length} columns={4}>
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
        </Tiles>
      </fieldset>
    </AnythingNew>
  );
}
