import { createMemo, For, Show } from 'solid-js';
import type { OutcomeRecord, StrandRecord } from '../../../shared/records/record';
import type { Zone } from '../../../shared/records/zones';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import { sayMix } from '../strandTest/sayMix';
import './decision.css';
import type { DecisionView, Reason, ZoneFound } from './viewDecision';

const isFailed = ({ finding }: ZoneFound): boolean => finding === 'gummy' || finding === 'broken';

/** What each strand said, and why the table suggests what it does. */
export function Found(
  props: StepProps & { readonly view: DecisionView; readonly onRetract: (zone: Zone) => void },
) {
  const words = useWords();
  const said = () => words.decision;
  const write = (value: number, quantity: 'count' | 'level') =>
    formatQuantity(value, quantity, props.settings.units, words.locale);
  const target = () => props.consultation.record.answers.client?.targetLevel;
  const sayReason = (reason: Reason): string => {
    const reasonWords = said().reasons[reason];
    return typeof reasonWords === 'string' ? reasonWords : reasonWords(write(props.view.shortBy, 'level'));
  };
  /** How it came back, whether it was even, by whom and when. */
  const sayPull = ({ stretch, evenness, by, atMs }: OutcomeRecord): string =>
    [
      words.strandTest.forms.outcome.stretch.options[stretch],
      ...(evenness === 'even' ? [] : [words.strandTest.forms.outcome.evenness.options[evenness]]),
      said().recordedBy(by, words.moments.time(atMs)),
    ].join(' · ');
  const sayFailed = ({ zone, finding }: ZoneFound) =>
    finding === 'broken'
      ? said().brokeIn(words.general.zones[zone])
      : said().gummyIn(words.general.zones[zone]);
  /** The strand that failed, which need not be the newest of its zone. */
  const findFailed = ({ zone, finding, strand }: ZoneFound): StrandRecord | null =>
    props.consultation.record.strands.findLast(
      (each) => each.zone === zone && each.outcome?.grade === finding,
    ) ?? strand;
  const missing = createMemo(() => props.view.missing, [], { equals: isSameList });
  /** By zone, so that a row is not made anew each second. */
  const shown = createMemo(() => props.view.found.map(({ zone }) => zone));
  const find = (zone: Zone) => props.view.found.find((each) => each.zone === zone);

  return (
    <div class="column">
      <section class="panel">
        <h2>{said().found}</h2>
        <ul class="listed found">
          <For each={shown()}>
            {(zone) => (
              <Show when={find(zone)}>
                {(found) => (
                  <li data-zone={zone} data-finding={found().finding} data-failed={isFailed(found())}>
                    <span class="found-mark" aria-hidden="true" />
                    <div class="found-words">
                      <strong>
                        {found().strand === null
                          ? said().noStrand(words.general.zones[zone])
                          : said().strandName(
                              write(found().strand?.number ?? 0, 'count'),
                              words.general.zones[zone],
                            )}
                      </strong>
                      {': '}
                      <strong>{said().findings[found().finding]}</strong>
                      <Show when={found().strand?.outcome}>
                        {(outcome) => (
                          <>
                            {', '}
                            {said().levelReached(
                              write(outcome().level, 'level'),
                              target() === undefined ? words.general.dontKnow : write(target() ?? 0, 'level'),
                            )}
                            <br />
                            <span class="soft">{sayPull(outcome())}</span>
                          </>
                        )}
                      </Show>
                      <Show when={isFailed(found()) && findFailed(found())}>
                        {(strand) => (
                          <p class="found-failed" data-failed-in={zone}>
                            <strong>{sayFailed(found())}</strong>{' '}
                            <span>{sayMix(strand(), words, props.settings)}</span>
                          </p>
                        )}
                      </Show>
                    </div>
                    <Show when={found().isRetractable}>
                      <BigButton kind="quiet" act={`retract-${zone}`} onPress={() => props.onRetract(zone)}>
                        {said().retract}
                      </BigButton>
                    </Show>
                  </li>
                )}
              </Show>
            )}
          </For>
        </ul>
        <For each={missing()}>
          {(zone) => (
            <Caution>
              <p data-missing={zone}>{said().stillMissing(words.general.zones[zone])}</p>
            </Caution>
          )}
        </For>
      </section>
      <Show when={props.view.reasons.length + props.view.flags.length > 0}>
        <section class="panel why">
          <h2>{said().why}</h2>
          <ul class="reached">
            <For each={props.view.reasons}>
              {(reason) => <li data-reason={reason}>{sayReason(reason)}</li>}
            </For>
            <For each={props.view.flags}>
              {(flag) => <li data-flag={flag}>{words.strandTest.flags[flag]}</li>}
            </For>
          </ul>
          <p class="soft">{said().estimate}</p>
        </section>
      </Show>
    </div>
  );
}

const isSameList = (one: readonly Zone[], other: readonly Zone[]): boolean => one.join() === other.join();
