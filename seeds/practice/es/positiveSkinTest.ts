import type { Sentences } from './sentences';

export const positiveSkinTest: Sentences = {
  'It only itched a bit': 'Solo me picó un poco',
  'You put the drop behind my ear on Tuesday, so we’re all set.':
    'El martes me puso la gota detrás de la oreja, así que todo listo.',
  'My skin’s fine. It only itched a bit where the drop was, that’s normal.':
    'Mi piel está bien. Solo me picó un poco donde estaba la gota, eso es normal.',
  'How it is read stands with the maker, and itching where the drop was is never nothing: look behind the ear yourself. No colour of this kind, here or at home; to a doctor with it, and with the name of the product.':
    'Cómo se lee lo dice el fabricante, y picor donde estuvo la gota siempre cuenta: mire usted detrás de la oreja. Ningún color de este tipo, ni aquí ni en casa; que la vea un médico, con el nombre del producto.',
  'published: Cosmetics Europe 2023 · the itching: common practice, no source · where she goes next: common practice, no source':
    'published: Cosmetics Europe 2023 · el picor: práctica común, sin fuente · adónde va después: práctica común, sin fuente',
};
