import type { Sentences } from './sentences';

export const smoothingReleaser: Sentences = {
  'Smooth since Friday': 'Liso desde el viernes',
  'It’s so shiny now. A few levels lighter and it’s perfect.':
    'Brilla tanto ahora. Unos niveles más claro y queda perfecto.',
  'Nothing on it. Just a kind of conditioner.': 'No tiene nada. Solo una especie de acondicionador.',
  'A smoothing treatment, ironed in. Headland smooth. The bottle said formaldehyde-free, but my eyes were streaming.':
    'Un tratamiento alisante, sellado con plancha. Headland smooth. El frasco decía sin formaldehído, pero me lloraban los ojos.',
  'Oh, a while ago.': 'Ah, hace un tiempo.',
  'On Friday. So, six days.': 'El viernes. O sea, hace seis días.',
  'Methylene glycol on a label is formaldehyde in water: heat drives it off. No hot tool on what is left of it.':
    'Methylene glycol en una etiqueta es formaldehído en agua: el calor lo libera. Ninguna herramienta de calor sobre lo que quede.',
  'published: OSHA hazard alert 2011; 29 CFR 1910.1048 · no hot tool: common practice, no source':
    'published: OSHA hazard alert 2011; 29 CFR 1910.1048 · sin herramienta de calor: práctica común, sin fuente',
  'Six days after it the hair has not settled. Two weeks are waited: she comes again then, without a hot tool until she does.':
    'A los seis días el cabello no se ha asentado. Se esperan dos semanas: ella vuelve entonces, y hasta ese día sin herramienta de calor.',
  'common practice, no source · where she goes next: common practice, no source':
    'common practice, no source · adónde va después: práctica común, sin fuente',
};
