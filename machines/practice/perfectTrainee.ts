import type { Decision } from '../../shared/judgement/decisions';
import type { RuleId } from '../../shared/judgement/rules';
import type { Question } from '../../shared/records/form';
import type { Raw, RawForm } from '../../shared/records/readForm';
import type { StrandSight } from './strandSight';

/** How one trainee works: what is asked closer, written down, looked at, answered for and decided. */
export interface Trainee {
  readonly asksCloser: (path: string) => boolean;
  readonly writes: (question: Question, heard: Raw) => Raw;
  /** How she is finished today, of what she asks for. */
  readonly finishes: (asked: RawForm) => RawForm;
  readonly looks: boolean;
  /** Where the strand is snipped, if not where the map says. */
  readonly place: 'nape' | null;
  readonly reads: (seen: 'nothing' | 'reaction') => 'nothing' | 'reaction';
  readonly lifts: (rule: RuleId) => boolean;
  readonly tells: (sight: StrandSight) => StrandSight;
  readonly decides: (suggested: Decision) => Decision;
}

export const asSeen: Pick<Trainee, 'writes' | 'finishes' | 'reads' | 'tells' | 'place'> = {
  writes: (_question, heard) => heard,
  finishes: () => ({ finish: 'noHotTool' }),
  reads: (seen) => seen,
  tells: (sight) => sight,
  place: null,
};

/** Asks closer, looks when it is time, tells what is seen, and does as the table says. */
export const perfect: Trainee = {
  ...asSeen,
  asksCloser: () => true,
  looks: true,
  lifts: () => false,
  decides: (suggested) => suggested,
};
