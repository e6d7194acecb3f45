/** After so long the memory is given back, ms. Assumed because a browser has read a day's text long before a minute. */
const ASSUMED_HANDED_OVER_MS = 60_000;

/** Hands a text to the browser, whole or in pieces, as a file of this name, as if a link to it had been followed. */
export function saveText(name: string, text: string | Iterable<string>, type: string): void {
  const url = URL.createObjectURL(new Blob(typeof text === 'string' ? [text] : [...text], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(url), ASSUMED_HANDED_OVER_MS);
}
