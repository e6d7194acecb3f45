import type { Sentences } from './sentences';

export const sugarySpray: Sentences = {
  'It smells like toffee': 'Huele a caramelo',
  'Two levels lighter. And iron it afterwards with my own Cove mist, please, I brought it.':
    'Dos niveles más claro. Y después plánchelo con mi propio Cove mist, por favor, lo traje.',
  'No, it never smokes.': 'No, nunca humea.',
  'It smells of toffee each time. And of singed hair a little, once it’s warm.':
    'Cada vez huele a caramelo. Y un poco a cabello chamuscado, cuando ya está caliente.',
  'Sugar browns on the plate and smells of toffee. Hair that smells singed was hotter than any setting that is told.':
    'El azúcar se tuesta en la placa y huele a caramelo. El cabello que huele a chamuscado estuvo más caliente que cualquier temperatura que se diga.',
  'Sugar caramelises above about 120 °C (248 °F). Her iron is at 190 °C (374 °F).':
    'El azúcar se carameliza por encima de unos 120 °C (248 °F). Su plancha está a 190 °C (374 °F).',
  'A spark lights alcohol in water from 26 °C (79 °F) on at 40 per cent by weight, from 21 °C (70 °F) at 70: no alcohol spray near hot plates. And no hot tool at all for 48 hours after lightener.':
    'Una chispa prende el alcohol en agua desde 26 °C (79 °F) al 40 por ciento en peso, desde 21 °C (70 °F) al 70: nada de alcohol cerca de planchas calientes. Y ninguna herramienta de calor en 48 horas tras el decolorante.',
  'published: a table of ethanol–water flash points, publisher not named · the 48 hours: assumed: the aftercare of this station':
    'published: una tabla de puntos de inflamación de etanol y agua, sin editor nombrado · las 48 horas: supuesto: los cuidados posteriores de esta estación',
};
