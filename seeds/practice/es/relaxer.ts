import type { Sentences } from './sentences';

export const relaxer: Sentences = {
  'Nothing on it': 'No tiene nada',
  'Caramel, please, all the way through.': 'Caramelo, por favor, de arriba abajo.',
  'No colour, nothing. Just as it is.': 'Ningún color, nada. Tal cual.',
  'A relaxer, every other month. Six weeks ago the last time. But that’s not colour.':
    'Un alisador, cada dos meses. La última vez, hace seis semanas. Pero eso no es color.',
  'Straight, from the parting to the tip.': 'Liso, de la raya a la punta.',
  'Close to the scalp a finger’s width of curl; below it, straight.':
    'Junto al cuero cabelludo, un dedo de rizo; más abajo, liso.',
  'Nothing on the cape so far.': 'Hasta ahora, nada en la capa.',
  'Short pieces in the comb, all along the parting.': 'Trozos cortos en el peine, a lo largo de la raya.',
  'A relaxer has already taken bonds; lightener takes from those that are left. For a new hire it is no. A shade that only deposits can be offered, or waiting until it has grown out.':
    'Un alisador ya se llevó enlaces; el decolorante se lleva de los que quedan. Para quien empieza es no. Se puede ofrecer un tono que solo deposite, o esperar a que haya crecido y salido.',
  'What grew last curls and the rest does not: something took its shape. Ask what.':
    'Lo último que creció se riza y el resto no: algo le quitó la forma. Pregunte qué.',
  'It breaks already, without any mix on it.': 'Ya se rompe, sin ninguna mezcla encima.',
};
