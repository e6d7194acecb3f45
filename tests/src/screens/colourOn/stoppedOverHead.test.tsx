import { expect, it } from 'vitest';
import { ColourOn } from '../../../../src/screens/colourOn/ColourOn';
import { hasAct, layOnBench, seen } from '../bench';
import { and, lengthsOn, minute, remembers } from '../everyEdge/starts';

it('says to rinse now, and why, once something stops her over the head', () => {
  const calm = layOnBench(ColourOn, lengthsOn());
  expect(seen('[data-stopped-by]')).toBe('');
  expect(seen('.hand-caution')).not.toBe('');
  calm.unmount();
  layOnBench(ColourOn, and(lengthsOn(), remembers));
  expect(seen('[data-stopped-by="stop.persulfateReaction"]')).toBe(
    'Rinse now, she is stopped. Hives or a tight chest after colour or lightener.',
  );
  expect(seen('.hand-caution')).toBe('');
});

it('offers no more time then, though the maker’s limit leaves some', () => {
  const calm = layOnBench(ColourOn, lengthsOn());
  calm.pass(14 * minute);
  expect(hasAct('more-time')).toBe(true);
  calm.unmount();
  const stopped = layOnBench(ColourOn, and(lengthsOn(), remembers));
  stopped.pass(13 * minute);
  expect(hasAct('more-time')).toBe(false);
  expect(hasAct('rinsed')).toBe(true);
});
