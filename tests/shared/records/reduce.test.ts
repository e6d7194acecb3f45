import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { ASSUMED_GENTLER_TIME } from '../../../shared/judgement/limits';
import { judgeStep } from '../../../shared/judgement/stops';
import type { RawEvent } from '../../../shared/records/classify';
import { findCuttingLookAtMs } from '../../../shared/records/cutting';
import { type Ending, endings, findBowl, findStrand, isAnythingOnHead } from '../../../shared/records/record';
import { fold, reduce } from '../../../shared/records/reduce';
import {
  andThen,
  bothHold,
  change,
  find,
  hour,
  lowRisk,
  minute,
  ofStep,
  ofType,
  startAtMs,
  story,
  type Told,
  tell,
  tryRaw,
  until,
} from './telling';

const whole = tell(story);
const override = (rule: string): RawEvent => ({
  type: 'OVERRIDDEN',
  answers: { rule, code: 'seniorAgreed', words: 'seen it herself' },
});
const correct = (answer: string): RawEvent => ({
  type: 'CORRECTED',
  answers: { answer, code: 'clientCorrectedIt', words: 'it was her sister' },
});
const onHead = tell(until('BOWL_RINSED'));
const processing = tell(until('LOOKED'));
const running = ({ record }: Told) => record.clocks.filter(({ endedAtMs }) => endedAtMs === null);

describe('a folded log', () => {
  it('is the same record step by step, at once, and after a trip through the store', () => {
    expect(fold('told', whole.log)).toEqual(whole.record);
    expect(fold('told', JSON.parse(JSON.stringify(whole.log)))).toEqual(whole.record);
    const frozen = whole.log.map((event) => Object.freeze(event));
    expect(frozen.reduce((record, event) => Object.freeze(reduce(record, event)), fold('told', []))).toEqual(
      whole.record,
    );
  });

  it('knows who did what, when, and in which place', () => {
    expect(whole.record.nextSeq).toBe(whole.log.length);
    expect(whole.record.newestAtMs).toBe(whole.atMs);
    expect(whole.record.opened).toEqual({ atMs: startAtMs, by: 'Opal', seq: 0 });
    expect(whole.record.ended).toMatchObject({ how: 'done', seq: whole.log.length - 1 });
    expect(findStrand(whole.record, 'ends')).toMatchObject({ number: 1, ended: { how: 'broke' } });
    expect(findBowl(whole.record, 'lengths')).toMatchObject({ strand: 2, state: 'rinsed', colourG: 40 });
  });
});

describe('a correction', () => {
  it('names what it amends, who made it and why, and keeps each one before it', () => {
    const told = andThen(andThen(tell(until('DECIDED')), correct('hotTools')), correct('inherited'));
    expect(told.record.corrections).toEqual([
      {
        answer: 'hotTools',
        code: 'clientCorrectedIt',
        words: 'it was her sister',
        ...{ by: 'Opal', seq: 19 },
        atMs: told.atMs - 1000,
      },
      {
        answer: 'inherited',
        code: 'clientCorrectedIt',
        words: 'it was her sister',
        ...{ by: 'Opal', seq: 20 },
        atMs: told.atMs,
      },
    ]);
    expect(told.log[4]).toMatchObject({ type: 'ANSWERED', payload: { step: 'hotTools' } });
  });

  it('takes back what it names: a test, or all of a step of which no answer stops', () => {
    const before = andThen(tell(until('DECIDED')), { type: 'INCOMPATIBILITY_STARTED' });
    for (const step of ['client', 'hotTools', 'feelHair', 'heatSpray'] as const) {
      const { [step]: _wrong, ...rest } = before.record.answers;
      expect(andThen(before, correct(step)).record.answers).toEqual(rest);
    }
    expect(andThen(before, correct('incompatibility')).record.incompatibility).toBeNull();
    const { skinTest, answers } = andThen(before, correct('skinTest')).record;
    expect(skinTest).toBeNull();
    expect(answers).toEqual(before.record.answers);
  });

  it('asks anew what stopped her and keeps everything else she said, but of the wrong client keeps nothing', () => {
    const client = story.find(({ raw }) => ofStep('client')(raw))?.raw;
    const stops = { reactions: ['tingled', 'hives'], scalp: 'broken' };
    const asked = andThen(tell(until('DECIDED')), override('judgement.tingled'));
    const stopped = andThen(asked, { ...client, answers: { ...client?.answers, ...stops } } as RawEvent);
    const { reactions, scalp, ...kept } = stopped.record.answers.client ?? {};
    expect([reactions, scalp, stopped.record.overrides.length]).toEqual([['tingled', 'hives'], 'broken', 1]);
    const told = andThen(stopped, correct('client'));
    expect(told.record.answers).toEqual({ ...stopped.record.answers, client: kept });
    expect(told.record.overrides).toEqual([]);
    expect(judgeStep('client', told.record.answers, salon)).toBe('unsaid');
    const stranger: RawEvent = {
      type: 'CORRECTED',
      answers: { answer: 'client', code: 'wrongClient', words: 'another Q.F.' },
    };
    const { client: _hers, ...others } = stopped.record.answers;
    expect(andThen(stopped, stranger).record.answers).toEqual(others);
  });

  it('is asked for by a cutting that reacts, which leaves no bowl weighed', () => {
    const weighed = andThen(tell(until('BOWL_APPLIED')), { type: 'INCOMPATIBILITY_STARTED' });
    const read = (seen: string): RawEvent => ({ type: 'INCOMPATIBILITY_READ', answers: { seen } });
    expect(findBowl(andThen(weighed, read('nothing'), 30 * minute).record, 'lengths')?.state).toBe('weighed');
    expect(findBowl(andThen(weighed, read('reacted')).record, 'lengths')?.state).toBe('thrown');
  });

  it('asks for a positive skin test to be read again, and keeps when it was put on', () => {
    const noted = tell(until('DECIDED')).record.skinTest?.putOnAtMs ?? 0;
    const positive: RawEvent = { type: 'SKIN_TEST_NOTED', answers: { putOnAtMs: noted, seen: 'reaction' } };
    const told = andThen(andThen(tell(until('DECIDED')), positive), correct('skinTest'));
    expect(told.record.skinTest).toMatchObject({ putOnAtMs: noted, seen: 'notReadYet' });
    expect(told.record.strands.map(({ isVoid }) => isVoid)).toEqual([true, true]);
  });

  it('of a skin test noted wrongly leaves what was tested off the head', () => {
    const told = andThen(processing, correct('skinTest'));
    expect(told.record.strands.map(({ isVoid }) => isVoid)).toEqual([false, false]);
    expect(running(told)).toHaveLength(2);
  });

  it('ends an incompatibility test only when that was what it took back', () => {
    const begun = andThen(tell(until('STRAND_STARTED')), { type: 'INCOMPATIBILITY_STARTED' });
    const [clock] = begun.record.clocks;
    // 30 minutes: training texts, common practice.
    expect((clock?.dueAtMs ?? 0) - begun.atMs).toBe(30 * minute);
    expect(running(andThen(begun, correct('client')))).toHaveLength(1);
    expect(running(andThen(begun, correct('incompatibility')))).toEqual([]);
  });

  it('voids strands and decision and ends their clocks, whichever answer it was', () => {
    for (const answer of ['client', 'feelHair', 'inherited']) {
      const told = andThen(processing, correct(answer));
      expect(told.record.strands.map(({ isVoid }) => isVoid)).toEqual([true, true]);
      expect(running(told)).toEqual([]);
      expect(andThen(tell(until('BOWL_WEIGHED')), correct(answer)).record.decision).toBeNull();
    }
  });
});

describe('a change of the tablet’s clock', () => {
  const shift = (told: Told, shiftMs: number) =>
    andThen(told, { type: 'CLOCK_CORRECTED', answers: { shiftMs: String(shiftMs) } }, shiftMs);

  it('moves the clocks that run, and no others', () => {
    const told = shift(onHead, -hour);
    for (const [index, clock] of onHead.record.clocks.entries()) {
      const after = told.record.clocks[index];
      const isRunning = clock.endedAtMs === null;
      expect(after?.dueAtMs).toBe(clock.dueAtMs - (isRunning ? hour : 0));
      expect(after?.endedAtMs).toBe(clock.endedAtMs);
    }
    expect(running(told)).toHaveLength(1);
    expect(told.record.clocks).toHaveLength(3);
    expect(told.record.newestAtMs).toBe(onHead.atMs - hour);
  });

  it('leaves a cutting as long to be kept as before', () => {
    const begun = andThen(tell(until('STRAND_STARTED')), { type: 'INCOMPATIBILITY_STARTED' });
    const read = andThen(begun, { type: 'INCOMPATIBILITY_READ', answers: { seen: 'nothing' } }, 30 * minute);
    const left = (each: Told) => (findCuttingLookAtMs(each.record, each.atMs) ?? 0) - each.atMs;
    expect(left(read)).toBe(24 * hour);
    expect(left(shift(read, -hour))).toBe(24 * hour);
  });

  it('leaves on the head as long as before, and the strands that came off as old as before', () => {
    const told = shift(onHead, -hour);
    const onMs = (each: Told) => each.atMs - (running(each)[0]?.startedAtMs ?? 0);
    expect(onMs(told)).toBe(onMs(onHead));
    const agesMs = ({ record, atMs }: Told) => record.strands.map(({ ended }) => atMs - (ended?.atMs ?? 0));
    expect(agesMs(told)).toEqual(agesMs(onHead));
    const mixedMs = ({ record, atMs }: Told) => atMs - (record.bowls[0]?.atMs ?? 0);
    expect(mixedMs(told), 'the roots may go on as long as before').toBe(mixedMs(onHead));
  });

  it('between “rinsed” and “still on” makes a head neither longer nor shorter on', () => {
    const told = andThen(onHead, { type: 'REACTION_SUSPECTED' }, minute);
    const zone = told.record.bowls[0]?.zone ?? '';
    const rinsed = andThen(told, { type: 'BOWL_RINSED', answers: { zone, early: 'no' } }, minute);
    const waterMs = ({ record, atMs }: Told) => atMs - (record.clocks.at(-1)?.endedAtMs ?? 0);
    expect(waterMs(shift(rinsed, -hour))).toBe(waterMs(rinsed));
    const none: RawEvent = { type: 'NO_REACTION', answers: { why: 'onlyCool', stillOn: 'yes' } };
    const leftMs = (each: Told) => (running(each)[0]?.dueAtMs ?? 0) - each.atMs;
    const mixedMs = ({ record, atMs }: Told) => atMs - (record.bowls[0]?.atMs ?? 0);
    expect(running(andThen(rinsed, none))).toHaveLength(1);
    expect(leftMs(andThen(shift(rinsed, -hour), none))).toBe(leftMs(andThen(rinsed, none)));
    expect(mixedMs(shift(rinsed, -hour))).toBe(mixedMs(rinsed));
  });

  it('leaves the end of what was rinsed before anything was told, and of logs of model 4', () => {
    const zone = onHead.record.bowls[0]?.zone ?? '';
    const rinsed = andThen(onHead, { type: 'BOWL_RINSED', answers: { zone, early: 'no' } }, minute);
    const told = andThen(rinsed, { type: 'REACTION_SUSPECTED' }, minute);
    expect(shift(told, -hour).record.clocks).toEqual(rinsed.record.clocks);
    const mixedAtMs = (modelVersion: number) =>
      fold(
        'told',
        shift(onHead, -hour).log.map((event) => ({ ...event, modelVersion })),
      ).bowls[0]?.atMs ?? 0;
    expect(mixedAtMs(4) - mixedAtMs(5)).toBe(hour);
  });
});

describe('an ending', () => {
  const end: Readonly<Record<Ending, RawEvent>> = {
    done: {
      type: 'PLAN_GIVEN',
      answers: {
        settingC: '320',
        back: 'weeks6',
        skinNow: 'calm',
        toolsNow: 'offCooling',
        cardNow: 'printed',
        lateItching: 'saidItBack',
      },
    },
    weSaidNo: { type: 'WE_SAID_NO', answers: { reason: 'hairTooWeak' } },
    clientSaidNo: { type: 'CLIENT_SAID_NO', answers: { reason: 'changedHerMind' } },
    calledOff: { type: 'CALLED_OFF', answers: { reason: 'noTime' } },
    reaction: { type: 'CARE_GIVEN', answers: { care: 'rinsedAndDoctor' } },
  };
  it.each(endings)('as %s ends every clock, and none twice', (how) => {
    expect(running(processing)).toHaveLength(2);
    const broke = andThen(processing, { type: 'STRAND_BROKE', answers: { zone: 'ends' } });
    const told = andThen(broke, end[how]);
    expect(told.record.ended?.how).toBe(how);
    expect(told.record.clocks.map(({ endedAtMs }) => endedAtMs)).toEqual([broke.atMs, told.atMs]);
  });
});

describe('a decision', () => {
  const raised = andThen(tell(until('DECIDED', bothHold)), override('judgement.freerThanSuggested'));
  const decided = andThen(raised, { type: 'DECIDED', answers: { decision: 'asPlanned' } });
  const takesBack: readonly RawEvent[] = [
    { type: 'REOPENED', answers: { step: 'heatSpray' } },
    { type: 'PLAN_CHANGED' },
    { type: 'OUTCOME_RETRACTED', answers: { zone: 'ends', code: 'wrongTap', words: 'x' } },
    find(ofType('STRAND_STARTED', 'lengths')),
    find(ofType('OUTCOME_RECORDED', 'lengths')),
    correct('client'),
    {
      ...find(ofStep('client')),
      answers: { ...find(ofStep('client')).answers, targetLevel: '7.5' },
    } as RawEvent,
  ];

  it.each(takesBack)('and the leave to decide more freely are taken back by $type', (raw) => {
    expect(decided.record.decision?.decision).toBe('asPlanned');
    const told = andThen(decided, raw);
    expect(told.record.decision).toBeNull();
    expect(told.record.overrides).toEqual([]);
  });

  it('stands when the very same answers are given again, or a look is taken', () => {
    const same = andThen(decided, find(ofStep('client')));
    expect(same.record.decision).toEqual(decided.record.decision);
    expect(same.record.overrides).toHaveLength(1);
  });

  it('keeps the leave for a judgement stop while its answer stands, and drops it with the answer', () => {
    const steps = change(until('STRAND_STARTED'), ofStep('client'), { scalp: 'tight' });
    const lifted = andThen(tell(steps), override('judgement.scalpTight'));
    const reopened = andThen(lifted, { type: 'REOPENED', answers: { step: 'client' } });
    expect(reopened.record.overrides.map(({ rule }) => rule)).toEqual(['judgement.scalpTight']);
    expect(andThen(reopened, find(ofStep('client'))).record.overrides).toEqual([]);
  });
});

describe('a bowl', () => {
  it('on the head has a clock for its own minutes, which cannot be extended beyond what was tested', () => {
    const [clock] = running(onHead);
    expect((clock?.dueAtMs ?? 0) - (clock?.startedAtMs ?? 0)).toBe(25 * minute);
    expect(clock?.limitAtMs).toBe(clock?.dueAtMs);
    const extend: RawEvent = {
      type: 'CLOCK_EXTENDED',
      answers: { clock: clock?.id ?? '', minutes: '1', reason: 'liftIsSlow' },
    };
    expect(tryRaw(onHead, extend, onHead.atMs)).toMatchObject({
      value: { tokens: { isWithinLimit: false } },
    });
    expect(isAnythingOnHead(onHead.record)).toBe(true);
    expect(isAnythingOnHead(whole.record)).toBe(false);
  });

  it('stays on no longer than the decision allows, even when the strand held for longer', () => {
    const weak = change(
      change(lowRisk, ofType('STRAND_STARTED'), { developerPercent: '1.5' }),
      ofType('DECIDED'),
      {
        decision: 'gentler',
      },
    );
    // A quarter less time where the developer cannot go down: ASSUMED.
    const mostMin = Math.floor(25 * ASSUMED_GENTLER_TIME);
    const weighed = change(weak, ofType('BOWL_WEIGHED'), { developerPercent: '1.5', minutes: '18' });
    const applied: RawEvent = { type: 'BOWL_APPLIED', answers: { zone: 'lengths', skinFirst: 'calm' } };
    const told = andThen(tell(until('BOWL_APPLIED', weighed)), applied);
    const [clock] = running(told);
    expect((clock?.limitAtMs ?? 0) - (clock?.startedAtMs ?? 0)).toBe(mostMin * minute);
    const extend = (minutes: string): RawEvent => ({
      type: 'CLOCK_EXTENDED',
      answers: { clock: clock?.id ?? '', minutes, reason: 'greyResists' },
    });
    expect(tryRaw(told, extend('1'), told.atMs)).toMatchObject({
      value: { tokens: { isWithinLimit: false } },
    });
  });

  it('that was only weighed is thrown away when a stop is answered; one on the head stays on till it is rinsed', () => {
    const broken = {
      ...find(ofStep('client')),
      answers: { ...find(ofStep('client')).answers, scalp: 'broken' },
    };
    const weighed = tell(until('BOWL_APPLIED'));
    expect(andThen(weighed, broken as RawEvent).record.bowls.map(({ state }) => state)).toEqual(['thrown']);
    expect(andThen(onHead, broken as RawEvent).record.bowls.map(({ state }) => state)).toEqual(['on']);
    const positive: RawEvent = {
      type: 'SKIN_TEST_NOTED',
      answers: { putOnAtMs: startAtMs, seen: 'reaction' },
    };
    expect(andThen(weighed, positive).record.bowls.map(({ state }) => state)).toEqual(['thrown']);
  });
});

describe('a look and an extension', () => {
  it('are kept with the strand or the head they belong to, and its clock', () => {
    const [ends, lengths] = whole.record.strands;
    expect(ends?.looks.map(({ level }) => level)).toEqual([5.5]);
    expect(lengths?.looks.map(({ level }) => level)).toEqual([5.5, 6.5]);
    expect(whole.record.bowls[0]?.looks.map(({ stinging }) => stinging)).toEqual(['no']);
    expect(whole.record.clocks.map(({ lookedAtMs }) => lookedAtMs.length)).toEqual([1, 2, 1]);
  });

  it('give a running strand minutes within the maker’s limit, to the minute, and never beyond', () => {
    const extend = (minutes: string): RawEvent => ({
      type: 'CLOCK_EXTENDED',
      answers: { clock: 'strand-ends-1', minutes, reason: 'liftIsSlow' },
    });
    const isWithin = (minutes: string) => {
      const event = tryRaw(processing, extend(minutes), processing.atMs);
      return event.ok && 'isWithinLimit' in event.value.tokens && event.value.tokens.isWithinLimit;
    };
    expect(isWithin('20')).toBe(true);
    expect(isWithin('20.1')).toBe(false);
    const [before, other] = processing.record.clocks;
    const [after, same] = andThen(processing, extend('20')).record.clocks;
    expect(after?.dueAtMs).toBe((before?.dueAtMs ?? 0) + 20 * minute);
    expect(same).toEqual(other);
    const ended = andThen(processing, { type: 'STRAND_BROKE', answers: { zone: 'ends' } });
    const late = tryRaw(ended, extend('1'), ended.atMs);
    expect(late).toMatchObject({ value: { tokens: { isWithinLimit: false } } });
  });
});

describe('a strand', () => {
  const started = tell(until('LOOKED'));
  const off: RawEvent = { type: 'STRAND_TAKEN_OFF', answers: { zone: 'ends', why: 'levelReached' } };
  const minutesOn = (told: Told) => findStrand(told.record, 'ends')?.minutesOn;

  it('has been on for whole minutes, never beyond its clock', () => {
    const [clock] = started.record.clocks;
    const endAt = (ms: number) => andThen(started, off, (clock?.startedAtMs ?? 0) + ms - started.atMs);
    expect(minutesOn(started)).toBeNull();
    expect(minutesOn(endAt(25 * minute - 1))).toBe(24);
    expect(minutesOn(endAt(25 * minute))).toBe(25);
    expect(minutesOn(endAt(40 * minute))).toBe(25);
  });

  it('has been on for as long when the tablet’s clock was set back meanwhile', () => {
    const [clock] = started.record.clocks;
    const onMs = started.atMs - (clock?.startedAtMs ?? 0);
    const shift: RawEvent = { type: 'CLOCK_CORRECTED', answers: { shiftMs: String(-hour) } };
    const back = andThen(started, shift, -hour);
    expect(minutesOn(andThen(back, off, 10 * minute - onMs - 1))).toBe(9);
    expect(minutesOn(andThen(back, off, 10 * minute - onMs))).toBe(10);
  });

  it('that was given more time has been on for that as well', () => {
    const extend: RawEvent = {
      type: 'CLOCK_EXTENDED',
      answers: { clock: 'strand-ends-1', minutes: '15', reason: 'liftIsSlow' },
    };
    expect(minutesOn(andThen(andThen(started, extend), off, 50 * minute))).toBe(40);
  });

  it('put aside proves nothing and says why', () => {
    const aside: RawEvent = { type: 'STRAND_DISCARDED', answers: { zone: 'ends', why: 'wrongTap' } };
    const strand = findStrand(andThen(started, aside).record, 'ends');
    expect(strand).toMatchObject({ ended: { how: 'discarded' }, why: 'wrongTap', outcome: null });
  });
});

describe('another day', () => {
  const park: RawEvent = { type: 'PARKED', answers: { untilAtMs: startAtMs + 100 * hour } };
  const parked = andThen(tell(until('DECIDED')), park);
  const resumed = (afterMs: number) => andThen(parked, { type: 'RESUMED' }, afterMs).record.answers.client;

  it('asks reactions, scalp and age anew, and nothing that a strand stands for', () => {
    const { reactions: _r, scalp: _s, ageBand: _a, ...rest } = parked.record.answers.client ?? {};
    expect(resumed(12 * hour)).toEqual(parked.record.answers.client);
    expect(resumed(12 * hour + 1)).toEqual(rest);
  });
});
