import { readBandAt } from '../../../shared/chemistry/liftBand';
import { fitLiftCurve } from '../../../shared/chemistry/liftCurve';
import { forecastLift, type LiftForecast } from '../../../shared/chemistry/liftForecast';
import type { LevelSeen } from '../../../shared/chemistry/liftReadings';
import { readSaturation } from '../../../shared/chemistry/saturation';
import type { Clock } from '../../../shared/records/clock';
import { findSigns } from '../../../shared/records/gradeOutcome';
import type { StrandRecord } from '../../../shared/records/record';
import { msPerMinute } from '../../../shared/units/time';
import type { LevelsView } from './viewLevels';

/** How light it may be after so many minutes: at least, likely, at most. */
export interface LevelAhead extends LevelSeen {
  readonly low: number;
  readonly high: number;
}

/** The curve of one strand, its forecast, and nothing beyond its own time. */
export interface LiftView {
  /** The fitted line up to the last look; empty where no curve is drawn. */
  readonly fitted: readonly LevelSeen[];
  /** From the last look to the end of its time; empty where nothing is said of what comes. */
  readonly ahead: readonly LevelAhead[];
  /** When the level she wants is expected; null where nobody asks, or where it is to come off now. */
  readonly forecast: LiftForecast | null;
}

/** So many pieces make a line look like a curve. Assumed because each is then about five px long. */
const ASSUMED_PIECES = 40;

const spread = (fromMin: number, toMin: number): readonly number[] =>
  Array.from(
    { length: ASSUMED_PIECES + 1 },
    (_, piece) => fromMin + ((toMin - fromMin) * piece) / ASSUMED_PIECES,
  );

/**
 * How does this strand lift, and when does it get there? Nothing is said ahead of a strand that is to come off: one that
 * was stretchy at any look, since hair does not heal, or whose time is up. Checked in tests/src/screens/strandTest/viewLift.test.tsx.
 */
export function viewLift(
  { seen, lastLookMin, target, minutes }: LevelsView,
  strand: StrandRecord,
  clock: Pick<Clock, 'looks'>,
  isOver: boolean,
): LiftView {
  const curve = fitLiftCurve(seen);
  const firstMin = Math.max(0, Math.min(minutes, ...seen.map(({ atMin }) => atMin)));
  const lastMin = Math.min(Math.max(0, ...seen.map(({ atMin }) => atMin)), minutes);
  const isAhead = !isOver && !findSigns(strand).hasWeakened && lastMin < minutes;
  const forecast =
    isAhead && target !== null && clock.looks !== null
      ? forecastLift(
          {
            seen,
            target,
            lastLookMin,
            firstLookMin: clock.looks.firstAfterMs / msPerMinute,
            lookEveryMin: clock.looks.everyMs / msPerMinute,
            wholeMin: minutes,
          },
          curve,
        )
      : null;
  if (!curve.ok) return { fitted: [], ahead: [], forecast };
  const { likely, possible } = curve.value;
  return {
    fitted: spread(firstMin, lastMin).map((atMin) => ({ atMin, level: readSaturation(likely, atMin) })),
    ahead:
      isAhead && forecast?.kind !== 'none'
        ? spread(lastMin, minutes).map((atMin) => ({
            atMin,
            level: readSaturation(likely, atMin),
            ...readBandAt([likely, ...possible], atMin),
          }))
        : [],
    forecast,
  };
}
