import { describe, expect, it } from 'vitest';
import { Processing } from '../../../../src/screens/strandTest/Processing';
import { choose, hasAct, layOnBench, press, pressed, seen, title } from '../bench';
import { playUntil } from '../playStory';

const minute = 60_000;
const begin = async (level: string) => {
  const bench = layOnBench(Processing, playUntil('STRAND_STARTED', 'ends'));
  bench.pass(3 * minute);
  await press('look');
  await choose('level', level);
  return { ...bench, looks: () => bench.consultation().record.strands[0]?.looks ?? [] };
};
const offered = () =>
  [...document.querySelectorAll<HTMLElement>('[data-question="undertone"] [data-option]')].map(
    ({ dataset }) => dataset.option,
  );

describe('the undertone at a look', () => {
  it('stands as the level says, in a word and a swatch, and is kept as that without a tap', async () => {
    const bench = await begin('5.5');
    expect(pressed('undertone')).toEqual(['asExpected']);
    expect(seen('[data-option="asExpected"]')).toBe('Undertone expected: orange to gold-orange');
    expect(
      [...document.querySelectorAll('[data-option="asExpected"] rect')].map((each) =>
        each.getAttribute('data-undertone'),
      ),
    ).toEqual(['orange', 'goldOrange']);
    expect(offered()).toEqual(['asExpected', 'redOrange', 'orange', 'goldOrange', 'gold']);
    await choose('feel', 'sound');
    expect(bench.looks()).toMatchObject([{ level: 5.5, undertone: 'asExpected', feel: 'sound' }]);
    expect(seen('.clock-aside-line')).toBe('last look: level 5.5, sound');
  });

  it('is another one in one tap, which is said with the last look', async () => {
    const bench = await begin('5.5');
    await choose('undertone', 'gold');
    expect([title(), pressed('undertone')]).toEqual(['How does it feel?', ['gold']]);
    await choose('feel', 'rough');
    expect(bench.looks()).toMatchObject([{ level: 5.5, undertone: 'gold', feel: 'rough' }]);
    expect(seen('.clock-aside-line')).toBe('last look: level 5.5, gold, rough');
  });

  it('is any of the ten by one tap more, and can be taken back', async () => {
    const bench = await begin('5.5');
    await press('other-undertone');
    expect([title(), offered().length]).toEqual(['Which undertone?', 10]);
    await press('cancel');
    expect(title()).toBe('How does it feel?');
    await press('other-undertone');
    await choose('undertone', 'red');
    expect(pressed('undertone')).toEqual(['red']);
    await choose('undertone', 'asExpected');
    expect(pressed('undertone')).toEqual(['asExpected']);
    await choose('feel', 'sound');
    expect(bench.looks()).toMatchObject([{ undertone: 'asExpected' }]);
  });

  it('is expected anew at another level', async () => {
    const bench = await begin('5.5');
    await choose('undertone', 'gold');
    await press('cancel');
    await choose('level', '6');
    expect(pressed('undertone')).toEqual(['asExpected']);
    await choose('feel', 'sound');
    expect(bench.looks()).toMatchObject([{ level: 6, undertone: 'asExpected' }]);
  });

  it('is nothing to expect of a level that nobody could tell, and can be named all the same', async () => {
    const bench = await begin('unknown');
    expect([offered(), hasAct('other-undertone')]).toEqual([[], true]);
    await choose('feel', 'sound');
    expect(bench.looks()).toMatchObject([{ level: 'unknown', undertone: 'unknown' }]);
    bench.pass(3 * minute);
    await press('look');
    await choose('level', 'unknown');
    await press('other-undertone');
    await choose('undertone', 'red');
    await choose('feel', 'sound');
    expect(bench.looks()[1]).toMatchObject({ level: 'unknown', undertone: 'red' });
  });

  it('that was tapped at a look that was left is none of the next one', async () => {
    const bench = await begin('5.5');
    await choose('undertone', 'gold');
    await press('cancel');
    await press('cancel');
    await press('look');
    await choose('level', '5.5');
    await choose('feel', 'sound');
    expect(bench.looks()).toMatchObject([{ undertone: 'asExpected' }]);
  });
});
