import type { HairThresholdId } from '../../../shared/heat/thresholds';
import { figures } from './figures';

const thresholds: Readonly<Record<HairThresholdId, string>> = {
  waterBoils: 'hace hervir el agua del cabello',
  poresBegin: 'empiezan huecos diminutos en el cabello',
  helixMeltsInWater: 'en agua a presión cede la estructura interna',
  poresRiseFast: 'los huecos crecen rápido',
  cortexSoftens: 'el núcleo del cabello se ablanda',
  meltsOnSlowPasses: 'las pasadas lentas lo funden',
  hairBurns: 'el cabello se quema',
  helixMeltsDry: 'cede la estructura interna del cabello seco',
};

/** What a tool's setting reaches, today too. */
export const heat = {
  thresholds,
  todayTitle: (tool: string, setting: string) => `Hoy: ${tool} a ${setting}, en cabello seco`,
  todayReaches: 'En seco no se alcanza ningún umbral conocido aquí. Aun así, cada pasada le quita algo.',
  onePass: (seconds: string) => `Una pasada, de ${seconds} como máximo. Antes, seco del todo.`,
  /** Today's finish and her plan say two things: that is said before she chooses. */
  restAfter: `Su plan pide ${figures.restHours} h sin calor después del color: hoy es más suave sin herramienta de calor.`,
};
