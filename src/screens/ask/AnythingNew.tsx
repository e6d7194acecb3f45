import { For, type JSX } from 'solid-js';
import { type ClientAnswers, clientForm } from '../../../shared/records/forms/client';
import type { HotToolsAnswers } from '../../../shared/records/forms/hotTools';
import { hotToolsForm } from '../../../shared/records/forms/hotTools';
import { writeForm } from '../../../shared/records/writeForm';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { sayAnswer, sayRow } from '../../parts/form/sheet/sayAnswer';
import { Refusal } from '../../parts/Refusal';
import { type PageSurroundings, StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import type { Words } from '../../words/words';
import type { TapRefusal } from '../explainRefusal';
import './nothingNew.css';

/** One line that is read aloud: what is asked, and what holds where nothing is new. */
export interface ReadAloud {
  readonly id: string;
  readonly name: string;
  readonly value: string;
}

/** What she told of reactions before, none of them also where it was never asked. */
type ReactionsTold = ClientAnswers['reactions'] | undefined;

/** What holds of reactions where nothing is new: all that was told. A reaction is not taken back by one tap. */
export const listReactions = (told: ReactionsTold): readonly string[] => told ?? ['none'];

/** What is asked anew on every day: reactions, scalp, and age where there is an age line. */
export const listSkinLines = (
  words: Words,
  hasAgeLine: boolean,
  told: ReactionsTold,
  units: UnitSettings,
): readonly ReadAloud[] => {
  const said = words.nothingNew;
  const hasReacted = told !== undefined && !told.includes('none');
  const reactions = sayAnswer(clientForm.reactions, words.asked.client.reactions, told ?? [], {
    words,
    units,
  });
  return [
    {
      id: 'reactions',
      name: said.reactions,
      value: hasReacted ? said.nothingElse(reactions) : said.noReaction,
    },
    { id: 'scalp', name: said.scalp, value: said.scalpSound },
    ...(hasAgeLine ? [{ id: 'age', name: said.age, value: said.oldEnough }] : []),
  ];
};

/** What was told of the tools at home and of what is on the hair, for "nothing else since". */
export function listHairLines(
  told: Partial<HotToolsAnswers>,
  words: Words,
  units: UnitSettings,
): readonly ReadAloud[] {
  const said = words.nothingNew;
  const asked = words.asked.hotTools;
  const { habits } = writeForm(hotToolsForm, told, units);
  const rows = Array.isArray(habits) ? habits : [];
  const sayTool = (row: unknown) =>
    sayRow(hotToolsForm.habits.of, asked.habits.rows, row as never, { words, units });
  const history = sayAnswer(hotToolsForm.history, asked.history, told.history ?? [], { words, units });
  return [
    {
      id: 'tools',
      name: said.tools,
      value: rows.length === 0 ? (asked.habits.noRows ?? '') : rows.map(sayTool).join('; '),
    },
    { id: 'history', name: said.history, value: said.nothingElse(history) },
  ];
}

/** Is anything new? Lines to be read aloud, what else has to be looked at, and one tap where nothing is. */
export function AnythingNew(props: {
  readonly page: PageSurroundings;
  readonly title: string;
  readonly also: string;
  readonly lines: readonly ReadAloud[];
  /** Something on the page is still to be answered. */
  readonly isOpen: boolean;
  readonly refusal: TapRefusal | null;
  readonly nothingNew: string;
  readonly onSomethingNew: () => void;
  readonly onNothingNew: () => void;
  readonly children?: JSX.Element;
}) {
  const words = useWords();
  return (
    <StepPage
      page={props.page}
      title={props.title}
      also={props.also}
      actions={
        <>
          <div class="step-said">
            <Refusal refusal={props.refusal} />
          </div>
          <BigButton act="something-new" onPress={() => props.onSomethingNew()}>
            {words.nothingNew.somethingNew}
          </BigButton>
          <BigButton
            kind="primary"
            act="nothing-new"
            isDisabled={props.isOpen}
            onPress={() => props.onNothingNew()}
          >
            {props.nothingNew}
          </BigButton>
        </>
      }
    >
      <dl class="nothing-new">
        <For each={props.lines}>
          {(line) => (
            <div class="nothing-new-line" data-line={line.id}>
              <dt>{line.name}</dt>
              <dd>{line.value}</dd>
            </div>
          )}
        </For>
      </dl>
      {props.children}
    </StepPage>
  );
}
