import { areRootsToCome } from '../../../shared/judgement/rootsLast';
import { WARN_BEFORE_MS } from '../../../shared/records/clock';
import type { Answers } from '../../../shared/records/forms/asked';
import type { Settings } from '../../../shared/records/settings';
import { findUseByMs } from '../../../shared/records/useWithin';
import { formatQuantity } from '../../../shared/units/format';
import type { Words } from '../../words/words';
import type { BowlOnHead } from './viewHead';

/** What is said of a bowl depends on. */
interface Beside {
  readonly words: Words;
  readonly answers: Answers;
  readonly settings: Settings;
  readonly nowMs: number;
}

/** Until when may bare roots still be covered? While the mix is fresh, and not once it is time for the basin. */
const findRootsByMs = ({ bowl, clock }: BowlOnHead, { settings }: Beside): number =>
  Math.min(findUseByMs(bowl, settings), clock.dueAtMs - WARN_BEFORE_MS);

const mayTakeRoots = (one: BowlOnHead, beside: Beside): boolean =>
  (one.reading.phase === 'running' || one.reading.phase === 'lookDue') &&
  beside.nowMs <= findRootsByMs(one, beside);

/** May somebody say that the zone is covered? Not once it is time to rinse: nothing more goes on. */
export const mayTellAllOn = (one: BowlOnHead, beside: Beside): boolean =>
  one.bowl.allOnAtMs === null &&
  one.reading.phase !== 'over' &&
  !one.isWeak &&
  (!areRootsToCome(beside.answers, one.bowl) || mayTakeRoots(one, beside));

function sayRoots(one: BowlOnHead, beside: Beside): readonly string[] {
  const { words, answers } = beside;
  if (!areRootsToCome(answers, one.bowl) || one.isWeak) return [];
  return [
    mayTakeRoots(one, beside)
      ? words.colourOn.rootsToCome(words.moments.time(findRootsByMs(one, beside)))
      : words.colourOn.rootsTooLate,
  ];
}

/** When it was weighed and begun, with or without heat, and how often somebody looked. */
export function sayOnHead(one: BowlOnHead, beside: Beside): readonly string[] {
  const { bowl, clock, reading } = one;
  const { words, settings } = beside;
  const write = (count: number) => formatQuantity(count, 'count', settings.units, words.locale);
  return [
    [
      words.colourOn.mixedAt(words.moments.time(bowl.atMs)),
      words.colourOn.onSince(words.moments.time(clock.startedAtMs)),
      ...(bowl.allOnAtMs === null ? [] : [words.colourOn.allOnSince(words.moments.time(bowl.allOnAtMs))]),
    ].join(', '),
    ...sayRoots(one, beside),
    bowl.kind === 'toner' ? words.colourOn.toner : words.mix.headHeat[bowl.heat],
    ...(bowl.allOnAtMs === null ? [] : [words.colourOn.fromBegun]),
    words.colourOn.lookedTimes(write(bowl.looks.length)),
    ...(reading.missedLooks === 0 ? [] : [words.clock.missedLooks(write(reading.missedLooks))]),
  ];
}
