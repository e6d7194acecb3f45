import { expect, it } from 'vitest';
import { viewHead } from '../../../../src/screens/colourOn/viewHead';
import { viewReaction } from '../../../../src/screens/reaction/viewReaction';
import { playUntil, settings, tap } from '../playStory';

const minute = 60_000;
const { consultation, atMs } = playUntil('BOWL_APPLIED');
const phaseAfter = (minutes: number) =>
  viewHead(consultation, settings, atMs + minutes * minute).on[0]?.reading.phase;

it('counts the head down, asks for looks, and says when it is over', () => {
  expect(phaseAfter(1)).toBe('running');
  expect(phaseAfter(6)).toBe('lookDue');
  expect(phaseAfter(26)).toBe('over');
});

it('warns for the basin two minutes before the end, once the last look was made', () => {
  const looked = tap(playUntil('BOWL_APPLIED'), 21 * minute, {
    type: 'LOOKED',
    answers: { of: 'head', zone: 'lengths', stinging: 'no' },
  });
  const phaseAt = (afterMs: number) =>
    viewHead(looked.consultation, settings, atMs + afterMs).on[0]?.reading.phase;
  expect(phaseAt(23 * minute - 1)).toBe('running');
  expect(phaseAt(23 * minute)).toBe('nearlyDue');
});

it('shows the ends apart from what is on, with the reason why they stay out', () => {
  const { on, others } = viewHead(consultation, settings, atMs);
  expect(on.map(({ bowl }) => bowl.zone)).toEqual(['lengths']);
  expect(others.map(({ zone, permit }) => [zone, permit.ok])).toEqual([['ends', false]]);
});

it('goes on counting contact time while she reacts, until the rinse', () => {
  const unwritten = viewReaction(consultation, atMs);
  expect(unwritten).toMatchObject({ care: 'unwritten', contacts: [{ zone: 'lengths' }] });
  const suspected = tap(playUntil('BOWL_APPLIED'), 4 * minute, { type: 'REACTION_SUSPECTED' });
  expect(viewReaction(suspected.consultation, atMs + 5 * minute)).toEqual({
    care: 'suspected',
    contacts: [{ zone: 'lengths', line: 'Sandbar powder', onForMs: 5 * minute }],
    waters: [],
    signs: [],
    toldForMs: minute,
  });
  const rinsed = tap(suspected, minute, { type: 'BOWL_RINSED', answers: { zone: 'lengths' } });
  expect(viewReaction(rinsed.consultation, rinsed.atMs).contacts).toEqual([]);
  const isRinsed = (minutes: number) =>
    viewReaction(rinsed.consultation, rinsed.atMs + minutes * minute).waters.map(
      ({ isLongEnough }) => isLongEnough,
    );
  expect([isRinsed(19), isRinsed(20)]).toEqual([[false], [true]]);
  const recorded = tap(rinsed, minute, { type: 'REACTION_RECORDED', answers: { signs: ['burning'] } });
  expect(viewReaction(recorded.consultation, recorded.atMs)).toMatchObject({
    care: 'seen',
    signs: ['burning'],
  });
  const added = tap(recorded, minute, {
    type: 'REACTION_RECORDED',
    answers: { signs: ['burning', 'blisters'] },
  });
  expect(viewReaction(added.consultation, added.atMs).signs).toEqual(['burning', 'blisters']);
});
