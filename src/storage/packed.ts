import type { Json } from './json';

/**
 * Many entries kept as the text they were written as, and nothing of it as objects. `outlines` are the same entries with
 * every list in them empty: what is asked of all of them without reading any.
 */
export interface Packed {
  /** The JSON of each, one behind the other, in UTF-8. */
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Where each ends among the bytes. */
  readonly ends: readonly number[];
  readonly outlines: readonly Json[];
}

/** Where an entry that is read when asked lies. Not to be seen from outside. */
const SOURCE = Symbol('where it lies');

interface Source {
  readonly packed: Pick<Packed, 'bytes' | 'ends'>;
  readonly place: number;
}

type Fields = { readonly [key: string]: Json };

const isFields = (value: Json): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** An entry with every list in it empty. */
export const outline = (value: Json): Json => {
  if (Array.isArray(value)) return [];
  if (!isFields(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, outline(each)]));
};

const encoder = new TextEncoder();
const decoder = new TextDecoder();

/** Packs entries that are given as their JSON. */
export const pack = (jsons: readonly string[]): Packed => {
  const texts = jsons.map((json) => encoder.encode(json));
  const ends: number[] = [];
  let length = 0;
  for (const text of texts) {
    length += text.length;
    ends.push(length);
  }
  const bytes = new Uint8Array(length);
  for (const [place, text] of texts.entries()) bytes.set(text, (ends[place] as number) - text.length);
  return { bytes, ends, outlines: jsons.map((json) => outline(JSON.parse(json) as Json)) };
};

const readText = ({ packed: { bytes, ends }, place }: Source): string =>
  decoder.decode(bytes.subarray(ends[place - 1] ?? 0, ends[place]));

const findIn = (value: Json, path: readonly string[]): Json =>
  path.reduce<Json>((at, key) => (at as Fields)[key] as Json, value);

/** One way to read a list for all entries that have it in the same place, so that none carries its own. */
const readers = new Map<string, (this: { readonly [SOURCE]: Source }) => Json>();

const readerOf = (path: readonly string[]) => {
  const key = JSON.stringify(path);
  const known = readers.get(key);
  if (known !== undefined) return known;
  const reader = function (this: { readonly [SOURCE]: Source }): Json {
    return findIn(JSON.parse(readText(this[SOURCE])) as Json, path);
  };
  readers.set(key, reader);
  return reader;
};

const unpackOne = (shape: Fields, source: Source, path: readonly string[]): Fields => {
  const entry: Record<string, Json> = Object.defineProperty({}, SOURCE, { value: source });
  for (const [key, value] of Object.entries(shape)) {
    const at = [...path, key];
    const held = isFields(value) ? unpackOne(value, source, at) : value;
    if (Array.isArray(value)) Object.defineProperty(entry, key, { get: readerOf(at), enumerable: true });
    // A name that every object knows already, such as __proto__, is not to be set but to be there.
    else if (key in entry) Object.defineProperty(entry, key, { value: held, enumerable: true });
    else entry[key] = held;
  }
  return entry;
};

/**
 * The entries that were packed, as they were: what is no list is held, and a list is read anew each time somebody asks for it.
 * Checked in tests/src/storage/packed.test.ts.
 */
export const unpack = ({ outlines, ...packed }: Packed): readonly Json[] =>
  outlines.map((shape, place) =>
    isFields(shape)
      ? unpackOne(shape, { packed, place }, [])
      : (JSON.parse(readText({ packed, place })) as Json),
  );

/** The entry itself, or, where its lists are read only when asked for, the same with its lists empty. */
export const readOutline = (entry: Json): Json => {
  if (!isFields(entry) || !(SOURCE in entry)) return entry;
  const held = Object.entries(Object.getOwnPropertyDescriptors(entry)).map(
    ([key, { get, value }]) => [key, get === undefined ? readOutline(value as Json) : []] as const,
  );
  return Object.fromEntries(held);
};

/** One entry, kept as its text. */
export const packOne = (entry: Json): Json => unpack(pack([JSON.stringify(entry)]))[0] ?? null;
