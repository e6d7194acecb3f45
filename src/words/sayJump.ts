import { formatCountdown } from '../../shared/units/format';
import type { Words } from './words';

/** What the jump of the tablet's clock means for what is on. */
export const sayJump = (
  told: {
    readonly jump: { readonly atMs: number; readonly aheadMs: number };
    readonly wasRunning: boolean;
    readonly holdsSkinTest: boolean;
  },
  { notices, moments }: Words,
): string =>
  [
    notices.jumped(moments.dayAndTime(told.jump.atMs), formatCountdown(told.jump.aheadMs)),
    ...(told.wasRunning ? [notices.runsOn] : []),
    ...(told.holdsSkinTest ? [notices.testWaits] : []),
  ].join(' ');
