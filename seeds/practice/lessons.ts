import { blackTattoo } from './blackTattoo';
import { bleachedThreeTimes } from './bleachedThreeTimes';
import { compoundHenna } from './compoundHenna';
import { fineGrey } from './fineGrey';
import { highAltitude } from './highAltitude';
import { lapsedSkinTest } from './lapsedSkinTest';
import type { LessonSeed } from './lessonSeed';
import { longEnds } from './longEnds';
import { minor } from './minor';
import { neverChemical } from './neverChemical';
import { positiveSkinTest } from './positiveSkinTest';
import { relaxer } from './relaxer';
import { safeClient } from './safeClient';
import { scratchedScalp } from './scratchedScalp';
import { siliconeSpray } from './siliconeSpray';
import { smoothingReleaser } from './smoothingReleaser';
import { snapsWet } from './snapsWet';
import { sugarySpray } from './sugarySpray';
import { unknownBoxColour } from './unknownBoxColour';
import { wetIronedCurls } from './wetIronedCurls';
import { wheeze } from './wheeze';

/** Every lesson of the invented salon, the plainest first. Nobody in them is real. */
export const lessons: readonly LessonSeed[] = [
  safeClient,
  minor,
  lapsedSkinTest,
  blackTattoo,
  positiveSkinTest,
  scratchedScalp,
  wheeze,
  neverChemical,
  wetIronedCurls,
  longEnds,
  bleachedThreeTimes,
  highAltitude,
  siliconeSpray,
  sugarySpray,
  unknownBoxColour,
  compoundHenna,
  smoothingReleaser,
  relaxer,
  snapsWet,
  fineGrey,
];
