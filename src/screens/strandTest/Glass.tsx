import { createMemo, Match, Show, Switch } from 'solid-js';
import { ClockFace } from '../../parts/ClockFace';
import { HandCaution } from '../../parts/HandCaution';
import { HoldButton } from '../../parts/HoldButton';
import { useWords } from '../../parts/useWords';
import { GlassSeen } from '../practice/StrandSeen';
import type { Sender } from '../sender';
import type { StepProps } from '../stepProps';
import type { IncompatibilityView } from './viewPreparing';

/** A cutting meets peroxide in a glass, off the head, before any strand does. */
export function Glass(
  props: StepProps & {
    readonly glass: IncompatibilityView;
    readonly sender: Sender;
    /** Nothing else is to be judged before the hand is at it. */
    readonly isNext: boolean;
  },
) {
  const words = useWords();
  const said = () => words.strandTest.glass;
  const clock = createMemo(() =>
    props.consultation.record.clocks.findLast(
      ({ kind, endedAtMs }) => kind === 'incompatibility' && endedAtMs === null,
    ),
  );
  const tellReacted = () =>
    void props.sender.send({ type: 'INCOMPATIBILITY_READ', answers: { seen: 'reacted' } });

  return (
    <section class="panel" data-panel="glass" data-glass={props.glass.state}>
      <h2>{said().title}</h2>
      <Switch>
        <Match when={props.glass.state === 'clear'}>
          <p>{said().clear}</p>
          <HoldButton label={said().readReacted} act="glass-reacted" onHeld={tellReacted} />
        </Match>
        <Match when={props.glass.state === 'due'}>
          <p>{said().why}</p>
          <Show when={props.isNext}>
            <HandCaution caution="glass" />
          </Show>
        </Match>
        <Match when={props.glass.state === 'running'}>
          <Show when={clock()}>
            {(running) => (
              <ClockFace
                clock={running()}
                strandNumber={null}
                nowMs={props.nowMs}
                units={props.settings.units}
                size="small"
              />
            )}
          </Show>
          <GlassSeen {...props} />
          <p>{said().reactedHint}</p>
        </Match>
      </Switch>
    </section>
  );
}
