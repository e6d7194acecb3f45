import { createMemo, For, Show } from 'solid-js';
import type { RuleId } from '../../../shared/judgement/rules';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { Sender } from '../sender';
import type { PreparingView } from './viewPreparing';

/** Which strand comes next, or why none does; what was tested may be kept where it still stands. */
export function PreparingActions(props: {
  readonly view: PreparingView;
  readonly sender: Sender;
  readonly onTest: (zone: Zone) => void;
  readonly onJudge: (rule: RuleId) => void;
}) {
  const words = useWords();
  const said = () => words.strandTest.preparing;
  /** The oldest hair first: that is where it is worst. By zone, so that no button is made anew by a tick. */
  const inOrder = createMemo(() => props.view.zones.map(({ zone }) => zone).reverse());
  const isTested = (zone: Zone) =>
    props.view.zones.some((each) => each.zone === zone && each.state === 'current' && !each.hasFailed);
  const next = createMemo(() => inOrder().find((zone) => !isTested(zone)));
  const others = createMemo(() => inOrder().filter((zone) => zone !== next()));
  const isBlocked = () => props.view.blockedBy !== null;
  return (
    <>
      <Show when={props.view.blockedBy}>
        {(blocked) => (
          <p data-blocked={blocked().code}>
            <strong>{words.refusals.permit[blocked().code].what}</strong>{' '}
            {words.refusals.permit[blocked().code].clears}
          </p>
        )}
      </Show>
      <Show when={!isBlocked()}>
        <For each={others()}>
          {(zone) => (
            <BigButton act={`test-${zone}`} onPress={() => props.onTest(zone)}>
              {isTested(zone)
                ? said().testAgain(words.general.zones[zone])
                : said().test(words.general.zones[zone])}
            </BigButton>
          )}
        </For>
      </Show>
      <Show when={props.view.mayKeep}>
        <BigButton
          kind={next() === undefined ? 'primary' : 'plain'}
          act="keep-outcome"
          onPress={() => void props.sender.send({ type: 'OUTCOME_KEPT' })}
        >
          {said().keep}
        </BigButton>
      </Show>
      {/* What is to be judged comes before the strand that waits for it. */}
      <Show when={isBlocked() ? props.view.openRules[0] : undefined}>
        {(rule) => (
          <BigButton kind="primary" act={`judge-${rule()}`} onPress={() => props.onJudge(rule())}>
            {said().judge}
          </BigButton>
        )}
      </Show>
      <Show when={isBlocked() && props.view.openRules.length > 0 ? undefined : next()}>
        {(zone) => (
          <BigButton
            kind="primary"
            act={`test-${zone()}`}
            isDisabled={isBlocked()}
            onPress={() => props.onTest(zone())}
          >
            {said().test(words.general.zones[zone()])}
          </BigButton>
        )}
      </Show>
    </>
  );
}
