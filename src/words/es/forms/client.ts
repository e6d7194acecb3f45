import type { clientForm } from '../../../../shared/records/forms/client';
import type { FormWords } from '../../formWords';
import { figures } from '../figures';

export const clientWords: FormWords<typeof clientForm> = {
  service: {
    ask: '¿Qué desea ella?',
    short: 'Desea',
    options: {
      lighten: 'Decolorar',
      liftAndDeposit: 'Aclarar y depositar',
      depositOnly: 'Solo depositar',
      gloss: 'Baño de brillo',
      tone: 'Matizar',
    },
  },
  reach: {
    ask: '¿Dónde se aplica?',
    short: 'Dónde',
    options: { fullHead: 'Cabeza entera', roots: 'Raíces', endsOut: 'Sin puntas' },
  },
  targetLevel: {
    ask: '¿Qué nivel desea ella?',
    short: 'Nivel pedido',
    hint: `${figures.lowestLevel} negro a ${figures.highestLevel} rubio clarísimo`,
  },
  naturalLevel: { ask: '¿Nivel natural en la raíz?', short: 'Nivel natural' },
  endsLevel: { ask: '¿Nivel en las puntas?', short: 'Nivel puntas' },
  greyPercent: { ask: '¿Cuánto hay de canas?', short: 'Canas' },
  texture: {
    ask: '¿Cómo es cada cabello?',
    short: 'Textura',
    options: { fine: 'Fino', medium: 'Medio', coarse: 'Grueso', unknown: 'No se sabe' },
  },
  density: {
    ask: '¿Cuánto cabello hay?',
    short: 'Densidad',
    options: { thin: 'Poco', medium: 'Medio', thick: 'Mucho', unknown: 'No se sabe' },
  },
  length: {
    ask: '¿Qué largo tiene?',
    short: 'Largo',
    options: {
      ear: 'A la oreja',
      chin: 'Mentón',
      collarbone: 'Clavícula',
      braLine: 'Media espalda',
      waist: 'Cintura',
    },
  },
  lengthCm: {
    ask: '¿Largo con la cinta?',
    short: 'Cinta',
    hint: 'Desde el cuero cabelludo, estirado.',
  },
  reactions: {
    ask: '¿Ha tenido alguna reacción?',
    short: 'Reacciones',
    hint: 'A tinte, decolorante, henna negra. Pregunte cada una en voz alta.',
    options: {
      none: 'Ninguna',
      tingled: 'Hormigueo, cesó al enjuagar',
      tingledStops: 'Hormigueo, cesó al enjuagar',
      swelling: 'Hinchazón',
      blisters: 'Ampollas',
      weeping: 'Piel que supura',
      hives: 'Ronchas',
      tightChest: 'Opresión en el pecho',
      rash: 'Sarpullido',
      blackTattoo: 'Tatuaje de henna negra',
    },
  },
  scalp: {
    ask: '¿Cuero cabelludo y cara hoy?',
    short: 'Piel hoy',
    hint: 'Mire, raya por raya.',
    options: {
      sound: 'Sano',
      tight: 'Tirante',
      irritated: 'Sensible o irritado',
      broken: 'Cuero cabelludo herido',
      faceRash: 'Sarpullido en la cara',
    },
  },
  ageBand: { ask: 'Edad', options: { over: 'Edad suficiente', under: 'Demasiado joven' } },
};
