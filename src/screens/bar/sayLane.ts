import type { Consultation } from '../../../machines/consultation/consultation';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { ClockSaid } from '../../parts/clockSaid';
import type { Words } from '../../words/words';
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

/** What is to be done for her now? Checked in tests/src/screens/viewBar.test.tsx. */
export function sayLane({ state, record }: Consultation, words: Words): LaneSaid {
  const screen = screenOf(state);
  const sayLoud = loud[screen];
  if (sayLoud !== undefined) return { what: sayLoud(words), todo: words.bar.todo[screen], tone: 'over' };
  const isStandingBy = record.bowls.some((bowl) => bowl.state === 'weighed');
  return {
    what: isStandingBy ? words.bar.putOn : words.bar.todo[screen],
    todo: null,
    tone: 'idle',
  };
}

/** The same in one line, for a list: her most urgent clock, or what is to be done. */
export function sayInLine(
  consultation: Consultation,
  nowMs: number,
  words: Words,
  units: UnitSettings,
): { readonly text: string; readonly tone: LaneSaid['tone'] | ClockSaid['tone'] } {
  const [first] = listDueOf(consultation, nowMs);
  if (first === undefined) {
    const { what, tone } = sayLane(consultation, words);
    return { text: what, tone };
  }
  const { name, says, digits, tone } = sayBarDue(first, nowMs, words, units);
  return { text: `${name} · ${says} ${digits}`, tone };
}
