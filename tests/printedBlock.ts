/** What stands between `<!-- name -->` and `<!-- /name -->` in a document. */
export const readBlock = (text: string, name: string): string =>
  text.split(`<!-- ${name} -->\n`)[1]?.split(`<!-- /${name} -->`)[0] ?? '';

/** The document with this between its marks. */
export const replaceBlock = (text: string, name: string, printed: string): string =>
  text.replace(`${readBlock(text, name)}<!-- /${name} -->`, () => `${printed}<!-- /${name} -->`);
