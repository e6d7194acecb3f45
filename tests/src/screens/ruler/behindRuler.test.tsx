import { describe, expect, it } from 'vitest';
import { findStrand } from '../../../../shared/records/record';
import { settle } from '../bench';
import { makeRuler, openFeel, openWhileRunning, readAll } from './rulerBench';

const inDialog = (act: string): readonly HTMLElement[] => [
  ...document.querySelectorAll<HTMLElement>(`dialog[open] [data-act="${act}"]`),
];
const tapInDialog = async (act: string) => {
  inDialog(act)[0]?.click();
  await settle();
};

describe('a strand that breaks while another one is measured', () => {
  it.each([
    ['set', 5.9, []],
    ['set, at its last reading', 5.9, ['100', '125']],
    ['not set', null, []],
  ] as const)('is held on the ruler, which lies over the whole glass: %s', async (_name, set, readings) => {
    const bench = await openWhileRunning(makeRuler(set));
    await readAll(...readings);
    expect(inDialog('strand-broke').map(({ dataset }) => dataset.option)).toEqual(['lengths']);
    await tapInDialog('strand-broke');
    await tapInDialog('strand-broke-confirm');
    expect(findStrand(bench.consultation().record, 'lengths')?.ended?.how).toBe('broke');
    expect(inDialog('strand-broke')).toEqual([]);
  });

  it('stands at neither end of the actions', async () => {
    await openWhileRunning();
    for (const readings of [[], ['100'], ['125']]) {
      await readAll(...readings);
      const actions = [...(document.querySelector('dialog[open] .dialog-actions')?.children ?? [])];
      const at = actions.findIndex((each) => each.querySelector('[data-act="strand-broke"]') !== null);
      expect(at).toBeGreaterThan(0);
      expect(at).toBeLessThan(actions.length - 1);
    }
  });
});

it('holds nothing on the ruler where no strand is in a mix', async () => {
  await openFeel();
  expect(inDialog('reading-next')).toHaveLength(1);
  expect(inDialog('strand-broke')).toEqual([]);
});
