import type { feelHairForm } from '../../../../shared/records/forms/feelHair';
import type { FormWords } from '../../formWords';
import { pullHint, stretchTaps } from './stretch';

const touch = { dry: 'Seco', damp: 'Húmedo' };
const hint = 'Húmedo, el cabello esconde cómo es: antes toalla y aire frío, nada caliente.';
const cannotTell = 'No se nota';

export const feelHairWords: FormWords<typeof feelHairForm> = {
  nape: { ask: '¿Cómo se siente en la nuca?', short: 'Nuca', hint, options: touch },
  mid: { ask: '¿Cómo se sienten los medios?', short: 'Medios', hint, options: touch },
  ends: { ask: '¿Cómo se sienten las puntas?', short: 'Puntas', hint, options: touch },
  porosity: {
    ask: '¿Liso o áspero?',
    short: 'Porosidad',
    hint: 'Deslice dos dedos por un mechón hacia la raíz.',
    options: {
      low: 'Liso, el agua resbala',
      normal: 'Roza un poco',
      high: 'Áspero, bebe agua',
      unknown: cannotTell,
    },
  },
  curl: {
    ask: '¿El rizo en la raíz y en las puntas?',
    short: 'Rizo',
    options: {
      straight: 'Todo liso',
      sameAlong: 'Igual en todo',
      lostAtEnds: 'Perdido en las puntas',
      unknown: cannotTell,
    },
  },
  breakage: {
    ask: '¿Cabellos cortos y rotos?',
    short: 'Rotos',
    options: { no: 'No', some: 'Algunos', much: 'Muchos', unknown: cannotTell },
  },
  wetStretch: {
    ask: '¿Un mechón mojado, estirado suave?',
    short: 'Elasticidad',
    hint: pullHint,
    options: { ...stretchTaps, unknown: cannotTell },
  },
};
