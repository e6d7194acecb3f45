import { dropPast, type LiftForecast } from '../../../shared/chemistry/liftForecast';
import { FEWEST_READINGS } from '../../../shared/chemistry/liftReadings';
import type { Clock } from '../../../shared/records/clock';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { msPerMinute } from '../../../shared/units/time';
import type { Words } from '../../words/words';

/**
 * When is the level she wants expected, in one sentence? Once that time is past, that it is to be looked at; lightener
 * may dry out and get there never, so its earliest leads.
 * Checked in tests/src/screens/strandTest/viewLift.test.tsx.
 */
export function sayForecast(
  forecast: LiftForecast,
  target: number,
  clock: Pick<Clock, 'startedAtMs' | 'dueAtMs'>,
  nowMs: number,
  words: Words,
  units: UnitSettings,
  isLightener: boolean,
): string {
  const said = words.strandTest.lift;
  const level = formatQuantity(target, 'level', units, words.locale);
  const toMs = (atMin: number): number => clock.startedAtMs + atMin * msPerMinute;
  const time = (atMin: number): string => words.moments.time(toMs(atMin));
  const end = words.moments.time(clock.dueAtMs);
  const ahead = isLightener ? said.lightener : said.usual;
  const timeOr = (atMin: number | null): string | null => (atMin === null ? null : time(atMin));
  const coming = dropPast(forecast, (nowMs - clock.startedAtMs) / msPerMinute);
  switch (coming.kind) {
    case 'expected': {
      const { atMin, earliestMin, latestMin } = coming;
      if (toMs(atMin) < nowMs) return said.wasExpected(level, time(atMin));
      return ahead.expected(level, time(atMin), timeOr(earliestMin), timeOr(latestMin), end);
    }
    case 'perhapsNot':
      return ahead.perhapsNot(level, timeOr(coming.earliestMin), end);
    case 'notInTime':
      return said.notInTime(level, end);
    case 'none': {
      const fewest = formatQuantity(FEWEST_READINGS, 'count', units, words.locale);
      return said.none[coming.why](level, fewest);
    }
  }
}
