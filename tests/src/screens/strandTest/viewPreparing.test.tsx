import { describe, expect, it } from 'vitest';
import { viewPreparing } from '../../../../src/screens/strandTest/viewPreparing';
import { playUntil, playUntilConfirmed, settings, tap } from '../playStory';

const minute = 60_000;
const dry = { nape: 'dry', mid: 'dry', ends: 'dry' };
const view = ({ consultation, atMs }: ReturnType<typeof playUntil>, afterMs = 0) =>
  viewPreparing(consultation, settings, atMs + afterMs);

describe('before the first strand', () => {
  it('asks for lengths and ends of a full head, and for two strands when it is ironed wet', () => {
    const seen = view(playUntilConfirmed('heatSpray'));
    expect(seen.zones.map(({ zone, state }) => [zone, state])).toEqual([
      ['lengths', 'none'],
      ['ends', 'none'],
    ]);
    expect(seen.flags).toEqual(['ironedWet']);
    expect(seen.risk).toBe('raised');
    expect(seen.strandsAsked).toBe(2);
    expect(seen.strandsTested).toBe(0);
    expect(seen.blockedBy).toBeNull();
    expect(seen.mayKeep).toBe(false);
  });

  it('names a judgement stop until a person has lifted it, then who did', () => {
    const before = playUntilConfirmed('hotTools');
    const snaps = { ...dry, porosity: 'high', curl: 'lostAtEnds', breakage: 'no', wetStretch: 'snaps' };
    let played = tap(before, minute, { type: 'ANSWERED', step: 'feelHair', answers: snaps });
    played = tap(played, 1, { type: 'STEP_CONFIRMED', answers: { step: 'feelHair' } });
    played = tap(played, 1, { type: 'ANSWERED', step: 'heatSpray', answers: { finish: 'noHotTool' } });
    played = tap(played, 1, { type: 'STEP_CONFIRMED', answers: { step: 'heatSpray' } });
    expect(view(played)).toMatchObject({
      openRules: ['judgement.snapsWhenWet'],
      blockedBy: { code: 'forAJudgement' },
    });

    const lifted = tap(
      played,
      minute,
      {
        type: 'OVERRIDDEN',
        answers: { rule: 'judgement.snapsWhenWet', code: 'seniorAgreed', words: 'We looked together.' },
      },
      'Juno',
    );
    expect(view(lifted)).toMatchObject({ openRules: [], blockedBy: null, lifted: [{ by: 'Juno' }] });
  });

  it('wants the glass first after unknown colour, counts its half hour, and is ready once it is read', () => {
    const before = playUntilConfirmed('client');
    let played = tap(before, minute, {
      type: 'ANSWERED',
      step: 'hotTools',
      answers: { habits: [], smoke: 'no', history: ['unknownBoxColour'] },
    });
    played = tap(played, 1, { type: 'STEP_CONFIRMED', answers: { step: 'hotTools' } });
    played = tap(played, 1, {
      type: 'ANSWERED',
      step: 'feelHair',
      answers: { ...dry, porosity: 'normal', curl: 'straight', breakage: 'no', wetStretch: 'springsBack' },
    });
    played = tap(played, 1, { type: 'STEP_CONFIRMED', answers: { step: 'feelHair' } });
    played = tap(played, 1, { type: 'ANSWERED', step: 'heatSpray', answers: { finish: 'noHotTool' } });
    played = tap(played, 1, { type: 'STEP_CONFIRMED', answers: { step: 'heatSpray' } });
    expect(view(played)).toMatchObject({
      incompatibility: { state: 'due', reading: null },
      blockedBy: { code: 'incompatibilityOpen' },
    });

    const started = tap(played, minute, { type: 'INCOMPATIBILITY_STARTED' });
    expect(view(started, 10 * minute).incompatibility).toMatchObject({
      state: 'running',
      reading: { phase: 'running', remainingMs: 20 * minute },
    });
    expect(view(started, 31 * minute).incompatibility?.reading?.phase).toBe('over');

    const read = tap(started, 30 * minute, { type: 'INCOMPATIBILITY_READ', answers: { seen: 'nothing' } });
    expect(view(read)).toMatchObject({ incompatibility: { state: 'clear' }, blockedBy: null });
  });

  it('offers to keep what was tested when one goes back and nothing has changed', () => {
    const recorded = playUntil('OUTCOME_RECORDED', 'lengths');
    const back = tap(recorded, minute, { type: 'REOPENED', answers: { step: 'strandTest' } });
    expect(view(back).mayKeep).toBe(true);
    expect(view(back).zones.map(({ state }) => state)).toEqual(['current', 'current']);
    expect(view(back, 29 * 86_400_000).mayKeep).toBe(false);
  });
});
