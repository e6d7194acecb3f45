import { describe, expect, it } from 'vitest';
import { en } from '../../../src/words/en/en';
import { es } from '../../../src/words/es/es';

type Leaf = readonly [path: string, english: unknown, spanish: unknown];

const isTold = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** Every sentence and function of the English, beside what stands at its place in the Spanish. */
const listLeaves = (english: unknown, spanish: unknown, path = ''): readonly Leaf[] =>
  isTold(english)
    ? Object.entries(english).flatMap(([name, value]) =>
        listLeaves(value, isTold(spanish) ? spanish[name] : undefined, `${path}.${name}`),
      )
    : [[path.slice(1), english, spanish]];

/** The names at every depth. */
const listNames = (words: unknown): readonly string[] => listLeaves(words, words).map(([path]) => path);

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const leaves = listLeaves(en, es);
const hasLetter = (text: string) => /\p{L}{2}/u.test(text);

/** A field's name for where there is little room: each language has its own that need one. */
const isShort = (path: string) => path.endsWith('.short');

/** Alike in both: names, units, "no", and a language called in itself. */
const alike = /^(No|DEMO|PIN|Strandproof|English|Español|Language · Idioma|cm|[−+] 1 mm|mm|[2-5] min)$/;

/** These are told one word of a short list, and say another for it. */
const chooseAWord = ['mix.weighedColour', 'mix.developerOff', 'strandTest.start.weigh', 'taught.seen'];

describe('the Spanish words', () => {
  it('have every name of the English, and none beside', () => {
    const list = (words: unknown) =>
      listNames(words)
        .filter((path) => !isShort(path))
        .toSorted();
    expect(list(es)).toEqual(list(en));
  });

  it('say nothing in the English words', () => {
    const same = leaves.filter(([, english, spanish]) => english === spanish && typeof english === 'string');
    const unsaid = same.filter(([, text]) => hasLetter(text as string) && !alike.test(plain(text as string)));
    expect(unsaid.map(([path]) => path)).toEqual([]);
  });

  it('are no English function', () => {
    const same = leaves.filter(
      ([, english, spanish]) => english === spanish && typeof english === 'function',
    );
    expect(same.map(([path]) => path)).toEqual([]);
  });

  it('say what they are told wherever the English does', () => {
    const differs = leaves.filter(([, english, spanish]) => {
      if (typeof english !== 'function' || typeof spanish !== 'function') return false;
      const told = Array.from({ length: english.length }, (_, at) => `‹${at}›`);
      const listTold = (say: (...told: readonly string[]) => unknown) => {
        try {
          const said = say(...told);
          return typeof said === 'string' ? (said.match(/‹\d›/g) ?? []).toSorted().join() : typeof said;
        } catch {
          // It is told more than texts.
          return null;
        }
      };
      return listTold(english as never) !== listTold(spanish as never);
    });
    expect(differs.map(([path]) => path)).toEqual(chooseAWord);
  });
});
