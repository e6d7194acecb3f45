import { describe, expect, it } from 'vitest';
import { beginConsultation } from '../../../machines/consultation/consultation';
import { findHere, findKnot, findRailKnot } from '../../../src/screens/knot';
import { screenOf, stepOf } from '../../../src/screens/screenOf';
import { type Played, playUntil, playUntilConfirmed, settings, tap } from './playStory';

const at = (played: Played) => {
  const { state, record } = played.consultation;
  return [screenOf(state), stepOf(state), findKnot(record, settings, played.atMs)];
};

describe('the screen of a state', () => {
  it('follows the whole way of one client, and the knot with it', () => {
    expect(at(playUntil('OPENED'))).toEqual(['client', 'client', 'stepUnsaid']);
    expect(at(playUntilConfirmed('client'))).toEqual(['hotTools', 'hotTools', 'stepUnsaid']);
    expect(at(playUntilConfirmed('hotTools'))).toEqual(['feelHair', 'feelHair', 'stepUnsaid']);
    expect(at(playUntilConfirmed('feelHair'))).toEqual(['heatSpray', 'heatSpray', 'stepUnsaid']);
    expect(at(playUntilConfirmed('heatSpray'))).toEqual(['preparing', 'strandTest', 'noOutcome']);
    expect(at(playUntil('STRAND_STARTED'))).toEqual(['processing', 'strandTest', 'noOutcome']);
    expect(at(playUntil('STRAND_TAKEN_OFF'))).toEqual(['outcome', 'strandTest', 'noOutcome']);
    expect(at(playUntil('OUTCOME_RECORDED', 'lengths'))).toEqual(['decision', 'decision', 'notDecided']);
    expect(at(playUntil('DECIDED'))).toEqual(['mix', 'mix', null]);
    expect(at(playUntil('BOWL_APPLIED'))[0]).toBe('colourOn');
    expect(at(playUntil('FINISHED'))[0]).toBe('finish');
    expect(at(playUntil('whole'))).toEqual(['ended', null, 'closed']);
  });

  it('is past the mix once all that a strand allowed is rinsed, and the knot is that of a toner then', () => {
    const rail = ({ consultation: { state, record }, atMs }: Played) => [
      findHere(stepOf(state), findKnot(record, settings, atMs), record),
      findRailKnot(record, settings, atMs),
    ];
    expect(rail(playUntil('DECIDED'))).toEqual(['mix', null]);
    expect(rail(playUntil('BOWL_APPLIED'))).toEqual(['colourOn', null]);
    const rinsed = playUntil('BOWL_RINSED');
    expect(stepOf(rinsed.consultation.state)).toBe('mix');
    expect(rail(rinsed)).toEqual(['colourOn', 'stretchUnfelt']);
    const answers = { zone: 'lengths', stretch: 'springsBack', before: 'stands' };
    expect(rail(tap(rinsed, 1000, { type: 'STRETCH_NOTED', answers }))).toEqual(['colourOn', null]);
  });

  it('ties the knot once hair gave way on the head, whatever is on', () => {
    const look = (hair: string) =>
      tap(playUntil('BOWL_APPLIED'), 1000, {
        type: 'LOOKED',
        answers: { of: 'head', zone: 'lengths', stinging: 'no', hair },
      });
    expect(at(look('sound'))[2]).toBeNull();
    expect(at(look('stretchy'))[2]).toBe('hairStretchy');
    const broke = look('breaking');
    expect(at(broke)[2]).toBe('hairBroke');
    const rinsed = tap(broke, 1000, { type: 'BOWL_RINSED', answers: { zone: 'lengths' } });
    const { state, record } = rinsed.consultation;
    expect(findHere(stepOf(state), 'hairBroke', record)).toBe('colourOn');
  });

  it('ties the knot again once what stands weighed is too old to go on', () => {
    const { consultation, atMs } = playUntil('BOWL_WEIGHED');
    const knotAfter = (minutes: number) => findKnot(consultation.record, settings, atMs + minutes * 60_000);
    expect([knotAfter(0), knotAfter(24 * 60)]).toEqual([null, 'bowlTooOld']);
  });

  it('shows a reaction over everything, and parking over the way', () => {
    const on = playUntil('BOWL_APPLIED');
    expect(at(on)).toEqual(['colourOn', 'colourOn', null]);
    expect(at(tap(on, 1, { type: 'REACTION_SUSPECTED' }))).toEqual(['reaction', 'colourOn', 'reaction']);
    const waiting = playUntilConfirmed('heatSpray');
    const untilAtMs = waiting.atMs + 86_400_000;
    const parked = tap(waiting, 1, { type: 'PARKED', answers: { untilAtMs } });
    expect(at(parked)).toEqual(['parked', 'strandTest', 'parked']);
  });

  it('shows no step as reached when she is stopped', () => {
    const answers = { reactions: ['hives'] };
    const stopped = tap(playUntil('OPENED'), 1, { type: 'ANSWERED', step: 'client', answers });
    expect(at(stopped)).toEqual(['stopped', null, 'stopped']);
  });

  it('is the first question before anything was said', () => {
    expect(screenOf(beginConsultation('new').state)).toBe('client');
  });
});
