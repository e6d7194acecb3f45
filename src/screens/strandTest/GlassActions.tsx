import { Match, Switch } from 'solid-js';
import { formatCountdown } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { useWords } from '../../parts/useWords';
import type { Sender } from '../sender';
import type { IncompatibilityView } from './viewPreparing';

/** The glass comes before any strand: start it; while it stands that it reacted, and after its time that nothing did. */
export function GlassActions(props: { readonly glass: IncompatibilityView; readonly sender: Sender }) {
  const words = useWords();
  const said = () => words.strandTest.glass;
  const isReadable = () => props.glass.reading?.phase === 'over';
  const read = (seen: 'nothing' | 'reacted') =>
    void props.sender.send({ type: 'INCOMPATIBILITY_READ', answers: { seen } });
  return (
    <Switch>
      <Match when={props.glass.state === 'due'}>
        <p>{said().how}</p>
        <BigButton
          kind="primary"
          act="glass-start"
          onPress={() => void props.sender.send({ type: 'INCOMPATIBILITY_STARTED' })}
        >
          {said().start}
        </BigButton>
      </Match>
      <Match when={props.glass.state === 'running'}>
        <p>
          {isReadable()
            ? said().reactedHint
            : said().tooEarly(formatCountdown(props.glass.reading?.remainingMs ?? 0))}
        </p>
        <HoldButton label={said().readReacted} act="glass-reacted" onHeld={() => read('reacted')} />
        <BigButton
          kind="primary"
          act="glass-nothing"
          isDisabled={!isReadable()}
          onPress={() => read('nothing')}
        >
          {said().readNothing}
        </BigButton>
      </Match>
    </Switch>
  );
}
