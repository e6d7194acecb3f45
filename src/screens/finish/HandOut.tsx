import { createMemo, Show } from 'solid-js';
import type { ConsultationRecord } from '../../../shared/records/record';
import { StrandMap } from '../../parts/strandMap/StrandMap';
import { useInvented } from '../../parts/useInvented';
import { useWords } from '../../parts/useWords';
import { sayStrandMap } from '../map/sayStrandMap';
import { viewHair } from '../map/viewHair';
import './handOut.css';
import { PlanDone, PlanFigures, type PlanProps, PlanRules } from './PlanLines';

/** Her page to take home: the plan, the strand from the scalp to the tip, when to come back and whom to call. */
export function HandOut(props: PlanProps & { readonly record: ConsultationRecord; readonly atMs: number }) {
  const words = useWords();
  const invented = useInvented();
  const said = () => words.finish;
  const view = createMemo(() => viewHair(props.record.answers, props.settings));
  /** Where strands were snipped is no matter of hers. */
  const map = createMemo(() => ({
    ...sayStrandMap(view(), props.record.answers, words, props.settings.units),
    snips: [],
  }));
  const isTold = () => view().history.habits.length > 0 || view().history.bleaches.length > 0;
  return (
    <article class="hand-out">
      <div class="hand-out-face">
        <header>
          <h2>{said().cardTitle(props.record.ticket)}</h2>
          <Show when={invented()}>{(kind) => <strong data-stamp={kind()}>{words[kind()].mark}</strong>}</Show>
          <p>{words.moments.dayAndTime(props.atMs)}</p>
        </header>
        <PlanFigures settings={props.settings} plan={props.plan} />
        <PlanRules settings={props.settings} plan={props.plan} />
        <Show when={props.settings.contact === ''}>
          <p class="hand-out-to-call">{said().toCall}</p>
        </Show>
        <p class="hand-out-emergency">{said().emergency}</p>
        <Show when={isTold()}>
          <figure>
            <figcaption>{said().mapTitle}</figcaption>
            <StrandMap view={map()} />
          </figure>
        </Show>
        <PlanDone record={props.record} settings={props.settings} />
      </div>
    </article>
  );
}
