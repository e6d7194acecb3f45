import type { Component } from 'solid-js';
import { afterEach, describe, expect, it } from 'vitest';
import type { Mixture } from '../../../../shared/judgement/mixture';
import type { BowlRecord } from '../../../../shared/records/record';
import { findUseByMs } from '../../../../shared/records/useWithin';
import { brand } from '../../../../shared/units/brand';
import { createKeptDraft, dropDrafts } from '../../../../src/screens/keptDraft';
import { MixScreen } from '../../../../src/screens/mix/MixScreen';
import { WeighInPage } from '../../../../src/screens/mix/WeighInPage';
import type { StepProps } from '../../../../src/screens/stepProps';
import { act, choose, hasAct, layOnBench, press, said, seen, settle, type } from '../bench';
import { playUntil, settings } from '../playStory';

afterEach(() => dropDrafts('story'));

const openBowl = () => layOnBench(MixScreen, playUntil('DECIDED'));
const tap = async (selector: string): Promise<void> => {
  document.querySelector<HTMLElement>(selector)?.click();
  await settle();
};
const toSummary = () => tap('[data-ledger="summary"]');
const isDisabled = (name: string) => (act(name) as HTMLButtonElement).disabled;
const newest = (bench: ReturnType<typeof openBowl>): BowlRecord | undefined =>
  bench.consultation().record.bowls.at(-1);

/** 50 g of powder, 1 : 2: what the story tested. */
async function openWeighIn(): Promise<ReturnType<typeof openBowl>> {
  const bench = openBowl();
  await type('colourG', '50');
  await toSummary();
  await press('weigh-in');
  return bench;
}

describe('weighing in', () => {
  it('one tap for each that is right, and the bowl holds what the scale said', async () => {
    const bench = await openWeighIn();
    expect(isDisabled('weighed-in')).toBe(true);
    await choose('pour0-0', '50');
    await choose('pour1-0', '100');
    expect(seen('[data-figure="in"]')).toBe('150 g of 150 g in');
    await press('weighed-in');
    expect(newest(bench)?.colourG).toBe(50);
    expect(newest(bench)?.weighed).toEqual([{ amountG: 50 }, { amountG: 100 }]);
    expect(hasAct('weighed-in')).toBe(false);
  });

  it('asks for more of the rest where too much went in, and takes it back again', async () => {
    const bench = await openWeighIn();
    await type('pour0-0', '60');
    await tap('[data-act="pad-done"]');
    expect(seen('[data-figure="grew"]')).toBe('Too much went in: the rest grows with it.');
    await choose('pour1-0', '120');
    expect(seen('[data-figure="total-in"]')).toBe('180 g');
    await type('pour0-0', '50');
    expect(seen('[data-figure="grew"]')).toBe('Too much went in: the rest grows with it.');
    await type('pour1-0', '100');
    expect(seen('[data-figure="grew"]')).toBe('');
    await tap('[data-act="pad-done"]');
    await press('weighed-in');
    expect(newest(bench)?.weighed).toEqual([{ amountG: 50 }, { amountG: 100 }]);
  });

  it('tops up what was right before it', async () => {
    const bench = await openWeighIn();
    await choose('pour0-0', '50');
    await type('pour1-0', '110');
    await tap('[data-act="pad-done"]');
    // 110 g of developer to 55 g of powder: 5 g more.
    await choose('pour0-1', '5');
    await press('weighed-in');
    expect(newest(bench)?.colourG).toBe(55);
    expect(newest(bench)?.weighed).toEqual([{ amountG: 55 }, { amountG: 110 }]);
  });

  it.each([
    ['-3', 'Too low. 1 g to 1000 g.'],
    ['5000', 'Too high. 1 g to 1000 g.'],
    ['half', 'That is not a number. 1 g to 1000 g, digits only.'],
    ['50.4', 'Whole numbers only. 1 g to 1000 g.'],
  ])('%s is said at the pour, and nothing is weighed', async (text, words) => {
    await openWeighIn();
    await type('pour0-0', text);
    expect(said('pour0-0').replaceAll('\u00a0', ' ')).toBe(words);
    expect(isDisabled('weighed-in')).toBe(true);
  });

  it('says when more went in than a bowl holds, and begins anew', async () => {
    await openWeighIn();
    await type('pour0-0', '400');
    expect(seen('[data-figure="grew"]')).toBe('More than a bowl holds. Throw it away.');
    expect(hasAct('weighed-in')).toBe(false);
    await press('pour-anew');
    expect(seen('[data-figure="in"]')).toBe('0 g of 150 g in');
    expect(hasAct('pour-anew')).toBe(false);
  });

  it.each([
    ['300', false],
    ['301', true],
  ] as const)('takes 300 g of colour and no more: %s', async (text, isOver) => {
    openBowl();
    await type('colourG', '300');
    await toSummary();
    await press('weigh-in');
    await type('pour0-0', text);
    expect(hasAct('pour-anew')).toBe(isOver);
  });

  it('says what the door has against it', async () => {
    const made = { shades: [{ shade: 'Mist', amountG: 50 }], developerG: 100, totalG: 150 };
    const mixture: Mixture = {
      ...made,
      remainderG: 0,
      developerOffG: 0,
      bottlePercent: brand(3),
      bowlPercent: brand(2),
    };
    const draft = createKeptDraft('story/pours', {}, settings);
    const page: Component<StepProps> = (props) => (
      <WeighInPage
        {...props}
        zone="lengths"
        mixture={mixture}
        bottles={null}
        draft={draft}
        weighed="Weighed"
        refusal={null}
        refused={[{ path: 'weighed', code: 'notTheParts' }]}
        onWeighed={async () => false}
        onClose={() => undefined}
      />
    );
    layOnBench(page, playUntil('DECIDED'));
    expect(seen('[data-figure="grew"]')).toBe('');
    await choose('pour0-0', '50');
    await choose('pour1-0', '100');
    await press('weighed-in');
    expect(seen('[data-figure="grew"]')).toBe('Not the parts that were ordered. Weigh it in again.');
    expect(seen('[data-figure="in"]')).toBe('150 g of 150 g in');
  });

  it('keeps what is in while somebody looks at the bowl', async () => {
    await openWeighIn();
    await choose('pour0-0', '50');
    await press('weigh-in-close');
    await toSummary();
    await press('weigh-in');
    expect(seen('[data-figure="in"]')).toBe('50 g of 150 g in');
  });
});

describe('a bowl that is changed while something is in', () => {
  const changeBottle = async (percent: string) => {
    await press('weigh-in-close');
    await choose('developerPercent', percent);
    await toSummary();
  };

  it('is gone on with, and not called weighed as it was ordered', async () => {
    await openWeighIn();
    await choose('pour0-0', '50');
    await press('weigh-in-close');
    await toSummary();
    expect(hasAct('weigh')).toBe(false);
    expect(act('weigh-in').textContent).toBe('Go on weighing in');
  });

  it('keeps the colour that is in when another bottle is taken', async () => {
    await openWeighIn();
    await choose('pour0-0', '50');
    await changeBottle('1.5');
    await press('weigh-in');
    expect(seen('[data-figure="in"]')).toBe('50 g of 150 g in');
  });

  it('counts no developer that is in as one of another strength: it is thrown away', async () => {
    const bench = await openWeighIn();
    await choose('pour1-0', '100');
    await changeBottle('1.5');
    await press('weigh-in');
    expect(seen('[data-figure="grew"]')).toBe(
      'Something is in that this bowl no longer asks for. Throw it away.',
    );
    expect(hasAct('weighed-in')).toBe(false);
    await press('pour-anew');
    expect(seen('[data-figure="in"]')).toBe('0 g of 150 g in');
    expect(newest(bench)).toBe(undefined);
  });

  it('is too old so long after the first developer went in, not after it was called weighed', async () => {
    const bench = await openWeighIn();
    await choose('pour0-0', '50');
    bench.pass(5 * 60_000);
    await type('pour1-0', '60');
    await tap('[data-act="pad-done"]');
    bench.pass(12 * 60_000);
    await choose('pour1-1', '40');
    await press('weighed-in');
    const bowl = newest(bench);
    if (bowl === undefined) throw new Error('nothing was weighed');
    expect(bowl.mixedMinAgo).toBe(12);
    // Half an hour where the shelf names no figure. ASSUMED_USE_WITHIN_MIN.
    expect((findUseByMs(bowl, { ...settings, shelf: [] }) - bowl.atMs) / 60_000).toBe(30 - 12);
  });
});

describe('two bottles', () => {
  /** 3 % is what the story decided: from 6 and 1.5 %, one part to two. */
  async function useTwo(): Promise<ReturnType<typeof openBowl>> {
    const bench = openBowl();
    await type('colourG', '45');
    await toSummary();
    await press('thin');
    await type('strongPercent', '6');
    await type('weakPercent', '1.5');
    await press('thin-use');
    await toSummary();
    return bench;
  }

  it('are taken over into the bowl and its record', async () => {
    const bench = await useTwo();
    expect(seen('[data-panel="grams"]').replaceAll('\u00a0', ' ')).toContain(
      '6 % bottle30 g1.5 % bottle60 g',
    );
    expect(act('weigh').textContent?.replaceAll('\u00a0', ' ')).toBe('Weighed: 30 g of 6 %, 60 g of 1.5 %');
    await press('weigh');
    expect(newest(bench)).toMatchObject({
      developerPercent: 3,
      bottles: [{ percent: 6 }, { percent: 1.5 }],
      weighed: [],
    });
    expect(seen('[data-panel="say-first"]').replaceAll('\u00a0', ' ')).toContain(
      '30 g of 6 % and 60 g of 1.5 %, together 3 % (10 vol)',
    );
  });

  it('weighed in, the stronger is never more and the weaker never less than its share', async () => {
    const bench = await useTwo();
    await press('weigh-in');
    await choose('pour0-0', '45');
    await type('pour1-0', '31');
    await tap('[data-act="pad-done"]');
    expect(seen('[data-figure="grew"]')).toBe('Too much went in: the rest grows with it.');
    await choose('pour2-0', '62');
    await choose('pour0-1', '2');
    await press('weighed-in');
    expect(newest(bench)?.weighed).toEqual([{ amountG: 47 }, { amountG: 31 }, { amountG: 62 }]);
  });

  it('go back to one', async () => {
    await useTwo();
    await press('thin');
    await press('one-bottle');
    await toSummary();
    expect(act('weigh').textContent?.replaceAll('\u00a0', ' ')).toBe('Weighed: 3 % bottle');
  });

  it('that no longer make it are said, and nothing is weighed', async () => {
    await useTwo();
    await choose('developerPercent', '1.5');
    await toSummary();
    expect(seen('.broke-line')).toBe('These two bottles do not make it. Reckon them again.');
    expect(isDisabled('weigh')).toBe(true);
  });
});
