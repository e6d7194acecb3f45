import { cleanup, render } from '@solidjs/testing-library';
import { afterEach, expect, it } from 'vitest';
import { TestFigure } from '../../../../src/screens/skinTest/TestFigure';

afterEach(cleanup);

const sayOf = (line: string) =>
  render(() => <TestFigure status="clear" what="Nothing seen" when="" line={line} facts={[]} />).container
    .textContent;

it('says of which product the test is, or that nobody noted it, and who decides for lightener', () => {
  expect(sayOf('Quarry colour')).toContain('It is of Quarry colour alone.');
  expect(sayOf('')).toContain('Nobody noted of which product it is.');
  expect(sayOf('')).toContain('For lightener the maker’s directions decide.');
  expect(sayOf('Quarry colour')).toContain('“Nothing seen” never means safe.');
});
