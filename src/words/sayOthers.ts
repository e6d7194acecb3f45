import { formatQuantity } from '../../shared/units/format';
import type { UnitSettings } from '../../shared/units/quantity';
import { msPerDay, msPerHour, msPerMinute } from '../../shared/units/time';
import type { OthersRefusal, OthersTrouble } from './othersKinds';
import type { Words } from './words';

/** What the station says of others fits in here. */
export type AnyOthers =
  | { readonly kind: 'off' | 'asking' }
  | { readonly kind: 'inStep'; readonly atMs: number; readonly refused: readonly AnyRefused[] }
  | {
      readonly kind: 'apart';
      readonly why: OthersTrouble;
      readonly inStepAtMs: number | null;
      readonly waiting: number | null;
      readonly refused: readonly AnyRefused[];
    };

export interface AnyRefused {
  readonly id: string;
  readonly why: OthersRefusal;
}

/**
 * How does this station stand with the others, in one line? "In step, 2 minutes ago"; "Not reached since 14:02, 3 records
 * wait". Checked in tests/src/words/sayOthers.test.ts.
 */
export function sayOthers(others: AnyOthers, words: Words, units: UnitSettings, nowMs: number): string {
  const said = words.others;
  const write = (count: number) => formatQuantity(Math.floor(count), 'count', units, words.locale);
  switch (others.kind) {
    case 'off':
      return said.off;
    case 'asking':
      return said.asking;
    case 'inStep': {
      const ago = nowMs - others.atMs;
      if (ago < msPerMinute) return said.inStep(said.justNow);
      return said.inStep(
        ago < msPerHour ? said.minutesAgo(write(ago / msPerMinute)) : said.hoursAgo(write(ago / msPerHour)),
      );
    }
    case 'apart': {
      const { inStepAtMs, waiting } = others;
      if (inStepAtMs === null) return said.neverReached;
      const { time, shortDayAndTime } = words.moments;
      const since = nowMs - inStepAtMs < msPerDay / 2 ? time(inStepAtMs) : shortDayAndTime(inStepAtMs);
      const apart = said.apart(since);
      return waiting === null ? apart : `${apart}, ${said.waiting(write(waiting))}`;
    }
  }
}
