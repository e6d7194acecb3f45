import type { Sentences } from './sentences';

export const blackTattoo: Sentences = {
  'A holiday tattoo': 'Un tatuaje de vacaciones',
  'Dark brown over the grey, the way I always see it on others. My first time!':
    'Castaño oscuro sobre las canas, como se lo veo siempre a otras. ¡Mi primera vez!',
  'No, I’ve never reacted to a hair colour. I’ve never had one.':
    'No, nunca reaccioné a un tinte. Nunca me puse uno.',
  'On the beach, one of those black tattoos that wash off. It came up in blisters.':
    'En la playa, uno de esos tatuajes negros que se borran. Se me llenó de ampollas.',
  'Who reacted to a black temporary tattoo is not coloured: no skin test first, for nothing seen in one never means safe. No kit at home either; a doctor can find out what she reacts to.':
    'A quien reaccionó a un tatuaje temporal negro no se le pone color: ni prueba de piel antes, pues no ver nada en ella nunca significa seguro. Tampoco un tinte en casa; un médico puede averiguar a qué reacciona.',
  'published: Reg. (EC) 1223/2009 Annex III label text · the skin test: published: Coenraads et al., Dermatitis 2018, doi 10.1097/DER.0000000000000405 · where she goes next: common practice, no source':
    'published: Reg. (EC) 1223/2009 Annex III, texto de etiqueta · la prueba de piel: publicado: Coenraads et al., Dermatitis 2018, doi 10.1097/DER.0000000000000405 · adónde va después: práctica común, sin fuente',
};
