import type { CovariateName } from '../../../shared/judgement/chance/covariates';
import { sayCount } from './sayCount';

/** Each thing that bears on the chance, as the hair that has it. */
const hair: Readonly<Record<CovariateName | 'base', string>> = {
  base: 'cabello sin nada en contra',
  helixLost: 'cabello con años de calor y decolorante',
  tryptophanLost: 'cabello con marcas de calor',
  ironedWet: 'cabello planchado mojado',
  scorched: 'cabello que humeó',
  bleaches: 'cabello decolorado',
  curlLost: 'cabello que perdió el rizo',
  slowStretch: 'cabello que tardó en volver',
  porous: 'cabello poroso',
  breakage: 'cabello que ya se rompe',
  veryHot: 'cabello planchado muy caliente',
  smoothing: 'cabello con queratina',
  relaxer: 'cabello alisado o con permanente',
  strangeColour: 'cabello con un color desconocido',
};

const whatTeaches =
  'Cada mechón anotado de decoloración o aclarado enseña desde el día siguiente. Nada se toma de la demostración, de otras tabletas ni de mechones descartados.';

const sayBetter = (by: string | null): string => (by === null ? 'no mejor' : `${by} mejor`);

/** What this station's own strands taught, in words of somebody who never heard of statistics. */
export const taught = {
  way: 'Nuestros mechones',
  title: 'Lo que enseñaron nuestros mechones',
  kicker: 'La probabilidad de rotura, según los mechones de esta estación',
  count: (strands: string) => `Enseñaron ${sayCount(strands, 'mechón', 'mechones')}`,
  broke: (broken: string, of: string) => `${broken} de ${of} salieron gomosos o rotos.`,
  tooFew: 'Muy pocos para decirlo. Desde 20 mechones se dice aquí qué tan bien se prevé.',
  /** Both by how much nearer they come than whoever says the average of every strand. */
  foreseen: (learnt: string | null, assumed: string | null) =>
    `Previsto ${sayBetter(learnt)} que con el simple promedio; con lo supuesto, ${sayBetter(assumed)}.`,
  nothingToCompare: 'Todos salieron igual: aún no hay nada que prever.',
  moved: {
    more: (hair: readonly string[]) => `Se rompe más de lo supuesto: ${hair.join(', ')}.`,
    less: (hair: readonly string[]) => `Se rompe menos de lo supuesto: ${hair.join(', ')}.`,
  },
  hair,
  nothingMoved: 'Cada cosa pesa más o menos lo supuesto.',
  shownOnly: 'Cambia la probabilidad que se muestra, nunca cuántos mechones se piden. Decide el mechón.',
  isOff: 'Ahora se muestra lo supuesto. “Aprender otra vez” lo revierte.',
  saidAndSeen: 'Lo dicho y lo que vino',
  assumedAndSeen: 'Lo supuesto y lo que vino',
  range: (from: string, to: string) => `${from}–${to}`,
  seen: (count: string, of: string, fits: 'fits' | 'more' | 'fewer' | null) =>
    fits === null
      ? `${count} de ${of}`
      : `${count} de ${of}, ${fits === 'fits' ? 'encaja' : fits === 'more' ? 'más' : 'menos'}`,
  rowInWords: (said: string, seen: string) => `Dicho ${said}: ${seen}.`,
  legend:
    'Rombo: lo dicho. Punto: cuántos se rompieron. Barra: donde está la parte real, 19 de cada 20 veces.',
  /** Where there is nothing to show: why, in large, and what that means. */
  nothing: {
    taught: ['Aún no ha enseñado ningún mechón.', whatTeaches],
    reckoning: ['Se está calculando. Siga trabajando.'],
    failed: ['No se pudo calcular.', 'En su lugar se muestra lo supuesto. “Aprender otra vez” lo reintenta.'],
    demo: ['La demostración no enseña nada.', whatTeaches],
  },
  backToAssumed: 'Volver a lo supuesto',
  learnAgain: 'Aprender otra vez',
};
