import type { Sentences } from './sentences';

export const lapsedSkinTest: Sentences = {
  'Fine last time': 'Antes salió bien',
  'A warm brown all over, please. The skin test is done, it was fine.':
    'Un castaño cálido en todo, por favor. La prueba de piel ya está, salió bien.',
  'No. You tested me, so you know.': 'No. Usted me hizo la prueba, así que ya sabe.',
  'Never, nothing. That was for the last time, though, six weeks ago.':
    'Nunca, nada. Aunque eso fue para la vez pasada, hace seis semanas.',
  'A skin test counts for so many days as the house says, and hers is older: nothing goes on her head before a new one was read. Her strands may be tested today.':
    'Una prueba de piel vale los días que dice la casa, y la suya es más vieja: nada va en su cabeza antes de leer una nueva. Sus mechones pueden probarse hoy.',
};
