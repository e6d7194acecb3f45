import type { Consultation } from '../../../machines/consultation/consultation';
import type { BowlRecord, ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { findUseByMs } from '../../../shared/records/useWithin';
import type { ClockSaid } from '../../parts/clockSaid';
import type { KnotReason } from '../../parts/StrandRail';
import type { Words } from '../../words/words';
import { findKnot } from '../knot';
import { type ScreenName, screenOf } from '../screenOf';
import { sayBarDue } from './sayBarDue';
import { listDueOf } from './viewBar';

/** What a lane says where no clock runs: the large word, and under it what to do. */
export interface LaneSaid {
  readonly what: string;
  readonly todo: string | null;
  readonly tone: 'idle' | 'over';
}

const loud: Partial<Record<ScreenName, (words: Words) => string>> = {
  stopped: ({ bar }) => bar.stopped,
  ended: ({ bar }) => bar.notWritten,
  reaction: ({ bar }) => bar.reaction,
};

/** What comes before a strand; all else that ties the knot waits until after it. */
const beforeStrand: readonly KnotReason[] = [
  'anotherDay',
  'stepUnsaid',
  'forAJudgement',
  'incompatibilityOpen',
];

/** A bowl goes on only by its time; none is weighed while the knot is tied, and none is left once all is rinsed. */
function sayTodo(
  screen: ScreenName,
  { bowls }: Pick<ConsultationRecord, 'bowls'>,
  { bar, rail }: Words,
  knot: KnotReason,
  nowMs: number,
  settings: Settings,
): string {
  const standing = bowls.filter(({ state }) => state === 'weighed');
  const isGood = (bowl: BowlRecord) => nowMs <= findUseByMs(bowl, settings);
  if (standing.length > 0) return standing.some(isGood) ? bar.putOn : bar.throwAway;
  if (screen === 'mix' && knot === 'strandUsed') return bar.todo.finish;
  const isTied = screen === 'mix' || (screen === 'preparing' && beforeStrand.includes(knot));
  return isTied && knot !== null ? rail.tiedBy[knot] : bar.todo[screen];
}

/** What is to be done for her now, the knot being tied by this? Checked in tests/src/screens/viewBar.test.tsx. */
export function sayLane(
  { state, record }: Consultation,
  words: Words,
  nowMs: number,
  settings: Settings,
  knot: KnotReason = null,
): LaneSaid {
  const screen = screenOf(state);
  const sayLoud = loud[screen];
  if (sayLoud !== undefined) return { what: sayLoud(words), todo: words.bar.todo[screen], tone: 'over' };
  return { what: sayTodo(screen, record, words, knot, nowMs, settings), todo: null, tone: 'idle' };
}

/** The same in one line, for a list: her most urgent clock, or what is to be done. */
export function sayInLine(
  consultation: Consultation,
  nowMs: number,
  words: Words,
  settings: Settings,
): { readonly text: string; readonly tone: LaneSaid['tone'] | ClockSaid['tone'] } {
  const [first] = listDueOf(consultation, nowMs);
  if (first === undefined) {
    const knot = findKnot(consultation.record, settings, nowMs);
    const { what, tone } = sayLane(consultation, words, nowMs, settings, knot);
    return { text: what, tone };
  }
  const { name, says, digits, tone } = sayBarDue(first, nowMs, words, settings.units);
  return { text: `${name} · ${says} ${digits}`, tone };
}
