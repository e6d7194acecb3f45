import type { ToldConsultation } from '../../shared/records/json/consultationFile';
import { accept, type Result, refuse } from '../../shared/result';
import type { Consultation } from './consultation';
import { type FindSettings, isSame, type ReplayFault, replay } from './replay';

/** A consultation whose log this station understood, entry by entry. */
export interface Brought {
  readonly consultation: Consultation;
  /** It is here already, letter for letter: nothing needs to be written. */
  readonly isHere: boolean;
  /** Parts of the record the file told otherwise than its own log does; the log is what counts. */
  readonly toldOtherwise: readonly string[];
}

/** Why nothing of a file is brought in: which consultation, and where its log goes wrong. */
export type BringRefusal =
  | { readonly code: 'notJudged'; readonly id: string; readonly fault: ReplayFault }
  | { readonly code: 'otherContent'; readonly id: string };

/** The log that is held here under this name, as it was written; undefined where there is none. */
export type FindHeld = (id: string) => readonly unknown[] | undefined;

/** Which parts of the record does the file tell otherwise, by name in order? */
function listToldOtherwise(folded: object, told: object): readonly string[] {
  const ours = new Map(Object.entries(folded));
  const theirs = new Map(Object.entries(told));
  const names = [...new Set([...ours.keys(), ...theirs.keys()])].sort();
  return names.filter((name) => !isSame(ours.get(name), theirs.get(name)));
}

/**
 * What consultations do these make here? Each log passes schema, judge, chart and gate again, as if it were read from the
 * store; the record beside it is only compared. One that is refused, or that has the name of another, refuses them all,
 * so that nothing is half taken. Checked in tests/machines/consultation/bringIn.test.ts.
 */
export function bringIn(
  told: readonly ToldConsultation[],
  find: FindSettings,
  findHeld: FindHeld,
): Result<readonly Brought[], BringRefusal> {
  const brought = new Map<string, Brought>();
  for (const { id, log, record } of told) {
    const held = findHeld(id);
    const before = held ?? brought.get(id)?.consultation.log;
    if (before !== undefined && !isSame(before, log)) return refuse({ code: 'otherContent', id });
    if (brought.has(id)) continue;
    const replayed = replay(id, log, find);
    if (!replayed.ok) return refuse({ code: 'notJudged', id, fault: replayed.error });
    const toldOtherwise = listToldOtherwise(replayed.value.record, record);
    brought.set(id, { consultation: replayed.value, isHere: held !== undefined, toldOtherwise });
  }
  return accept([...brought.values()]);
}
