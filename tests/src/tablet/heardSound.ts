import { vi } from 'vitest';
import type { SoundState } from '../../../src/tablet/player';
import { makeSound } from '../../../src/tablet/sound';
import type { Calling } from '../../../src/tablet/turns';
import { makeFakeAudio } from './fakeAudio';

export const call = (kind: Calling['kind'], line: string | null = null, key: string = kind): Calling => ({
  key,
  kind,
  line,
});

/** The timers of the test go on, and what waits for them is done. */
export const pass = (ms: number) => vi.advanceTimersByTimeAsync(ms);

/** A sound that nobody has touched yet, with what it told and said. */
export function makeHeard(fake = makeFakeAudio()) {
  const told: SoundState[] = [];
  const said: string[] = [];
  const sound = makeSound(
    () => fake.audio,
    (state) => told.push(state),
    { speak: (line) => void said.push(line), hush: () => void said.push('hush') },
  );
  return { ...fake, sound, told, said };
}

/** The same, touched once, with nothing played since. */
export async function makeReady() {
  const heard = makeHeard();
  heard.sound.arm();
  await pass(1_000);
  heard.played.length = 0;
  const melodies = () => {
    const pitches = heard.played.map(({ pitchHz }) => pitchHz);
    heard.played.length = 0;
    return pitches;
  };
  return { ...heard, melodies };
}
