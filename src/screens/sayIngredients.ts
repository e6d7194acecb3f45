import type { Ingredient } from '../../shared/chemistry/ingredients/ingredient';
import {
  type IngredientFinding,
  type IngredientFindingId,
  tellIngredients,
} from '../../shared/chemistry/ingredients/tellIngredients';
import { brand } from '../../shared/units/brand';
import { formatQuantity, formatRange, formatTemperature } from '../../shared/units/format';
import type { UnitSettings } from '../../shared/units/quantity';
import type { Celsius } from '../../shared/units/temperature';
import type { Words } from '../words/words';

/** One thing a list tells, in words, with its mark. */
export interface FindingSaid {
  readonly id: IngredientFindingId;
  readonly says: string;
  /** What else the source says; empty where nothing. */
  readonly more: string;
  readonly mark: string;
  readonly names: readonly string[];
  readonly plate: IngredientFinding['plate'];
}

/** Said of so many names at the most where there is little room. */
const NAMED = 1;

const shorten = (names: readonly string[], most: number, words: Words, write: (count: number) => string) => {
  const first = words.ingredients.names(names.slice(0, most));
  return names.length <= most ? first : words.ingredients.andMore(first, write(names.length - most));
};

/**
 * What does this list tell, in words, worst first? With the plate's setting it says what that is above. `isShort`: a
 * line of the first name. Checked in tests/src/screens/sayIngredients.test.tsx.
 */
export function sayFindings(
  list: readonly Ingredient[],
  words: Words,
  units: UnitSettings,
  { plate, isShort = false }: { readonly plate?: Celsius; readonly isShort?: boolean } = {},
): readonly FindingSaid[] {
  const write = (quantity: 'count' | 'percent' | 'seconds') => (value: number) =>
    formatQuantity(value, quantity, units, words.locale);
  return tellIngredients(list, plate).map(({ id, names, mark, temperatures, plate: stands }) => {
    const figures = {
      names: shorten(names, isShort ? NAMED : names.length, words, write('count')),
      at:
        temperatures === undefined
          ? ''
          : formatRange(
              { low: temperatures.from, typical: temperatures.from, high: temperatures.to },
              'temperature',
              units,
              words.locale,
            ),
      heat: (celsius: Celsius) => formatTemperature(celsius, units, words.locale),
      count: write('count'),
      percent: write('percent'),
      seconds: write('seconds'),
    };
    const says = words.ingredients.says[id](figures);
    return {
      id,
      says: stands === 'above' && isPlaced(id) && !isShort ? words.ingredients.isAbove(says) : says,
      more: words.ingredients.more[id]?.(figures) ?? '',
      mark,
      names,
      plate: stands,
    };
  });
}

/** A range in which something was measured is nothing to be above of. */
const isPlaced = (id: IngredientFindingId): boolean => id !== 'filmFormersMeasured';

/** The maker's own claim in words, and whether today's setting is above it. */
export interface MakerSaid {
  readonly says: string;
  readonly isAbove: boolean;
}

/** Up to which setting the maker says it serves, and whether today's is above it. Nothing where the maker says none. */
export function sayMaker(
  makerSaysUpToC: number | undefined,
  plate: Celsius | undefined,
  words: Words,
  units: UnitSettings,
): MakerSaid | null {
  if (makerSaysUpToC === undefined) return null;
  const heat = formatTemperature(brand(makerSaysUpToC), units, words.locale);
  const isAbove = plate !== undefined && plate > makerSaysUpToC;
  return { says: isAbove ? words.spray.makerSaysLess(heat) : words.spray.makerSays(heat), isAbove };
}
