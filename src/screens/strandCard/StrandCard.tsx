import { createMemo, Index, Show } from 'solid-js';
import { findStrandKind } from '../../../shared/judgement/strandKind';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { useInvented } from '../../parts/useInvented';
import { useWords } from '../../parts/useWords';
import { sayCard } from './sayCard';
import './strandCard.css';
import { type CardStrand, findStamp, findTimes } from './viewCard';

/** One tested strand on paper: what it was, what went on it, what it showed and said, and room for the hair itself. */
export function StrandCard(props: {
  readonly record: ConsultationRecord;
  readonly strand: CardStrand;
  readonly settings: Settings;
  readonly nowMs: number;
}) {
  const words = useWords();
  const invented = useInvented();
  const said = () => words.strandCard;
  const write = (value: number) => formatQuantity(value, 'count', props.settings.units, words.locale);
  const kind = () => findStrandKind(props.record.answers.client?.service);
  const rows = createMemo(() =>
    sayCard({
      record: props.record,
      strand: props.strand,
      units: props.settings.units,
      settings: props.settings,
      words,
      nowMs: props.nowMs,
    }),
  );
  return (
    <article class="strand-card" data-strand={props.strand.number}>
      <div class="strand-card-face">
        <header>
          <h3>
            {said().title(write(props.strand.number))}
            <small>{said().kinds[kind()]}</small>
          </h3>
          <Show when={findStamp(props.strand)}>
            {(stamp) => <strong data-stamp={stamp()}>{said().stamps[stamp()]}</strong>}
          </Show>
          <Show when={invented()}>{(kind) => <strong data-stamp={kind()}>{words[kind()].mark}</strong>}</Show>
          <p data-line="whose">
            {[
              words.general.chairAndTicket(write(props.record.chair), props.record.ticket),
              words.moments.date(findTimes(props.record, props.strand).startedAtMs),
            ].join(' · ')}
          </p>
        </header>
        <dl>
          <Index each={rows()}>
            {(row) => (
              <div data-row={row().key}>
                <dt>{row().name}</dt>
                <dd>
                  {row().told}
                  <Show when={row().isEstimate}>
                    <small class="card-estimate">{said().estimate}</small>
                  </Show>
                </dd>
              </div>
            )}
          </Index>
        </dl>
        <p class="strand-card-tape">
          <span>{said().tape}</span>
        </p>
      </div>
    </article>
  );
}
