import { describe, expect, it } from 'vitest';
import { listReasons, viewDecision } from '../../../../src/screens/decision/viewDecision';
import { isOpenNow } from '../../../../src/screens/isOpenNow';
import { playUntil, settings, tap } from '../playStory';

const minute = 60_000;
const view = ({ consultation, atMs }: ReturnType<typeof playUntil>) =>
  viewDecision(consultation, settings, atMs);

describe('what the strands said', () => {
  const recorded = playUntil('OUTCOME_RECORDED', 'lengths');

  it('suggests leaving broken ends out, and says why', () => {
    const seen = view(recorded);
    expect(seen.found.map(({ zone, finding }) => [zone, finding])).toEqual([
      ['lengths', 'sound'],
      ['ends', 'broken'],
    ]);
    expect(seen.suggested).toBe('endsOut');
    expect(seen.reasons).toEqual(['careful']);
    expect(seen.shortBy).toBe(0);
  });

  it('says how far a zone that is mixed fell short, whatever the ends did', () => {
    const seen = view(playUntil('OUTCOME_RECORDED', 'lengths', { level: '6.5' }));
    expect(seen.suggested).toBe('endsOut');
    expect(seen.shortBy).toBe(0.5);
    expect(seen.reasons).toEqual(['short', 'careful']);
  });

  it('offers everything more careful at once, and anything freer only by name', () => {
    const seen = view(recorded);
    const of = (kind: string) =>
      seen.choices.filter((choice) => choice.kind === kind).map(({ decision }) => decision);
    expect(of('freer')).toEqual(['smallerLift', 'gentler', 'asPlanned']);
    expect(of('careful')).toEqual(['severalVisits', 'cutFirst', 'testAgain', 'weSayNo', 'depositOnly']);
    expect(seen.choices.every(({ isOpen }) => isOpen)).toBe(true);
    expect(seen.isFreerLifted).toBe(false);

    const words = { code: 'knowsHerHair', words: 'I have coloured it for years.' };
    const lifted = tap(recorded, minute, {
      type: 'OVERRIDDEN',
      answers: { rule: 'judgement.freerThanSuggested', ...words },
    });
    expect(view(lifted).isFreerLifted).toBe(true);
  });

  it('lets a wrong outcome be taken back, but not that a strand broke in the mix', () => {
    expect(view(recorded).found.map(({ zone, isRetractable }) => [zone, isRetractable])).toEqual([
      ['lengths', true],
      ['ends', false],
    ]);
  });

  it('opens no bowl when the only other zone failed too', () => {
    const both = playUntil('OUTCOME_RECORDED', 'lengths', { fibre: 'gummy', stretch: 'staysLong' });
    const seen = view(both);
    expect(seen.suggested).toBe('weSayNo');
    const mixing = ['endsOut', 'smallerLift', 'gentler', 'asPlanned'];
    expect(seen.choices.filter(({ isOpen }) => !isOpen).map(({ decision }) => decision)).toEqual(mixing);
  });

  it('gives no level as a reason where every strand failed', () => {
    const poor = { fibre: 'gummy', stretch: 'staysLong', level: '5', evenness: 'patchy' };
    const seen = view(playUntil('OUTCOME_RECORDED', 'lengths', poor));
    expect([seen.reasons, seen.shortBy]).toEqual([['careful'], 0]);
  });

  it.each([
    ['sound', 'springsBack'],
    ['rough', 'staysLong'],
    ['gummy', 'staysLong'],
  ])('promises for a %s strand exactly what the gate takes', (fibre, stretch) => {
    const played = playUntil('OUTCOME_RECORDED', 'lengths', { fibre, stretch });
    for (const { decision, kind, isOpen } of view(played).choices) {
      const raw = { type: 'DECIDED', answers: { decision } } as const;
      const isTaken = isOpenNow(played.consultation, raw, settings, played.atMs);
      expect({ decision, isTaken }).toEqual({ decision, isTaken: isOpen && kind !== 'freer' });
    }
  });

  it('remembers what was decided when it leads to no bowl', () => {
    const decided = tap(recorded, minute, { type: 'DECIDED', answers: { decision: 'severalVisits' } });
    expect(view(decided).decided).toBe('severalVisits');
  });
});

describe('the reasons', () => {
  const calm = {
    isLifting: true,
    zones: { roots: 'notPlanned', lengths: 'sound', ends: 'sound' },
    risk: 'low',
    strands: 2,
    shortBy: 0,
    isEven: true,
    stop: 'none',
  } as const;

  it('are none when nothing weighed in', () => {
    expect(listReasons(calm)).toEqual([]);
  });

  it.each([
    [{ stop: 'judgement' as const }, ['stopped']],
    [{ risk: 'high' as const, strands: 1 }, ['oneStrandTooFew', 'ironedHair']],
    [{ shortBy: 2 }, ['wellShort']],
    [{ shortBy: 0.5 }, ['short']],
    [{ shortBy: 3, isLifting: false }, []],
    [{ isEven: false }, ['uneven']],
    [{ risk: 'raised' as const }, ['careful']],
  ])('of %o are %o', (change, reasons) => {
    expect(listReasons({ ...calm, ...change })).toEqual(reasons);
  });
});
