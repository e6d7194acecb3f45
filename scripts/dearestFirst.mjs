import { BaseSequencer } from 'vitest/node';

/** The files that take longest, dearest first: begun last, one of them would run on beside an idle core. */
const dearest = [
  'browser/looks.test.ts',
  'browser/kills.test.ts',
  'src/screens/everyEdge.test.tsx',
  'machines/consultation/walks.test.ts',
  'machines/consultation/carriedWalks.test.ts',
  'machines/consultation/graph.test.ts',
  'machines/consultation/forgedLogs.test.ts',
];

/** @param {import('vitest/node').TestSpecification} file */
function rank({ moduleId }) {
  const place = dearest.findIndex((name) => moduleId.endsWith(`tests/${name}`));
  return place === -1 ? dearest.length : place;
}

/** In which order do the files of a run begin? The dearest first, whatever was remembered of runs before. */
export class DearestFirst extends BaseSequencer {
  /**
   * @param {import('vitest/node').TestSpecification[]} files
   * @override
   */
  async sort(files) {
    const sorted = await super.sort(files);
    return sorted.toSorted((one, other) => rank(one) - rank(other));
  }
}
