import type { RuleId } from '../../../shared/judgement/rules';
import type { RuleWords } from '../en/rules';

const byCorrection = 'Hoy nada lo levanta. Solo si la respuesta estaba mal: una corrección con nombre.';
const byJudgement = 'Una persona, con su nombre y un motivo, puede levantarlo para este servicio.';
const label = 'El texto legal de la etiqueta dice que no se coloree (EU Reg. 1223/2009, Annex III).';

/** The words of every stop. */
export const rules: Readonly<Record<RuleId, RuleWords>> = {
  'stop.reactionEver': {
    what: 'Ya ha reaccionado a un color o decolorante.',
    why: label,
    clears: byCorrection,
  },
  'stop.anyReaction': {
    what: 'Antes le hormigueó. Aquí toda reacción detiene.',
    why: 'El texto de la etiqueta dice cualquier reacción, alguna vez (EU Reg. 1223/2009, Annex III); esta casa lo lee al pie de la letra.',
    clears: byCorrection,
  },
  'stop.persulfateReaction': {
    what: 'Ronchas o pecho apretado tras color o decolorante.',
    why: 'Los persulfatos pueden causar ronchas, asma y, rara vez, choque (Pang & Fiume 2001).',
    clears: byCorrection,
  },
  'stop.blackTattoo': {
    what: 'Ha reaccionado a un tatuaje temporal de henna negra.',
    why: label,
    clears: byCorrection,
  },
  'stop.scalpBroken': {
    what: 'El cuero cabelludo está irritado o lastimado.',
    why: label,
    clears: 'Cuando sane: una corrección con nombre, “Cambió desde entonces”.',
  },
  'stop.faceRash': {
    what: 'Hay una erupción en la cara.',
    why: label,
    clears: 'Cuando se quite: una corrección con nombre, “Cambió desde entonces”.',
  },
  'stop.underAge': {
    what: 'Es muy joven para colorearse aquí.',
    why: 'El texto legal de la etiqueta: no para menores de 16 (EU Reg. 1223/2009). Sus ajustes dicen desde qué edad.',
    clears: byCorrection,
  },
  'stop.skinTestPositive': {
    what: 'La prueba de piel reaccionó.',
    why: label,
    clears: byCorrection,
  },
  'stop.incompatibilityReacted': {
    what: 'El cabello reaccionó en el vaso.',
    why: 'Las sales metálicas pueden calentarlo, hacerlo burbujear o romperlo. Práctica común; primero, el método del fabricante.',
    clears: byCorrection,
  },
  'stop.inherited': {
    what: 'Un registro anterior de esta ficha terminó en un alto.',
    why: 'Un alto va con la clienta, no con la visita.',
    clears: 'Si es otra persona, o estaba mal: una corrección con nombre.',
  },
  'judgement.tingled': {
    what: 'Antes le hormigueó, y cesó al enjuagar.',
    why: 'Práctica común: puede ser el cuero cabelludo, o un comienzo.',
    clears: byJudgement,
  },
  'judgement.scalpTight': {
    what: 'Hoy el cuero cabelludo está tirante.',
    why: 'Práctica común: la piel tirante se quema antes.',
    clears: byJudgement,
  },
  'judgement.relaxedRecently': {
    what: 'Alisador, permanente o queratina hace menos de dos semanas, o no se sabe.',
    why: 'Práctica común: dos semanas de espera entre los dos.',
    clears: byJudgement,
  },
  'judgement.relaxerThenLightener': {
    what: 'Cabello con alisador, y quiere aclararse.',
    why: 'Práctica común: hidróxido y decolorante juntos rompen el cabello.',
    clears: byJudgement,
  },
  'judgement.relaxerAndPerm': {
    what: 'Alisador y permanente en este cabello.',
    why: 'Práctica común: hidróxido y tio nunca se enciman; donde se encimaron, el cabello se rompe.',
    clears: byJudgement,
  },
  'judgement.snapsWhenWet': {
    what: 'Un mechón mojado se rompe al estirarlo.',
    why: 'Práctica común: al cabello que se rompe mojado no le queda nada que dar.',
    clears: byJudgement,
  },
  'judgement.onScalp': {
    what: 'Decolorante en el cuero cabelludo, a más de 6 % (20 vol) o con calor seco.',
    why: 'Práctica común: eso quema la piel, y el mechón no la tenía.',
    clears: byJudgement,
  },
  'judgement.freerThanSuggested': {
    what: 'Más libre de lo que sugiere la tabla.',
    why: 'La tabla es una estimación; una persona con nombre puede conocer mejor este cabello.',
    clears: byJudgement,
  },
};
