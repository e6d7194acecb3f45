import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { en } from '../../../src/words/en/en';

const root = join(import.meta.dirname, '../../../src');

const listFiles = (folder: string): readonly string[] =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));

/** Everything that speaks; a word that stands in `en` is said there only by another that takes it up. */
const sources = ['parts', 'screens', 'words'].flatMap(listFiles).map((path) => readFileSync(path, 'utf8'));

/** Is this word of this topic read anywhere: by its name, or by an id that stands in brackets? */
function isRead(topic: string, name: string, texts: readonly string[]): boolean {
  const speaks = new RegExp(`(\\.|\\b)${topic}\\b`);
  const reads = new RegExp(`\\.${name}\\b|\\b${topic}\\[|[{,]\\s*${name}\\b[^}]*\\}\\s*=`);
  return texts.some((text) => speaks.test(text) && reads.test(text));
}

const topics = Object.entries(en).flatMap(([topic, words]) =>
  typeof words === 'object' ? [[topic, Object.keys(words)] as const] : [],
);

describe('every word of a topic', () => {
  it.each(topics)('%s is said somewhere', (topic, names) => {
    expect(names.filter((name) => !isRead(topic, name, sources))).toEqual([]);
  });

  it('is found missing where nobody says it', () => {
    expect(isRead('bar', 'nobodySaysThis', sources)).toBe(false);
    expect(isRead('bar', 'nobodySaysThis', ['words.bar.nobodySaysThis'])).toBe(true);
    expect(isRead('bar', 'nobodySaysThis', ['words.day.nobodySaysThis'])).toBe(false);
  });
});
