import type { Consultation } from '../../../machines/consultation/consultation';
import { type BarDue, viewBar } from '../bar/viewBar';

/** One chair under the cover: nothing of whoever sits there but what runs. */
export interface CoveredPlace {
  readonly chair: number;
  /** Whom a tap on it opens; null where nobody sits. */
  readonly id: string | null;
  /** What is due there first, and how many clocks run beside it. */
  readonly due: BarDue | null;
  readonly more: number;
}

/** The chairs as the bar has them, and whoever has something due without a place there; the most urgent of all first. */
export interface CoverView {
  readonly first: BarDue | null;
  readonly places: readonly CoveredPlace[];
  readonly beyond: readonly CoveredPlace[];
}

/** What goes on while nobody looks? Checked in tests/src/screens/cover.test.tsx. */
export function viewCover(open: readonly Consultation[], chairs: number, nowMs: number): CoverView {
  const { places, due } = viewBar(open, chairs, nowMs);
  const tell = (chair: number, id: string | null): CoveredPlace => {
    const hers = due.filter(({ consultation }) => consultation.id === id);
    return { chair, id, due: hers[0] ?? null, more: Math.max(0, hers.length - 1) };
  };
  const seated = places.map(({ chair, consultation }) => tell(chair, consultation?.id ?? null));
  const known = new Set(seated.map(({ id }) => id));
  return {
    first: due[0] ?? null,
    places: seated,
    beyond: open
      .filter(({ id }) => !known.has(id))
      .map(({ id, record }) => tell(record.chair, id))
      .filter((place) => place.due !== null),
  };
}
