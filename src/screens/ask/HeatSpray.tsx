import { Show } from 'solid-js';
import { Caution } from '../../parts/Caution';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import { AskPage } from './AskPage';
import { TodayHeat } from './TodayHeat';

/** How it is finished today. */
export function HeatSpray(props: StepProps) {
  const words = useWords();
  const sprays = () => props.settings.shelf.filter(({ kind }) => kind === 'spray').map(({ name }) => name);
  return (
    <AskPage {...props} step="heatSpray" summary={words.asking.todayTitle} picks={{ spray: sprays() }}>
      <TodayHeat answers={props.consultation.record.answers.heatSpray} units={props.settings.units} />
      <Show when={sprays().length === 0 && props.consultation.record.answers.heatSpray?.finish === 'styled'}>
        <Caution kind="plain">
          <p>{words.asking.shelfEmpty}</p>
        </Caution>
      </Show>
    </AskPage>
  );
}
