import type { Consultation } from '../../../machines/consultation/consultation';
import type { Zone } from '../../../shared/records/zones';
import { listOnHead } from '../colourOn/viewHead';

/** A bowl that is on while she reacts: its contact time goes on counting until it is rinsed. */
export interface Contact {
  readonly zone: Zone;
  readonly line: string;
  readonly onForMs: number;
}

export interface ReactionView {
  /** `unwritten`: the rinse steps were opened, and that she reacts could not be written yet. */
  readonly care: 'unwritten' | 'suspected' | 'seen';
  readonly contacts: readonly Contact[];
  readonly signs: readonly string[];
  /** So long ago it was told; null while that could not be written. Water began no earlier. */
  readonly toldForMs: number | null;
}

/** What is still on her, and for how long? */
export function viewReaction(consultation: Consultation, nowMs: number): ReactionView {
  const { care } = consultation.state.context.facts;
  const told = consultation.log.findLast(
    (event) => event.type === 'REACTION_SUSPECTED' || (event.type === 'LOOKED' && event.tokens.stings),
  );
  return {
    care: care === 'calm' ? 'unwritten' : care,
    contacts: listOnHead(consultation, nowMs).map(({ bowl, clock }) => ({
      zone: bowl.zone,
      line: bowl.line,
      onForMs: Math.max(0, nowMs - clock.startedAtMs),
    })),
    toldForMs: told === undefined ? null : Math.max(0, nowMs - told.atMs),
    signs: consultation.record.reaction?.signs ?? [],
  };
}
