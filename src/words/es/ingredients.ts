import {
  DRYER_HEAT_HELD_SECONDS,
  ethanolFlashPoints,
  filmFormersLessLossPercent,
  findStressLossPercent,
  formaldehydeLimitsPpm,
  isopropylFlashPoint,
} from '../../../shared/chemistry/ingredients/figures';
import type { IngredientListRefusal } from '../../../shared/chemistry/ingredients/ingredient';
import type { IngredientFindingId } from '../../../shared/chemistry/ingredients/tellIngredients';
import type { FindingFigures } from '../en/ingredients';

type Say = (figures: FindingFigures) => string;

const burnsWet: Say = ({ names }) => `${names}: mojado, junto a una plancha puede arder.`;
const boils: Say = ({ names, at }) => `${names} hierve a ${at}.`;

/** What a list tells, each in one short sentence. None of them says that something is safe or protects. */
const says: Readonly<Record<IngredientFindingId, Say>> = {
  formaldehyde: ({ names }) => `${names}: el calor libera formaldehído.`,
  formaldehydeReleaser: ({ names }) => `${names}: libera formaldehído.`,
  glyoxylicAcid: ({ names }) => `${names}: lesión renal reportada.`,
  glyoxylicKin: ({ names }) =>
    `${names}: pariente del ácido glioxílico, del que se ha reportado lesión renal.`,
  alcoholBurns: burnsWet,
  isopropylBurns: burnsWet,
  propellantBurns: ({ names }) => `${names}: gas que arde. Ningún aerosol cerca de planchas calientes.`,
  waterWets: ({ names }) => `${names}: seque del todo el cabello antes de la plancha.`,
  sugarCaramelises: ({ names, at }) => `${names}: azúcar, carameliza a más de unos ${at}.`,
  sugarBrownsWithProtein: ({ names }) => `${names}: se dora con proteína, ya con menos calor.`,
  sucroseBrownsOnceSplit: ({ names }) => `${names}: una vez partida, se dora con proteína, con menos calor.`,
  sugarScorches: ({ names }) => `${names}: se tuesta, y el olor queda.`,
  siliconeGivesFormaldehyde: ({ names, at }) =>
    `${names}: el caucho de silicona suelta formaldehído a más de ${at}.`,
  dimethiconeBreaksDown: ({ names, at }) =>
    `${names}: se descompone a más de ${at} sin aire; con aire, antes.`,
  carriersLeave: ({ names }) => `${names}: vehículo, se va.`,
  d4Boils: boils,
  d5Boils: boils,
  d6Boils: boils,
  boilingIsNotLeaving: () => 'Una película fina se va muy por debajo de su punto de ebullición.',
  whatStays: ({ names }) => `${names}: se queda en el cabello.`,
  siliconeLeavesOrStays: ({ names }) => `${names}: una silicona. Aquí no se sabe si se va.`,
  filmFormersMeasured: ({ names, at, count, percent }) => {
    const { from, to } = filmFormersLessLossPercent;
    return `${names}: ${count(from)}–${percent(to)} menos pérdida de triptófano, medido solo a ${at}.`;
  },
  polyquaterniumNoFigure: ({ names }) => `${names}: aquí no se conoce ninguna cifra.`,
  siliconeSprayHelpsNoMore: ({ at }) => `A más de ${at} la silicona no ayuda.`,
  siliconeHoldsDryerHeat: ({ seconds }) =>
    `Un buen spray de silicona evita que la piel sienta el calor de la secadora por ${seconds(DRYER_HEAT_HELD_SECONDS)}.`,
  nothingListed: () => 'De estos nombres aquí no se dice nada. Eso no lo hace mejor ni peor.',
  nameCorrected: ({ names }) => `Leído tras un desliz del dedo: ${names}.`,
  nameUnknown: ({ names }) => `No se conoce aquí: ${names}; así la lista no se puede juzgar entera.`,
};

/** What else stands in the source, for whoever asks why. */
const more: Readonly<Partial<Record<IngredientFindingId, Say>>> = {
  glyoxylicAcid: () => 'En productos alisantes.',
  formaldehyde: ({ count }) =>
    `Máximo en el aire: ${count(formaldehydeLimitsPpm.eightHours)} ppm en 8 horas, ${count(formaldehydeLimitsPpm.fifteenMinutes)} ppm en 15 minutos.`,
  waterWets: ({ percent }) =>
    `El agua moja el cabello. Fuerza de rotura: ${percent(findStressLossPercent('waterBased'))} menos con spray a base de agua antes de la plancha, ${percent(findStressLossPercent('ethanolBased'))} menos con uno a base de etanol.`,
  alcoholBurns: ({ heat, percent }) =>
    `Punto de inflamación: ${ethanolFlashPoints
      .map(({ flashPoint, weightPercent }) => `${heat(flashPoint)} al ${percent(weightPercent)}`)
      .join(', ')}, en peso en agua.`,
  siliconeSprayHelpsNoMore: () => 'Se ablanda y se acumula.',
  isopropylBurns: ({ heat }) => `Punto de inflamación: ${heat(isopropylFlashPoint)}, sin diluir.`,
  siliconeGivesFormaldehyde: () => 'En aire. Una película sobre el cabello no se midió.',
};

const refusals: Readonly<
  Record<IngredientListRefusal['code'] | 'malformed', (typed: string, most: string) => string>
> = {
  empty: () => '',
  nothingRead: () => 'No hay ningún nombre. Nombres con comas entre ellos, como en el envase.',
  malformed: () => 'Hay un signo que no se ve. Escriba ese nombre de nuevo.',
  tooLong: (typed, most) =>
    `${typed} letras: se guardan ${most} como máximo. Acórtela aquí; aún no está guardada.`,
  tooMany: (_typed, most) =>
    `Más de ${most} nombres: demasiados para un envase. Acórtela aquí; aún no está guardada.`,
};

export const ingredients = {
  says,
  more,
  refusals,
  /** Today's setting stands above what was said. */
  isAbove: (says: string) => `${says} Lo de hoy está por encima.`,
  /** Which kind of source says so, where there is room for no more. */
  ofKind: (says: string, kind: string) => `${says.replace(/\.$/, '')} (${kind}).`,
  names: (names: readonly string[]) => names.join(', '),
  reading: (parts: readonly string[]) => parts.join(' · '),
  read: (count: string) => (count === '1' ? '1 leído' : `${count} leídos`),
  corrected: (count: string, names: string) =>
    `${count === '1' ? '1 corregido' : `${count} corregidos`}: ${names}`,
  asMeant: (written: string, name: string) => `${written} leído como ${name}`,
  unknown: (count: string, names: string) =>
    `${count === '1' ? '1 desconocido' : `${count} desconocidos`}; así la lista no se puede juzgar entera: ${names}`,
  andMore: (names: string, count: string) => `${names} y ${count} más`,
};
