import type { UnitSettings } from '../units/quantity';
import { daysPerWeek, msPerDay, toWeeks } from '../units/time';
import type { NumberQuestion } from './form';
import { hotToolsForm } from './forms/hotTools';
import type { LastTime } from './lastTime';
import type { RawForm } from './readForm';
import { writeForm } from './writeForm';

/** Whole months gone since last time, in the trade's year. */
export const countMonths = ({ endedAtMs }: LastTime, nowMs: number): number =>
  Math.max(0, Math.round((nowMs - endedAtMs) / msPerDay / daysPerWeek / toWeeks(1)));

/** A time counted back from last time, counted back from today; never beyond what its field takes. */
export const countBack = (then: number, { field }: NumberQuestion, gone: number): string =>
  String(Math.min(then + gone, field.max));

/** What she still does she has done for longer by now; what she had stopped lies further back. */
export function ageHabits(last: LastTime, units: UnitSettings, nowMs: number): RawForm {
  const { habits } = last.answers.hotTools ?? {};
  if (habits === undefined) return {};
  const gone = countMonths(last, nowMs);
  const { of: row } = hotToolsForm.habits;
  return {
    habits: habits.map((habit) => {
      const stopped = habit.stoppedMonthsAgo ?? 0;
      const isStill = stopped === 0;
      const aged = {
        ...(isStill && habit.forMonths !== 'unknown'
          ? { forMonths: countBack(habit.forMonths, row.forMonths, gone) }
          : {}),
        ...(!isStill && stopped !== 'unknown'
          ? { stoppedMonthsAgo: countBack(stopped, row.stoppedMonthsAgo, gone) }
          : {}),
      };
      return { ...writeForm(row, habit, units), ...aged };
    }),
  };
}

/** How fast it grows holds; how much had grown by then is no root length of today. */
export const forgetRegrowth: RawForm = { growth: 'usual', regrowthCm: undefined, regrowthWeeks: undefined };
