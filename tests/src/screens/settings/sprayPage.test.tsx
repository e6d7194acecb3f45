import { describe, expect, it } from 'vitest';
import type { Settings } from '../../../../shared/records/settings';
import { choose, hasAct, press, said, seen, title, type, typed } from '../bench';
import { openShelf } from './openShelf';

const list = 'shelf.1.ingredients';
const maker = 'shelf.1.makerSaysUpToC';
const mist: Settings['shelf'][number] = { name: 'Cove mist', kind: 'spray' };

/** The page of a spray, on a station that keeps what it is given. */
async function openSpray(entry = mist) {
  const { inForce } = await openShelf(entry);
  return () => inForce().shelf[1];
}

const told = () =>
  [...document.querySelectorAll<HTMLElement>('[data-finding]')].map(({ dataset }) => dataset.finding);

describe('the page of a spray', () => {
  it('opens from its row, and from that of no other product', async () => {
    await openSpray();
    expect(title()).toBe('Settings · Cove mist');
    await press('to-shelf');
    expect(document.querySelectorAll('[data-act="open-spray"]')).toHaveLength(1);
    await choose('shelf.1.kind', 'colour');
    expect(hasAct('open-spray')).toBe(false);
  });

  it('says live what was read, corrected and not known, and keeps the list as it was typed', async () => {
    const kept = await openSpray();
    expect(seen('[data-panel=list-reading]')).toContain('No list yet.');
    const pasted = 'Ingredients: Aqua,\n dimethicon; HARBOURIUM COVEATE.';
    await type(list, pasted);
    expect(seen('[data-line=read]')).toBe(
      '3 read · 1 corrected: dimethicon read as DIMETHICONE · 1 not known, so the list cannot be judged as a whole: HARBOURIUM COVEATE.',
    );
    await press('save-settings');
    expect(kept()).toEqual({ ...mist, ingredients: pasted });
    expect(typed(list)).toBe(pasted);
  });

  it('says each thing with where it is from', async () => {
    await openSpray();
    await type(list, 'AQUA, SUCROSE');
    expect(told()).toEqual([
      'waterWets',
      'sugarCaramelises',
      'sucroseBrownsOnceSplit',
      'sugarScorches',
      'carriersLeave',
    ]);
    expect(seen('[data-finding=waterWets]')).toContain('23.5 % less');
    expect(seen('[data-finding=sugarCaramelises]')).toContain('248 °F');
    expect(seen('[data-finding=sugarCaramelises] .mark')).toContain('Published: Kroh');
    expect(seen('[data-finding=sugarScorches] .mark')).toBe('Common practice, no source');
  });

  it('takes a list away again, and is whole without one', async () => {
    const kept = await openSpray({ ...mist, ingredients: 'AQUA', makerSaysUpToC: 230 });
    await type(list, '');
    await type(maker, '');
    expect(said(list)).toBe('');
    await press('save-settings');
    expect(kept()).toEqual(mist);
  });

  it.each([
    ['50,000 letters', 'AQUA, '.repeat(8_400).slice(0, 50_000), '50000 letters: at most 10000 are kept.'],
    ['too many names', 'AQUA,'.repeat(500), 'More than 200 names'],
    ['nothing but commas', ',,, ;;; ,,,', 'No name in it.'],
  ])('says at the field why it does not keep %s, and loses no letter of it', async (_what, text, why) => {
    const kept = await openSpray();
    await type(list, text);
    expect(said(list)).toContain(why);
    await press('save-settings');
    expect(kept()).toEqual(mist);
    expect(typed(list)).toBe(text);
    expect(told()).toEqual([]);
    await press('to-shelf');
    await press('open-spray');
    expect(typed(list)).toBe(text);
  });

  it('says at the field that a mark nobody sees is not kept', async () => {
    const kept = await openSpray();
    await type(list, 'AQUA, PARFUM\u0007');
    expect(said(list)).toContain('A mark in it that cannot be seen.');
    await press('save-settings');
    expect(kept()).toEqual(mist);
    await type(list, 'AQUA,\n\tPARFUM');
    expect(said(list)).toBe('');
  });

  it('reads markup as a name that nobody knows', async () => {
    const kept = await openSpray();
    const script = '<script>broken=1</script>';
    await type(list, script);
    expect(seen('[data-line=read]')).toContain('not known');
    expect(seen('[data-line=read]')).toContain('<script>');
    expect(document.querySelector('main script')).toBeNull();
    await press('save-settings');
    expect(kept()?.ingredients).toBe(script);
  });

  it('gives a figure only where the maker does, and as the maker’s', async () => {
    const kept = await openSpray({ ...mist, ingredients: 'DIMETHICONE' });
    expect(seen('[data-panel=list-reading]')).not.toContain('up to 4');
    await type(maker, '900');
    expect(said(maker)).toContain('Too high.');
    expect(seen('[data-line=maker]')).toBe('');
    await press('save-settings');
    expect(kept()?.makerSaysUpToC).toBeUndefined();
    await type(maker, '446');
    expect(seen('[data-line=maker]')).toBe('The maker says up to 446 °F.');
    await press('save-settings');
    expect(kept()?.makerSaysUpToC).toBe(230);
  });

  it('is gone back to from elsewhere when what it holds is refused', async () => {
    await openSpray();
    await type(maker, '1');
    await press('to-shelf');
    await press('all-settings');
    await press('save-settings');
    expect(title()).toBe('Settings · Cove mist');
    expect(said(maker)).toContain('Too low.');
  });
});
