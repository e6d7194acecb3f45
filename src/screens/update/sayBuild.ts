import type { Words } from '../../words/words';

/** A build as somebody reads it: its version, and the digits that tell two builds of one version apart. */
export function sayBuild(build: string, words: Words): string {
  const [version = '', digits = ''] = build.split(' ');
  return version === '' ? words.updates.unnamed : words.updates.name(version, digits);
}
