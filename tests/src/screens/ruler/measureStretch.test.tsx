import { describe, expect, it } from 'vitest';
import { FeelHair } from '../../../../src/screens/ask/FeelHair';
import { choose, hasAct, layOnBench, press, pressed, seen } from '../bench';
import { playUntilConfirmed } from '../playStory';
import { input, openFeel, openOutcome, read, readAll } from './rulerBench';

const feltStretch = (bench: Awaited<ReturnType<typeof openFeel>>) =>
  bench.consultation().record.answers.feelHair?.wetStretch;

describe('a wet strand measured at the feel', () => {
  it('fills the answer in, and is said only by the tap on it', async () => {
    const bench = await openFeel();
    await readAll('112', '139', '113');
    expect(seen('.pull-told')).toContain('Stretched 24.1 %. Gave back 96.3 % of that, give or take 8 %.');
    expect(seen('[data-line="fills"]')).toBe('Fills in: Springs back');
    await press('fill-answer');
    expect(hasAct('fill-answer')).toBe(false);
    expect(pressed('wetStretch')).toEqual(['springsBack']);
    expect(seen('[data-act="measure"]')).toBe('Measured: 24.1 %');
    expect(feltStretch(bench)).toBeUndefined();
    await choose('wetStretch', 'springsBack');
    expect(feltStretch(bench)).toBe('springsBack');
  });

  it('is read in millimetres, with the inches of this salon beside them', async () => {
    await openFeel();
    expect(seen('.ruler-room')).toContain('mm');
    await read('139');
    expect(seen('.reading .number-unit')).toBe('mm5.47 in');
    await read('long');
    expect(seen('.reading .number-unit')).toBe('mm');
    await readAll('112', '139', '113');
    expect(seen('[data-line="readings"]')).toBe(
      'At rest 112 mm (4.41 in), pulled to 139 mm (5.47 in), back to 113 mm (4.45 in)',
    );
  });

  it('may be answered otherwise than the ruler says: the finger comes first', async () => {
    const bench = await openFeel();
    await readAll('100', '125', '100');
    await press('fill-answer');
    await choose('wetStretch', 'staysLong');
    expect(feltStretch(bench)).toBe('staysLong');
  });

  it.each([
    ['stays long', ['100', '125', '120'], 'Slow, stays long'],
    ['went past 30 %, whatever it did afterwards', ['100', '131', '100'], 'Snaps or mush'],
  ] as const)('%s', async (_name, texts, option) => {
    await openFeel();
    await readAll(...texts);
    expect(seen('[data-line="fills"]')).toBe(`Fills in: ${option}`);
  });

  it('asks whether one was measured anew that ran to more than twice its length, and fills nothing in', async () => {
    const bench = await openFeel();
    await readAll('100', '1285', '100');
    expect(seen('.pull-told h3')).toBe('Measure again?');
    expect(seen('.pull-told')).toContain('Stretched 1185 %.');
    expect(seen('.pull-told')).toContain(
      'Wet hair broke at 51 % on average. Past 100 % it is most likely a slip of the ruler',
    );
    expect(hasAct('fill-answer')).toBe(false);
    expect(seen('[data-line="fills"]')).toBe('');
    await press('measure-again');
    expect(input().value).toBe('');
    expect(feltStretch(bench)).toBeUndefined();
  });

  it('takes it for mush once somebody says that it went so far, and asks again after another reading', async () => {
    await openFeel();
    await readAll('100', '210', '100');
    await press('it-was-so');
    expect(seen('.pull-told h3')).toBe('Past 30 % on a light pull: gummy.');
    expect(seen('[data-line="fills"]')).toBe('Fills in: Snaps or mush');
    await press('reading-back');
    await readAll('100');
    expect(hasAct('fill-answer')).toBe(false);
    await press('it-was-so');
    await press('fill-answer');
    expect(pressed('wetStretch')).toEqual(['snaps']);
  });

  it('takes one at twice its length as it was seen', async () => {
    await openFeel();
    await readAll('100', '200', '100');
    expect(seen('[data-line="fills"]')).toBe('Fills in: Snaps or mush');
  });

  it('of too light a pull fills nothing in, and is measured again', async () => {
    await openFeel();
    await readAll('100', '110', '100');
    expect(seen('.pull-told')).toContain('Too light a pull to tell.');
    expect(hasAct('fill-answer')).toBe(false);
    await press('measure-again');
    expect(input().value).toBe('');
  });
});

describe('a strand too short to tell', () => {
  it('is told at rest, and fills nothing in where it sprang back', async () => {
    await openFeel();
    await read('20');
    expect(seen('.reached-said')).toContain('Shorter than 50 mm: too short to tell');
    await press('reading-next');
    await readAll('26', '21');
    expect(seen('.pull-told h3')).toBe('Too short to tell.');
    expect(seen('.pull-told')).toContain('Gave back 83.3 % of that, give or take 34 %.');
    expect(hasAct('fill-answer')).toBe(false);
    await press('measure-again');
    expect(input().value).toBe('');
  });

  it('fills in what it showed all the same where it stayed long', async () => {
    await openFeel();
    await readAll('20', '24', '22');
    expect(seen('[data-line="fills"]')).toBe('Fills in: Slow, stays long');
  });
});

describe('a wet strand measured at the outcome', () => {
  it('fills in how it came back and whether it went past 30 %', async () => {
    const bench = await openOutcome();
    await readAll('100', '140', '130');
    expect(seen('[data-line="fills"]')).toBe('Fills in: Slow, stays long · past 30 %: Yes');
    await press('fill-answer');
    expect(pressed('stretch')).toEqual(['staysLong']);
    expect(pressed('wentPast30')).toEqual(['yes']);
    expect(bench.consultation().record.strands.every(({ outcome }) => outcome === null)).toBe(true);
  });

  it('leaves open how far one went that snapped before it was read', async () => {
    await openOutcome();
    await readAll('100');
    await press('snapped');
    expect(seen('[data-line="readings"]')).toBe('At rest 100 mm (3.94 in)');
    expect(seen('[data-line="figures"]').trim()).toBe('');
    expect(seen('[data-line="fills"]')).toBe('Fills in: Snaps or mush');
    await press('fill-answer');
    expect(pressed('stretch')).toEqual(['snaps']);
    expect(pressed('wentPast30')).toEqual([]);
  });

  it.each(['4o', '90', '100'])(
    'makes no figure of “%s” where it snapped: that is no reading',
    async (text) => {
      await openOutcome();
      await readAll('100');
      await read(text);
      await press('snapped');
      expect(seen('[data-line="figures"]').trim()).toBe('');
      expect(seen('[data-line="readings"]')).toBe('At rest 100 mm (3.94 in)');
      await press('fill-answer');
      expect(seen('[data-act="measure"]')).toBe('Measured: it snapped');
    },
  );

  it('goes back to the step at which it snapped', async () => {
    await openOutcome();
    await readAll('100');
    await press('snapped');
    await press('reading-back');
    expect(seen('.measure-ask')).toContain('Pull lightly');
    await readAll('125');
    await press('snapped');
    await press('reading-back');
    expect(seen('.measure-ask')).toContain('Let go');
    await readAll('100');
    await press('reading-back');
    expect(seen('.measure-ask')).toContain('Let go');
  });

  it('asks anew also where one snapped far beyond what hair does', async () => {
    await openOutcome();
    await readAll('100', '1285');
    await press('snapped');
    expect(hasAct('fill-answer')).toBe(false);
    await press('it-was-so');
    await press('fill-answer');
    expect([pressed('stretch'), pressed('wentPast30')]).toEqual([['snaps'], ['yes']]);
  });

  it('keeps past 30 % of one that snapped there', async () => {
    await openOutcome();
    await readAll('100', '145');
    await press('snapped');
    await press('fill-answer');
    expect(pressed('wentPast30')).toEqual(['yes']);
  });
});

it('is not offered where there is no glass to measure on', async () => {
  layOnBench(FeelHair, playUntilConfirmed('hotTools'));
  document.querySelector<HTMLElement>('[data-ledger="wetStretch"]')?.click();
  expect(hasAct('measure')).toBe(false);
});
