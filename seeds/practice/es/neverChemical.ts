import type { Sentences } from './sentences';

export const neverChemical: Sentences = {
  'Never anything chemical': 'Nunca nada químico',
  'It’s virgin hair, so you can go straight for blond.':
    'Es cabello virgen, así que puede ir directo al rubio.',
  'Nothing. I’ve never had a chemical service in my life.':
    'Nada. Nunca en mi vida me hice un servicio químico.',
  'Just the summer before last, and again last year: my cousin painted the ends lighter. That’s not a salon.':
    'Solo el verano antepasado, y otra vez el año pasado: mi prima me pintó las puntas más claras. Eso no es un salón.',
  'Twice, I think. Yes, twice.': 'Dos veces, creo. Sí, dos.',
  'Each bleach takes its share of the helix, and two add up. The cue: her ends are two levels lighter than her roots. Ask why.':
    'Cada decoloración se lleva su parte de la hélice, y dos se suman. La pista: sus puntas son dos niveles más claras que la raíz. Pregunte por qué.',
  'published: Wortmann, Springob, Sendelbach, J. Cosmet. Sci. 53:219–228, 2002, Fig. 4 · the cue: common practice, no source':
    'published: Wortmann, Springob, Sendelbach, J. Cosmet. Sci. 53:219–228, 2002, Fig. 4 · la pista: práctica común, sin fuente',
};
