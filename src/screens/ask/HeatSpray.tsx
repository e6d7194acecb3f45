import { createMemo, Show } from 'solid-js';
import { Caution } from '../../parts/Caution';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import { AskPage } from './AskPage';
import './heatSpray.css';
import { TodayHeat } from './TodayHeat';
import { TodaySpray } from './TodaySpray';
import { viewTodaySpray } from './viewTodaySpray';

/** How it is finished today. */
export function HeatSpray(props: StepProps) {
  const words = useWords();
  const answers = () => props.consultation.record.answers.heatSpray;
  const sprays = () => props.settings.shelf.filter(({ kind }) => kind === 'spray').map(({ name }) => name);
  const today = createMemo(() => viewTodaySpray(answers(), props.settings, words));
  return (
    <AskPage {...props} step="heatSpray" summary={words.asking.todayTitle} picks={{ spray: sprays() }}>
      <TodayHeat
        answers={answers()}
        units={props.settings.units}
        tellsFire={today()?.lines.some(({ topic }) => topic === 'fire') === true}
      />
      <Show when={today()}>{(spray) => <TodaySpray spray={spray()} />}</Show>
      <Show when={sprays().length === 0 && answers()?.finish === 'styled'}>
        <Caution kind="plain">
          <p>{words.asking.shelfEmpty}</p>
        </Caution>
      </Show>
    </AskPage>
  );
}
