import type { LiftForecast } from '../../../shared/chemistry/liftForecast';
import type { Undertone } from '../../../shared/chemistry/undertone';
import type { Ahead } from '../en/lift';

type Silence = Extract<LiftForecast, { kind: 'none' }>['why'];

/** Why nothing is said of what comes; what was seen is kept as it was seen. */
const none: Readonly<Record<Silence, (level: string, fewest: string) => string>> = {
  tooFew: (level, fewest) =>
    `Pocas revisiones para decir cuándo llega el nivel ${level}: hacen falta ${fewest} lecturas.`,
  reached: (level) => `Ya se vio el nivel ${level}: quítelo o siga revisando.`,
  notAbove: (level) => `Al empezar ya era nivel ${level} o más claro: no hay aclaración que esperar.`,
  falling: () => 'El nivel bajó entre revisiones: no se da hora. Revise otra vez.',
  noLift: () => 'No se ve aclaración de más de medio nivel: no se da hora.',
  noCurve: () => 'Estos niveles no siguen una curva: no se da hora.',
  sameTimes: () => 'Dos revisiones en el mismo segundo: no se da hora.',
  beforeStart: () => 'Una revisión es anterior al inicio: no se da hora.',
  notALevel: () => 'Se guardó un nivel fuera de 1 a 10: no se da hora.',
};

/** What lightener shows at each depth: from memory, cosmetology textbooks. */
const undertones: Readonly<Record<Undertone, string>> = {
  darkRedBrown: 'castaño rojizo oscuro',
  redBrown: 'castaño rojizo',
  red: 'rojo',
  redOrange: 'rojo naranja',
  orange: 'naranja',
  goldOrange: 'naranja dorado',
  gold: 'dorado',
  yellowGold: 'amarillo dorado',
  yellow: 'amarillo',
  paleYellow: 'amarillo pálido',
};

const lookNow = 'Tal vez ya llegó: revise ahora.';
const perhapsLate = (end: string): string => `Quizá no llegue antes de quitarlo a las ${end}.`;

const atTakeOff = (level: string, end: string): string =>
  `Nivel ${level}, lo más pronto al quitarlo a las ${end}; quizá ni entonces.`;

const usual: Ahead = {
  expected: (level, time, earliest, latest, end) => {
    const about = `Nivel ${level} hacia las ${time}`;
    if (latest === null) {
      const from = earliest === null || earliest === time ? '' : `; a las ${earliest} lo más pronto`;
      return `${about}${from}. ${perhapsLate(end)}${earliest === null ? ` ${lookNow}` : ''}`;
    }
    if (earliest === null) return `${about}, a las ${latest} lo más tarde. ${lookNow}`;
    return earliest === latest ? `${about}.` : `${about}, entre las ${earliest} y las ${latest}.`;
  },
  perhapsNot: (level, earliest, end) => {
    const late = `Nivel ${level}, quizá no antes de quitarlo a las ${end}`;
    if (earliest === null) return `${late}. ${lookNow}`;
    return earliest === end ? atTakeOff(level, end) : `${late}; a las ${earliest} lo más pronto.`;
  },
};

/** Lightener may dry out any time, and then it comes never: the earliest and the next look first. */
const leadEarliest = (level: string, earliest: string | null): string =>
  earliest === null
    ? `El nivel ${level} tal vez ya llegó: revise ahora.`
    : `Nivel ${level} a las ${earliest} lo más pronto: siga revisando.`;

const lightener: Ahead = {
  expected: (level, time, earliest, latest, end) => {
    const lead = leadEarliest(level, earliest);
    if (latest !== null)
      return `${lead} Si sigue húmedo, ${earliest === time ? '' : `hacia las ${time}, `}a las ${latest} lo más tarde.`;
    // Take-off's time stands right above: with it, and the line on drying, this would be a line too long.
    return earliest === time
      ? `${lead} ${perhapsLate(end)}`
      : `${lead} Si sigue húmedo, hacia las ${time}; quizá no antes de quitarlo.`;
  },
  perhapsNot: (level, earliest, end) =>
    earliest === end
      ? `${atTakeOff(level, end)} Siga revisando.`
      : earliest === null
        ? `${leadEarliest(level, null)} Quizá no antes de quitarlo a las ${end}.`
        : `Nivel ${level}, quizá no antes de quitarlo a las ${end}; a las ${earliest} lo más pronto. Siga revisando.`,
};

/** How a strand lifts, and when it gets there. */
export const lift = {
  usual,
  lightener,
  wasExpected: (level: string, time: string) =>
    `El nivel ${level} se esperaba hacia las ${time}: revise ahora.`,
  notInTime: (level: string, end: string) =>
    `No llegará al nivel ${level} antes del límite: se quita a las ${end}.`,
  none,
  dries: 'El decolorante que se seca deja de aclarar.',
  /** Heard, where the dotted line and its band are seen. */
  ahead: (level: string, low: string, high: string, minutes: string) =>
    `por delante: hacia nivel ${level} a los ${minutes}, de ${low} a ${high}`,
  undertones,
  undertone: (names: readonly string[]) => `Fondo esperado: ${names.join(' a ')}`,
  otherUndertone: 'Otro',
  nameUndertone: 'Nombrar el fondo',
};
