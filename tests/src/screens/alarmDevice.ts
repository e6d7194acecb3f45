import { createSignal } from 'solid-js';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import type { TabletInUse } from '../../../src/tablet/createTablet';

/** The story up to the strand in the mix: a look is due after two minutes. */
export const untilStrand = endsIronedWet.steps.slice(
  0,
  endsIronedWet.steps.findIndex(({ raw }) => raw.type === 'STRAND_STARTED') + 1,
);

/** A tablet whose sound, screen, voice and page are as the test says, and that remembers what it was asked to call. */
export function makeDevice() {
  const [sound, setSound] = createSignal<ReturnType<TabletInUse['sound']>>('ready');
  const [screen, setScreen] = createSignal<ReturnType<TabletInUse['screen']>>('awake');
  const [page, setPage] = createSignal<ReturnType<TabletInUse['page']>>('kept');
  const [voice, setVoice] = createSignal<ReturnType<TabletInUse['voice']>>('off');
  const [soundCheck, setSoundCheck] = createSignal<ReturnType<TabletInUse['soundCheck']>>({
    answer: 'heard',
    atMs: endsIronedWet.startAtMs,
  });
  const calls: Parameters<TabletInUse['call']>[0][] = [];
  const languages: (string | null)[] = [];
  const tried: (string | null)[] = [];
  const [sounds, setSounds] = createSignal(true);
  const device: TabletInUse = {
    sound,
    screen,
    page,
    voice,
    soundCheck,
    noteSoundCheck: (answer, atMs) => setSoundCheck({ answer, atMs }),
    tryOut: async (line) => {
      tried.push(line);
      return sounds();
    },
    call: (calling) => calls.push(calling),
    speakIn: (language) => languages.push(language),
  };
  return {
    device,
    setSound,
    setScreen,
    setPage,
    setVoice,
    setSoundCheck,
    setSounds,
    tried,
    languages,
    language: () => languages.at(-1),
    /** All that call now, and the one that is heard before the others. */
    all: () => calls.at(-1) ?? [],
    calling: () => calls.at(-1)?.[0] ?? null,
    isCalling: () => (calls.at(-1) ?? []).length > 0,
  };
}
