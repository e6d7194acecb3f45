import type { Sentences } from './sentences';

export const wheeze: Sentences = {
  'A cold that day': 'Un resfriado ese día',
  'Highlights again, please. Last time it looked lovely.':
    'Otra vez mechas, por favor. La última vez quedaron preciosas.',
  'It tingled a little and stopped on rinsing.': 'Me hormigueó un poco y cesó al enjuagar.',
  'It tingled, and I wheezed the whole evening with a tight chest. But I had a cold coming.':
    'Me hormigueó, y pasé toda la noche con silbidos y el pecho apretado. Pero me estaba resfriando.',
  'Persulfates cause hives, asthma and, rarely, shock. Wheezing with lightener once: never again, here or at home; to a doctor with it. Should her breath go short now: the emergency number first.':
    'Los persulfatos causan ronchas, asma y, rara vez, choque. Silbidos con decolorante una vez: nunca más, ni aquí ni en casa; que la vea un médico. Si ahora le faltara el aire: primero el número de emergencias.',
  'published: Pang & Fiume, Int. J. Toxicol. 20(S3):7–21, 2001 · where she goes next: common practice, no source':
    'published: Pang & Fiume, Int. J. Toxicol. 20(S3):7–21, 2001 · adónde va después: práctica común, sin fuente',
};
