import type { StretchRefusal, StretchVerdict } from '../../../shared/hair/stretch';
import type { GlassRefusal } from '../../../shared/units/card';
import { figures } from './figures';
import { stretchTaps } from './forms/stretch';

const verdicts: Readonly<Record<StretchVerdict, string>> = {
  sound: 'Recupera.',
  slow: 'Lento: queda largo.',
  gummy: `Más de ${figures.lightPull} con un tirón suave: gomoso.`,
  broken: 'Se rompió.',
};

const faults: Readonly<Record<StretchRefusal, string>> = {
  notFinite: 'Una de las lecturas no es un número. Vuelva y léala otra vez.',
  notALength: 'Cero no es un largo. Léalo otra vez.',
  shorterThanRest: 'Es más corto que en reposo. Léalo otra vez, o vuelva al reposo.',
  notPulled: 'Es tan largo como en reposo. Estire suave, hasta la primera marca.',
};

/** It sprang back, and that says nothing here. */
const withheld = {
  tooLight: {
    title: 'Tirón muy suave para saberlo.',
    hint: `Volvió de menos de ${figures.lightPullFrom}: eso lo hace cualquier cabello. Mida otra vez, o responda al tacto.`,
  },
  tooShort: {
    title: 'Muy corto para saberlo.',
    hint: `En reposo mide menos de ${figures.shortestRest}: un milímetro más o menos decide. Mida uno más largo, o responda al tacto.`,
  },
} as const;

/** What lies between the lines is no card: it would make this glass so large across its corners. */
const noCard: Readonly<Record<GlassRefusal, (glass: string) => string>> = {
  notANumber: () => 'Las líneas no están en ningún lado. Muévalas a los bordes de la tarjeta.',
  tooNarrow: (glass) => `Ninguna tarjeta es tan angosta: este cristal mediría ${glass} de esquina a esquina.`,
  tooWide: (glass) =>
    `Ninguna tarjeta es tan ancha: este cristal mediría solo ${glass} de esquina a esquina.`,
};

/** The ruler on the glass: laying a card on it once, and a wet strand along it. */
export const ruler = {
  measure: 'Medirlo',
  measured: (percent: string | null) => `Medido: ${percent ?? 'se rompió'}`,
  title: 'Medir el estirado mojado',
  steps: {
    rest: {
      ask: '¿Cuánto mide en reposo?',
      how: 'Primero estire el rizo hasta dejarlo recto. Sostenga el mechón mojado en 0, apenas sobre el cristal, y toque donde termina.',
      next: 'Sigue: estirar',
    },
    pulled: {
      ask: `Estire suave: ${figures.lightPullFrom} a ${figures.lightPull}, nunca más`,
      how: 'Hasta la banda de color, no más. Toque hasta dónde llegó, sea donde sea.',
      next: 'Sigue: soltar',
    },
    back: {
      ask: 'Suelte: ¿hasta dónde volvió?',
      how: 'Suelte y toque enseguida donde termina. ¿Sigue encogiéndose? Entonces es lento, diga lo que diga la regla.',
      next: 'Qué dice',
    },
  },
  less: '− 1 mm',
  oneMore: '+ 1 mm',
  further: (percent: string) => `${percent}: un poco más, hasta la primera marca.`,
  enough: (percent: string) => `${percent}: basta. Suelte.`,
  past: (percent: string) => `${percent}: más de ${figures.lightPull}. No siga: suelte. Queda como se vio.`,
  slip: (percent: string) => `${percent}: el cabello mojado casi nunca llega a tanto. Léalo otra vez.`,
  offGlass: `${figures.lightPull} no cabe en este cristal: tome uno más corto, o escriba lo que dice otra regla.`,
  snapped: 'Se rompió',
  verdicts,
  stretched: (percent: string) => `Se estiró ${percent}.`,
  gaveBack: (percent: string, off: string) => `De eso volvió ${percent}, más o menos ${off}.`,
  readings: (rest: string, pulled: string | null, back: string | null) =>
    [
      `En reposo ${rest}`,
      pulled === null ? [] : `estirado a ${pulled}`,
      back === null ? [] : `volvió a ${back}`,
    ]
      .flat()
      .join(', '),
  fills: 'Llena:',
  confirm: 'Una vez llenado, aún se puede tocar otra respuesta. Primero vale lo que usted sintió.',
  pastIs: (answer: string) => `más de ${figures.lightPull}: ${answer}`,
  fill: 'Llenarlo',
  withheld,
  short: `Menos de ${figures.shortestRest}: muy corto para saber si recupera. Tome uno más largo.`,
  anew: '¿Medir otra vez?',
  anewHint: `El cabello mojado se rompió a ${figures.meanBreak} en promedio. Más de ${figures.slipFrom} es casi seguro un error de la regla, así que no se llena nada.`,
  itWasSo: 'Sí llegó a tanto',
  again: 'Medir otra vez',
  faults,
  setAgain: 'Ajustar la regla otra vez',
  without: 'Seguir sin ella',
  unit: 'mm',
  notRead: 'aún sin leer',
  markFrom: figures.lightPullFrom,
  markTo: figures.lightPull,
  set: {
    title: 'Ajustar la regla de esta tableta',
    page: 'Regla',
    notSet: `Aún sin ajustar en esta tableta. Basta una vez. “${stretchTaps.springsBack}”, “${stretchTaps.staysLong}” y “${stretchTaps.snaps}” se tocan sin ella.`,
    isSet: 'Ajustada para esta tableta.',
    open: 'Ajustar la regla',
    lay: 'Ponga una tarjeta de banco o de identidad plana en la esquina gruesa, con el lado largo a lo ancho.',
    move: 'Mueva las dos líneas de cobre hasta sus otros bordes.',
    keepHint: 'Quite la tarjeta y toque “Coincide”.',
    card: 'la tarjeta',
    lines: 'Las dos líneas',
    linesAt: (px: string) => `${px} px de ancho`,
    muchLess: '− 10',
    less: '− 1',
    more: '+ 1',
    muchMore: '+ 10',
    faults: noCard,
    keep: 'Coincide: guardar',
    kept: (perMm: string) => `Ajustada: ${perMm} px son un milímetro aquí. El zoom se tiene en cuenta.`,
  },
};
