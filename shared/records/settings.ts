import * as v from 'valibot';
import { LEGAL_CEILING_PERCENT } from '../chemistry/peroxide';

/** Whole seconds until warmth was felt, an hour at the most; null: it was not felt within the cap. */
const warmthS = v.nullable(v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(3600)));

/**
 * One product of the shelf. What only a spray has came later: earlier editions lack it, and each of them is read for
 * ever. So the limits of what is kept stand here as wide figures of their own (ASSUMED, only to keep rubbish out): those
 * of today's form are narrower (forms/shelf.ts), and lowering one leaves every old edition readable. `makerSaysUpToC`
 * is the maker's own claim, in °C; nothing here is ever reckoned from a list. Checked in
 * tests/shared/records/settings.test.ts against an edition that is kept for ever.
 */
export const shelfEntry = v.strictObject({
  name: v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(40)),
  kind: v.picklist(['lightener', 'colour', 'spray']),
  ingredients: v.exactOptional(v.pipe(v.string(), v.maxLength(100_000))),
  makerSaysUpToC: v.exactOptional(v.pipe(v.number(), v.minValue(0), v.maxValue(1000))),
  /** The maker's own minutes from mixing to putting on; lacking where nobody kept any. */
  useWithinMin: v.exactOptional(v.pipe(v.number(), v.minValue(1), v.maxValue(1440))),
  trial: v.exactOptional(
    v.strictObject({
      atMs: v.pipe(v.number(), v.safeInteger()),
      bareS: warmthS,
      sprayedS: warmthS,
    }),
  ),
});

/**
 * For so many months closed records and skin tests are kept where the owner says nothing else. Assumed because a complaint
 * may come long after a visit; how long records must or may be kept differs by country, so the owner sets it.
 */
export const ASSUMED_KEEP_MONTHS = 36;

/**
 * The station's settings. A log names the id of those it was judged under, so every version is kept.
 * Ranges: ASSUMED, wide enough that only a slip of the finger lies outside: in metres from the shore of the Dead Sea to
 * the highest towns. Scale steps of 0.1, 0.5 and 1 g: common practice, no source.
 */
export const settingsSchema = v.strictObject({
  altitudeM: v.pipe(v.number(), v.minValue(-430), v.maxValue(5500)),
  units: v.strictObject({
    temperature: v.picklist(['C', 'F']),
    mass: v.picklist(['g', 'oz']),
    length: v.picklist(['cm', 'in']),
  }),
  /** What the station speaks. Editions from before had English alone. No log is judged under it. */
  locale: v.picklist(['en', 'es']),
  scaleStepG: v.picklist([0.1, 0.5, 1]),
  chairs: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(30)),
  staff: v.array(v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(20))),
  shelf: v.array(shelfEntry),
  /**
   * May the outcome of an earlier strand be carried to the same gloss of a client who tells nothing new? Off until the
   * owner turns it on; turned off, nothing more is weighed or put on on the strength of one.
   */
  carried: v.optional(v.boolean(), false),
  /** Is a line spoken after the pulses of a call? Off until somebody turns it on: other clients hear it. */
  spoken: v.optional(v.boolean(), false),
  /**
   * Whom does she call about late itching? A number or whatever the salon answers to, for her card. Its length: ASSUMED, one line
   * of the card; empty where nobody has said it.
   */
  contact: v.optional(v.pipe(v.string(), v.trim(), v.maxLength(40)), ''),
  /**
   * For how many months, from the day it closed, a record is kept; null where the owner chose no end. Limits: ASSUMED, a
   * month to fifty years, only to keep rubbish out. Editions from before had nothing erased, and by itself nothing is.
   */
  keepMonths: v.optional(
    v.nullable(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(600))),
    ASSUMED_KEEP_MONTHS,
  ),
  /** What is past that time is erased without a hold. Off until the owner turns it on. */
  erasesByItself: v.optional(v.boolean(), false),
  /**
   * May the report of a week group its figures by who works here? Off until the owner turns it on: figures with names are
   * about the people at the bar, who are told first, and the law of the place may ask more.
   */
  figuresByStylist: v.optional(v.boolean(), false),
  /**
   * Is the chance that strands break shown by what this station's own strands taught? Off shows what is assumed. Nothing is
   * judged by it (shared/learning/learnt.ts); editions from before had nothing learned.
   */
  learns: v.optional(v.boolean(), true),
  profile: v.strictObject({
    /** Under this age, in years, nothing is coloured; null where the local rule draws no line. */
    ageLine: v.nullable(v.pipe(v.number(), v.integer(), v.minValue(10), v.maxValue(21))),
    /**
     * Hours from putting on to reading. As little as half an hour only because makers' open-application protocols
     * exist (published: Cosmetics Europe 2023: some, 45 min open); the maker's directions come first.
     */
    skinTestWaitH: v.pipe(v.number(), v.minValue(0.5), v.maxValue(96)),
    /** Days from putting on. */
    skinTestLapsesDays: v.pipe(v.number(), v.minValue(1), v.maxValue(365)),
    skinTestFor: v.array(v.picklist(['lighten', 'liftAndDeposit', 'depositOnly', 'gloss', 'tone'])),
    /**
     * The strongest bottle of this house, per cent: never above the law's ceiling (published: Reg. (EC) 1223/2009
     * Annex III entry 12), and as low as the weakest bottle there is. Editions from before had the law's.
     */
    ceilingPercent: v.optional(
      v.pipe(v.number(), v.minValue(1.5), v.maxValue(LEGAL_CEILING_PERCENT)),
      LEGAL_CEILING_PERCENT,
    ),
    /**
     * Does "any reaction ever" of the label text (published: Reg. (EC) 1223/2009 Annex III) take in what only tingled and
     * stopped on rinsing? Off: that is for a named person to judge (common practice, no source).
     */
    isAnyReactionAbsolute: v.optional(v.boolean(), false),
  }),
});

export type Settings = v.InferOutput<typeof settingsSchema>;
export type ShelfEntry = v.InferOutput<typeof shelfEntry>;
export type LocalProfile = Settings['profile'];

/**
 * For so many days after it was put on a skin test counts. Assumed because makers ask for one before each colouring,
 * and visits lie about four weeks apart at the least; the maker's own interval comes first.
 */
export const ASSUMED_SKIN_TEST_LAPSES_DAYS = 28;

/**
 * What a new station starts with. Sea level, whole grams, eight chairs: ASSUMED, as many as the bar has places.
 * Age line: published, Reg. (EC) 1223/2009 Annex III label text (not meant for under 16). Wait of 48 h: published,
 * Cosmetics Europe 2023, one maker's protocol; the maker's directions come first.
 */
export const defaultSettings: Settings = {
  altitudeM: 0,
  units: { temperature: 'F', mass: 'g', length: 'in' },
  locale: 'en',
  scaleStepG: 1,
  chairs: 8,
  staff: [],
  shelf: [],
  carried: false,
  spoken: false,
  contact: '',
  keepMonths: ASSUMED_KEEP_MONTHS,
  erasesByItself: false,
  figuresByStylist: false,
  learns: true,
  profile: {
    ageLine: 16,
    skinTestWaitH: 48,
    skinTestLapsesDays: ASSUMED_SKIN_TEST_LAPSES_DAYS,
    skinTestFor: ['lighten', 'liftAndDeposit', 'depositOnly', 'gloss', 'tone'],
    ceilingPercent: LEGAL_CEILING_PERCENT,
    isAnyReactionAbsolute: false,
  },
};
