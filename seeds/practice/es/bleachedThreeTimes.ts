import type { Sentences } from './sentences';

export const bleachedThreeTimes: Sentences = {
  'Once more won’t hurt': 'Una más no hace daño',
  'It’s blond already, only not quite. One more round, all over.':
    'Ya es rubio, solo que no del todo. Una ronda más, en todo.',
  'Bleached? Just the once, really.': '¿Decolorado? Solo una vez, la verdad.',
  'Once here, and twice at home before that. All over, each time.':
    'Una vez aquí, y antes dos en casa. En todo, cada vez.',
  'Three bleaches left about 71 % of the helix where it was measured, and the ends had all three.':
    'Tres decoloraciones dejaron cerca del 71 % de la hélice donde se midió, y las puntas llevan las tres.',
};
