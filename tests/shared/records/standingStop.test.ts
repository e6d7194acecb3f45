import { describe, expect, it } from 'vitest';
import type { RawEvent } from '../../../shared/records/classify';
import { closeRecord, parseClosedRecord } from '../../../shared/records/closedRecord';
import { reactionForm } from '../../../shared/records/forms/course';
import { fold } from '../../../shared/records/reduce';
import { hasStandingStop } from '../../../shared/records/standingStop';
import { andThen, lowRisk, ofStep, startAtMs, story, type Told, tell, until } from './telling';

const onHead = tell(until('BOWL_RINSED', lowRisk));
const rinsed = tell(until('FINISHED', lowRisk));
const stands = ({ record }: Told) => hasStandingStop(record);
const client = lowRisk.find(({ raw }) => ofStep('client')(raw))?.raw;
const say = (answers: object): RawEvent =>
  ({ ...client, answers: { ...client?.answers, ...answers } }) as RawEvent;
const correct = (answer: string): RawEvent => ({
  type: 'CORRECTED',
  answers: { answer, code: 'hasChanged', words: 'healed since' },
});

/** The same consultation with a stop handed on by an earlier record. */
const inherited: Told = (() => {
  const [opened, ...rest] = rinsed.log;
  const log = [{ ...opened, tokens: { ...opened?.tokens, inherits: true } }, ...rest];
  return { ...rinsed, log, record: fold('told', log as never) } as Told;
})();

describe('a reaction that ended a consultation', () => {
  const leftBy = (...signs: readonly string[]): Told =>
    andThen(andThen(rinsed, { type: 'REACTION_RECORDED', answers: { signs } }), {
      type: 'CARE_GIVEN',
      answers: { care: 'emergencyCalled' },
    });

  it('goes on standing whatever was seen (published: "any reaction", Reg. (EC) 1223/2009 Annex III label text)', () => {
    for (const sign of reactionForm.signs.options) {
      expect(stands(leftBy(sign)), sign).toBe(true);
    }
  });

  it('stands as soon as it is told, before the care is', () => {
    expect(stands(andThen(onHead, { type: 'REACTION_SUSPECTED' }))).toBe(true);
    expect(stands(andThen(rinsed, { type: 'REACTION_RECORDED', answers: { signs: ['breath'] } }))).toBe(true);
  });

  it('that was not one leaves nothing', () => {
    const suspected = andThen(onHead, { type: 'REACTION_SUSPECTED' });
    expect(stands(andThen(suspected, { type: 'NO_REACTION' }))).toBe(false);
  });
});

describe('an absolute answer', () => {
  it('stands until it is corrected by name', () => {
    expect(stands(rinsed)).toBe(false);
    for (const answers of [{ reactions: ['hives'] }, { scalp: 'irritated' }, { ageBand: 'under' }]) {
      const told = andThen(tell(until('DECIDED')), say(answers));
      expect(stands(told), JSON.stringify(answers)).toBe(true);
      expect(stands(andThen(told, correct('client')))).toBe(false);
    }
    expect(stands(andThen(tell(until('DECIDED')), say({ scalp: 'tight', reactions: ['tingled'] })))).toBe(
      false,
    );
  });

  it('read off a test, or handed on, stands as well', () => {
    const positive = andThen(tell(until('DECIDED')), {
      type: 'SKIN_TEST_NOTED',
      answers: { putOnAtMs: startAtMs, seen: 'reaction' },
    });
    const reacted = andThen(andThen(tell(until('DECIDED')), { type: 'INCOMPATIBILITY_STARTED' }), {
      type: 'INCOMPATIBILITY_READ',
      answers: { seen: 'reacted' },
    });
    for (const [told, answer] of [
      [positive, 'skinTest'],
      [reacted, 'incompatibility'],
      [inherited, 'inherited'],
    ] as const) {
      expect(stands(told), answer).toBe(true);
      expect(stands(andThen(told, correct(answer))), answer).toBe(false);
    }
  });
});

describe('a closed record', () => {
  const callOff: RawEvent = { type: 'CALLED_OFF', answers: { reason: 'noTime' } };
  const close = (told: Told) => closeRecord(told.record, told.log);

  it('says what stands and what was cleared, so that nobody reads its log for it', () => {
    expect(close(onHead)).toBeNull();
    expect(close(tell(story))).toMatchObject({ how: 'done', hasStandingStop: false, hasClearedStop: false });
    expect(close(andThen(inherited, callOff))).toMatchObject({
      hasStandingStop: true,
      hasClearedStop: false,
    });
    const cleared = andThen(andThen(inherited, correct('inherited')), callOff);
    expect(close(cleared)).toMatchObject({ hasStandingStop: false, hasClearedStop: true });
    const other = andThen(andThen(rinsed, correct('skinTest')), callOff);
    expect(close(other)).toMatchObject({ hasClearedStop: false });
  });

  it('is read again from the store as it was written, and not with a field missing or one more', () => {
    const closed = close(tell(story));
    const stored = JSON.parse(JSON.stringify(closed));
    expect(parseClosedRecord(stored)).toEqual(closed);
    expect(parseClosedRecord({ ...stored, extra: 1 })).toBeNull();
    for (const name of Object.keys(stored)) {
      const { [name]: _gone, ...rest } = stored;
      expect(parseClosedRecord(rest), name).toBeNull();
    }
  });
});
