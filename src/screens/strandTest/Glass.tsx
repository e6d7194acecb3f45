import { createMemo, Match, Show, Switch } from 'solid-js';
import { formatCountdown } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { ClockFace } from '../../parts/ClockFace';
import { HoldButton } from '../../parts/HoldButton';
import { useWords } from '../../parts/useWords';
import type { Sender } from '../sender';
import type { StepProps } from '../stepProps';
import type { IncompatibilityView } from './viewPreparing';

/** A cutting meets peroxide in a glass, off the head, before any strand does. */
export function Glass(props: StepProps & { readonly glass: IncompatibilityView; readonly sender: Sender }) {
  const words = useWords();
  const said = () => words.strandTest.glass;
  const clock = createMemo(() =>
    props.consultation.record.clocks.findLast(
      ({ kind, endedAtMs }) => kind === 'incompatibility' && endedAtMs === null,
    ),
  );
  const isReadable = () => props.glass.reading?.phase === 'over';
  const read = (seen: 'nothing' | 'reacted') =>
    void props.sender.send({ type: 'INCOMPATIBILITY_READ', answers: { seen } });

  return (
    <section class="panel" data-panel="glass" data-glass={props.glass.state}>
      <h2>{said().title}</h2>
      <Switch>
        <Match when={props.glass.state === 'clear'}>
          <p>{said().clear}</p>
          <HoldButton label={said().readReacted} act="glass-reacted" onHeld={() => read('reacted')} />
        </Match>
        <Match when={props.glass.state === 'due'}>
          <p>{said().why}</p>
          <p>{said().how}</p>
          <Caution>
            <p>{said().caution}</p>
          </Caution>
          <BigButton
            act="glass-start"
            onPress={() => void props.sender.send({ type: 'INCOMPATIBILITY_STARTED' })}
          >
            {said().start}
          </BigButton>
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
          <p>{said().reactedHint}</p>
          <div class="aside-actions">
            <Show
              when={isReadable()}
              fallback={
                <p class="soft">{said().tooEarly(formatCountdown(props.glass.reading?.remainingMs ?? 0))}</p>
              }
            >
              <BigButton kind="primary" act="glass-nothing" onPress={() => read('nothing')}>
                {said().readNothing}
              </BigButton>
            </Show>
            <HoldButton label={said().readReacted} act="glass-reacted" onHeld={() => read('reacted')} />
          </div>
        </Match>
      </Switch>
    </section>
  );
}
