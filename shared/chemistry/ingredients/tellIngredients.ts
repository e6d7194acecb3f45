import type { Celsius } from '../../units/temperature';
import type { Temperatures } from './figures';
import { findingTable } from './findingTable';
import { findGroup } from './findName';
import type { Ingredient } from './ingredient';

/** What is told of the reading itself, whatever the table says. */
type ReadingId = 'nameCorrected' | 'nameUnknown' | 'nothingListed';

export type IngredientFindingId = (typeof findingTable)[number]['id'] | ReadingId;

/** One thing that the list tells, and of which names. */
export interface IngredientFinding {
  readonly id: IngredientFindingId;
  /** As the table has them, each once; of a reading, as they were written. Empty only where nothing is listed. */
  readonly names: readonly string[];
  /** One of the four marks, with its source. */
  readonly mark: string;
  /** At which temperature it happens, where it has one. */
  readonly temperatures?: Temperatures;
  /** Where the plate stands to it, where both are told: `below` is never a promise that nothing happens. */
  readonly plate?: 'below' | 'at' | 'above';
}

function placePlate(plate: Celsius, { from, to }: Temperatures): 'below' | 'at' | 'above' {
  if (plate < from) return 'below';
  return plate > to ? 'above' : 'at';
}

const listNames = (list: readonly Ingredient[], groups: readonly string[], only?: readonly string[]) =>
  [...new Set(list.map(({ name }) => name))]
    .filter((name) => groups.includes(findGroup(name) ?? ''))
    .filter((name) => only === undefined || only.includes(name));

const listWritten = (list: readonly Ingredient[], how: Ingredient['how']) => [
  ...new Set(list.filter((ingredient) => ingredient.how === how).map(({ asWritten }) => asWritten)),
];

/** What is told of how the list was read? With a name that is not known nothing is said of the list as a whole. */
const tellReading = (list: readonly Ingredient[], isNothingListed: boolean): readonly IngredientFinding[] => [
  ...(isNothingListed
    ? [
        {
          id: 'nothingListed',
          names: [],
          mark: 'assumed: the table is short; not listed is not harmless',
        } as const,
      ]
    : []),
  ...(['corrected', 'unknown'] as const)
    .map((how) => ({ how, names: listWritten(list, how) }))
    .filter(({ names }) => names.length > 0)
    .map(({ how, names }) =>
      how === 'corrected'
        ? ({ id: 'nameCorrected', names, mark: 'assumed: one slip of the finger' } as const)
        : ({ id: 'nameUnknown', names, mark: 'assumed: the table is short' } as const),
    ),
];

/**
 * What does the list on the label tell of heat?
 * What harms first, then what scorches or burns, then what leaves and what stays, then how the list was read. With the
 * plate's setting it says where the plate stands to each temperature; hair under a gliding plate is cooler. A plate
 * that is no number counts as not told. Never says that something is safe, or up to which temperature it serves.
 * Checked by tests/shared/chemistry/ingredients/tellIngredients.test.ts and tests/evidence/ingredients.test.ts.
 */
export function tellIngredients(list: readonly Ingredient[], plate?: Celsius): readonly IngredientFinding[] {
  const findings = findingTable
    .map((row): IngredientFinding => {
      const temperatures = 'temperatures' in row ? row.temperatures : undefined;
      const isPlaced = temperatures !== undefined && plate !== undefined && !Number.isNaN(plate);
      return {
        id: row.id,
        names: listNames(list, row.groups, 'only' in row ? row.only : undefined),
        mark: row.mark,
        ...(temperatures === undefined ? {} : { temperatures }),
        ...(isPlaced ? { plate: placePlate(plate, temperatures) } : {}),
      };
    })
    .filter(({ names }) => names.length > 0);
  const isAllRead = list.every(({ how }) => how !== 'unknown');
  return [...findings, ...tellReading(list, findings.length === 0 && isAllRead)];
}
