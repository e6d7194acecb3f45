import { readImports } from './imports';
import { type Breach, isCode, makeBreach, type SourceFile } from './tree';

/**
 * Who may import whom. A file belongs to the longest name that begins its path; `src` alone means the files
 * that lie in src itself. Types and values alike.
 */
const mayImport: Record<string, readonly string[]> = {
  shared: ['shared'],
  machines: ['shared', 'machines'],
  'src/words': ['shared', 'machines', 'src/words'],
  'src/parts': ['shared', 'machines', 'src/words', 'src/parts'],
  'src/tablet': ['shared', 'machines', 'src/words', 'src/tablet'],
  'src/storage': ['shared', 'src/storage'],
  'src/demo': ['shared', 'machines', 'seeds', 'src/demo'],
  // The service worker: it knows files of the build, and nothing of the station.
  'src/offline': ['src/offline'],
  'src/station': ['shared', 'machines', 'src/words', 'src/tablet', 'src/storage', 'src/demo', 'src/station'],
  'src/screens': [
    'shared',
    'machines',
    'src/words',
    'src/parts',
    'src/tablet',
    'src/station',
    'src/screens',
    'src',
  ],
  src: ['shared', 'machines', 'src/words', 'src/parts', 'src/tablet', 'src/station', 'src/screens', 'src'],
  seeds: ['shared', 'machines', 'seeds'],
  scripts: ['scripts'],
  tests: ['shared', 'machines', 'src/*', 'src', 'seeds', 'scripts', 'tests'],
};

/** Packages that need no page, no clock, no store: all that the folders below src may take. */
const purePackages: Record<string, readonly string[]> = {
  shared: ['valibot', '@valibot/to-json-schema', 'crc-32', 'papaparse', '@noble/hashes'],
  machines: ['xstate', 'valibot', '@valibot/to-json-schema'],
  'src/words': [],
  'src/demo': [],
  'src/offline': ['workbox-precaching'],
  seeds: [],
};

const layers = Object.keys(mayImport).sort((one, other) => other.length - one.length);
const findLayer = (path: string) => layers.find((layer) => path === layer || path.startsWith(`${layer}/`));

/** Does each import run the one way: shared ← machines ← src, words ← parts ← screens? */
export function findForbiddenImports(files: readonly SourceFile[], packages: readonly string[]): Breach[] {
  return files.filter(isCode).flatMap((file) => {
    const layer = findLayer(file.path);
    if (layer === undefined) return [];
    return readImports(file).flatMap((edge) => {
      const why = judgeImport(layer, edge, packages);
      return why === undefined ? [] : [makeBreach(file, edge.node, why)];
    });
  });
}

function judgeImport(
  layer: string,
  { target, written, isRelative, isTypeOnly, isLate }: ReturnType<typeof readImports>[number],
  packages: readonly string[],
): string | undefined {
  const isTooling = layer === 'tests' || layer === 'scripts';
  if (target === undefined) return isTooling ? undefined : 'imports what nobody can read from the text';
  if (isRelative) {
    const other = findLayer(target);
    if (other === undefined)
      return isTooling ? undefined : `imports ${written}, which is no part of the house`;
    const allowed = mayImport[layer]?.some(
      (name) => name === other || (name === 'src/*' && other.startsWith('src/')),
    );
    if (!allowed) return `${layer} may not import ${other}`;
    if (layer === 'seeds' && other !== 'seeds' && !isTypeOnly) return 'seeds take types only';
    // The invented salon is for who asks for it: no tablet on a wall loads it.
    if (layer === 'src/station' && other === 'src/demo' && !isTypeOnly && !isLate) {
      return 'the demo is imported late or not at all';
    }
    return undefined;
  }
  if (isTooling) return undefined;
  const name = readPackage(target);
  if (!packages.includes(name)) return `imports ${written}, which is no dependency of package.json`;
  const allowed = purePackages[layer];
  if (allowed && !allowed.includes(name)) return `${layer} may not import ${name}`;
  if (name === 'workbox-precaching' && layer !== 'src/offline') return `${layer} may not import ${name}`;
  if (name === 'idb-keyval' && layer !== 'src/storage') return `${layer} may not import ${name}`;
  return undefined;
}

const readPackage = (address: string) => address.split('/', address.startsWith('@') ? 2 : 1).join('/');
