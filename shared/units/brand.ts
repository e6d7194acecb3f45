declare const unit: unique symbol;

/**
 * A number that knows its unit, so that 400 °F cannot be handed where °C is meant.
 * The unit exists for the compiler only; at run time it is the plain number.
 *
 * House rule: a stored field says its unit in its name (`settingC`, `amountG`) and is a plain number; a bare
 * argument where two units of one quantity could be swapped is branded. `brand` is the one door between them.
 * Checked by tests/shared/units/brand.test.ts: no two brands share a string.
 */
export type Branded<Unit extends string> = number & { readonly [unit]: Unit };

/** In which unit is this number? Changes nothing but its type: `brand<Celsius>(answers.settingC)`. */
export const brand = <Brand extends Branded<string>>(value: number): Brand => value as Brand;
