import { Show } from 'solid-js';
import { useWords } from '../../parts/useWords';
import type { TabletInUse } from '../../tablet/createTablet';
import type { Words } from '../../words/words';
import './alarm.css';

/**
 * What does this tablet not give? Sound comes before the screen, then the voice where one is wanted, the network last; null
 * where all is well.
 */
export function findTabletLack(tablet: TabletInUse | undefined): ((words: Words) => string) | null {
  if (tablet === undefined) return null;
  const sound = tablet.sound();
  if (sound !== 'ready') return (words) => words.tablet.sound[sound];
  const screen = tablet.screen();
  if (screen === 'refused' || screen === 'unavailable') return (words) => words.tablet.screen[screen];
  const voice = tablet.voice();
  if (voice !== 'off' && voice !== 'ready') return (words) => words.tablet.noLine;
  return tablet.page() === 'refused' ? (words) => words.tablet.page.refused : null;
}

/** What this tablet does not give, in one calm line, with what to do about it. Nothing where all is well. */
export function TabletNote(props: { readonly tablet: TabletInUse }) {
  const words = useWords();
  const says = () => findTabletLack(props.tablet)?.(words) ?? null;
  return (
    <Show when={says()}>
      {(note) => (
        <p class="tablet-note" data-tablet={props.tablet.sound()}>
          {note()}
        </p>
      )}
    </Show>
  );
}

/** The same, said on any screen to who cannot see it: a line that comes with its text is often not said. */
export function TabletHeard(props: { readonly tablet: TabletInUse | undefined }) {
  const words = useWords();
  return (
    <p class="only-heard" role="status" data-heard="tablet">
      {findTabletLack(props.tablet)?.(words) ?? ''}
    </p>
  );
}
