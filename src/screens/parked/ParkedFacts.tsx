import { createMemo, For, Show } from 'solid-js';
import { findLapseAtMs, isLapsed } from '../../../shared/judgement/lapse';
import { findShortTime } from '../../../shared/judgement/shortTime';
import type { StrandRecord } from '../../../shared/records/record';
import { formatQuantity } from '../../../shared/units/format';
import { useWords } from '../../parts/useWords';
import { FoundMark, type FoundShape } from '../decision/FoundMark';
import { listStanding } from '../leaving/whatFalls';
import { stepOf } from '../screenOf';
import type { StepProps } from '../stepProps';
import { sayOfPlanned } from '../strandTest/sayShortTime';
import './parked.css';

const hasFailed = ({ outcome }: StrandRecord): boolean =>
  outcome?.grade === 'gummy' || outcome?.grade === 'broken';

const isNamed = (text: string | undefined): text is string => text !== undefined && text !== '';

/**
 * What does whoever takes her up again have to know? What she wants, where it goes on, and which strands stand until when.
 * Checked in tests/src/screens/parked.test.tsx.
 */
export function ParkedFacts(props: Pick<StepProps, 'consultation' | 'settings' | 'nowMs'>) {
  const words = useWords();
  const said = () => words.leaving.parkedFacts;
  const record = () => props.consultation.record;
  const write = (value: number, quantity: 'count' | 'level') =>
    formatQuantity(value, quantity, props.settings.units, words.locale);
  const sayWanted = () => {
    const client = record().answers.client;
    const { service, reach } = words.asked.client;
    const level = client?.targetLevel;
    return [
      client?.service && service.options[client.service],
      client?.reach && reach.options[client.reach],
      level === undefined ? '' : said().level(write(level, 'level')),
    ]
      .filter(isNamed)
      .join(' · ');
  };
  const sayNext = () => {
    const step = stepOf(props.consultation.state);
    return step === null ? '' : words.rail.steps[step];
  };
  const strands = createMemo(() => listStanding(record()));
  const shapeOf = (strand: StrandRecord): FoundShape => {
    if (hasFailed(strand)) return 'stop';
    const isToHeed =
      strand.outcome === null || isLapsed(strand, props.nowMs) || findShortTime(strand) !== null;
    return isToHeed ? 'heed' : 'clear';
  };
  const sayUntil = (strand: StrandRecord): string => {
    if (strand.outcome === null) return said().stillToRecord;
    if (hasFailed(strand)) return said().closed;
    const when = words.moments.shortDay(findLapseAtMs(strand));
    return isLapsed(strand, props.nowMs) ? said().countedUntil(when) : said().countsUntil(when);
  };
  return (
    <dl class="parked-facts">
      <Show when={sayWanted()}>
        {(wanted) => (
          <div data-fact="wants">
            <dt>{said().wants}</dt>
            <dd>{wanted()}</dd>
          </div>
        )}
      </Show>
      <Show when={sayNext()}>
        {(next) => (
          <div data-fact="next">
            <dt>{said().goesOnWith}</dt>
            <dd>{next()}</dd>
          </div>
        )}
      </Show>
      <div data-fact="strands">
        <dt>{said().strands}</dt>
        <For each={strands()} fallback={<dd>{said().noStrand}</dd>}>
          {(strand) => (
            <dd class="parked-strand" data-zone={strand.zone}>
              <FoundMark shape={shapeOf(strand)} />
              <span>
                {words.general.zones[strand.zone]}
                <Show when={strand.outcome}>
                  {(outcome) => <span>: {words.strandTest.grades[outcome().grade]}</span>}
                </Show>
                <Show when={strand.outcome !== null && findShortTime(strand) !== null}>
                  <small data-line="short-time">
                    {words.strandTest.preparing.shortBy(sayOfPlanned(strand, words, props.settings.units))}
                  </small>
                </Show>
                <small>{sayUntil(strand)}</small>
              </span>
            </dd>
          )}
        </For>
      </div>
    </dl>
  );
}
