import type { Sentences } from './sentences';

export const longEnds: Sentences = {
  'I don’t own an iron': 'No tengo plancha',
  'A golden blond. I’ve grown it all out, it’s never seen an iron.':
    'Un rubio dorado. Lo dejé crecer todo, nunca ha visto una plancha.',
  'I don’t own an iron. Air-dried, always.': 'No tengo plancha. Siempre al aire.',
  'Before, yes: six mornings a week, wet, at 200 °C, that’s 392 °F, for two years. I threw it out two years ago.':
    'Antes, sí: seis mañanas por semana, mojado, a 200 °C, o sea 392 °F, durante dos años. La tiré hace dos años.',
  'Hair grows about 1.1 cm a month: two years of good habits are the first 27 cm. Her last 10 cm are older than they are.':
    'El cabello crece cerca de 1,1 cm al mes: dos años de buenos hábitos son los primeros 27 cm. Sus últimos 10 cm son más viejos que eso.',
};
