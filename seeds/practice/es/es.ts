import { blackTattoo } from './blackTattoo';
import { bleachedThreeTimes } from './bleachedThreeTimes';
import { compoundHenna } from './compoundHenna';
import { fineGrey } from './fineGrey';
import { highAltitude } from './highAltitude';
import { lapsedSkinTest } from './lapsedSkinTest';
import { longEnds } from './longEnds';
import { minor } from './minor';
import { neverChemical } from './neverChemical';
import { positiveSkinTest } from './positiveSkinTest';
import { relaxer } from './relaxer';
import { safeClient } from './safeClient';
import { scratchedScalp } from './scratchedScalp';
import type { Sentences } from './sentences';
import { siliconeSpray } from './siliconeSpray';
import { smoothingReleaser } from './smoothingReleaser';
import { snapsWet } from './snapsWet';
import { sugarySpray } from './sugarySpray';
import { unknownBoxColour } from './unknownBoxColour';
import { wetIronedCurls } from './wetIronedCurls';
import { wheeze } from './wheeze';

/** What is said in the lessons, in Spanish. What several lessons say stands with the first of them. */
export const es: Sentences = {
  ...safeClient,
  ...minor,
  ...lapsedSkinTest,
  ...blackTattoo,
  ...positiveSkinTest,
  ...scratchedScalp,
  ...wheeze,
  ...neverChemical,
  ...wetIronedCurls,
  ...longEnds,
  ...bleachedThreeTimes,
  ...highAltitude,
  ...siliconeSpray,
  ...sugarySpray,
  ...unknownBoxColour,
  ...compoundHenna,
  ...smoothingReleaser,
  ...relaxer,
  ...snapsWet,
  ...fineGrey,
};
