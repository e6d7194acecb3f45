import { expect, it } from 'vitest';
import { Preparing } from '../../../../src/screens/strandTest/Preparing';
import { layOnBench, press, seen } from '../bench';
import { playUntilConfirmed } from '../playStory';

it('says the word of the signs where they ask for more care than the chance, and why behind it', async () => {
  layOnBench(Preparing, playUntilConfirmed('heatSpray'));
  expect(seen('.how-careful[data-risk]')).toContain('Suspect hair');
  expect(seen('.chance-line > p')).toBe('Raised risk: its signs set the care.');
  await press('explain-chance');
  expect(seen('dialog[open] [data-line="by-signs"]')).toContain('Low by itself.');
});

it('opens the odds, their band and what weighs most, beside a Why of its own for the hair', async () => {
  layOnBench(Preparing, playUntilConfirmed('heatSpray'));
  await press('explain-chance');
  expect(document.querySelectorAll('[data-act="explain"]')).toHaveLength(1);
  expect(seen('dialog[open] [data-line="odds"]')).toMatch(/^About \d+ %, from \d+ % to \d+ %\.$/);
  expect(document.querySelectorAll('dialog[open] [data-weighs]')).toHaveLength(3);
  expect(seen('dialog[open] [data-weighs="ironedWet"]')).toBe('ironed wet or damp, or not known');
  expect(seen('dialog[open]')).toContain('An estimate. The strand decides.');
});
