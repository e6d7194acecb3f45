import { createMemo, createSignal, on } from 'solid-js';
import type { Days } from '../../../shared/records/day/dayRecords';
import { countBack, nameDay } from './dayNames';
import { type DayRange, stepBack } from './dayRange';

/** Which days are shown: today, so many days back, the seven up to there, or those somebody chose. */
export function createShownDays(nowMs: () => number) {
  const [back, setBack] = createSignal(0);
  const [days, setDays] = createSignal(1);
  const [chosen, setChosen] = createSignal<DayRange | null>(null);
  const today = createMemo(() => nameDay(nowMs()));
  /** Chosen days stay when the day changes; the others are counted back from today. */
  const shown = createMemo(
    on([today, back, days, chosen], (): Days => {
      const range = chosen();
      return range === null ? countBack(nowMs(), { back: back(), days: days() }) : { ...range, nameDay };
    }),
  );
  const isWeek = () => chosen() === null && days() > 1;
  return {
    today,
    shown,
    isWeek,
    isChosen: () => chosen() !== null,
    isOneDay: () => shown().from === shown().day,
    isUpToToday: () => shown().day >= today(),
    choose: (range: DayRange) => setChosen(range),
    toggleWeek: () => {
      setDays(isWeek() ? 1 : 7);
      setChosen(null);
    },
    /** All that is shown, so many days earlier; later where it is less than none. */
    stepBack: (by: number) => {
      const range = chosen();
      if (range === null) setBack(back() + by);
      else setChosen({ from: stepBack(range.from, by), day: stepBack(range.day, by) });
    },
  };
}

export type ShownDays = ReturnType<typeof createShownDays>;
