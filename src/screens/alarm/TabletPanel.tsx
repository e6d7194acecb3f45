import { createSignal, Show } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { TabletInUse } from '../../tablet/createTablet';
import './alarm.css';

/** Is the sound on, does the screen stay awake, would the page open without the network? And a way to hear it. */
export function TabletPanel(props: { readonly tablet: TabletInUse }) {
  const words = useWords();
  const said = () => words.tablet;
  const [isSilent, setIsSilent] = createSignal(false);
  const saySound = () => {
    const sound = props.tablet.sound();
    return sound === 'ready' ? said().isReady : said().sound[sound];
  };
  const sayScreen = () => {
    const screen = props.tablet.screen();
    if (screen === 'awake') return said().screenIsAwake;
    return screen === 'resting' ? said().screenRests : said().screen[screen];
  };
  const sayPage = () => {
    const page = props.tablet.page();
    return page === 'asking' ? null : said().page[page];
  };
  const tryOut = async () => {
    const line = props.tablet.voice() === 'off' ? null : said().spokenTrial;
    setIsSilent(!(await props.tablet.tryOut(line)));
  };
  return (
    <section class="panel tablet-panel" data-panel="tablet">
      <h2>{said().soundAndScreen}</h2>
      <p data-tablet={props.tablet.sound()}>{saySound()}</p>
      <p data-tablet={props.tablet.screen()}>{sayScreen()}</p>
      <Show when={sayPage()}>{(line) => <p data-tablet={props.tablet.page()}>{line()}</p>}</Show>
      <p data-voice={props.tablet.voice()}>{said().voice[props.tablet.voice()]}</p>
      <BigButton act="try-sound" isWay onPress={() => void tryOut()}>
        {said().tryOut}
      </BigButton>
      <p class="soft" role="status" data-sounded={isSilent() ? 'no' : undefined}>
        {isSilent() ? said().notSounded : said().tryHint}
      </p>
    </section>
  );
}
