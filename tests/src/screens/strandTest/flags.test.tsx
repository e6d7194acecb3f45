import { render } from '@solidjs/testing-library';
import { expect, it, onTestFinished } from 'vitest';
import { type RedFlag, redFlags } from '../../../../shared/judgement/risk';
import { Flags } from '../../../../src/screens/strandTest/Flags';
import { hasAct, press, seen } from '../bench';
import { settings } from '../playStory';

const show = (flags: readonly RedFlag[]): void => {
  const { unmount } = render(() => <Flags flags={flags} units={settings.units} />);
  onTestFinished(unmount);
};
const named = () =>
  [...document.querySelectorAll<HTMLElement>('[data-flag]')].map(({ dataset }) => dataset.flag);

it('names up to four signs, what was felt today first', () => {
  show(['ironedWet', 'scorched', 'curlLost', 'breakage']);
  expect(named()).toEqual(['breakage', 'curlLost', 'ironedWet', 'scorched']);
  expect(hasAct('more-flags')).toBe(false);
});

it('names three of more, and all behind how many are left', async () => {
  show(redFlags);
  expect(named()).toEqual(['breakage', 'slowStretch', 'curlLost']);
  expect(seen('[data-act="more-flags"]')).toBe('and 5 more');
  await press('more-flags');
  expect(document.querySelectorAll('dialog[open] [data-sign]')).toHaveLength(redFlags.length);
});
