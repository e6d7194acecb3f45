import { Show } from 'solid-js';
import { type CallKind, findCallKind } from '../../../shared/records/call';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { nameClock } from '../../parts/clockSaid';
import { useWords } from '../../parts/useWords';
import type { Words } from '../../words/words';
import { CallShape } from '../alarm/CallShape';
import { sayWhose } from '../bar/sayWhose';
import './dueElsewhere.css';
import type { DueNow } from './listDue';

/** "Chair 2 · J.P. · STRAND 1 ends · look now, since 14:32": a time of day, so that nothing ticks in it. */
export function sayDue(
  { consultation, clock, strandNumber, what, atMs }: DueNow,
  words: Words,
  units: UnitSettings,
) {
  const { clock: said } = words;
  const number = formatQuantity(strandNumber ?? 0, 'count', units, words.locale);
  const time = words.moments.time(atMs);
  const isEnd = what === 'end' || what === 'overrun' || clock.kind === 'dry';
  const ends = isEnd ? said.elsewhere.end[clock.kind](time) : said.elsewhere[what](time);
  const says = what === 'overrun' ? said.elsewhere.overrun(ends) : ends;
  return [sayWhose(consultation, words, units), nameClock(clock, number, words), says].join(' · ');
}

/** As which of the three calls is it shown? Hair that dries calls nobody, and a reaction is more than a call. */
const kindOf = ({ clock, what }: DueNow): CallKind | null =>
  clock.kind === 'dry' || what === 'reaction' ? null : findCallKind({ why: what });

/** What is due for another client, in one line above the actions; one tap goes there. */
export function DueElsewhere(props: {
  /** The most urgent first. */
  readonly due: readonly DueNow[];
  readonly units: UnitSettings;
  readonly onOpen: (id: string) => void;
}) {
  const words = useWords();
  const more = () => formatQuantity(props.due.length - 1, 'count', props.units, words.locale);
  return (
    <Show when={props.due[0]}>
      {(first) => (
        <button
          type="button"
          class="due-elsewhere"
          data-act="due-elsewhere"
          data-what={first().what}
          onClick={() => props.onOpen(first().consultation.id)}
        >
          <span>
            <Show when={kindOf(first())}>{(kind) => <CallShape kind={kind()} />}</Show>
            {sayDue(first(), words, props.units)}
          </span>
          <Show when={props.due.length > 1}>
            <span class="due-more">{words.clock.elsewhere.more(more())}</span>
          </Show>
          <span class="due-go" aria-hidden="true" />
        </button>
      )}
    </Show>
  );
}

/** The same, said once to who cannot see it: only when something else is due, never each second. */
export function DueHeard(props: { readonly due: readonly DueNow[]; readonly units: UnitSettings }) {
  const words = useWords();
  const heard = () => {
    const [first] = props.due;
    return first === undefined ? '' : sayDue(first, words, props.units);
  };
  return (
    <p class="only-heard" role="status" data-heard="due">
      {heard()}
    </p>
  );
}
