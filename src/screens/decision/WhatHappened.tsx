import { createMemo, createSignal, For, Show } from 'solid-js';
import { isIron } from '../../../shared/heat/habit';
import {
  hasNotKnown,
  isMetalPossible,
  listExplaining,
} from '../../../shared/judgement/chance/listExplaining';
import type { Answers } from '../../../shared/records/forms/asked';
import type { StrandRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Dialog } from '../../parts/Dialog';
import { useWords } from '../../parts/useWords';
import { sayWetHabits } from './sayWetHabits';

/** From a strand that broke back to what can explain it, in words for the client, and what can be done. */
export function WhatHappened(props: {
  readonly strand: StrandRecord;
  readonly answers: Answers;
  readonly settings: Settings;
}) {
  const words = useWords();
  const said = () => words.whatHappened;
  const [isOpen, setIsOpen] = createSignal(false);
  const zone = () => words.general.zones[props.strand.zone];
  const explaining = createMemo(() => listExplaining(props.answers, props.strand.zone));
  const otherwise = () => [
    ...(isMetalPossible(props.answers, explaining()) ? [said().metal] : []),
    ...(explaining().length === 0 ? said().otherwise : []),
  ];
  const doNow = () => [
    ...said().doNow,
    ...((props.answers.hotTools?.habits ?? []).some(({ tool }) => isIron(tool)) ? [said().doIroning] : []),
  ];
  const sayBroke = () => {
    const how = props.strand.outcome?.grade === 'gummy' ? 'gummy' : 'broken';
    const minutes = formatQuantity(
      props.strand.minutesOn ?? 0,
      'minutes',
      props.settings.units,
      words.locale,
    );
    return said().broke[how](zone(), minutes);
  };
  return (
    <>
      <BigButton kind="quiet" act={`what-happened-${props.strand.zone}`} onPress={() => setIsOpen(true)}>
        {said().open}
      </BigButton>
      <Dialog isOpen={isOpen()} title={said().title(zone())} onClose={() => setIsOpen(false)}>
        <p>
          <strong>{sayBroke()}</strong> {said().good}
        </p>
        <Show when={explaining().length > 0} fallback={<p data-line="nothing">{said().nothing}</p>}>
          <h3>{said().explain}</h3>
          <ul>
            <For each={explaining()}>
              {(name) => (
                <li data-explains={name}>
                  <Show when={name === 'ironedWet'}>
                    <strong>{sayWetHabits(props.answers, words, props.settings)}</strong>{' '}
                  </Show>
                  {said().canExplain[name]}
                </li>
              )}
            </For>
          </ul>
          <Show when={hasNotKnown(explaining(), props.answers, props.strand.zone)}>
            <p class="soft" data-line="not-known">
              {said().notKnown}
            </p>
          </Show>
        </Show>
        <Show when={otherwise().length > 0}>
          <h3>{said().elseTitle}</h3>
          <ul data-line="else">
            <For each={otherwise()}>{(line) => <li>{line}</li>}</For>
          </ul>
        </Show>
        <h3>{said().doTitle}</h3>
        <ul>
          <For each={doNow()}>{(line) => <li>{line}</li>}</For>
        </ul>
        <p class="soft">{said().sure}</p>
      </Dialog>
    </>
  );
}
