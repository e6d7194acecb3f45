import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { listBreaks } from '../../../shared/records/breaks';
import {
  andThen,
  bothHold,
  change,
  find,
  minute,
  ofType,
  story,
  type Told,
  tell,
  tryRaw,
  until,
} from './telling';

describe('strands that broke or gummed', () => {
  it('are those that broke in the mix, with the minutes they were really on, by who saw it', () => {
    const broke = until('STRAND_BROKE').length;
    expect(listBreaks(tell(story).record)).toMatchObject([
      { zone: 'ends', strand: 1, how: 'broken', by: 'Opal', mix: { minutes: 9, developerPercent: 6 } },
    ]);
    expect(listBreaks(tell(story).record)[0]?.atMs).toBe(tell(story.slice(0, broke + 1)).atMs);
  });

  it('and those that were found so between the fingers; none where all hold', () => {
    expect(listBreaks(tell(bothHold).record)).toEqual([]);
    const gummed = change(until('DECIDED', bothHold), ofType('OUTCOME_RECORDED', 'ends'), { fibre: 'gummy' });
    expect(listBreaks(tell(gummed).record)).toMatchObject([{ zone: 'ends', how: 'gummy' }]);
  });
});

describe('what the day is told', () => {
  const freer = { rule: 'judgement.freerThanSuggested', code: 'strandHeld', words: 'it held twice' };

  it('takes "a strand held" as no reason where none has held, nor for a stop of the skin', () => {
    const lift = (told: Told, rule: string, code = 'strandHeld') =>
      tryRaw(told, { type: 'OVERRIDDEN', answers: { ...freer, rule, code } }, told.atMs + 1000, salon);
    const refused = {
      ok: false,
      error: { kind: 'fields', fields: [{ path: 'code', code: 'noStrandHeld' }] },
    };
    const decision = tell(until('DECIDED'));
    expect(lift(decision, freer.rule)).toMatchObject({ ok: true });
    expect(lift(decision, 'judgement.tingled')).toEqual(refused);
    expect(lift(decision, 'judgement.tingled', 'seniorAgreed')).toMatchObject({ ok: true });
    const before = tell(until('STRAND_STARTED'));
    expect(lift(before, 'judgement.snapsWhenWet')).toEqual(refused);
    const gummed = change(until('DECIDED'), ofType('OUTCOME_RECORDED', 'lengths'), { fibre: 'gummy' });
    expect(lift(tell(gummed), freer.rule)).toEqual(refused);
  });

  it('keeps a stop that was lifted, also after it was judged anew', () => {
    const told = andThen(tell(until('DECIDED')), { type: 'OVERRIDDEN', answers: freer });
    const back = andThen(told, { type: 'REOPENED', answers: { step: 'client' } });
    expect(back.record.overrides).toEqual([]);
    expect(back.record.judged).toMatchObject([{ ...freer, by: 'Opal', atMs: told.atMs }]);
  });

  it('keeps who said that a suspected reaction was none, when and why, and who had suspected it', () => {
    const on = tell(story.slice(0, until('BOWL_APPLIED').length + 1));
    const stings = {
      ...find(ofType('LOOKED', 'lengths')),
      answers: { of: 'head', zone: 'lengths', stinging: 'yes' },
    };
    const suspected = andThen(on, stings as never, minute);
    const none = andThen(suspected, { type: 'NO_REACTION', answers: { why: 'lookedNothingSeen' } }, minute);
    expect(none.record.reaction).toBeNull();
    expect(none.record.dismissed).toMatchObject([
      {
        why: 'lookedNothingSeen',
        by: 'Opal',
        atMs: none.atMs,
        suspected: { atMs: suspected.atMs, by: 'Opal' },
      },
    ]);
    const again = andThen(andThen(none, { type: 'REACTION_SUSPECTED' }), { type: 'NO_REACTION' });
    expect(again.record.dismissed.map(({ why }) => why)).toEqual(['lookedNothingSeen', 'notSaid']);
  });
});
