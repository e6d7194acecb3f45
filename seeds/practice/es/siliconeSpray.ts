import type { Sentences } from './sentences';

export const siliconeSpray: Sentences = {
  'Always protected': 'Siempre protegido',
  'Blonder! And ironed straight after, at my setting. My Harbour veil protects it.':
    '¡Más rubio! Y planchado enseguida, a mi temperatura. Mi Harbour veil lo protege.',
  'Three days a week for two years, dry, at a normal setting: 182 °C, so 360 °F.':
    'Tres días por semana desde hace dos años, seco, a una temperatura normal: 182 °C, o sea 360 °F.',
  'Three days a week for two years, dry. The dial says 221 °C, so 430 °F. With that spray nothing less works.':
    'Tres días por semana desde hace dos años, seco. El dial dice 221 °C, o sea 430 °F. Con ese protector, menos no funciona.',
  'Above 400 °F (204 °C) the cortex softens, sprayed or not.':
    'Por encima de 400 °F (204 °C) la corteza se ablanda, con protector o sin él.',
  'Methyl silicones in air begin to give off formaldehyde above 149 °C (300 °F), so at a normal setting too. The figure is from silicone rubber, not from a film on hair.':
    'Las siliconas metílicas en el aire empiezan a soltar formaldehído por encima de 149 °C (300 °F), así que también a una temperatura normal. La cifra es de caucho de silicona, no de una película sobre cabello.',
  'Above 400 °F (204 °C) a silicone spray is held to help no more. What its maker says comes first; it makes no hair sound.':
    'Por encima de 400 °F (204 °C) se considera que un protector con silicona ya no ayuda. Primero vale lo que dice su fabricante; no vuelve sano ningún cabello.',
  'Cyclopentasiloxane boils at 210 °C (410 °F); a thin film leaves well before that.':
    'El ciclopentasiloxano hierve a 210 °C (410 °F); una película fina se va mucho antes.',
  'published: ECHA registration dossier 14807 · the film: from memory: general physical chemistry, vapour pressure below the boiling point':
    'published: ECHA registration dossier 14807 · la película: de memoria: química física general, presión de vapor por debajo del punto de ebullición',
  'If you say it is enough: 180 °C then, 356 °F, and only today.':
    'Si usted dice que basta: entonces 180 °C, 356 °F, y solo hoy.',
};
