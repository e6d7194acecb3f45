import type { CautionId } from '../en/cautions';

/** One caution for each movement of the hand, said beside it and nowhere else. Sources: src/words/en/cautions.ts. */
export const cautions: Readonly<Record<CautionId, string>> = {
  snip: 'Guantes: un par nuevo para ella, nunca de látex.',
  look: 'Guantes puestos. Limpie, seque con toques, mire sobre blanco.',
  weighLightener:
    'Guantes, extractor. Nunca bol de metal. Tapa puesta, cuchara baja, cuide sus ojos. ¿Asma? Que mezcle otra persona.',
  weighColour: 'Guantes, extractor. Bol de plástico o vidrio, nunca de metal. Cuide sus ojos.',
  standing: 'Guantes puestos. Nunca en pestañas ni cejas. Nunca lo tape ni lo guarde: revienta.',
  onHead:
    'Ni secadora ni lámpara sobre decolorante, salvo que el fabricante lo diga. ¿En los ojos? Enjuague de inmediato.',
  onHeadColour: 'Nunca en pestañas ni cejas. ¿En los ojos? Enjuague de inmediato.',
  basin: 'Al lavabo ya, para enjuagar a tiempo.',
  overdue: 'Enjuague ya: se acabó su tiempo.',
  glass: 'Fuera de la cabeza, extractor. Vidrio o plástico, nunca metal. Guantes y gafas de protección.',
  spray: 'Ni aerosol ni espray con alcohol cerca de placas calientes: se incendia.',
  outcome: 'Enjuague, seque con toques, estire el rizo, tire suave en mojado.',
};
