/** The part of papaparse that is used here: its own types bring those of Node, which nothing in `shared` may know. */
declare module 'papaparse' {
  type Written = readonly (readonly (string | number | null)[])[];
  interface Parsed {
    readonly data: readonly (readonly string[])[];
    readonly errors: readonly { readonly code: string; readonly row?: number }[];
  }
  const papa: {
    unparse(written: Written, config: { newline: string }): string;
    parse(text: string, config: { newline: string; delimiter: string }): Parsed;
  };
  export default papa;
}
