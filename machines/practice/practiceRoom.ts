import { defaultSettings, type Settings } from '../../shared/records/settings';
import type { Lesson } from './lesson';

type Profile = Settings['profile'];

/** Of each rule the stricter one: nobody practises a laxer rule than her house has, nor a laxer one than lessons are made for. */
const chooseStricter = (one: Profile, other: Profile): Profile => ({
  ageLine:
    one.ageLine === null || other.ageLine === null
      ? (one.ageLine ?? other.ageLine)
      : Math.max(one.ageLine, other.ageLine),
  skinTestWaitH: Math.max(one.skinTestWaitH, other.skinTestWaitH),
  skinTestLapsesDays: Math.min(one.skinTestLapsesDays, other.skinTestLapsesDays),
  skinTestFor: [...new Set([...one.skinTestFor, ...other.skinTestFor])],
  ceilingPercent: Math.min(one.ceilingPercent, other.ceilingPercent),
  isAnyReactionAbsolute: one.isAnyReactionAbsolute || other.isAnyReactionAbsolute,
});

/**
 * The settings a lesson is judged under: units, language, scale and rules of this house, where those are stricter; all else as
 * a new station has it; altitude and what is beside the usual on the shelf are the lesson's own.
 * Checked in tests/machines/practice/practiceRoom.test.ts.
 */
export const settleLesson = (lesson: Lesson, house: Settings): Settings => ({
  ...defaultSettings,
  units: house.units,
  locale: house.locale,
  scaleStepG: house.scaleStepG,
  profile: chooseStricter(house.profile, defaultSettings.profile),
  altitudeM: lesson.altitudeM ?? defaultSettings.altitudeM,
  shelf: [...practiceShelf, ...(lesson.shelf ?? [])],
});

/** What every lesson has at hand: invented for this project. */
const practiceShelf: Settings['shelf'] = [
  { name: 'Sandbar powder', kind: 'lightener' },
  { name: 'Sandbar cream', kind: 'colour' },
];
