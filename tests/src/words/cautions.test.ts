import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cautions } from '../../../src/words/en/cautions';

const screens = join(import.meta.dirname, '../../../src/screens');
const sources = readdirSync(screens, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.tsx'))
  .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'));

/** What each movement asks of the hand: sources at the words themselves. */
const heeded = {
  weighLightener: ['glove', 'fan', 'metal', 'lid', 'low', 'eyes', 'asthma'],
  snip: ['glove', 'new pair', 'latex'],
  weighColour: ['glove', 'fan', 'plastic', 'glass', 'metal', 'eyes'],
  standing: ['glove', 'lashes', 'brows', 'cap', 'keep'],
  onHead: ['dryer', 'lamp', 'maker', 'eyes', 'rinse'],
  onHeadColour: ['lashes', 'brows', 'eyes', 'rinse'],
  glass: ['off the head', 'fan', 'glove', 'glass', 'plastic', 'metal', 'goggles'],
  spray: ['aerosol', 'alcohol', 'plates', 'burns'],
} as const;

describe('the cautions', () => {
  it.each(Object.entries(heeded))('%s names all that the hand has to heed', (id, things) => {
    const said = cautions[id as keyof typeof heeded].toLowerCase();
    expect(things.filter((thing) => !said.includes(thing))).toEqual([]);
  });

  it.each(Object.keys(cautions))('%s stands where the hand does it', (id) => {
    expect(sources.some((text) => new RegExp(`'${id}'|"${id}"|cautions\\.${id}\\b`).test(text))).toBe(true);
  });
});
