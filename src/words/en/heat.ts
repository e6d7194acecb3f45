import type { HairThresholdId } from '../../../shared/heat/thresholds';
import { figures } from './figures';

const thresholds: Readonly<Record<HairThresholdId, string>> = {
  waterBoils: 'boils the water in the hair',
  poresBegin: 'tiny holes begin inside the hair',
  helixMeltsInWater: 'in water under pressure the inner structure gives way',
  poresRiseFast: 'the holes grow fast',
  cortexSoftens: 'the core of the hair softens',
  meltsOnSlowPasses: 'slow passes melt it',
  hairBurns: 'hair burns',
  helixMeltsDry: 'the inner structure of dry hair gives way',
};

/** What a tool's setting reaches, today too. */
export const heat = {
  thresholds,
  todayTitle: (tool: string, setting: string) => `Today: ${tool} at ${setting}, on dry hair`,
  todayReaches: 'No threshold known here is reached on dry hair. Each pass still takes something from it.',
  onePass: (seconds: string) => `One pass, done within ${seconds}. Completely dry first.`,
  /** Today's finish and her plan say two things: that is said before she chooses. */
  restAfter: `Her plan asks for ${figures.restHours} h without heat after colour: no hot tool today is gentler.`,
};
