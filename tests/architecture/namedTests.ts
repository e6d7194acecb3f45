import type { Breach, SourceFile } from './tree';

const named = /\btests\/[\w./-]+\.test\.tsx?\b/g;

/** Is every test there that a comment outside the tests says it is checked in? */
export function findLostTests(files: readonly SourceFile[]): Breach[] {
  const paths = new Set(files.map(({ path }) => path));
  return files
    .filter(({ path }) => !path.startsWith('tests/'))
    .flatMap(({ path, text }) =>
      text
        .split('\n')
        .flatMap((line, index) =>
          [...line.matchAll(named)]
            .filter(([test]) => !paths.has(test))
            .map(([test]) => ({ path, line: index + 1, what: `names ${test}, which is not there` })),
        ),
    );
}
