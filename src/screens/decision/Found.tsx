import { createMemo, For, Show } from 'solid-js';
import { findShortTime } from '../../../shared/judgement/shortTime';
import { isLifting } from '../../../shared/judgement/stops';
import { findSigns } from '../../../shared/records/gradeOutcome';
import type { OutcomeRecord, StrandRecord } from '../../../shared/records/record';
import type { Zone } from '../../../shared/records/zones';
import { formatQuantity } from '../../../shared/units/format';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import { Flags } from '../strandTest/Flags';
import { sayMix } from '../strandTest/sayMix';
import { sayOfPlanned } from '../strandTest/sayShortTime';
import './decision.css';
import { FoundMark, type FoundShape } from './FoundMark';
import type { DecisionView, Reason, ZoneFound } from './viewDecision';
import { WhatHappened } from './WhatHappened';
import { WrongOutcome } from './WrongOutcome';

const isFailed = ({ finding }: ZoneFound): boolean => finding === 'gummy' || finding === 'broken';

const shapes: Readonly<Record<ZoneFound['finding'], FoundShape>> = {
  sound: 'clear',
  rough: 'heed',
  untested: 'heed',
  gummy: 'stop',
  broken: 'stop',
};

/** Did its strand hold, and come off before its time? */
const isShort = (found: ZoneFound): boolean =>
  !isFailed(found) && found.strand?.outcome != null && findShortTime(found.strand) !== null;

/** What held without standing its whole time is no clear finding. */
const shapeOf = (found: ZoneFound): FoundShape => (isShort(found) ? 'heed' : shapes[found.finding]);

/** What each strand said, and why the table suggests what it does; each line with its shape. */
export function Found(
  props: StepProps & { readonly view: DecisionView; readonly onRetract: (zone: Zone) => void },
) {
  const words = useWords();
  const said = () => words.decision;
  const write = (value: number, quantity: 'count' | 'level' | 'minutes') =>
    formatQuantity(value, quantity, props.settings.units, words.locale);
  const target = () => props.consultation.record.answers.client?.targetLevel;
  const sayReason = (reason: Reason): string => {
    const reasonWords = said().reasons[reason];
    return typeof reasonWords === 'string' ? reasonWords : reasonWords(write(props.view.shortBy, 'level'));
  };
  /** Which strand, whether it weakened in the mix, how it came back, whether it was even, by whom and when. */
  const saySmall = (strand: StrandRecord, { stretch, evenness, by, atMs }: OutcomeRecord): string =>
    [
      said().strandNumber(write(strand.number, 'count')),
      ...(findSigns(strand).hasWeakened ? [said().weakened] : []),
      words.strandTest.forms.outcome.stretch.options[stretch],
      ...(evenness === undefined || evenness === 'even'
        ? []
        : [words.strandTest.forms.outcome.evenness.options[evenness]]),
      said().recordedBy(by, words.moments.time(atMs)),
    ].join(' · ');
  const sayFinding = (found: ZoneFound): string => {
    const { finding, strand } = found;
    if (strand?.minutesOn == null || strand.outcome === null) return said().findings[finding];
    return isShort(found)
      ? said().findingShort(said().findings[finding], sayOfPlanned(strand, words, props.settings.units))
      : said().findingAfter(said().findings[finding], write(strand.minutesOn, 'minutes'));
  };
  const isLifted = () => isLifting(props.consultation.record.answers.client?.service ?? 'lighten');
  /** What happened is told once, of the oldest hair that failed. */
  const lastFailed = () => props.view.found.findLast(isFailed)?.zone;
  const hasShort = () => props.view.found.some(isShort);
  /** The strand that failed, which need not be the newest of its zone. */
  const findFailed = ({ zone, finding, strand }: ZoneFound): StrandRecord | null =>
    props.consultation.record.strands.findLast(
      (each) => each.zone === zone && each.outcome?.grade === finding,
    ) ?? strand;
  /** The mix that failed, said at the first of the zones where it did. */
  const sayMixOnce = (zone: Zone, strand: StrandRecord): string => {
    const mix = sayMix(strand, words, props.settings);
    const first = props.view.found.find((each) => {
      const failed = isFailed(each) ? findFailed(each) : null;
      return failed !== null && sayMix(failed, words, props.settings) === mix;
    });
    return first === undefined || first.zone === zone ? mix : said().sameMix;
  };
  /** By zone, so that a row is not made anew each second. */
  const shown = createMemo(() => props.view.found.map(({ zone }) => zone));
  const find = (zone: Zone) => props.view.found.find((each) => each.zone === zone);
  /** Said with the signs themselves, where there are any. */
  const isOfFlags = (reason: Reason) =>
    props.view.flags.length > 0 && (reason === 'ironedHair' || reason === 'careful');
  const hasWhy = () => hasShort() || props.view.reasons.length + props.view.flags.length > 0;

  return (
    <div class="found">
      <For each={shown()}>
        {(zone) => (
          <Show when={find(zone)}>
            {(found) => (
              <div
                class="found-row"
                data-zone={zone}
                data-finding={found().finding}
                data-failed={isFailed(found())}
                data-short={isShort(found()) ? zone : undefined}
              >
                <FoundMark shape={shapeOf(found())} />
                <div class="found-words">
                  <h2 class="found-first">
                    <strong>
                      {words.general.zones[zone]}
                      {': '}
                      {sayFinding(found())}
                    </strong>
                    <Show when={!isFailed(found()) && found().strand?.outcome}>
                      {(outcome) => (
                        <>
                          <Show when={outcome().level}>
                            {(level) => (
                              <>
                                {', '}
                                {said().levelReached(
                                  write(level(), 'level'),
                                  target() === undefined
                                    ? words.general.dontKnow
                                    : write(target() ?? 0, 'level'),
                                )}
                              </>
                            )}
                          </Show>
                        </>
                      )}
                    </Show>
                  </h2>
                  <Show when={found().finding === 'untested'}>
                    <p data-missing={zone}>{said().stillMissing(words.general.zones[zone])}</p>
                  </Show>
                  <Show when={!isFailed(found()) && found().strand?.outcome}>
                    {(outcome) => (
                      <Show when={found().strand}>
                        {(strand) => <p class="soft found-small">{saySmall(strand(), outcome())}</p>}
                      </Show>
                    )}
                  </Show>
                  <Show when={isFailed(found()) && findFailed(found())}>
                    {(strand) => (
                      <>
                        <p class="found-failed" data-failed-in={zone}>
                          <strong>{said().closedOn(words.general.zones[zone])}</strong>{' '}
                          <span>{sayMixOnce(zone, strand())}</span>
                        </p>
                        <Show when={zone === lastFailed()}>
                          <WhatHappened
                            strand={strand()}
                            answers={props.consultation.record.answers}
                            settings={props.settings}
                          />
                        </Show>
                      </>
                    )}
                  </Show>
                  <Show when={found().isRetractable}>
                    <WrongOutcome zone={zone} onRetract={props.onRetract} />
                  </Show>
                </div>
              </div>
            )}
          </Show>
        )}
      </For>
      <Show when={hasWhy()}>
        <div class="found-row why">
          <FoundMark shape="heed" />
          <ul class="found-words">
            <Show when={hasShort()}>
              <li data-reason="shortTime">{said().shortTime[isLifted() ? 'full' : 'short']}</li>
            </Show>
            <For each={props.view.reasons.filter((reason) => !isOfFlags(reason))}>
              {(reason) => <li data-reason={reason}>{sayReason(reason)}</li>}
            </For>
            <Show when={props.view.flags.length > 0}>
              <li data-reason={props.view.reasons.find(isOfFlags)}>
                <Flags lead={said().suspect} flags={props.view.flags} units={props.settings.units} />
              </li>
            </Show>
            <li class="soft">{said().estimate}</li>
          </ul>
        </div>
      </Show>
      <Show when={!hasWhy()}>
        <p class="soft found-estimate">{said().estimate}</p>
      </Show>
    </div>
  );
}
