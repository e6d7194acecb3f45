import * as v from 'valibot';
import type { GlassSides } from '../../shared/units/card';

/** The glass a page stands on, as a browser tells it at this moment. */
export interface Glass {
  /** px along each side of the screen, either way round. Some browsers move them with the zoom of the page. */
  readonly screenPx: GlassSides;
  /** Dots to one px of the screen. The others move this instead. */
  readonly dotsPerPx: number;
  /** How many px of the screen are as broad as one of the page: what is known of the browser's zoom, frame and all. */
  readonly zoom: number;
}

/**
 * So far apart are two glasses no longer one, as a share. Assumed because rounding to whole px and the frame of a window
 * make a hundredth or two of it, and the scales of screens lie a tenth apart and more.
 */
const ASSUMED_SAME_GLASS = 0.05;

/** By what a glass is known again, as it is kept beside its ruler. */
export const glassSchema = v.object({
  /** Its dots, the shorter side first: "800x1280". */
  of: v.string(),
  /** Its px, likewise. */
  screen: v.optional(v.string()),
  /** Dots to one px, less the zoom. */
  scale: v.optional(v.number()),
});
type KnownGlass = v.InferOutput<typeof glassSchema>;

const sort = (sides: GlassSides): readonly number[] => [...sides].sort((one, other) => one - other);
const isNear = (one: number, other: number): boolean => Math.abs(one / other - 1) <= ASSUMED_SAME_GLASS;

/** How many dots has it along each side? Where the zoom moves the dots and not the screen, more than there are. */
export const countDots = ({ screenPx: [wide, high], dotsPerPx }: Glass): GlassSides => [
  Math.round(wide * dotsPerPx),
  Math.round(high * dotsPerPx),
];

/** How is it kept? */
export const nameGlass = (glass: Glass): KnownGlass => ({
  of: sort(countDots(glass)).join('x'),
  screen: sort(glass.screenPx).join('x'),
  scale: glass.dotsPerPx / glass.zoom,
});

/** How many dots had the glass that was kept? Zeros where that line is damaged. */
export function readSides({ of }: Pick<KnownGlass, 'of'>): GlassSides {
  const [short = 0, long = 0] = of.split('x').map(Number);
  return Number.isFinite(short) && Number.isFinite(long) ? [short, long] : [0, 0];
}

/**
 * Is this the glass that was kept? It has as many dots, to the rounding of a zoom that moves the screen; or as many px at
 * the same scale, where the zoom moves the dots. Another screen of as many px has another scale.
 */
export function isSameGlass(kept: KnownGlass, glass: Glass): boolean {
  const [short, long] = readSides(kept);
  const [shortHere = 0, longHere = 0] = sort(countDots(glass));
  const slack = Math.ceil(glass.dotsPerPx);
  if (Math.abs(short - shortHere) <= slack && Math.abs(long - longHere) <= slack) return true;
  if (kept.scale === undefined) return false;
  const here = nameGlass(glass);
  return kept.screen === here.screen && isNear(kept.scale, glass.dotsPerPx / glass.zoom);
}
