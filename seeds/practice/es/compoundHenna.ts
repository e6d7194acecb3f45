import type { Sentences } from './sentences';

export const compoundHenna: Sentences = {
  'Only plants': 'Solo plantas',
  'I’d like to be out of this near-black and light brown again.':
    'Quisiera salir de este casi negro y volver al castaño claro.',
  'Colour? No, never. There’s nothing on it.': '¿Tinte? No, nunca. No tiene nada.',
  'Only plants, they can’t do any harm. A henna powder from the market, “black-brown in one hour” it said.':
    'Solo plantas, no pueden hacer daño. Un polvo de henna del mercado; decía “castaño negro en una hora”.',
  'Henna by itself dyes red. Black-brown in an hour may be metal salts, or PPD, so she is asked for skin reactions too; with indigo it may be neither. Nobody sees which: a cutting goes into the glass first, off the head.':
    'La henna sola tiñe de rojo. Castaño negro en una hora puede ser sales metálicas, o PPD, así que se le pregunta también por reacciones de piel; con índigo puede no ser ninguna. Nadie ve cuál: primero un recorte va al vaso, fuera de la cabeza.',
  'common practice, no source: training texts; the maker’s method comes first · what is in such powders: from memory: general cosmetic chemistry':
    'common practice, no source: textos de formación; primero vale el método del fabricante · qué hay en esos polvos: de memoria: química cosmética general',
  'The cutting heated and bubbled, as it would have done on her head. Nothing with peroxide on it, here or at home, until it has grown out and been cut off.':
    'El recorte se calentó y burbujeó, como lo habría hecho en su cabeza. Nada con peróxido, ni aquí ni en casa, hasta que haya crecido y se haya cortado.',
  'common practice, no source: training texts; the maker’s method comes first · where she goes next: common practice, no source':
    'common practice, no source: textos de formación; primero vale el método del fabricante · adónde va después: práctica común, sin fuente',
};
