import type { Sentences } from './sentences';

export const scratchedScalp: Sentences = {
  'Brushed hard this morning': 'Cepillado fuerte esta mañana',
  'Roots, please, as last time. I’m in a bit of a hurry.':
    'Raíces, por favor, como la última vez. Tengo un poco de prisa.',
  'My skin is fine, thank you.': 'Mi piel está bien, gracias.',
  'Under the crown: a red line that weeps. The metal brush, this morning.':
    'Bajo la coronilla: una línea roja que supura. El cepillo de metal, esta mañana.',
  'Nothing goes on skin that is sensitive, irritated or damaged. Part the hair and look. She comes again when it has healed, and sees a doctor if it goes on weeping.':
    'No se pone nada en piel sensible, irritada o dañada. Abra el cabello por rayas y mire. Vuelve cuando haya sanado, y va a un médico si sigue supurando.',
};
