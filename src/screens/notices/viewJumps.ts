import { type ClockJump, isInDoubt } from '../../../shared/records/clockJump';
import type { StationState } from '../../station/stationState';

/** A jump of the tablet's clock that somebody has to hear of. */
export interface JumpToTell {
  readonly jump: ClockJump;
  /** Something was in a mix, on a head, in a glass or drying meanwhile. */
  readonly wasRunning: boolean;
  /** A skin test waits, and whether it has waited so long depends on what the jump was. */
  readonly holdsSkinTest: boolean;
}

/** Which jumps matter to anything that is on? One that touches nothing is not told. */
export function viewJumps(
  { open, skinTests }: Pick<StationState, 'open' | 'skinTests'>,
  jumps: readonly ClockJump[],
): readonly JumpToTell[] {
  const running = [...open.values()].flatMap(({ record }) =>
    record.clocks.filter(({ endedAtMs }) => endedAtMs === null),
  );
  return jumps
    .map((jump) => ({
      jump,
      wasRunning: running.some(({ startedAtMs }) => startedAtMs < jump.atMs),
      holdsSkinTest: skinTests.some((test) => isInDoubt(test, jump)),
    }))
    .filter(({ wasRunning, holdsSkinTest }) => wasRunning || holdsSkinTest);
}

/** Told of the same way as before, so nothing is made anew under a finger. */
export const isSameJumps = (one: readonly JumpToTell[], other: readonly JumpToTell[]): boolean =>
  one.length === other.length &&
  one.every(({ jump, wasRunning, holdsSkinTest }, place) => {
    const then = other[place];
    return then?.jump === jump && then.wasRunning === wasRunning && then.holdsSkinTest === holdsSkinTest;
  });
