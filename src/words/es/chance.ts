import type { CovariateName } from '../../../shared/judgement/chance/covariates';
import type { ChanceWord } from '../../../shared/judgement/chance/estimate';
import { sayCount } from './sayCount';

/** What bears on the chance, short enough for one line. */
const reasons: Readonly<Record<CovariateName, string>> = {
  helixLost: 'calor y decoloración en lo que sostiene el cabello',
  tryptophanLost: 'las marcas del calor en él',
  ironedWet: 'planchado mojado o húmedo, o no se sabe',
  scorched: 'humeó u olió a quemado, o no se sabe',
  bleaches: 'cuántas veces se decoloró, o no se sabe',
  curlLost: 'el rizo de las puntas, perdido o no se sabe',
  slowStretch: 'cómo recuperó en mojado, o no se sabe',
  porous: 'porosidad alta, o no se sabe',
  breakage: 'ya se rompe, o no se sabe',
  veryHot: 'un ajuste muy caliente, o no se sabe',
  smoothing: 'un servicio de keratina, o no se sabe',
  relaxer: 'un alisador o permanente, o no se sabe',
  strangeColour: 'sales metálicas o un color que nadie conoce',
};

/** Of the chance and of the risk, each as its noun asks. */
const chances: Readonly<Record<ChanceWord, string>> = { low: 'Baja', raised: 'Elevada', high: 'Alta' };
const risks: Readonly<Record<ChanceWord, string>> = { low: 'bajo', raised: 'elevado', high: 'alto' };

export const chance = {
  title: 'Probabilidad de que mechones así se rompan',
  why: '¿De dónde sale?',
  reasons,
  /** The word first, the figures behind “Why?”. */
  line: (word: ChanceWord) => `${chances[word]} probabilidad de que mechones así se rompan.`,
  /** Where what makes hair suspect sets the care, and not the chance. */
  bySigns: (risk: ChanceWord) => `Riesgo ${risks[risk]}: sus señales fijan el cuidado.`,
  /** Where it is not the signs: nothing that is asked for goes by what strands taught. */
  byAssumed: (risk: ChanceWord) => `Riesgo ${risks[risk]} según lo supuesto: eso fija el cuidado.`,
  byStrands: (word: ChanceWord) =>
    `${chances[word]} probabilidad según nuestros propios mechones: tenga más cuidado.`,
  strandsSay: (word: ChanceWord) =>
    `${chances[word]} según nuestros propios mechones. Cómo se prueba aún lo fijan las señales y lo supuesto.`,
  basedOn: (strands: string, assumed: string) =>
    `Basado en ${sayCount(strands, 'mechón', 'mechones')} de esta estación. Supuesto antes de ellos: cerca de ${assumed}.`,
  noStrandsYet: 'Supuesto: ningún mechón de esta estación ha enseñado aún.',
  notLearnt: 'Según lo supuesto: lo que enseñaron nuestros mechones no se usa ahora.',
  signsAskMore: (word: ChanceWord) =>
    `${chances[word]} por sí sola. Las señales piden más cuidado, así que fijan cómo se prueba.`,
  odds: (middle: string, low: string, high: string) => `Cerca de ${middle}, de ${low} a ${high}.`,
  weighMost: 'Lo que más pesa en ella',
  /** After a reason that went further than any figure that was measured. */
  beyond: 'más allá de lo medido: contado como lo más que se midió',
  nothing: 'Nada dicho ni palpado la aumenta.',
  assumed:
    'Lo que pesa cada una es supuesto, no medido: ninguna cifra publicada dice qué tan probable es que el cabello se rompa.',
  moved: 'Lo que pesa cada una se supuso primero; nuestros propios mechones lo han movido desde entonces.',
  decides: 'Una estimación. El mechón decide.',
};
