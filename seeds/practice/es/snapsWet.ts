import type { Sentences } from './sentences';

export const snapsWet: Sentences = {
  'Thick and heavy': 'Mucho y pesado',
  'It can take it, feel how thick it is. Light blond by Saturday.':
    'Aguanta, sienta cuánto es. Rubio claro para el sábado.',
  'Dry, a strand pulls firm. That says nothing: feel again, wet.':
    'Seco, un mechón resiste firme. Eso no dice nada: palpe otra vez, mojado.',
  'Wet and pulled lightly, it gives way and is in two pieces.':
    'Mojado y estirado suave, cede y queda en dos trozos.',
  'Smooth to the hand.': 'Liso a la mano.',
  'Short ends stand off all over, none of them new.': 'Por todas partes asoman puntas cortas, ninguna nueva.',
  'Wet hair broke when stretched by 51 % on average where it was measured; hair that snaps on a light pull is far from that. Not today: a cut and no heat, and a strand of it again in some weeks.':
    'El cabello mojado se rompió al estirarse un 51 % en promedio donde se midió; el que se rompe con un tirón suave está lejos de eso. Hoy no: un corte y nada de calor, y otro mechón en unas semanas.',
  'published: J. Soc. Cosmet. Chem. 17:769–787, 1966, Table I · a light pull: common practice, no source · where she goes next: common practice, no source':
    'published: J. Soc. Cosmet. Chem. 17:769–787, 1966, Table I · un tirón suave: práctica común, sin fuente · adónde va después: práctica común, sin fuente',
  'It does not come back when wet: the nearest to a strand test that there is before one.':
    'Mojado no vuelve: lo más parecido que hay a una prueba de mechón antes de hacerla.',
  'Short ends that are no new growth: it breaks already, without any mix on it.':
    'Puntas cortas que no son crecimiento nuevo: ya se rompe, sin ninguna mezcla encima.',
  'Above 400 °F (204 °C) the cortex softens.': 'Por encima de 400 °F (204 °C) la corteza se ablanda.',
};
