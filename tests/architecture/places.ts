import { posix } from 'node:path';
import { readImports } from './imports';
import { type Breach, isCode, makeBreach, type SourceFile } from './tree';

const vagueFolders = new Set(['util', 'utils', 'helper', 'helpers', 'common', 'misc', 'lib']);
const isTest = (path: string) =>
  /\.(test|spec|bench)\.[cm]?[jt]sx?$/.test(path) || /(^|\/)__\w+__\//.test(path);

/** Does every file lie where its topic is: no folder for leftovers, no test outside tests? */
export function findMisplacedFiles(files: readonly SourceFile[]): Breach[] {
  return files.flatMap(({ path }) => {
    const breaches: Breach[] = [];
    const add = (what: string) => breaches.push({ path, line: 1, what });
    if (
      posix
        .dirname(path)
        .split('/')
        .some((folder) => vagueFolders.has(folder))
    )
      add('lies in a folder without a topic');
    if (/^types\.tsx?$/.test(posix.basename(path))) add('types belong to their topic');
    if (isTest(path) && !path.startsWith('tests/')) add('a test outside tests');
    return breaches;
  });
}

/** Is each thing imported from the file that it is in? A barrel hides that, and drags in what nobody asked for. */
export function findBarrels(files: readonly SourceFile[]): Breach[] {
  return files.filter(isCode).flatMap((file) => {
    const isIndex = /(^|\/)index\.\w+$/.test(file.path);
    const handsOn = readImports(file)
      .filter(({ isReExport }) => isReExport)
      .map(({ node }) => makeBreach(file, node, 'hands on what is not its own'));
    return isIndex ? [{ path: file.path, line: 1, what: 'is called index' }, ...handsOn] : handsOn;
  });
}
