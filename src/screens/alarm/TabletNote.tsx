import { Show } from 'solid-js';
import { useWords } from '../../parts/useWords';
import type { TabletInUse } from '../../tablet/createTablet';
import type { Words } from '../../words/words';
import './alarm.css';

/** What does this tablet not give? Sound comes before the screen, the network last; null where all is well. */
export function findTabletLack(tablet: TabletInUse | undefined): ((words: Words) => string) | null {
  if (tablet === undefined) return null;
  const sound = tablet.sound();
  if (sound !== 'ready') return ({ alarm }) => alarm.sound[sound];
  const screen = tablet.screen();
  if (screen === 'refused' || screen === 'unavailable') return ({ alarm }) => alarm.screen[screen];
  return tablet.page() === 'refused' ? ({ alarm }) => alarm.page.refused : null;
}

/** What this tablet does not give, in one calm line, with what to do about it. Nothing where all is well. */
export function TabletNote(props: { readonly tablet: TabletInUse }) {
  const words = useWords();
  const says = () => findTabletLack(props.tablet)?.(words) ?? null;
  return (
    <Show when={says()}>
      {(note) => (
        <p class="tablet-note" role="status" data-tablet={props.tablet.sound()}>
          {note()}
        </p>
      )}
    </Show>
  );
}
