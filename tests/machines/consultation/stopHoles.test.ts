import { describe, expect, test } from 'vitest';
import { replay } from '../../../machines/consultation/replay';
import { issuePermit } from '../../../shared/judgement/permit';
import { hasStandingStop } from '../../../shared/records/standingStop';
import {
  cleanAnswers,
  correct,
  dayMs,
  findSettings,
  hourMs,
  minuteMs,
  noteSkinTest,
  override,
  recordOutcome,
  retract,
  say,
  startAtMs,
  startStrand,
  tap,
  weighBowl,
} from './walks/rawTaps';
import {
  answersOf,
  ask,
  confirm,
  decide,
  opened,
  play,
  reopen,
  restart,
  tested,
  tryAfter,
} from './walks/story';
import {
  apply,
  asked,
  hives,
  lengths,
  stinging,
  takeOff,
  toColourOn,
  toMix,
  toWeighed,
  whole,
} from './walks/wayToBowl';

/** Each of these ways past the gate was once open. Told from the first tap, through the door and the chart. */
const rinse = tap('BOWL_RINSED', lengths);
const setBack = (byMs: number) => tap('CLOCK_CORRECTED', { shiftMs: String(-byMs) });
const bothAsked = [...opened, ...ask({ client: { reach: 'fullHead' } })];
const bothTested = [
  startStrand('lengths', '9'),
  startStrand('ends', '9'),
  25 * minuteMs,
  takeOff,
  tap('STRAND_TAKEN_OFF', { zone: 'ends', why: 'levelReached' }),
];
const toBothMix = [
  ...bothAsked,
  ...bothTested,
  recordOutcome('lengths'),
  recordOutcome('ends'),
  decide('asPlanned'),
];
const park = (forMs: number) => tap('PARKED', { untilAtMs: startAtMs + 30 * dayMs + forMs });

describe('skin and cutting', () => {
  const notRead = noteSkinTest(startAtMs, 1 * hourMs, 'notReadYet');
  const early = [tap('OPENED', { ticket: 'Q.F.', chair: '3' }), notRead];

  test('a change of the clock ages no skin test', () => {
    expect(tryAfter(early, tap('CLOCK_CORRECTED', { shiftMs: String(3 * dayMs) }))).toContain('shiftMs');
    const reading = tap('SKIN_TEST_NOTED', { putOnAtMs: startAtMs - hourMs, seen: 'nothing' });
    expect(tryAfter([...early, dayMs, setBack(dayMs)], reading, 46 * hourMs)).toContain('readTooEarly');
    expect(tryAfter([...early, dayMs, setBack(dayMs)], reading, 48 * hourMs)).toBe('taken');
  });

  test('a skin test is not typed anew as put on earlier, but taken back by name', () => {
    const earlier = tap('SKIN_TEST_NOTED', { putOnAtMs: startAtMs - 49 * hourMs, seen: 'nothing' });
    expect(tryAfter(early, earlier)).toContain('earlierThanNoted');
    expect(tryAfter([...early, correct('skinTest')], earlier)).toBe('taken');
  });

  test('an incompatibility test that was begun anew is read after its own half hour', () => {
    const box = { history: ['unknownBoxColour'] };
    const metal = say('hotTools', { ...cleanAnswers.hotTools, history: ['metallicColour'] });
    const again = [
      ...opened,
      ...ask({ hotTools: box }),
      tap('INCOMPATIBILITY_STARTED'),
      40 * minuteMs,
      reopen('hotTools'),
      metal,
      ...(['hotTools', 'feelHair', 'heatSpray'] as const).map(confirm),
      tap('INCOMPATIBILITY_STARTED'),
    ];
    const readIt = tap('INCOMPATIBILITY_READ', { seen: 'nothing' });
    expect(tryAfter(again, readIt, 1000)).toContain('readTooEarly');
    expect(tryAfter(again, readIt, 30 * minuteMs)).toBe('taken');
  });
});

describe('reactions and stops', () => {
  const reaction = (signs: readonly string[]) =>
    play([
      ...asked,
      tap('REACTION_SUSPECTED'),
      tap('REACTION_RECORDED', { signs: [...signs] }),
      tap('CARE_GIVEN', { care: 'rinsedAndDoctor' }),
    ]).record;

  test('a reaction that was recorded and closed is handed on, whatever it was', () => {
    expect(hasStandingStop(reaction(['swelling']))).toBe(true);
    expect(hasStandingStop(reaction(['unclear']))).toBe(true);
    expect(hasStandingStop(reaction(['stinging']))).toBe(true);
  });

  test('nothing more goes on her head after stinging, until somebody says it is no reaction', () => {
    const on = [...toBothMix, whole, apply];
    const ends = weighBowl('ends', '9', '25');
    expect(tryAfter(on, ends)).toBe('taken');
    expect(tryAfter([...on, stinging], ends)).toContain('reaction');
    expect(tryAfter([...on, ends, stinging], tap('BOWL_APPLIED', { zone: 'ends', skinFirst: 'calm' }))).toBe(
      '"notNow"',
    );
    expect(tryAfter([...on, stinging, tap('NO_REACTION')], ends)).toBe('taken');
    expect(tryAfter([...on, stinging], rinse)).toBe('taken');
  });

  test('a client who is away and tells of hives is stopped, today and on any other day', () => {
    const told = [...asked, park(0), 2 * hourMs, hives];
    const { record, state } = play([...told, 20 * hourMs, tap('RESUMED')]);
    expect(state.value).toMatchObject({ open: { way: 'stopped' } });
    expect(hasStandingStop(record)).toBe(true);
    expect(tryAfter([...told, 20 * hourMs, tap('RESUMED')], startStrand('lengths', '9'))).not.toBe('taken');
    expect(tryAfter([...told, 20 * hourMs, tap('RESUMED')], correct('client'))).toBe('taken');
    expect(restart([...told, 20 * hourMs, tap('RESUMED')])).toBe('taken up');
  });

  test('no other answer takes a stop back, over her head or anywhere else, not even one that stops as well', () => {
    const over = [...toColourOn, hives];
    const instead = say('client', { ...answersOf().client, scalp: 'broken' });
    const besides = say('client', { ...answersOf().client, reactions: ['hives', 'rash'], scalp: 'broken' });
    expect(tryAfter(over, instead)).toContain('needsCorrection');
    expect(tryAfter(over, say('client', answersOf().client))).toContain('needsCorrection');
    expect(tryAfter(over, besides)).toBe('taken');
    expect(tryAfter([...over, besides], hives)).toContain('needsCorrection');
  });

  test('hives told in a stop or at the finish are written down, and handed on to her next visit', () => {
    const atFinish = [...toColourOn, 20 * minuteMs, rinse, tap('FINISHED'), hives];
    const done = [
      ...atFinish,
      tap('PLAN_GIVEN', {
        settingC: '320',
        back: 'weeks6',
        skinNow: 'calm',
        toolsNow: 'offCooling',
        cardNow: 'printed',
        lateItching: 'saidItBack',
      }),
    ];
    expect(hasStandingStop(play(done).record)).toBe(true);
    expect(restart(done)).toBe('taken up');
    const broken = say('client', { ...answersOf().client, scalp: 'broken' });
    const both = say('client', { ...answersOf().client, scalp: 'broken', reactions: ['hives'] });
    const { record } = play([...asked, reopen('client'), broken, both, correct('client')]);
    expect([record.answers.client?.reactions, record.answers.client?.scalp]).toEqual([undefined, undefined]);
  });

  test('a cutting that reacts while she is away, or is asked about other hair, stops her for good', () => {
    const box = ask({ hotTools: { history: ['unknownBoxColour'] } });
    const glass = [...opened, ...box, tap('INCOMPATIBILITY_STARTED')];
    const reacted = tap('INCOMPATIBILITY_READ', { seen: 'reacted' });
    const noBox = [reopen('hotTools'), say('hotTools', answersOf().hotTools)];
    for (const where of [[park(0)], [tap('REACTION_SUSPECTED')], [reopen('client')], noBox]) {
      const told = [...glass, ...where, reacted];
      expect(hasStandingStop(play(told).record)).toBe(true);
      expect(play(told).state.value).toMatchObject({ open: { way: 'stopped' } });
      expect(restart(told)).toBe('taken up');
    }
  });

  test('a correction asks anew what stopped her, and a bowl needs a new strand all the same', () => {
    const back = [...toMix, reopen('client'), hives, correct('client')];
    expect(tryAfter(back, confirm('client'))).toBe('"notNow"');
    const said = [...back, say('client', answersOf().client)];
    const again = [...said, ...(['client', 'hotTools', 'feelHair', 'heatSpray'] as const).map(confirm)];
    expect(tryAfter(again, tap('OUTCOME_KEPT'))).toBe('"notNow"');
    expect(tryAfter([...again, ...tested('lengths'), decide('asPlanned')], whole)).toBe('taken');
    expect(restart([...again, ...tested('lengths'), decide('asPlanned'), whole])).toBe('taken up');
  });

  test('back after twenty days, what holds for today is asked before any bowl', () => {
    const back = (...between: readonly (ReturnType<typeof tap> | number)[]) => [
      ...toMix,
      park(0),
      ...between,
      tap('RESUMED'),
    ];
    expect(tryAfter(back(2 * hourMs), whole)).toBe('taken');
    const late = back(20 * dayMs);
    expect(tryAfter(late, whole)).toContain('stepUnsaid');
    expect(tryAfter(back(20 * dayMs, setBack(20 * dayMs)), whole)).toContain('stepUnsaid');
    const said = [...late, reopen('client'), say('client', answersOf().client)];
    const again = [...said, ...(['client', 'hotTools', 'feelHair', 'heatSpray'] as const).map(confirm)];
    expect(tryAfter([...again, tap('OUTCOME_KEPT'), decide('asPlanned')], whole)).toBe('taken');
  });
});

describe('ways on and ways out', () => {
  test('a bowl that was thrown and an outcome that was retracted are taken up at the next start', () => {
    const story = [...toWeighed, tap('BOWL_THROWN', lengths), reopen('decision'), retract('lengths')];
    expect(restart(story)).toBe('taken up');
    expect(restart([...story, recordOutcome('lengths', 'gummy')])).toBe('taken up');
  });

  test('after a rinse there is a finish from wherever the way went back to', () => {
    const finish = tap('FINISHED');
    const rinsed = [...toColourOn, 20 * minuteMs, rinse];
    for (const step of ['decision', 'strandTest', 'client']) {
      expect(tryAfter([...rinsed, reopen(step)], finish), step).toBe('taken');
    }
    expect(tryAfter([...toColourOn, hives, rinse], finish)).toBe('taken');
    const second = [...rinsed, reopen('strandTest'), startStrand('lengths', '6'), hives];
    expect(tryAfter(second, finish)).toBe('"notNow"');
    expect(tryAfter([...second, takeOff, recordOutcome('lengths')], finish)).toBe('taken');
    expect(tryAfter([...asked, ...tested('lengths')], finish)).toBe('"notNow"');
  });

  test('a strand started by a wrong tap is put aside by name and proves nothing', () => {
    const aside = tap('STRAND_DISCARDED', { ...lengths, why: 'wrongTap' });
    const story = [...asked, startStrand('lengths', '9'), aside];
    expect(play(story).state.value).toMatchObject({ open: { way: { strandTest: 'preparing' } } });
    expect(tryAfter(story, tap('OUTCOME_KEPT'))).toBe('"notNow"');
    const { record, atMs } = play([
      ...asked,
      ...tested('lengths'),
      reopen('strandTest'),
      startStrand('lengths', '9'),
      aside,
    ]);
    expect(issuePermit(record, 'lengths', findSettings(0), atMs)).toMatchObject({ ok: false });
  });

  test('a strand that weakened, broke or was recorded as weak is put aside under no name', () => {
    const started = [...asked, startStrand('lengths', '9')];
    const look = (feel: string) => tap('LOOKED', { of: 'strand', ...lengths, level: '6', feel });
    const offWeak = tap('STRAND_TAKEN_OFF', { ...lengths, why: 'looksWeak' });
    const takenBack = (fibre: string) => [
      ...started,
      takeOff,
      recordOutcome('lengths', fibre),
      retract('lengths'),
    ];
    const weak = {
      'stretchy at a look': [...started, look('stretchy')],
      'stretchy, then sound': [...started, look('stretchy'), look('sound'), takeOff],
      'taken off as weak': [...started, offWeak],
      broke: [...started, tap('STRAND_BROKE', lengths)],
      'recorded as gummy, taken back': takenBack('gummy'),
      'recorded as rough, taken back': takenBack('rough'),
      'gummy taken back, then sound taken back': [
        ...takenBack('gummy'),
        recordOutcome('lengths'),
        retract('lengths'),
      ],
    };
    for (const [what, way] of Object.entries(weak)) {
      for (const why of ['wrongTap', 'lost', 'clientLeft', 'wrongPlace']) {
        expect(tryAfter(way, tap('STRAND_DISCARDED', { ...lengths, why })), what).toContain('hasBadSigns');
      }
      const offNow = what === 'stretchy at a look' ? [takeOff] : [];
      expect(tryAfter([...way, ...offNow], recordOutcome('lengths', 'gummy')), what).toBe('taken');
    }
    const aside = tap('STRAND_DISCARDED', { ...lengths, why: 'wrongPlace' });
    for (const way of [started, [...started, look('rough')], [...started, takeOff], takenBack('sound')]) {
      expect(tryAfter(way, aside)).toBe('taken');
    }
  });

  test('a log in which a weak strand was put aside by hand is not taken up', () => {
    const look = tap('LOOKED', { of: 'strand', ...lengths, level: '6', feel: 'stretchy' });
    const { log } = play([...asked, startStrand('lengths', '9'), look, takeOff]);
    const forged = { ...log.at(-1), type: 'STRAND_DISCARDED', payload: { ...lengths, why: 'lost' } };
    expect(replay('story', log, findSettings)).toMatchObject({ ok: true });
    expect(replay('story', [...log.slice(0, -1), forged], findSettings)).toMatchObject({
      error: { seq: log.length - 1, code: 'saysOtherwise' },
    });
  });

  test('a strand in the mix is still taken off, breaks and is told of when what stops her changes the plan as well', () => {
    const running = [...asked, startStrand('lengths', '9')];
    const otherPlans = [{ targetLevel: '7.5' }, { reach: 'roots' }];
    for (const other of otherPlans) {
      const stop = say('client', { ...answersOf().client, ...other, reactions: ['hives'] });
      expect(tryAfter([...running, stop], tap('STRAND_BROKE', lengths))).toBe('taken');
      expect(tryAfter([...running, stop], takeOff)).toBe('taken');
      expect(tryAfter([...running, takeOff, stop], recordOutcome('lengths', 'gummy'))).toBe('taken');
      expect(tryAfter([...running, hives, stop], takeOff)).toBe('taken');
    }
  });

  test('a stop that is corrected takes nothing back that a strand said against the hair', () => {
    const confirmed = (['client', 'hotTools', 'feelHair', 'heatSpray'] as const).map(confirm);
    const anew = [hives, correct('client'), say('client', answersOf().client), ...confirmed];
    const look = tap('LOOKED', { of: 'strand', ...lengths, level: '6', feel: 'stretchy' });
    const weak = [...asked, startStrand('lengths', '9'), look];
    const sound = [...anew, ...tested('lengths')];
    for (const way of [[...asked, ...tested('lengths', '9', 'rough')], weak, [...weak, takeOff]]) {
      expect(tryAfter([...way, ...sound], decide('asPlanned'))).toContain('notNow');
      expect(tryAfter([...way, ...sound], decide('gentler'))).toBe('taken');
      expect(restart([...way, ...sound, decide('gentler')])).toBe('taken up');
    }
    expect(tryAfter([...asked, ...tested('lengths'), ...sound], decide('asPlanned'))).toBe('taken');
  });

  test('a cutting that reacts the day after it was read clear stops her', () => {
    const box = [...opened, ...ask({ hotTools: { history: ['unknownBoxColour'] } })];
    const glass = [...box, tap('INCOMPATIBILITY_STARTED'), 30 * minuteMs];
    const clear = [...glass, tap('INCOMPATIBILITY_READ', { seen: 'nothing' })];
    const reacted = tap('INCOMPATIBILITY_READ', { seen: 'reacted' });
    const away = [...clear, tap('PARKED', { untilAtMs: startAtMs + 30 * dayMs }), 20 * hourMs];
    for (const way of [clear, away, [...away, tap('RESUMED')]]) expect(tryAfter(way, reacted)).toBe('taken');
    const told = [...clear, reacted];
    expect(hasStandingStop(play(told).record)).toBe(true);
    expect(restart(told)).toBe('taken up');
  });

  test('what somebody judged of the scalp yesterday lifts nothing today', () => {
    const tight = { client: { scalp: 'tight' } };
    const first = [...opened, ...ask(tight), override('judgement.scalpTight'), ...tested('lengths')];
    const away = [tap('PARKED', { untilAtMs: startAtMs + 30 * dayMs }), 20 * hourMs, tap('RESUMED')];
    const again = [...first, decide('asPlanned'), ...away];
    expect(play(again).state.context.facts.overridden).toEqual([]);
    expect(play(again).record.overrides).toEqual([]);
  });

  test('a zone that was left out and put back stands for the plan again, in chart and permit', () => {
    const out = [reopen('client'), say('client', answersOf().client)];
    const back = say('client', answersOf({ client: { reach: 'fullHead' } }).client);
    const confirmed = (['client', 'hotTools', 'feelHair', 'heatSpray'] as const).map(confirm);
    const story = [...toBothMix, ...out, back, ...confirmed, tap('OUTCOME_KEPT'), decide('asPlanned')];
    expect(tryAfter(story, weighBowl('ends', '9', '25'))).toBe('taken');
  });
});
