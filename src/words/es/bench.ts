import type { BenchKind, BenchStage } from '../../../shared/hair/benchTrial';
import type {
  BenchHair,
  benchTakenBackForm,
  CurlAnswer,
  PiecesAnswer,
} from '../../../shared/records/forms/bench';
import type { AskWords, FormWords } from '../formWords';
import { correctionWords } from './forms/correction';

const kinds: Readonly<Record<BenchKind, string>> = { boilSet: 'Rizo hervido', dryWet: 'Seco y mojado' };

const hair: Readonly<Record<BenchHair, string>> = {
  untouched: 'sin tratar',
  coloured: 'teñido',
  bleached: 'decolorado',
  unknown: 'no se sabe',
};

const stages: Readonly<Record<BenchStage, string>> = {
  boiling: 'En agua hirviendo',
  boiled: 'Sáquelo ya',
  drying: 'Se seca en su varilla',
  cooling: 'Se enfría',
  readable: 'Léalo ahora',
  late: 'Léalo: va tarde',
  read: 'Leído',
};

const curl: Readonly<Record<CurlAnswer, string>> = {
  stays: 'Sigue rizado',
  partly: 'En parte',
  fellOut: 'Se deshizo',
};

const pulled: Readonly<Record<PiecesAnswer['dryPiece'], string>> = {
  springsBack: 'Recupera',
  slow: 'Lento, queda largo',
  snaps: 'Se rompe',
};

const takenBackForm: FormWords<typeof benchTakenBackForm> & { readonly by: AskWords } = {
  by: { ask: '¿Quién lo dice?', short: 'Quién' },
  what: {
    ask: '¿Qué estaba mal?',
    short: 'Estaba mal',
    options: { reading: 'La lectura: se lee otra vez', trial: 'Todo el ensayo' },
  },
  code: {
    ask: correctionWords.code.ask,
    short: 'Por qué',
    options: {
      wrongTap: correctionWords.code.options.wrongTap,
      misheard: correctionWords.code.options.misheard,
      hasChanged: 'Se interrumpió',
    },
  },
  words: { ...correctionWords.words, short: 'En palabras' },
};

/** Trials on cut hair, to see what boiling water and a hot iron do. */
export const bench = {
  title: 'Ensayos de banco',
  kicker: 'En cabello cortado. Nunca en una cabeza.',
  kickerPractice: 'Práctica: su reloj puede ir más rápido que el agua; póngalo en 1×. Nunca en una cabeza.',
  way: 'Ensayos de banco',
  wayDue: (count: string) => `Ensayos de banco · ${count} por ver`,
  none: 'Aún sin ensayos.',
  noneHint: 'Empiece uno con cabello cortado: aquí queda, con quién vio qué.',
  startOne: 'Empezar un ensayo',
  startTitle: '¿Qué ensayo?',
  start: 'Empezar ahora',
  page: (page: string, pages: string) => `Página ${page} de ${pages}`,
  warmth: 'Ensayo de calor',
  kinds,
  asksKind: 'Qué se prueba',
  asksHair: 'El cabello cortado está',
  hair,
  chooseFirst: 'Elija el ensayo y el cabello; lo que hace falta aparece aquí.',
  rulesTitle: 'Antes de empezar',
  /** `minutes`, `from`, `to`: in boiling water, then dry. */
  rules: {
    boilSet: (minutes: string, from: string, to: string): readonly string[] => [
      `Un mechón cortado, en su varilla, va ${minutes} en agua hirviendo y luego se seca en ella de ${from} a ${to}.`,
      'Tapa puesta, pinzas, guantes contra el calor. El vapor quema: abra la tapa hacia el otro lado.',
      'Nadie lleva agua hirviendo y nadie la deja sola. La estación avisa con suavidad al final: quédese al lado.',
    ],
    dryWet: (minutes: string): readonly string[] => [
      'Dos trozos del mismo cabello cortado: uno seco del todo, otro mojado. Una pasada cada uno, su plancha, una temperatura.',
      'Sujete cada uno con una pinza, nunca con la mano. El cabello mojado bajo la placa echa vapor: el vapor quema.',
      `Empiece cuando ambos estén planchados. A los ${minutes}, moje los dos y estírelos suave.`,
    ],
  } satisfies Readonly<Record<BenchKind, (...times: string[]) => readonly string[]>>,
  marks: {
    boilSet: 'Media hora, uno a dos días: práctica común, sin fuente.',
    dryWet: 'El tiempo de enfriar es elección nuestra: más vale también.',
  } satisfies Readonly<Record<BenchKind, string>>,
  hours: (count: string) => `${count}\u00a0h`,
  stages,
  until: (when: string) => `hasta ${when}`,
  from: (when: string) => `desde ${when}`,
  since: (when: string) => `desde ${when}`,
  besideIt: 'Nadie lo deja solo. Tapa puesta, pinzas, y nadie lleva el agua. El vapor quema.',
  lookNow: {
    boilSet: 'Fuera de la varilla: ¿queda el rizo?',
    dryWet: 'Ambos mojados y estirados suave: ¿cómo vuelve cada uno?',
  } satisfies Readonly<Record<BenchKind, string>>,
  curl,
  pulled,
  dryPiece: 'Planchado seco',
  wetPiece: 'Planchado mojado',
  takeOut: 'Está fuera, en su varilla',
  keep: 'Guardarlo',
  facts: {
    started: 'Empezó',
    hair: 'Cabello',
    out: 'Fuera del agua',
    seen: 'Visto',
    takenBack: 'Lectura retirada',
  },
  by: (when: string, by: string) => `${when}, por ${by}`,
  seen: (what: string, when: string, by: string) => `${what} (${when}, por ${by})`,
  takenBackBy: (when: string, by: string, why: string) => `${when}, por ${by}: ${why}`,
  both: (dry: string, wet: string) => `seco: ${dry}; mojado: ${wet}`,
  tells: {
    boilSet:
      'Un rizo que queda se fijó para siempre: el agua hirviendo cambió el cabello. Igual hace bajo una plancha, si está mojado.',
    dryWet: 'Un trozo no es prueba. Muestra este cabello, esta plancha, esta temperatura.',
  } satisfies Readonly<Record<BenchKind, string>>,
  takeBack: 'Mal anotado',
  takeBackTitle: '¿Mal anotado?',
  holdToTakeBack: 'Retirarlo',
  takeBackLead: 'Queda en la historia de este ensayo.',
  leaveIt: 'Dejarlo',
  takenBackForm,
};
