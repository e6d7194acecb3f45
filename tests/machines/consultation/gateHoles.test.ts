import { describe, expect, test } from 'vitest';
import { suggestFor } from '../../../shared/judgement/findings';
import {
  cream,
  findSettings,
  hourMs,
  minuteMs,
  recordOutcome,
  startStrand,
  tap,
  weighBowl,
} from './walks/rawTaps';
import { ask, decide, opened, play, reopen, tested, tryAfter } from './walks/story';
import { apply, asked, hives, lengths, stinging, takeOff, toMix, toWeighed, whole } from './walks/wayToBowl';

/** Each of these ways past the gate was once open. Told from the first tap, through the door and the chart. */
const setBack = (byMs: number) => tap('CLOCK_CORRECTED', { shiftMs: String(-byMs) });
const more = (clock: string, minutes: string) =>
  tap('CLOCK_EXTENDED', { clock, minutes, reason: 'liftIsSlow' });

describe('for how long', () => {
  const second = [...asked, startStrand('lengths', '9')];

  test('a strand that was on for one second proves nothing', () => {
    const off = [...second, -3 * minuteMs + 1000, takeOff, recordOutcome('lengths'), decide('asPlanned')];
    for (const minutes of ['25', '1']) {
      expect(tryAfter(off, weighBowl('lengths', '9', minutes))).toContain('"code":"strandTooShort"');
    }
  });

  test('a strand that was given more time and stayed sound allows just that time', () => {
    const longer = [
      ...second,
      more('strand-lengths-1', '15'),
      34 * minuteMs,
      takeOff,
      recordOutcome('lengths'),
      decide('asPlanned'),
    ];
    expect(tryAfter(longer, weighBowl('lengths', '9', '40'))).toBe('taken');
    expect(tryAfter(longer, weighBowl('lengths', '9', '41'))).toContain('"code":"longer","most":40');
    expect(tryAfter(second, more('strand-lengths-1', '21'))).toBe('"notNow"');
  });

  test('a strand that was stretchy at a look gets no more time, whatever a later look felt', () => {
    const look = (feel: string) => tap('LOOKED', { of: 'strand', zone: 'lengths', level: '7', feel });
    const clock = 'strand-lengths-1';
    expect(tryAfter([...second, look('rough')], more(clock, '5'))).toBe('taken');
    expect(tryAfter([...second, look('stretchy')], more(clock, '5'))).toBe('"notNow"');
    expect(tryAfter([...second, look('stretchy'), look('sound')], more(clock, '5'))).toBe('"notNow"');
  });

  test('a strand left on past its time proves no more than its clock was set to', () => {
    const overrun = [...second, 55 * minuteMs, takeOff, recordOutcome('lengths'), decide('asPlanned')];
    expect(tryAfter(overrun, weighBowl('lengths', '9', '26'))).toContain('"most":25');
  });

  test('a bowl goes on within half an hour, whatever the clock was set to meanwhile', () => {
    expect(tryAfter(toWeighed, apply, 30 * minuteMs)).toBe('taken');
    expect(tryAfter(toWeighed, apply, 9 * hourMs)).toContain('bowlTooOld');
    expect(tryAfter([...toWeighed, 9 * hourMs, setBack(9 * hourMs)], apply)).toContain('bowlTooOld');
  });

  test('a head gets no more time during a reaction, after a stop, or beyond what was proven', () => {
    const clock = 'head-lengths-1';
    const short = [...toMix, weighBowl('lengths', '9', '15'), apply];
    expect(tryAfter(short, more(clock, '10'))).toBe('taken');
    expect(tryAfter(short, more(clock, '11'))).toBe('"notNow"');
    expect(tryAfter([...short, tap('REACTION_SUSPECTED')], more(clock, '5'))).toBe('"notNow"');
    expect(tryAfter([...short, stinging], more(clock, '5'))).toBe('"notNow"');
    expect(tryAfter([...short, hives], more(clock, '5'))).toBe('"notNow"');
  });
});

describe('how strong, and of what', () => {
  const wet = {
    habits: [{ tool: 'flatIron', wetness: 'wet', daysAWeek: '3', forMonths: '24', settingC: '350' }],
  };

  test('leaving the ends out gives the lengths nothing', () => {
    const endsBroke = [
      ...opened,
      ...ask({ client: { reach: 'fullHead' }, hotTools: wet }),
      startStrand('lengths', '9'),
      startStrand('ends', '9'),
      tap('STRAND_BROKE', { zone: 'ends' }),
      22 * minuteMs,
      takeOff,
      recordOutcome('ends', 'broken'),
      recordOutcome('lengths'),
      decide('endsOut'),
    ];
    expect(tryAfter(endsBroke, whole)).toContain('"code":"stronger","most":6');
    expect(tryAfter(endsBroke, weighBowl('lengths', '6', '22'))).toBe('taken');
    expect(tryAfter(endsBroke, weighBowl('ends', '6', '3'))).not.toBe('taken');
  });

  test('a sound strand from the nape does not hide a rough one from the crown', () => {
    const nape = [
      startStrand('lengths', '9', '25', { place: 'nape' }),
      22 * minuteMs,
      takeOff,
      recordOutcome('lengths'),
    ];
    const both = [...asked, ...tested('lengths', '9', 'rough'), reopen('strandTest'), ...nape];
    const { record, atMs } = play(both);
    expect(suggestFor(record, findSettings(0), atMs)).toBe('gentler');
    expect(tryAfter(both, decide('asPlanned'))).toBe('"notNow"');
    expect(tryAfter([...both, decide('gentler')], whole)).toContain('"code":"stronger","most":6');
  });

  test('no lightener under the name of a gloss, and no deposit only of what was tested as a lift', () => {
    const gloss = [...opened, ...ask({ client: { service: 'gloss', targetLevel: '5' } })];
    const deposit = [...opened, ...ask({ client: { service: 'depositOnly', targetLevel: '5' } })];
    for (const plan of [gloss, deposit]) {
      expect(tryAfter(plan, startStrand('lengths', '6'))).toContain('anotherService');
      expect(tryAfter(plan, startStrand('lengths', '9', '25', { line: cream }))).toContain('anotherService');
      expect(tryAfter(plan, startStrand('lengths', '6', '25', { line: cream }))).toBe('taken');
    }
    const lift = [...asked, ...tested('lengths'), decide('depositOnly')];
    expect(tryAfter(lift, weighBowl('lengths', '3', '25'))).not.toBe('taken');
  });

  test('a mix that broke is not another one at 5.9 %, with two spaces, or with a space of no width', () => {
    const broke = [
      ...asked,
      startStrand('lengths', '6'),
      tap('STRAND_BROKE', lengths),
      recordOutcome('lengths', 'broken'),
      reopen('strandTest'),
    ];
    const same = [
      startStrand('lengths', '5.9'),
      startStrand('lengths', '6', '25', { line: 'Sandbar  powder' }),
      startStrand('lengths', '6', '25', { line: 'Sand\u200bbar powder' }),
      startStrand('lengths', '6', '60', { makersLimitMin: '60', line: 'SANDBAR POWDER' }),
    ];
    for (const raw of same) expect(tryAfter(broke, raw), JSON.stringify(raw)).toBe('"notNow"');
    expect(tryAfter(broke, startStrand('lengths', '3'))).toBe('taken');
  });
});
