import type { OthersDelay, OthersRefusal, OthersTrouble } from '../othersKinds';
import { sayCount } from './sayCount';

const troubles: Readonly<Record<OthersTrouble, string>> = {
  gone: 'No se alcanzan. Todo se guarda aquí y sale solo cuando vuelvan.',
  silent:
    'El servidor del salón está, pero el almacén detrás no responde. Todo se guarda aquí y sale solo cuando responda.',
  turnedAway:
    'El almacén detrás del servidor del salón rechazó esta estación. Debe revisarlo quien lo instaló. Hasta entonces todo se guarda aquí.',
  strange: 'Lo que responde allí no es un almacén de registros. Debe revisarlo quien lo instaló.',
  notTaken: 'Esta tableta no pudo escribir lo que llegó: quizá está llena.',
};

const refusals: Readonly<Record<OthersRefusal | OthersDelay, string>> = {
  openHere: 'alguien que nombra está abierta aquí; se hará cuando se cierre',
  fromLater: 'es de más de un día después del reloj de esta tableta: uno de los relojes está mal',
  foreign: 'su nombre no es de un registro',
  damaged: 'su contenido no es lo que dice su nombre',
  newer: 'lo escribió una edición más nueva de la estación',
  tooLarge: 'es demasiado grande',
  otherContent: 'allí hay otra cosa con su nombre',
  notKept: 'el otro lado no lo guardó',
  notJudged: 'no pudo tocarse así',
};

/** Other stations that this one shares its records with. */
export const others = {
  title: 'Otras estaciones',
  inStep: (ago: string) => `Al día, ${ago}`,
  apart: (since: string) => `Sin contacto desde ${since}`,
  neverReached: 'Aún sin contacto',
  justNow: 'ahora mismo',
  minutesAgo: (minutes: string) => `hace ${sayCount(minutes, 'minuto', 'minutos')}`,
  hoursAgo: (hours: string) => `hace ${sayCount(hours, 'hora', 'horas')}`,
  /** What has not gone out. */
  waiting: (records: string) =>
    records === '0'
      ? 'nada espera para salir'
      : `${sayCount(records, 'registro', 'registros')} ${records === '1' ? 'espera' : 'esperan'}`,
  inStepHint: 'Lo que se cerró en una estación está en las dos.',
  troubles,
  hint: 'Se comparten registros cerrados, pruebas de piel y lo borrado. Quien está abierta queda en su estación hasta que se cierra. Lo que llega se juzga aquí de nuevo, y nada lo espera.',
  care: 'También están en el servidor del salón, con fichas. Quien lo cuida lo mantiene bajo llave y quita de sus archivos lo borrado.',
  off: 'Ninguna: los registros quedan en esta tableta',
  asking: 'Buscándolas',
  offHint:
    'Varias tabletas de un salón pueden compartir sus registros por un servidor del propio salón. Lo instala quien cuida esta tableta: el cómo está en el README de la estación.',
  now: 'Compartir ya',
  refusedTitle: (count: string) => `Omitidos: ${count}`,
  laterTitle: (count: string) => `Aún no tomados: ${count}`,
  refused: (name: string, why: OthersRefusal | OthersDelay) => `${name}: ${refusals[why]}.`,
  refusedHint: 'Aquí no cambiaron nada. Muestre esta página a quien lo instaló.',
  andMore: (count: string) => `y ${count} más`,
};
