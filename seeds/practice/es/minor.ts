import type { Sentences } from './sentences';

export const minor: Sentences = {
  'For the school dance': 'Para el baile de la escuela',
  'A copper gloss for Saturday. Mum knows.': 'Un baño cobrizo para el sábado. Mi mamá lo sabe.',
  'Old enough!': '¡Edad suficiente!',
  'Fifteen. But in March I’ll be sixteen.': 'Quince. Pero en marzo cumplo dieciséis.',
  'Hair colour is not meant for anybody under sixteen, whoever allows it; local law may draw another line. For Saturday there is a set or a braid, and no kit at home either.':
    'El color para el cabello no está destinado a menores de dieciséis, lo permita quien lo permita; la ley local puede fijar otra edad. Para el sábado hay un peinado o una trenza, y tampoco un tinte en casa.',
  'published: Reg. (EC) 1223/2009 Annex III label text · where she goes next: common practice, no source':
    'published: Reg. (EC) 1223/2009 Annex III, texto de etiqueta · adónde va después: práctica común, sin fuente',
};
