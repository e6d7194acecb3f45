import { findReadableAtMs, type JudgedSkinTest } from '../../../shared/judgement/skinTest';
import type { LocalProfile } from '../../../shared/records/settings';
import type { Words } from '../../words/words';

/** A test that was put on at another station and is not read yet: when it came in, and from when it may be read there. */
export interface CameIn {
  readonly atMs: number;
  /** By the clock there, and by the wait of this house. */
  readonly thereAtMs: number;
}

/** Does this test wait longer here than at the station where it was put on? */
export const findCameIn = (
  { seen, putOnAtMs, cameAtMs }: Pick<JudgedSkinTest, 'seen' | 'putOnAtMs' | 'cameAtMs'>,
  profile: LocalProfile,
): CameIn | null =>
  seen !== 'notReadYet' || cameAtMs === undefined || cameAtMs <= putOnAtMs
    ? null
    : { atMs: cameAtMs, thereAtMs: findReadableAtMs({ putOnAtMs }, profile) };

/** Since when is it here, and from when may it be read, here and there? */
export const sayCameIn = (
  { atMs, thereAtMs }: CameIn,
  readableAtMs: number,
  { skinTest, moments }: Words,
): string =>
  skinTest.cameIn(
    moments.shortDayAndTime(atMs),
    moments.shortDayAndTime(readableAtMs),
    moments.shortDayAndTime(thereAtMs),
  );
