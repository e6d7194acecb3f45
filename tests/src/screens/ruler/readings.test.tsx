import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { act, choose, press, seen } from '../bench';
import { input, makeRuler, openFeel, read, readAll } from './rulerBench';

const fault = () => seen('.measure .field-refusal');

it('asks for the return at once, before a slow strand has crept back', async () => {
  await openFeel();
  await readAll('100', '125');
  expect(seen('.measure-how')).toContain('tap at once');
  expect(seen('.measure-how')).toContain('creeping back? Then it is slow');
});

it('has the line that tells how far before there is anything to tell, so that it is read out', async () => {
  await openFeel();
  await readAll('100');
  const line = document.querySelector('.reached-said[role="status"]');
  expect(line?.textContent).toBe('');
  await read('110');
  expect(document.querySelector('.reached-said')).toBe(line);
  expect(line?.textContent).toContain('a little further');
});

describe('a reading', () => {
  it.each([
    ['0', 'Too low. 1 mm to 1500 mm.'],
    ['-3', 'Too low. 1 mm to 1500 mm.'],
    ['3000', 'Too high. 1 mm to 1500 mm.'],
    ['long', 'That is not a number. 1 mm to 1500 mm, digits only.'],
  ])('of “%s” is told, stays as typed and goes no further', async (text, says) => {
    await openFeel();
    await readAll(text);
    expect(fault().replaceAll('\u00a0', ' ')).toBe(says);
    expect(input().value).toBe(text);
    expect(seen('.measure-ask')).toBe('How long is it at rest?');
  });

  it('keeps its buttons while they move it, so that each quick tap is on the same one', async () => {
    await openFeel();
    await readAll('100');
    await read('118');
    const button = act('more');
    for (let taps = 0; taps < 15; taps += 1) await press('more');
    expect(act('more')).toBe(button);
    expect(input().value).toBe('133');
  });

  it('that ends before the rest, or at it, is told', async () => {
    await openFeel();
    await readAll('112', '100');
    expect(fault()).toBe('That is shorter than at rest. Read it again, or go back to the rest.');
    await readAll('112');
    expect(fault()).toBe('That is as long as at rest. Pull lightly, to the first mark.');
    await press('reading-back');
    await readAll('90', '112');
    expect(seen('.measure-ask')).toBe('Let go: where did it come back to?');
  });

  it('is asked for where it is missing, not before', async () => {
    await openFeel();
    expect(fault()).toBe('');
    await press('reading-next');
    expect(fault().replaceAll('\u00a0', ' ')).toBe('A number from 1 mm to 1500 mm.');
  });

  const key = (name: string, place = '.ruler-room') =>
    document
      .querySelector(place)
      ?.dispatchEvent(new KeyboardEvent('keydown', { key: name, bubbles: true, cancelable: true }));
  const told = (name: string) => document.querySelector('.ruler-room')?.getAttribute(`aria-value${name}`);
  /** A glass on which 5.9 px a millimetre leave 208 of them. */
  const drawWide = () => {
    const wide = vi.spyOn(HTMLElement.prototype, 'clientWidth', 'get').mockReturnValue(1280);
    onTestFinished(() => wide.mockRestore());
  };

  it('moves by a millimetre with the buttons, never below the first', async () => {
    await openFeel();
    await read('100');
    await press('more');
    expect(input().value).toBe('101');
    await read('1');
    await press('less');
    expect(input().value).toBe('1');
  });

  it.each([
    ['ArrowRight', '101'],
    ['ArrowUp', '101'],
    ['ArrowLeft', '99'],
    ['ArrowDown', '99'],
    ['PageUp', '110'],
    ['PageDown', '90'],
    ['Home', '1'],
    ['End', '208'],
  ])('is moved by the key %s from 100 to %s, as every slider is', async (name, mm) => {
    drawWide();
    await openFeel();
    await read('100');
    key(name);
    expect(input().value).toBe(mm);
    expect(told('now')).toBe(mm);
  });

  it('is told within its ends, and by keys goes no further than the glass', async () => {
    drawWide();
    await openFeel();
    expect([told('min'), told('max'), told('now'), told('text')]).toEqual(['1', '208', '1', 'not read yet']);
    await read('207.5');
    key('PageUp');
    expect(input().value).toBe('208');
    await read('300');
    expect([told('now'), told('text')?.replaceAll('\u00a0', ' ')]).toEqual(['208', '300 mm (11.81 in)']);
    key('ArrowUp');
    expect(input().value).toBe('300');
    key('ArrowDown');
    expect(input().value).toBe('299');
  });

  it('whose light pull lies off the glass is told in a line that was there before', async () => {
    drawWide();
    await openFeel();
    const line = document.querySelector('.ruler-short[role="status"]');
    expect(line?.textContent).toBe('');
    await readAll('180');
    expect(document.querySelector('.ruler-short')).toBe(line);
    expect(line?.textContent).toContain('lies beyond this glass');
  });

  it('is told at once when the pull is enough, and never sends it past 30 %', async () => {
    await openFeel();
    await readAll('100');
    const reached = () => seen('.reached-said');
    for (const [mm, says] of [
      ['110', '10 %: a little further, to the first mark.'],
      ['120', '20 %: enough. Let go.'],
      ['130', '30 %: enough. Let go.'],
      ['131', '31 %: past 30 %. No further: let go. It is kept as seen.'],
      ['200', '100 %: past 30 %. No further: let go. It is kept as seen.'],
      ['201', '101 %: wet hair hardly goes so far. Read it again.'],
    ] as const) {
      await read(mm);
      expect(reached()).toBe(says);
    }
  });
});

describe('a glass that no card was laid on', () => {
  it('says so, offers the card, and does without', async () => {
    const bench = await openFeel(makeRuler(null));
    expect(seen('[data-line="ruler-state"]')).toContain('Not set on this tablet yet.');
    await press('without-ruler');
    await choose('wetStretch', 'springsBack');
    expect(bench.consultation().record.answers.feelHair?.wetStretch).toBe('springsBack');
  });

  it('keeps its buttons while they move the lines, so that each quick tap is on the same one', async () => {
    await openFeel(makeRuler(null));
    const button = act('much-more');
    await press('much-more');
    expect(act('much-more')).toBe(button);
  });

  it.each([
    ['Home', 'min'],
    ['End', 'max'],
  ])('has its lines moved to their end by %s', async (key, end) => {
    await openFeel(makeRuler(null));
    const glass = document.querySelector('.card-glass');
    const read = (name: string) => glass?.getAttribute(`aria-value${name}`);
    expect(read('now')).not.toBe(read(end));
    glass?.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
    expect(read('now')).toBe(read(end));
  });

  it('is measured once the lines fit: by buttons and arrow keys, in dots of the glass', async () => {
    const ruler = makeRuler(null, 2);
    await openFeel(ruler);
    const start = Number(act('much-more').closest('.card-fit')?.querySelector('svg')?.getAttribute('width'));
    for (const move of ['much-more', 'much-more', 'little-less']) await press(move);
    document
      .querySelector('.card-glass')
      ?.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true, cancelable: true }));
    const end = Number(document.querySelector('.card-glass svg')?.getAttribute('width'));
    expect(end - start).toBeCloseTo(20 / 2, 6);
    await press('keep-ruler');
    expect(ruler.pxPerMm()).toBeCloseTo(149 / 25.4 + 10 / 85.6, 9);
    expect(seen('.measure-ask')).toBe('How long is it at rest?');
  });
});
