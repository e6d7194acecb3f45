import { daysPerWeek, msPerDay, toWeeks } from '../units/time';
import type { NumberQuestion } from './form';
import type { Answers } from './forms/asked';
import { type HabitAnswers, hotToolsForm } from './forms/hotTools';
import type { LastTime } from './lastTime';

/** Whole months gone since last time, in the trade's year. */
export const countMonths = ({ endedAtMs }: LastTime, nowMs: number): number =>
  Math.max(0, Math.round((nowMs - endedAtMs) / msPerDay / daysPerWeek / toWeeks(1)));

/** A time told last time, as it is today; never beyond what its field takes. What nobody knew, nobody knows today. */
const growBy = <T extends number | 'unknown' | undefined>(
  then: T,
  { field }: NumberQuestion,
  gone: number,
): T => (typeof then === 'number' ? (Math.min(then + gone, field.max) as T) : then);

/** What she still does she has done for longer by now; what she had stopped lies further back. */
function ageHabit(habit: HabitAnswers, gone: number): HabitAnswers {
  const { forMonths, stoppedMonthsAgo } = hotToolsForm.habits.of;
  const stopped = habit.stoppedMonthsAgo ?? 0;
  if (stopped === 0) return { ...habit, forMonths: growBy(habit.forMonths, forMonths, gone) };
  return { ...habit, stoppedMonthsAgo: growBy(stopped, stoppedMonthsAgo, gone) };
}

/**
 * What was told last time, as it is today if nothing has changed since.
 * Times counted back from a day grow by the months gone. How much had grown since a colour is no root length of today:
 * whoever wants her own growth measures it anew. Checked in tests/shared/records/nothingNew.test.ts.
 */
export function bringUpToDate(last: LastTime, nowMs: number): Answers {
  const { hotTools, ...others } = last.answers;
  if (hotTools === undefined) return others;
  const gone = countMonths(last, nowMs);
  const { regrowthCm: _length, regrowthWeeks: _weeks, growth: _measured, habits, ...told } = hotTools;
  const { lastBleachMonthsAgo } = told;
  return {
    ...others,
    hotTools: {
      ...told,
      ...(habits === undefined ? {} : { habits: habits.map((habit) => ageHabit(habit, gone)) }),
      ...(lastBleachMonthsAgo === undefined
        ? {}
        : { lastBleachMonthsAgo: growBy(lastBleachMonthsAgo, hotToolsForm.lastBleachMonthsAgo, gone) }),
    },
  };
}
