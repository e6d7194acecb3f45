import { describe, expect, it } from 'vitest';
import { dropDrafts } from '../../../../src/screens/keptDraft';
import { MixScreen } from '../../../../src/screens/mix/MixScreen';
import { act, hasAct, layOnBench, press, said, seen, settle, type, typed } from '../bench';
import { playUntil, settings } from '../playStory';

const isDisabled = (name: string) => (act(name) as HTMLButtonElement).disabled;
const tapLine = async (path: string): Promise<void> => {
  document.querySelector<HTMLElement>(`[data-ledger="${path}"]`)?.click();
  await settle();
};

/** The way on is tried, however it looks. */
async function tryToWeigh(): Promise<void> {
  if (!isDisabled('weigh')) await press('weigh');
}

/** A second part, with so many parts, beside the tested powder's one. */
async function addPart(shade: string, parts: string): Promise<void> {
  await tapLine('shades');
  await press('add-row');
  await type('shades.1.shade', shade);
  await tapLine('shades.1.parts');
  await type('shades.1.parts', parts);
}

/** A bowl that nobody has typed into: what another test left half typed is forgotten. */
function layBowl() {
  const played = playUntil('DECIDED');
  dropDrafts(played.consultation.id);
  return layOnBench(MixScreen, played);
}

describe('bad input at the bowl', () => {
  it.each([
    ['ratio', '0:1', 'That is not a number. 0.5 to 5, digits only.'],
    ['ratio', '0', 'Too low. 0.5 to 5.'],
    ['ratio', '1', 'Not what was tested. Take what was tested, or test this one.'],
    ['colourG', '5000', 'Too high. 5 g to 300 g.'],
    ['developerPercent', '0', 'Too low. 0.5 % to 12 %.'],
    ['line', 'Gravel powder', 'Not what was tested. Take what was tested, or test this one.'],
  ])('%s of %s is said at its field, kept as typed, and nothing is weighed', async (path, text, words) => {
    const bench = layBowl();
    await type(path, text);
    await tryToWeigh();
    expect(said(path).replaceAll('\u00a0', ' ')).toBe(words);
    expect(typed(path)).toBe(text);
    expect(bench.last()?.type).toBe('DECIDED');
  });

  it.each(['-1', '0', '21'])('%s parts are said at the part, and the other part is kept', async (parts) => {
    const bench = layBowl();
    await addPart('Mist', parts);
    expect(said('shades.1.parts')).toMatch(/^Too (low|high)\. 0\.25 to 20\.$/);
    await tryToWeigh();
    expect(typed('shades.1.parts')).toBe(parts);
    await tapLine('shades');
    expect(seen('[data-row="0"]')).toContain('Sandbar powder · 1');
    expect(bench.last()?.type).toBe('DECIDED');
  });

  it('shows parts that the scale cannot, said at the grams', async () => {
    const bench = layBowl();
    await addPart('Mist', '20');
    await type('colourG', '5');
    expect(settings.scaleStepG).toBe(1);
    expect(said('colourG')).toBe('Too little for this scale. Weigh more.');
    expect(isDisabled('weigh')).toBe(true);
    await type('colourG', '40');
    expect(said('colourG')).toBe('');
    expect(bench.last()?.type).toBe('DECIDED');
  });

  it('offers no seventh shade, and takes no sixty', async () => {
    const bench = layBowl();
    for (const row of [1, 2, 3, 4, 5]) {
      await tapLine('shades');
      await press('add-row');
      await type(`shades.${row}.shade`, `Mist ${row}`);
    }
    await tapLine('shades');
    expect(document.querySelectorAll('[data-row]').length).toBe(6);
    expect(hasAct('add-row') && !isDisabled('add-row')).toBe(false);
    expect(bench.last()?.type).toBe('DECIDED');
  });
});
