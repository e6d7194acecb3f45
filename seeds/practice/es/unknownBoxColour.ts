import type { Sentences } from './sentences';

export const unknownBoxColour: Sentences = {
  'A box from somewhere': 'Una caja de por ahí',
  'I had it coloured a while ago. I’d love to be a light blond by tonight.':
    'Me lo tiñeron hace un tiempo. Me encantaría ser rubia clara esta noche.',
  'Coloured, yes, at a salon I suppose.': 'Teñido, sí, en un salón, supongo.',
  'No, a box from the chemist’s. Three, really. I couldn’t tell you which.':
    'No, una caja de la farmacia. Tres, en realidad. No sabría decirle cuál.',
  'Nobody knows what was in that box: a cutting meets peroxide in a glass before any strand does. Nothing seen clears nothing: it may still break next day, so it is kept for 24 hours.':
    'Nadie sabe qué había en esa caja: un recorte va con peróxido en un vaso antes que cualquier mechón. No ver nada no descarta nada: aún puede romperse al día siguiente, por eso se guarda 24 horas.',
  'common practice, no source: training texts; the maker’s method comes first':
    'common practice, no source: textos de formación; primero vale el método del fabricante',
};
