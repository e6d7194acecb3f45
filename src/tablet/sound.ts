import { makePlayer, type SoundState } from './player';
import { ASSUMED_CALL_PULSES, type Audio } from './pulses';
import { type Calling, makeTurns, type Turn } from './turns';

export interface Sound {
  readonly state: () => SoundState;
  /** In a touch or a key alone: asks the browser for sound. The first one that gets it is heard once, softly. */
  arm(): void;
  /** In a touch or a key alone: one call, to hear whether it is heard. Answers whether it was played. */
  tryOut(line: string | null): Promise<boolean>;
  /** These call, the gravest first, again and again until it is told otherwise; one that is new is heard at once. */
  call(calls: readonly Calling[]): void;
  stop(): void;
}

/** What speaks, where this browser can. */
export interface Voice {
  speak(line: string): void;
  hush(): void;
}

/** So long a trial waits for the browser to give the sound, ms. Assumed because by then whoever tries it taps again. */
export const ASSUMED_WAKE_MS = 2_000;

/** The first touch that gets the sound is answered by this. */
const FIRST = { pitchesHz: ASSUMED_CALL_PULSES.look.pitchesHz.slice(0, 1), pauseS: 0 };

/**
 * The sound of this tablet. Nothing is played while it is asleep; as soon as it wakes, a call that is due is heard. Words
 * come after the pulses, never instead of them. Checked in tests/src/tablet/sound.test.ts and soundTurns.test.ts.
 */
export function makeSound(
  openAudio: () => Audio | null,
  onChange: (state: SoundState) => void,
  voice: Voice | null = null,
): Sound {
  const turns = makeTurns();
  let calls: readonly Calling[] = [];
  let shown: SoundState = 'asleep';
  let underWay: Turn | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let speaking: ReturnType<typeof setTimeout> | undefined;

  const player = makePlayer(openAudio, () => {
    const now = player.state();
    if (now !== shown) {
      shown = now;
      onChange(now);
    }
    keepCalling();
  });

  const play = (pattern: Parameters<typeof player.play>[0], line: string | null): boolean => {
    const lengthS = player.play(pattern);
    if (lengthS === null) return false;
    clearTimeout(speaking);
    if (line !== null) speaking = setTimeout(() => voice?.speak(line), lengthS * 1000);
    return true;
  };

  /** What sounds ends, and no line comes after it. */
  const cut = (): void => {
    clearTimeout(speaking);
    if (underWay?.line != null) voice?.hush();
    underWay = null;
    player.cut();
  };
  /** The same for what still calls: it will have its turn. */
  const putOff = (): void => {
    if (underWay !== null) turns.unname(underWay);
    cut();
  };
  const beQuiet = (): void => {
    clearTimeout(timer);
    cut();
  };

  function callOnce(turn: Turn | null): void {
    const [gravest] = turns.calls();
    if (turn === null || gravest === undefined) return;
    underWay = turn;
    timer = setTimeout(() => callOnce(turns.next()), ASSUMED_CALL_PULSES[gravest.kind].againMs);
    play(ASSUMED_CALL_PULSES[turn.calling.kind], turn.line);
  }

  function keepCalling(): void {
    const now = player.state() === 'ready' ? calls : [];
    const wasCalling = turns.calls().length > 0;
    const begun = turns.see(now);
    if (now.length === 0) {
      if (wasCalling) beQuiet();
    } else if (begun !== null) {
      clearTimeout(timer);
      putOff();
      callOnce(begun);
    } else if (underWay !== null && !turns.isCalling(underWay)) cut();
  }

  const arm = (): void =>
    player.arm(() => {
      if (calls.length === 0) play(FIRST, null);
    });

  return {
    state: player.state,
    arm,
    async tryOut(line) {
      arm();
      await Promise.race([player.waking(), new Promise((resolve) => setTimeout(resolve, ASSUMED_WAKE_MS))]);
      putOff();
      return play(ASSUMED_CALL_PULSES.due, line);
    },
    call(next) {
      calls = next;
      keepCalling();
    },
    stop() {
      calls = [];
      beQuiet();
      player.close();
    },
  };
}
