import type { Component } from 'solid-js';
import { describe, expect, it } from 'vitest';
import { ColourOn } from '../../../src/screens/colourOn/ColourOn';
import type { StepProps } from '../../../src/screens/stepProps';
import { Preparing } from '../../../src/screens/strandTest/Preparing';
import { Processing } from '../../../src/screens/strandTest/Processing';
import { layOnBench } from './bench';
import { type Played, playBothOn, playUntil, playUntilConfirmed } from './playStory';

const minute = 60_000;

const screens: readonly (readonly [string, Component<StepProps>, () => Played, string, number])[] = [
  [
    'before a strand',
    Preparing,
    () => playUntilConfirmed('heatSpray'),
    '[data-act^=test-], li[data-zone]',
    4,
  ],
  ['with two strands in the mix', Processing, () => playUntil('STRAND_STARTED', 'lengths'), 'button', 8],
  ['with two bowls on the head', ColourOn, playBothOn, 'button', 7],
];

describe('a button under a finger', () => {
  it.each(screens)('%s is the same one a second later', (_where, component, play, selector, count) => {
    const bench = layOnBench(component, play());
    const list = () => [...document.querySelectorAll(selector)];
    const before = list();
    expect(before).toHaveLength(count);
    bench.pass(1000);
    bench.pass(1000);
    expect(list().map((element) => before.indexOf(element))).toEqual(before.map((_, place) => place));
  });

  it('is still the same one when another clock becomes more urgent', () => {
    const bench = layOnBench(Processing, playUntil('STRAND_STARTED', 'lengths'));
    const shown = document.querySelector('[data-act=show-lengths]');
    expect(shown).not.toBeNull();
    bench.pass(minute);
    expect(document.querySelector('[data-act=show-lengths]')).toBe(shown);
  });
});
