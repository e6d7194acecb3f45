import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/**
 * Every number of the product that is our own choice, by name, sorted. To add one: name it ASSUMED_…, say "assumed
 * because …" in the doc comment right above it, and add its name here.
 */
const known: readonly string[] = [
  'ASSUMED_ANSWER_SHARES',
  'ASSUMED_ARMED_MS',
  'ASSUMED_ASK_AGAIN_MS',
  'ASSUMED_AT_ONCE_TURN',
  'ASSUMED_BAND_IN_SDS',
  'ASSUMED_BASE',
  'ASSUMED_BLEACHES',
  'ASSUMED_BLEACHES_SUSPECT',
  'ASSUMED_BLEACHES_WORST',
  'ASSUMED_BLEACH_EVERY_WEEKS',
  'ASSUMED_CALL_PULSES',
  'ASSUMED_CARD_LOOKS',
  'ASSUMED_CARRIED_LAPSES_WEEKS',
  'ASSUMED_CHAIR_LINES',
  'ASSUMED_CHANCE_EVERY_CM',
  'ASSUMED_CHANCE_HIGH',
  'ASSUMED_CHANCE_RAISED',
  'ASSUMED_CHANCE_SDS',
  'ASSUMED_CLEAR_PAUSE_MS',
  'ASSUMED_CLEAR_TRIES',
  'ASSUMED_CLOCKS_APART_MS',
  'ASSUMED_CUTTING_SHOWN_MS',
  'ASSUMED_DAMP_MULTIPLIER',
  'ASSUMED_DAYS_A_WEEK',
  'ASSUMED_DENSITY_SHARE',
  'ASSUMED_DOUBLE_TAP_MS',
  'ASSUMED_DOUBTED_GRAIN',
  'ASSUMED_DRYER_DISTANCE_CM',
  'ASSUMED_DRYING_MIN',
  'ASSUMED_EDITION_WAIT_MS',
  'ASSUMED_ENDS_CM',
  'ASSUMED_EXPLAINS_FROM',
  'ASSUMED_FAR_LEVELS',
  'ASSUMED_FELT_FOR_MIN',
  'ASSUMED_FEWEST_DOTS_PER_MM',
  'ASSUMED_FIRST_DAMPING',
  'ASSUMED_FIRST_PX_PER_MM',
  'ASSUMED_FLAGS_FOR_HIGH',
  'ASSUMED_GAIN',
  'ASSUMED_GAP_GLIDING_C',
  'ASSUMED_GAP_HELD_C',
  'ASSUMED_GENTLER',
  'ASSUMED_GENTLER_TIME',
  'ASSUMED_GROWTH_CM_A_MONTH',
  'ASSUMED_HALF_STEPS_DOWN',
  'ASSUMED_HALF_STEPS_UP',
  'ASSUMED_HANDED_OVER_MS',
  'ASSUMED_HAND_OFF_SHARE',
  'ASSUMED_HAND_SHARE',
  'ASSUMED_HARMONICS',
  'ASSUMED_HELIX_ENERGY_J',
  'ASSUMED_HOLD_MS',
  'ASSUMED_JUMP_KEPT_MS',
  'ASSUMED_JUMP_MS',
  'ASSUMED_KEEP_MONTHS',
  'ASSUMED_LANDMARK_CM',
  'ASSUMED_LAPSED_SHOWN_DAYS',
  'ASSUMED_LARGEST_GLASS_MM',
  'ASSUMED_LAST_BLEACH_WEEKS',
  'ASSUMED_LEAST_DAMPING',
  'ASSUMED_LEAST_SETTING_C',
  'ASSUMED_LENGTH_SPREAD',
  'ASSUMED_LIES_WITHIN_CM',
  'ASSUMED_LIGHT_PULL_FROM_PERCENT',
  'ASSUMED_LIGHT_PULL_LIMIT_PERCENT',
  'ASSUMED_LINES_BEYOND',
  'ASSUMED_LOCAL_PHONE_DIGITS',
  'ASSUMED_LONGEST_LIST',
  'ASSUMED_LONGEST_NAME',
  'ASSUMED_LONGEST_STRAND_MM',
  'ASSUMED_LOOKED_TIMES',
  'ASSUMED_MAX_PARTS',
  'ASSUMED_MAX_TOTAL_G',
  'ASSUMED_MIXED_G',
  'ASSUMED_MOST_DAMPING',
  'ASSUMED_MOST_DOTS_PER_MM',
  'ASSUMED_MOST_KEPT',
  'ASSUMED_MOST_NAMES',
  'ASSUMED_MOST_SETTING_C',
  'ASSUMED_MOST_STEPS',
  'ASSUMED_NOTHING_LEFT',
  'ASSUMED_NOT_KNOWN',
  'ASSUMED_ONE_PLACE_PX',
  'ASSUMED_OUTCOME_LAPSES_DAYS',
  'ASSUMED_PATIENCE_MS',
  'ASSUMED_PAUSE_MS',
  'ASSUMED_PHONE_DIGITS',
  'ASSUMED_PIECES',
  'ASSUMED_PLATE_WIDTH_CM',
  'ASSUMED_PRINT_WINDOW_MS',
  'ASSUMED_PULSE_S',
  'ASSUMED_QUIET_DAYS',
  'ASSUMED_RATES_TRIED',
  'ASSUMED_RATIO_TOLERANCE',
  'ASSUMED_READING_OFF_MM',
  'ASSUMED_REST_H',
  'ASSUMED_ROOM_C',
  'ASSUMED_ROUNDING_LEVELS',
  'ASSUMED_ROUNDING_SHARE',
  'ASSUMED_ROUND_G',
  'ASSUMED_ROWS_AT_ONCE',
  'ASSUMED_SAME_DAY_MS',
  'ASSUMED_SAME_GLASS',
  'ASSUMED_SECONDS_A_SECTION',
  'ASSUMED_SETTINGS',
  'ASSUMED_SETTING_C',
  'ASSUMED_SETTLED_SHARE',
  'ASSUMED_SETTLED_SUM_SHARE',
  'ASSUMED_SHORTEST_CORRECTED',
  'ASSUMED_SHORTEST_REST_MM',
  'ASSUMED_SHORT_FOR_SMALLER_LIFT',
  'ASSUMED_SHORT_LOOK_SHARE',
  'ASSUMED_SILENT_OVER_MS',
  'ASSUMED_SKIN_TEST_LAPSES_DAYS',
  'ASSUMED_SLIP_FROM_PERCENT',
  'ASSUMED_SMALLEST_GLASS_MM',
  'ASSUMED_SPOKEN_EACH',
  'ASSUMED_SPRINGS_BACK_FROM_PERCENT',
  'ASSUMED_STEP_DOWN_C',
  'ASSUMED_STOPPED_WEEKS',
  'ASSUMED_STRAIGHT_TURN',
  'ASSUMED_STRANDS_WHEN_HIGH',
  'ASSUMED_TELLING_S',
  'ASSUMED_TEST_MAX_G',
  'ASSUMED_TONER_MAX_MIN',
  'ASSUMED_TOUCH_UP_CM',
  'ASSUMED_TRIES',
  'ASSUMED_TURN_MS',
  'ASSUMED_UNKNOWN_LENGTH_CM',
  'ASSUMED_UNKNOWN_SETTING_C',
  'ASSUMED_UNKNOWN_WETNESS_SHARE',
  'ASSUMED_UNNOTICED_MS',
  'ASSUMED_USE_WITHIN_MIN',
  'ASSUMED_VOICE_STARTS_MS',
  'ASSUMED_WAKE_MS',
  'ASSUMED_WEAK_SETTING_C',
  'ASSUMED_WEEKS',
  'ASSUMED_WEIGHTS',
  'ASSUMED_WET_MULTIPLIER',
];

interface Assumed {
  readonly name: string;
  readonly reason: string;
}

/** The reason in the doc comment that ends right above a position, or nothing. */
function readReason(sourceBefore: string): string {
  const comment = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*$/.exec(sourceBefore)?.[1] ?? '';
  const plain = comment.replace(/^\s*\* ?/gm, '').replace(/\s+/g, ' ');
  return /\bbecause (.+)/i.exec(plain)?.[1]?.trim() ?? '';
}

/** Every declaration (constant or property) of a name that begins with ASSUMED_, with its reason. */
const listAssumed = (source: string): readonly Assumed[] =>
  [...source.matchAll(/^[ \t]*(?:export )?(?:const )?(ASSUMED_\w+)\s*[:=]/gm)].map((found) => ({
    name: found[1] ?? '',
    reason: readReason(source.slice(0, found.index)),
  }));

const listIn = (folder: string): readonly Assumed[] => {
  const at = new URL(`../../${folder}/`, import.meta.url);
  return readdirSync(at, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .flatMap((file) => listAssumed(readFileSync(new URL(file, at), 'utf8')));
};
const assumed = ['shared', 'machines', 'src'].flatMap(listIn).sort((a, b) => (a.name < b.name ? -1 : 1));

describe('what is assumed', () => {
  it('is listed here by name, once each, and nothing else is', () => {
    expect(assumed.map(({ name }) => name)).toEqual(known);
  });

  it('gives its reason where it stands', () => {
    console.info(assumed.map(({ name, reason }) => `${name}: ${reason}`).join('\n'));
    expect(assumed.filter(({ reason }) => reason.length < 20).map(({ name }) => name)).toEqual([]);
  });

  it('is found with or without a reason, exported or not', () => {
    const source = [
      '/** How far? Assumed because it is\n * far enough. */',
      'export const ASSUMED_FAR = 1;',
      '/** How near? */',
      'const ASSUMED_NEAR: number = 2;',
      'const use = ASSUMED_FAR + ASSUMED_NEAR;',
    ].join('\n');
    expect(listAssumed(source)).toEqual([
      { name: 'ASSUMED_FAR', reason: 'it is far enough.' },
      { name: 'ASSUMED_NEAR', reason: '' },
    ]);
  });
});
