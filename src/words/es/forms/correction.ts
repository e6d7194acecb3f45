import type { correctedForm } from '../../../../shared/records/forms/course';
import type { FormWords } from '../../formWords';

/** Why something is taken back: an answer that stopped her, or an outcome. */
export const correctionWords: Pick<FormWords<typeof correctedForm>, 'code' | 'words'> = {
  code: {
    ask: '¿Por qué estaba mal?',
    options: {
      wrongTap: 'Error al tocar',
      clientCorrectedIt: 'La clienta lo corrigió',
      misheard: 'Se oyó mal',
      wrongClient: 'Otra clienta',
      hasChanged: 'Cambió desde entonces',
    },
  },
  words: { ask: 'En sus palabras', hint: 'Se guarda con su nombre; lo retirado queda en el registro.' },
};
