import type { Sentences } from './sentences';

export const safeClient: Sentences = {
  'A good question': 'Una buena pregunta',
  'Is it dangerous? I’ve read such things. Only a little lighter, if you think it’s all right.':
    '¿Es peligroso? He leído cosas así. Solo un poco más claro, si le parece bien.',
  'Oh dear, I don’t know. Could it?': 'Ay, no sé. ¿Podría?',
  'No smoke, no smell, nothing.': 'Sin humo, sin olor, nada.',
  'I can’t say for sure, what counts?': 'No sabría decirle, ¿qué cuenta?',
  'Shampoo and water. Never anything else.': 'Champú y agua. Nunca otra cosa.',
  'Bleach? I wouldn’t know.': '¿Decolorante? Ni idea.',
  'No. Never.': 'No. Nunca.',
  'What would that be?': '¿Qué sería eso?',
  'Nothing of the kind.': 'Nada de eso.',
};
