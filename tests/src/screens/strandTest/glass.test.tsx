import { expect, it } from 'vitest';
import { Preparing } from '../../../../src/screens/strandTest/Preparing';
import { choose, layOnBench, press, seen } from '../bench';
import { type Played, playUntilConfirmed, tap } from '../playStory';

const minute = 60_000;

/** Box colour that nobody knows, so that a cutting meets peroxide first; her wet strand comes back, or snaps. */
function play(wetStretch: string): Played {
  const dry = { nape: 'dry', mid: 'dry', ends: 'dry' };
  const answers = {
    hotTools: { habits: [], smoke: 'no', history: ['unknownBoxColour'] },
    feelHair: { ...dry, porosity: 'normal', curl: 'straight', breakage: 'no', wetStretch },
    heatSpray: { finish: 'noHotTool' },
  };
  return Object.entries(answers).reduce<Played>((played, [step, said]) => {
    const told = tap(played, minute, { type: 'ANSWERED', step, answers: said } as Parameters<typeof tap>[2]);
    return tap(told, 1, { type: 'STEP_CONFIRMED', answers: { step } });
  }, playUntilConfirmed('client'));
}

it('says goggles, gloves and fan where the glass is what comes next', () => {
  layOnBench(Preparing, play('springsBack'));
  expect(seen('[data-caution="glass"]')).toContain('Gloves and goggles on');
});

it('offers no strand as the reason before one has held', async () => {
  layOnBench(Preparing, play('snaps'));
  await press('judge-judgement.snapsWhenWet');
  await choose('by', 'Juno');
  const offered = [...document.querySelectorAll<HTMLElement>('[data-option]')].map(
    ({ dataset }) => dataset.option,
  );
  expect(offered).toEqual(expect.arrayContaining(['knowsHerHair', 'seniorAgreed']));
  expect(offered).not.toContain('strandHeld');
});

it('says nothing of them while a stop is to be judged first', () => {
  layOnBench(Preparing, play('snaps'));
  expect(seen('[data-panel="glass"]')).toContain('First a cutting in a glass');
  expect(seen('[data-caution="glass"]')).toBe('');
});
