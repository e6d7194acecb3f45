import { type Accessor, createEffect, createMemo, createSignal, onCleanup, untrack } from 'solid-js';
import { initialTransition, transition } from 'xstate';
import { idleMachine } from '../../../machines/station/idleMachine';
import { findMsToCover, type IdleTick } from '../../../machines/station/idlePhase';
import { COVER_WARNING_S } from '../../../shared/records/settings';
import { msPerSecond } from '../../../shared/units/time';

/** Is somebody at this tablet, as far as fingers and keys tell? */
export interface Idle {
  readonly phase: Accessor<'awake' | 'warned' | 'covered'>;
  /** Whole seconds until it is covered, while it is warned. */
  readonly leftS: Accessor<number>;
  /** A whole tap on the warning or on the cover. */
  readonly stay: () => void;
}

const touches = ['pointerdown', 'keydown', 'wheel'] as const;

/** Listens as long as the reactive root lives that made it. Checked in tests/src/screens/cover.test.tsx. */
export function createIdle(nowMs: Accessor<number>, read: () => Omit<IdleTick, 'nowMs'>): Idle {
  const [state, setState] = createSignal(initialTransition(idleMachine, { nowMs: untrack(nowMs) })[0]);
  const send = (event: Parameters<typeof transition<typeof idleMachine>>[2]): void => {
    setState((before) => transition(idleMachine, before, event)[0]);
  };
  const tick = createMemo((): IdleTick => ({ ...read(), nowMs: nowMs() }));
  createEffect(() => send({ type: 'TICKED', ...tick() }));
  const touch = (): void => send({ type: 'TOUCHED', nowMs: nowMs() });
  for (const of of touches) window.addEventListener(of, touch, { capture: true, passive: true });
  onCleanup(() => {
    for (const of of touches) window.removeEventListener(of, touch, { capture: true });
  });
  return {
    phase: createMemo(() => state().value),
    leftS: () => {
      const leftMs = findMsToCover(state().context.touchedAtMs, tick());
      return Math.min(COVER_WARNING_S, Math.max(0, Math.ceil(leftMs / msPerSecond)));
    },
    stay: () => send({ type: 'STAYED', nowMs: nowMs() }),
  };
}
