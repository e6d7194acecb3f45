import { describe, expect, it } from 'vitest';
import { Preparing } from '../../../../src/screens/strandTest/Preparing';
import { LearningProvider } from '../../../../src/screens/taught/learningInUse';
import { layOnBench, press, seen } from '../bench';
import { playUntilConfirmed } from '../playStory';
import { layLearning, taughtBy } from '../taught/learningStub';

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

describe('by this station’s own strands', () => {
  const lay = (strands: number, baseBy: number, learns = true) => {
    const { learning } = layLearning(taughtBy(strands, baseBy));
    const WithLearning: typeof Preparing = (props) => (
      <LearningProvider value={learning}>
        <Preparing {...props} settings={{ ...props.settings, learns }} />
      </LearningProvider>
    );
    layOnBench(WithLearning, playUntilConfirmed('heatSpray'));
  };
  const odds = () => seen('dialog[open] [data-line="odds"]');

  it('says on how many it is based, and what was assumed', async () => {
    lay(148, 0.5);
    await press('explain-chance');
    expect(seen('dialog[open] [data-line="basis"]')).toMatch(
      /^Based on 148 strands of this station\. Assumed before them: about \d+ %\.$/,
    );
    expect(odds()).not.toBe('');
    expect(seen('dialog[open]')).toContain('our own strands have moved it');
  });

  it('asks for more care than the signs where they say so, and moves nothing that is asked for', async () => {
    lay(148, 3);
    expect(seen('.chance-line > p')).toBe('High chance by our own strands: take more care.');
    expect(seen('.how-careful[data-risk]')).toContain('Suspect hair');
    expect(document.querySelector('.how-careful[data-risk]')?.getAttribute('data-risk')).toBe('raised');
  });

  it('leaves the word of the signs where they ask for more, however well strands held', async () => {
    lay(148, -3);
    expect(seen('.chance-line > p')).toBe('Raised risk: its signs set the care.');
    await press('explain-chance');
    expect(seen('dialog[open] [data-line="by-strands"]')).toContain('Low by our own strands.');
  });

  it.each([
    ['no strand taught', 0, true, 'Assumed: no strands of this station have taught yet.'],
    ['it is turned off', 148, false, 'As assumed: what our strands taught is not used now.'],
  ])('is what is assumed where %s', async (_, strands, learns, basis) => {
    lay(strands, 3, learns);
    await press('explain-chance');
    expect(seen('dialog[open] [data-line="basis"]')).toBe(basis);
    expect(seen('dialog[open] [data-line="by-signs"]')).toContain('Low by itself.');
  });
});
