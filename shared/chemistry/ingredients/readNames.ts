import { findExact, findName } from './findName';
import type { Ingredient } from './ingredient';
import { ASSUMED_LONGEST_NAME, hasName, stripName, writeCapitals } from './labelName';

const pairs = /[([{]([^()[\]{}]*)[)\]}]/g;
const joints =
  /\s(?:and|et|und|&|\+)\s|[.]\s|[,](?=\d)|(?<=[%*\u2020\u2021\u00a7\u00ae\u00b0])\s?(?=[\p{L}\p{N}])/giu;

const isKnown = ({ how }: Ingredient): boolean => how !== 'unknown';
const isExact = (written: string): boolean => findExact(stripName(written)) !== undefined;

const readWhole = (written: string): Ingredient => ({
  asWritten: written,
  ...(findName(stripName(written)) ?? { name: writeCapitals(written), how: 'unknown' }),
});

/** "AQUA (WATER)" is one; "AQUA (FORMALDEHYDE)" are two; what is only a remark stays with its name. */
function readBrackets(written: string): readonly Ingredient[] | undefined {
  const insides = [...written.matchAll(pairs)].map(([, inside = '']) => inside.trim());
  if (insides.length === 0) return undefined;
  const inner = insides.flatMap(readNames);
  const outer = readNames(written.replace(pairs, ' ').trim());
  if (outer.length === 0) return inner;
  const [only] = outer;
  const isAlone = outer.length === 1 && inner.every((one) => !isKnown(one) || one.name === only?.name);
  if (!isAlone || only === undefined) return [...outer, ...inner];
  return [{ ...only, asWritten: written, ...(isKnown(only) ? {} : { name: writeCapitals(written) }) }];
}

/** "AQUA/WATER/EAU" is one; "SUCROSE/GLUCOSE" are two; a stroke in a name of which no part is known belongs to it. */
function readStrokes(written: string): readonly Ingredient[] | undefined {
  const parts = written.split('/').map((part) => part.trim());
  if (parts.length < 2 || /polymer/iu.test(written) || !parts.some(isExact)) return undefined;
  const read = parts.flatMap(readNames);
  const [first] = read;
  return first !== undefined && read.every(({ name }) => name === first.name)
    ? [{ ...first, asWritten: written }]
    : read;
}

/** "AQUA AND ALCOHOL", "AQUA. ALCOHOL", "AQUA 70 % ALCOHOL 5 %", "POLYQUATERNIUM-7,1,2-HEXANEDIOL": two where the table knows either. */
function readJoints(written: string): readonly Ingredient[] | undefined {
  for (const { 0: joint, index } of written.matchAll(joints)) {
    const parts = [written.slice(0, index), written.slice(index + joint.length)].map((part) => part.trim());
    if (parts.some(isExact)) return parts.flatMap(readNames);
  }
  return undefined;
}

/** Which names stand in what was written between two separators? None where nothing but marks stand there. */
export function readNames(written: string): readonly Ingredient[] {
  if (!hasName(written)) return [];
  if (written.length > ASSUMED_LONGEST_NAME || isExact(written)) return [readWhole(written)];
  return readBrackets(written) ?? readStrokes(written) ?? readJoints(written) ?? [readWhole(written)];
}

/** Do two lines hold one name that went on? Only where the table knows both together. */
const isOneName = (line: string, next: string): boolean => isExact(`${line} ${next}`);

/** Which names stand on these lines? */
export function readLines(lines: readonly string[]): readonly Ingredient[] {
  const names: string[] = [];
  for (const line of lines) {
    const last = names.at(-1);
    if (last !== undefined && isOneName(last, line)) names.splice(-1, 1, `${last} ${line}`);
    else names.push(line);
  }
  return names.flatMap(readNames);
}
