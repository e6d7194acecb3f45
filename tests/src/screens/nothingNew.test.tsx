import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { firstGloss, returningGloss } from '../../../seeds/returningGloss';
import type { StoryStep } from '../../../seeds/story';
import type { RawEvent } from '../../../shared/records/classify';
import { type Shown, showStation } from './stationOnTablet';

afterEach(cleanup);

/** L.M. had her first gloss; five weeks later Juno starts her again at chair 2. */
async function comeBack(ticket = 'LM', before = firstGloss.steps): Promise<Shown> {
  const shown = await showStation({ settings: firstGloss.settings, atMs: firstGloss.startAtMs });
  await shown.play(before);
  await shown.turnClock(returningGloss.startAtMs);
  await shown.tap('[data-act=start-here][data-chair="2"]');
  await shown.tap('[data-act=who-Juno]');
  for (const letter of ticket) await shown.tap(`[data-key="${letter}"]`);
  return shown;
}

const judged: RawEvent = {
  type: 'OVERRIDDEN',
  answers: { rule: 'judgement.tingled', code: 'seniorAgreed', words: 'We looked together.' },
};

const readRecord = (shown: Shown) => [...shown.station.readState().open.values()][0]?.record;

describe('whoever is back', () => {
  it('is asked for by what was done last time, and is somebody else only when that is said', async () => {
    const shown = await comeBack();
    expect(shown.find('[data-last-time]').textContent).toBe(
      'Same client as on February 3, 2026 · Gloss, Ends out?',
    );
    await shown.tap('[data-act=open]');
    expect(readRecord(shown)?.lastTime).toBeNull();
    expect(shown.find('.sheet').dataset.sheet).toBe('service');
  });

  it('is nobody where the ticket is another', async () => {
    const shown = await comeBack('LN');
    expect(shown.look('[data-last-time]')).toBeNull();
    expect(shown.look('[data-act=open-same]')).toBeNull();
  });

  it('with nothing new is at the decision by the wet stretch of today and one tap', async () => {
    const shown = await comeBack();
    await shown.tap('[data-act=open-same]');
    expect(shown.find('h1').textContent).toBe('Anything new?');
    expect(shown.find('[data-line=tools]').textContent?.replaceAll('\u00a0', ' ')).toContain(
      'Flat iron · Dry · 2 days a week · 12 months · 350 °F',
    );
    expect(shown.find('[data-line=tools]').textContent).not.toContain("Don't know");
    expect(shown.find('[data-line=history]').textContent).toContain('Salon colour; nothing else since');
    expect((shown.find('[data-act=nothing-new]') as HTMLButtonElement).disabled).toBe(true);
    await shown.answer(['wetStretch', 'springsBack']);
    await shown.tap('[data-act=nothing-new]');
    expect(shown.find('main').dataset.step).toBe('decision');
    expect(readRecord(shown)?.answers.hotTools?.history).toEqual(['salonColour', 'gloss']);
  });

  it('has tingled still, and carries nothing before a named person has judged that today', async () => {
    const before = firstGloss.steps.flatMap((step): readonly StoryStep[] => {
      const { raw } = step;
      if (raw.answers?.reactions !== undefined)
        return [
          { ...step, raw: { ...raw, answers: { ...raw.answers, reactions: ['tingled'] } } as RawEvent },
        ];
      return raw.type === 'STRAND_STARTED' ? [{ ...step, afterMs: 1000, raw: judged }, step] : [step];
    });
    const shown = await comeBack('LM', before);
    await shown.tap('[data-act=open-same]');
    expect(shown.find('[data-line=reactions] dd').textContent).toBe(
      'Tingled, gone on rinsing; nothing else since',
    );
    await shown.answer(['wetStretch', 'springsBack']);
    await shown.tap('[data-act=nothing-new]');
    expect(shown.find('main').dataset.step).toBe('preparing');
    expect(readRecord(shown)?.answers.client?.reactions).toEqual(['tingled']);
    expect(shown.find('[data-judge]').dataset.judge).toBe('judgement.tingled');
  });

  it('whose hair stays long today carries nothing: a strand comes first', async () => {
    const shown = await comeBack();
    await shown.tap('[data-act=open-same]');
    await shown.answer(['wetStretch', 'staysLong']);
    await shown.tap('[data-act=nothing-new]');
    expect(shown.find('main').dataset.step).toBe('preparing');
    expect(readRecord(shown)?.answers.feelHair?.wetStretch).toBe('staysLong');
  });

  it('with news is asked by the steps: last time’s answers stand, what has to be asked anew does not', async () => {
    const shown = await comeBack();
    await shown.tap('[data-act=open-same]');
    await shown.tap('[data-act=something-new]');
    expect(shown.find('.sheet').dataset.sheet).toBe('reactions');
    expect(shown.find('[data-ledger=service] .ledger-value').textContent).toBe('Gloss');
    expect(readRecord(shown)?.answers.client).toBeUndefined();
    await shown.answer(['reactions', 'none'], ['scalp', 'sound'], ['ageBand', 'over']);
    await shown.tap('[data-act=next]');
    expect(shown.find('main').dataset.step).toBe('hotTools');
    expect(shown.find('.sheet').dataset.sheet).toBe('history');
    expect(readRecord(shown)?.answers.client).toMatchObject({ service: 'gloss', targetLevel: 6 });
  });
});
