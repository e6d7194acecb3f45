import type { Sentences } from './sentences';

export const highAltitude: Sentences = {
  'Up in the mountains': 'Arriba en la montaña',
  'Lighter for the summer season, please. I look after it: only ever the low setting!':
    'Más claro para el verano, por favor. Lo cuido: ¡siempre solo en el mínimo!',
  'Three days a week for a year and a half, at 130 °C, that’s 266 °F, and always dry.':
    'Tres días por semana desde hace año y medio, a 130 °C, o sea 266 °F, y siempre seco.',
  'Three days a week for a year and a half, at 130 °C, 266 °F. Damp at the back, where it crackles a little.':
    'Tres días por semana desde hace año y medio, a 130 °C, 266 °F. Húmedo atrás, donde chisporrotea un poco.',
  'What crackles is water that boils in the hair: damp counts as wet. Up here it boils near 92 °C (198 °F). Her 130 °C is far above that, as it would be by the sea: damp is what matters, not the height.':
    'Lo que chisporrotea es agua que hierve en el cabello: húmedo cuenta como mojado. Aquí arriba hierve cerca de 92 °C (198 °F). Sus 130 °C están muy por encima, como lo estarían junto al mar: importa lo húmedo, no la altura.',
  'common practice, no source · where water boils: published: IAPWS R7-97(2012) with the U.S. Standard Atmosphere 1976':
    'common practice, no source · dónde hierve el agua: publicado: IAPWS R7-97(2012) with the U.S. Standard Atmosphere 1976',
};
