import { describe, expect, it } from 'vitest';
import { act, hasAct, press, seen, type } from '../bench';
import { openShelf } from './openShelf';

const start = Date.UTC(2026, 10, 12, 17, 30);

/** The warmth trial of the salon’s spray, on a clock that the test moves. */
async function openTrial() {
  const opened = await openShelf({ name: 'Cove mist', kind: 'spray' }, start);
  await press('warmth-trial');
  return opened;
}

const run = async (pass: (seconds: number) => void, seconds: number) => {
  await press('start-run');
  pass(seconds);
  await press('warm');
};

describe('the warmth trial', () => {
  it('says what it needs before it starts: dryer alone, lowest heat, a foot away, on oneself', async () => {
    await openTrial();
    const rules = seen('.trial-rules');
    for (const said of [
      'Dryer only, never an iron',
      'Lowest heat',
      '12 in',
      'own arms only',
      'broken skin',
      'made it react',
    ])
      expect(rules).toContain(said);
    expect(rules).toContain('It ends at 30 s');
    expect(rules).toContain('heat strip under a cut swatch');
    expect(rules).toContain('common practice, no source');
  });

  it('times both forearms, says what they tell, and keeps it with the spray alone', async () => {
    const { inForce, pass } = await openTrial();
    await press('start-run');
    pass(12);
    expect(seen('.clock-digits')).toBe('12 s');
    expect(act('warm').textContent).toBe('Warm: stop');
    await press('warm');
    expect(seen('[data-arm=bare]')).toContain('12 s');
    await run(pass, 25);
    expect(seen('[data-told]')).toContain('With the spray warmth came 13 s later.');
    expect(seen('[data-told]')).toContain('of skin, not of hair under a plate');
    await press('keep-trial');
    expect(inForce().shelf[1]?.trial).toBeUndefined();
    expect(seen('[data-line=trial]')).toBe('Trial Thu, Nov 12: bare 12 s, sprayed 25 s. Not saved yet.');
    await press('save-settings');
    expect(inForce().shelf).toEqual([
      { name: 'Sandbar cream', kind: 'colour' },
      { name: 'Cove mist', kind: 'spray', trial: { atMs: start + 37_000, bareS: 12, sprayedS: 25 } },
    ]);
    expect(seen('[data-line=trial]')).toBe('Trial Thu, Nov 12: bare 12 s, sprayed 25 s.');
  });

  it('saves nothing else that was changed in the settings', async () => {
    const { inForce, pass } = await openTrial();
    await press('leave-trial');
    await type('shelf.1.ingredients', 'AQUA');
    await press('warmth-trial');
    await run(pass, 5);
    await run(pass, 20);
    await press('keep-trial');
    expect(inForce().shelf[1]).toEqual({ name: 'Cove mist', kind: 'spray' });
    expect(seen('.step-actions')).toContain('Not saved yet.');
  });

  it('stops by itself at 30 s, and a tap that comes too late starts nothing', async () => {
    const { inForce, pass } = await openTrial();
    await run(pass, 14);
    await press('start-run');
    pass(30);
    expect(seen('.trial-run')).toContain('Stop: 30 s is the cap');
    expect(seen('.clock-digits')).toBe('30 s');
    pass(60);
    expect(seen('.clock-digits')).toBe('30 s');
    expect(hasAct('start-run')).toBe(false);
    await press('warm');
    expect(seen('[data-told]')).toContain('no warmth came in 30 s. Bare, it did.');
    await press('keep-trial');
    await press('save-settings');
    expect(inForce().shelf[1]?.trial).toMatchObject({ bareS: 14, sprayedS: null });
  });

  it('begins again with nothing kept, and keeps nothing of a trial that is left', async () => {
    const { inForce, pass } = await openTrial();
    await run(pass, 5);
    await press('start-run');
    await press('trial-again');
    expect(hasAct('warm')).toBe(false);
    await press('leave-trial');
    await press('save-settings');
    expect(inForce().shelf[1]).toEqual({ name: 'Cove mist', kind: 'spray' });
  });

  it('is kept unsaved where another page holds a mistake', async () => {
    const { inForce, pass } = await openTrial();
    await press('leave-trial');
    await type('shelf.1.makerSaysUpToC', '900');
    await press('warmth-trial');
    await run(pass, 5);
    await run(pass, 20);
    await press('keep-trial');
    expect(inForce().shelf[1]?.trial).toBeUndefined();
    await press('save-settings');
    expect(inForce().shelf[1]?.trial).toBeUndefined();
    expect(seen('[data-question="shelf.1.makerSaysUpToC"] .field-refusal')).toContain('Too high.');
    expect(seen('[data-line=trial]')).toContain('bare 5 s, sprayed 20 s');
    await type('shelf.1.makerSaysUpToC', '446');
    await press('save-settings');
    expect(inForce().shelf[1]).toMatchObject({ makerSaysUpToC: 230, trial: { bareS: 5, sprayedS: 20 } });
  });
});
