import type { correctedForm } from '../../../../shared/records/forms/course';
import type { FormWords } from '../../formWords';

/** Why something is taken back: an answer that stopped her, or an outcome. */
export const correctionWords: Pick<FormWords<typeof correctedForm>, 'code' | 'words'> = {
  code: {
    ask: 'Why was it wrong?',
    options: {
      wrongTap: 'A wrong tap',
      clientCorrectedIt: 'The client corrected it',
      misheard: 'Misheard',
      wrongClient: 'Wrong client',
      hasChanged: 'It has changed since',
    },
  },
  words: { ask: 'In your own words', hint: 'Kept with your name; what is taken back stays in the log.' },
};
