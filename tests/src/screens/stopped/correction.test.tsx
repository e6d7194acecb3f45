import { expect, it } from 'vitest';
import { endsIronedWet } from '../../../../seeds/endsIronedWet';
import { Stopped } from '../../../../src/screens/stopped/Stopped';
import { viewCorrection } from '../../../../src/screens/stopped/viewCorrection';
import { choose, layOnBench, press, seen } from '../bench';
import { type Played, playUntil, playUntilConfirmed, settings, tap } from '../playStory';

const minute = 60_000;
const said = '[data-panel="before-correction"]';

const react = (played: Played): Played =>
  tap(played, minute, {
    type: 'SKIN_TEST_NOTED',
    answers: { putOnAtMs: played.consultation.record.skinTest?.putOnAtMs, seen: 'reaction' },
  });

const toldFirst = endsIronedWet.steps.find(({ raw }) => raw.type === 'ANSWERED')?.raw.answers;

const remember = (played: Played): Played =>
  tap(played, minute, {
    type: 'ANSWERED',
    step: 'client',
    answers: { ...toldFirst, reactions: ['hives'] },
  });

it('says before the hold where she goes back to, and that strands and decision count no more', async () => {
  layOnBench(Stopped, react(playUntil('DECIDED')));
  await press('correction');
  expect(seen(said)).toContain('Asked again: Skin test. She goes back to “Client”.');
  expect(seen(said)).toContain('Counts no more: what the strands said, what was decided.');
});

it('says that nothing tested is lost where nothing was tested', async () => {
  layOnBench(Stopped, react(playUntilConfirmed('heatSpray')));
  await press('correction');
  expect(seen(said)).toContain('Nothing that was tested is lost.');
});

it('says that she stays stopped where another answer holds her as well, once it is chosen', async () => {
  layOnBench(Stopped, react(remember(playUntilConfirmed('heatSpray'))));
  await press('correction');
  expect(seen(said)).toBe('');
  await choose('answer', 'client');
  expect(seen(said)).toContain('She stays stopped: another answer holds her as well.');
});

it('says nothing of an answer that holds nobody', () => {
  const { consultation, atMs } = react(playUntil('DECIDED'));
  expect(viewCorrection(consultation, 'incompatibility', settings, atMs)).toBeNull();
});
