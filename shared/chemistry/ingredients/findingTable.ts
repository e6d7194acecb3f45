import { type Temperatures, ingredientTemperatures as temperatures } from './figures';
import type { IngredientGroup } from './nameTable';

interface FindingRow {
  readonly id: string;
  /** Told of what belongs to one of these groups. */
  readonly groups: readonly IngredientGroup[];
  /** Told of these names only, out of the groups. */
  readonly only?: readonly string[];
  readonly temperatures?: Temperatures;
  /** One of the four marks; a rule of thumb is never dressed up as a measurement. */
  readonly mark: string;
}

const practice = 'common practice, no source';
const sugars = 'published: Kroh, Food Chem. 51:373–379, 1994';
const filmFormers =
  'published: McMullen & Jachowicz, Thermal degradation of hair II, J. Cosmet. Sci. 49:245–256, 1998, p. 248';
const memory = 'from memory: general cosmetic chemistry';

const cyclic = ['d4', 'd5', 'd6', 'cyclomethicone'] as const;

/**
 * What can a list tell? What harms first, then what scorches or burns, then what leaves and what stays. No row says
 * that something is safe, or up to which temperature it serves.
 */
export const findingTable = [
  {
    id: 'formaldehyde',
    groups: ['formaldehyde'],
    mark: 'published: OSHA hazard alert 2011; 29 CFR 1910.1048',
  },
  {
    id: 'formaldehydeReleaser',
    groups: ['formaldehydeReleaser'],
    mark: 'from memory: de Groot et al., Formaldehyde-releasers, Contact Dermatitis 61:63–85, 2009',
  },
  { id: 'glyoxylicAcid', groups: ['glyoxylicAcid'], mark: 'published: N. Engl. J. Med. 2024' },
  {
    id: 'glyoxylicKin',
    groups: ['glyoxylicKin'],
    mark: 'assumed: its kin by name; of the acid: N. Engl. J. Med. 2024',
  },
  {
    id: 'alcoholBurns',
    groups: ['ethanol'],
    mark: 'published: a table of ethanol–water flash points, publisher not named',
  },
  { id: 'isopropylBurns', groups: ['isopropyl'], mark: 'from memory: NFPA 325' },
  { id: 'propellantBurns', groups: ['propellant'], mark: practice },
  {
    id: 'waterWets',
    groups: ['water'],
    mark: 'published: Christian, Winsey, Whatmough, Cornwell, J. Cosmet. Sci. 62:15–27, 2011, Table III',
  },
  {
    id: 'sugarCaramelises',
    groups: ['sugar', 'sucrose'],
    temperatures: temperatures.sugarCaramelises,
    mark: sugars,
  },
  { id: 'sugarBrownsWithProtein', groups: ['sugar'], mark: sugars },
  { id: 'sucroseBrownsOnceSplit', groups: ['sucrose'], mark: sugars },
  { id: 'sugarScorches', groups: ['sugar', 'sucrose', 'trehalose'], mark: practice },
  {
    id: 'siliconeGivesFormaldehyde',
    groups: [...cyclic, 'volatileSilicone', 'silicone', 'siliconeUntold'],
    temperatures: temperatures.siliconeGivesFormaldehyde,
    mark: 'published: Timpe, Formaldehyde generation from silicone rubber',
  },
  {
    id: 'dimethiconeBreaksDown',
    groups: ['silicone'],
    only: ['DIMETHICONE'],
    temperatures: temperatures.dimethiconeBreaksDown,
    mark: 'published: Abrutyn, in Conditioning Agents for Hair and Skin, 1999, p. 176',
  },
  {
    id: 'carriersLeave',
    groups: ['water', 'ethanol', 'isopropyl', ...cyclic, 'volatileSilicone', 'hydrocarbon'],
    mark: memory,
  },
  { id: 'd4Boils', groups: ['d4'], temperatures: temperatures.d4Boils, mark: 'published: GisChem' },
  {
    id: 'd5Boils',
    groups: ['d5'],
    temperatures: temperatures.d5Boils,
    mark: 'published: ECHA registration dossier 14807',
  },
  {
    id: 'd6Boils',
    groups: ['d6'],
    temperatures: temperatures.d6Boils,
    mark: 'published: ECHA registration dossier 15811',
  },
  {
    id: 'boilingIsNotLeaving',
    groups: ['d4', 'd5', 'd6'],
    mark: 'from memory: general physical chemistry, vapour pressure below the boiling point',
  },
  { id: 'whatStays', groups: ['silicone', 'polyquaternium', 'filmFormer', 'protein', 'oil'], mark: memory },
  { id: 'siliconeLeavesOrStays', groups: ['siliconeUntold'], mark: memory },
  {
    id: 'filmFormersMeasured',
    groups: ['filmFormer', 'protein'],
    only: ['QUATERNIUM-70', 'PVP/DMAPA ACRYLATES COPOLYMER', 'HYDROLYZED WHEAT PROTEIN'],
    temperatures: temperatures.filmFormersMeasured,
    mark: filmFormers,
  },
  {
    id: 'polyquaterniumNoFigure',
    groups: ['polyquaternium'],
    mark: 'assumed: no figure for it is known here',
  },
  {
    id: 'siliconeSprayHelpsNoMore',
    groups: [...cyclic, 'volatileSilicone', 'silicone', 'siliconeUntold'],
    temperatures: temperatures.siliconeSprayHelpsNoMore,
    mark: practice,
  },
  {
    id: 'siliconeHoldsDryerHeat',
    groups: [...cyclic, 'volatileSilicone', 'silicone', 'siliconeUntold'],
    mark: practice,
  },
] as const satisfies readonly FindingRow[];
