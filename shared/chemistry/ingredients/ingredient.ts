/** One name of a list, as the label has it and as the table knows it. */
export interface Ingredient {
  /** What was typed, untouched but for the separators around it. */
  readonly asWritten: string;
  /** The INCI name in capitals as the table has it; of one it does not know, what was written, in capitals. */
  readonly name: string;
  /** Was it found as written, found after one slip of the finger, or not found? */
  readonly how: 'known' | 'corrected' | 'unknown';
}

/** Why was the text not read as a list? `most` letters or names are taken. */
export type IngredientListRefusal =
  | { readonly code: 'empty' | 'nothingRead' }
  | { readonly code: 'tooLong' | 'tooMany'; readonly most: number };
