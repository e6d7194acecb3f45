import { Show } from 'solid-js';
import type { PlanAnswers } from '../../../shared/records/forms/bowl';
import { useWords } from '../../parts/useWords';
import './finish.css';
import { PlanDone, PlanFigures, type PlanProps, PlanRules } from './PlanLines';

/** Her heat plan as one card: what she does at home, to read aloud, to photograph and to print. */
export function PlanCard(
  props: Omit<PlanProps, 'plan'> & {
    /** null while a question of it is open. */
    readonly plan: PlanAnswers | null;
    readonly atMs: number;
  },
) {
  const words = useWords();
  const said = () => words.finish;
  return (
    <Show when={props.plan} fallback={<p class="lead">{said().openYet}</p>}>
      {(plan) => (
        <article class="plan-card">
          <header>
            <h2>{said().cardTitle(props.record.ticket)}</h2>
            <p>{words.moments.dayAndTime(props.atMs)}</p>
          </header>
          <PlanFigures settings={props.settings} plan={plan()} />
          <PlanRules settings={props.settings} plan={plan()} />
          <PlanDone record={props.record} settings={props.settings} />
        </article>
      )}
    </Show>
  );
}
