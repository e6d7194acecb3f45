import type { Consultation } from '../../../machines/consultation/consultation';
import type { Zone } from '../../../shared/records/zones';
import { formatCountdown } from '../../../shared/units/format';
import { msPerMinute, msPerSecond } from '../../../shared/units/time';
import { BURN_RINSE_MIN } from '../../words/figures';
import { listOnHead } from '../colourOn/viewHead';

/** A bowl that is on while she reacts: its contact time goes on counting until it is rinsed. */
export interface Contact {
  readonly zone: Zone;
  readonly line: string;
  readonly onForMs: number;
}

/** Water on a zone since it was rinsed. */
export interface Water {
  readonly zone: Zone;
  readonly runsForMs: number;
  readonly isLongEnough: boolean;
}

export interface ReactionView {
  /** `unwritten`: the rinse steps were opened, and that she reacts could not be written yet. */
  readonly care: 'unwritten' | 'suspected' | 'seen';
  readonly contacts: readonly Contact[];
  readonly waters: readonly Water[];
  readonly signs: readonly string[];
  /** So long ago it was told; null while that could not be written. Water began no earlier. */
  readonly toldForMs: number | null;
}

/** So long water runs over a burn, ms. */
const BURN_RINSE_MS = BURN_RINSE_MIN * msPerMinute;

/**
 * What is still on her, and for how long; what was rinsed, and for how long the water has run?
 * Only what came off since she told of it counts as rinsed for it. Checked in tests/src/screens/reaction.
 */
export function viewReaction(consultation: Consultation, nowMs: number): ReactionView {
  const { care } = consultation.state.context.facts;
  const told = consultation.log.findLast(
    (event) => event.type === 'REACTION_SUSPECTED' || (event.type === 'LOOKED' && event.tokens.stings),
  );
  const { bowls, clocks } = consultation.record;
  return {
    care: care === 'calm' ? 'unwritten' : care,
    contacts: listOnHead(consultation, nowMs).map(({ bowl, clock }) => ({
      zone: bowl.zone,
      line: bowl.line,
      onForMs: Math.max(0, nowMs - clock.startedAtMs),
    })),
    waters: bowls.flatMap((bowl) => {
      const endedAtMs = clocks.find(({ id }) => id === bowl.clock)?.endedAtMs ?? null;
      if (bowl.state !== 'rinsed' || endedAtMs === null || told === undefined || endedAtMs < told.atMs)
        return [];
      const runsForMs = Math.max(0, nowMs - endedAtMs);
      return [{ zone: bowl.zone, runsForMs, isLongEnough: runsForMs >= BURN_RINSE_MS }];
    }),
    toldForMs: told === undefined ? null : Math.max(0, nowMs - told.atMs),
    signs: consultation.record.reaction?.signs ?? [],
  };
}

/** Whole seconds that have passed: how long it has been on, never how long it will. */
export const sayOnFor = (onForMs: number): string =>
  formatCountdown(Math.floor(onForMs / msPerSecond) * msPerSecond);
