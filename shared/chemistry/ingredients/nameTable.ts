/**
 * Which INCI names does the station know, and to which group does each belong? The first of a row is the name as
 * lists have it, the others are what else is written for it on labels. Names and groups are from memory: INCI, but
 * for those of formaldehyde, which are published: OSHA hazard alert 2011. What a group means for heat stands in
 * findingTable.ts.
 */
export const nameTable = {
  water: [
    [
      'AQUA',
      'WATER',
      'EAU',
      'AGUA',
      'ACQUA',
      'WASSER',
      'PURIFIED WATER',
      'DEIONIZED WATER',
      'DISTILLED WATER',
    ],
  ],
  ethanol: [
    [
      'ALCOHOL DENAT.',
      'DENATURED ALCOHOL',
      'SD ALCOHOL',
      'SD ALCOHOL 40',
      'SD ALCOHOL 40-B',
      'SD ALCOHOL 39-C',
    ],
    ['ALCOHOL', 'ETHANOL', 'ETHYL ALCOHOL'],
  ],
  isopropyl: [['ISOPROPYL ALCOHOL', 'ISOPROPANOL', 'PROPAN-2-OL', '2-PROPANOL']],
  propellant: [['BUTANE'], ['ISOBUTANE'], ['PROPANE'], ['DIMETHYL ETHER'], ['HYDROFLUOROCARBON 152A']],
  d4: [['CYCLOTETRASILOXANE', 'OCTAMETHYLCYCLOTETRASILOXANE', 'D4']],
  d5: [['CYCLOPENTASILOXANE', 'DECAMETHYLCYCLOPENTASILOXANE', 'D5']],
  d6: [['CYCLOHEXASILOXANE', 'DODECAMETHYLCYCLOHEXASILOXANE', 'D6']],
  cyclomethicone: [['CYCLOMETHICONE']],
  volatileSilicone: [['DISILOXANE'], ['TRISILOXANE'], ['ETHYL TRISILOXANE'], ['METHYL TRIMETHICONE']],
  hydrocarbon: [
    ['ISODODECANE'],
    ['DODECANE'],
    ['UNDECANE'],
    ['TRIDECANE'],
    ['C9-12 ALKANE'],
    ['C11-12 ISOPARAFFIN'],
    ['C13-15 ALKANE'],
  ],
  silicone: [
    ['DIMETHICONE', 'POLYDIMETHYLSILOXANE'],
    ['DIMETHICONOL'],
    ['SIMETHICONE'],
    ['AMODIMETHICONE'],
    ['AMINOPROPYL DIMETHICONE'],
    ['TRIMETHYLSILYLAMODIMETHICONE'],
    ['PHENYL TRIMETHICONE'],
    ['TRIMETHYLSILOXYSILICATE'],
  ],
  /** A silicone of which this table does not tell whether it leaves: found by its ending only. */
  siliconeUntold: [['METHICONE'], ['CAPRYLYL METHICONE'], ['POLYSILICONE-15']],
  /** Found by its number, see families.ts. */
  polyquaternium: [['POLYQUATERNIUM-7'], ['POLYQUATERNIUM-10'], ['POLYQUATERNIUM-11'], ['POLYQUATERNIUM-70']],
  filmFormer: [
    ['QUATERNIUM-70'],
    ['PVP/DMAPA ACRYLATES COPOLYMER', 'VP/DMAPA ACRYLATES COPOLYMER'],
    ['PVP', 'POLYVINYLPYRROLIDONE'],
    ['VP/VA COPOLYMER', 'PVP/VA COPOLYMER'],
  ],
  protein: [
    ['HYDROLYZED WHEAT PROTEIN', 'HYDROLYSED WHEAT PROTEIN'],
    ['HYDROLYZED KERATIN', 'HYDROLYSED KERATIN'],
    ['HYDROLYZED COLLAGEN', 'HYDROLYSED COLLAGEN'],
    ['HYDROLYZED SILK', 'HYDROLYSED SILK'],
    ['KERATIN'],
  ],
  oil: [
    ['PARAFFINUM LIQUIDUM', 'MINERAL OIL'],
    ['PETROLATUM'],
    ['COCOS NUCIFERA OIL', 'COCONUT OIL'],
    ['ARGANIA SPINOSA KERNEL OIL', 'ARGAN OIL'],
    ['SIMMONDSIA CHINENSIS SEED OIL', 'JOJOBA OIL', 'JOJOBA SEED OIL'],
    ['OLEA EUROPAEA FRUIT OIL', 'OLIVE OIL'],
    ['PRUNUS AMYGDALUS DULCIS OIL', 'SWEET ALMOND OIL'],
    ['HELIANTHUS ANNUUS SEED OIL', 'SUNFLOWER SEED OIL', 'SUNFLOWER OIL'],
    ['RICINUS COMMUNIS SEED OIL', 'CASTOR OIL'],
    ['PERSEA GRATISSIMA OIL', 'AVOCADO OIL'],
    ['MACADAMIA TERNIFOLIA SEED OIL', 'MACADAMIA OIL'],
    ['LINUM USITATISSIMUM SEED OIL', 'LINSEED OIL'],
    ['BUTYROSPERMUM PARKII BUTTER', 'SHEA BUTTER'],
  ],
  sugar: [
    ['GLUCOSE', 'DEXTROSE'],
    ['FRUCTOSE', 'LEVULOSE'],
    ['MEL', 'HONEY', 'MIEL'],
    ['MALTOSE'],
    ['LACTOSE'],
    ['GALACTOSE'],
    ['MANNOSE'],
    ['XYLOSE'],
    ['RHAMNOSE'],
    ['INVERT SUGAR'],
  ],
  /** Does not reduce: it browns with protein only once it is split. from memory: sugar chemistry. */
  sucrose: [['SUCROSE', 'SACCHAROSE', 'SUGAR']],
  /** Does not reduce, and stands in no source at hand. from memory: sugar chemistry. */
  trehalose: [['TREHALOSE']],
  formaldehyde: [
    [
      'FORMALDEHYDE',
      'FORMALIN',
      'METHYLENE OXIDE',
      'FORMIC ALDEHYDE',
      'METHANAL',
      'OXOMETHANE',
      'OXYMETHYLENE',
      '50-00-0',
      'CAS 50-00-0',
      'CAS NO 50-00-0',
    ],
    ['METHYLENE GLYCOL'],
    ['PARAFORM', 'PARAFORMALDEHYDE'],
  ],
  formaldehydeReleaser: [
    ['DMDM HYDANTOIN'],
    ['IMIDAZOLIDINYL UREA'],
    ['DIAZOLIDINYL UREA'],
    ['QUATERNIUM-15'],
    ['2-BROMO-2-NITROPROPANE-1,3-DIOL', 'BRONOPOL'],
    ['SODIUM HYDROXYMETHYLGLYCINATE'],
    ['METHENAMINE', 'HEXAMETHYLENETETRAMINE'],
  ],
  glyoxylicAcid: [['GLYOXYLIC ACID', 'GLYOXYLIC ACID MONOHYDRATE']],
  /** Found by how its name begins, see families.ts. */
  glyoxylicKin: [['GLYOXYLOYL CARBOCYSTEINE'], ['GLYOXYLOYL KERATIN AMINO ACIDS']],
} as const satisfies Record<string, readonly (readonly [string, ...string[]])[]>;

export type IngredientGroup = keyof typeof nameTable;
