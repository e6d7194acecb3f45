import type { Sentences } from './sentences';

export const fineGrey: Sentences = {
  'Strong as wire': 'Fuerte como alambre',
  'Just a soft beige over the grey. It takes anything, it’s like wire.':
    'Solo un beige suave sobre las canas. Aguanta todo, es como alambre.',
  'It springs up, so it looks coarse.': 'Salta hacia arriba, así que parece grueso.',
  'One single hair between the fingers: hardly to be felt.':
    'Un solo cabello entre los dedos: apenas se nota.',
  'A bit of grey, a third maybe.': 'Algo de canas, un tercio quizá.',
  'Under the top layer it is nearly all white.': 'Bajo la capa de arriba es casi todo blanco.',
  'Grey: hair without pigment lost more tryptophan in ten minutes of heat than light-brown hair did in twelve. Fine: each hair has little to lose, a reason to test and not to refuse. Nothing told here speaks against a colour that only deposits.':
    'Canas: el cabello sin pigmento perdió más triptófano en diez minutos de calor que el castaño claro en doce. Fino: cada cabello tiene poco que perder, motivo para probar y no para negarse. Nada de lo dicho aquí habla contra un color que solo deposita.',
  'published: McMullen & Jachowicz, Thermal degradation of hair II, J. Cosmet. Sci. 49:245–256, 1998, pp. 248–249 · fine hair: common practice, no source':
    'published: McMullen & Jachowicz, Thermal degradation of hair II, J. Cosmet. Sci. 49:245–256, 1998, pp. 248–249 · cabello fino: práctica común, sin fuente',
};
