import { expect, test } from 'vitest';
import { replay } from '../../../machines/consultation/replay';
import { suggestFor } from '../../../shared/judgement/findings';
import {
  cleanAnswers,
  correct,
  dayMs,
  findSettings,
  minuteMs,
  recordOutcome,
  retract,
  say,
  tap,
  weighBowl,
} from './walks/rawTaps';
import { answersOf, ask, confirm, decide, opened, play, reopen, tested, tryAfter } from './walks/story';

const ends = answersOf();
const asked = [...opened, ...ask()];
const mixed = decide('asPlanned');
const box = { ...cleanAnswers.hotTools, history: ['unknownBoxColour'] };
const askedOfBox = [...opened, ...ask({ hotTools: box }), tap('INCOMPATIBILITY_STARTED')];
const readIt = tap('INCOMPATIBILITY_READ', { seen: 'nothing' });

test('the stories below are possible up to where they end', () => {
  expect(play([...asked, ...tested('lengths'), mixed]).record.decision).not.toBeNull();
  expect(play([...askedOfBox, 31 * minuteMs, readIt]).record.incompatibility?.seen).toBe('nothing');
});

test('an outcome that was retracted and recorded anew is as old as the strand it was seen on', () => {
  const again = (days: number) => [
    ...asked,
    ...tested('lengths'),
    days * dayMs,
    retract('lengths'),
    recordOutcome('lengths'),
  ];
  expect(tryAfter(again(27), mixed)).toBe('taken');
  expect(tryAfter(again(29), mixed)).toBe('"notNow"');
});

test('an incompatibility test goes on while an answer is corrected, and can be read', () => {
  const swelling = say('client', { ...ends.client, reactions: ['swelling'] });
  const back = [...(['client', 'hotTools', 'feelHair', 'heatSpray'] as const).map(confirm)];
  play([
    ...askedOfBox,
    swelling,
    correct('client'),
    say('client', ends.client),
    ...back,
    31 * minuteMs,
    readIt,
  ]);
});

test('an incompatibility test that runs can be read after the history was said otherwise and back again', () => {
  const back = [...(['hotTools', 'feelHair', 'heatSpray'] as const).map(confirm)];
  play([
    ...askedOfBox,
    reopen('hotTools'),
    say('hotTools', cleanAnswers.hotTools),
    say('hotTools', box),
    ...back,
    31 * minuteMs,
    readIt,
  ]);
});

test('nothing is suggested on the strength of a strand that was used up', () => {
  const used = [
    tap('BOWL_APPLIED', { zone: 'lengths', skinFirst: 'calm' }),
    tap('BOWL_RINSED', { zone: 'lengths' }),
    reopen('decision'),
  ];
  const { record, atMs } = play([
    ...asked,
    ...tested('lengths'),
    mixed,
    weighBowl('lengths', '9', '25'),
    ...used,
  ]);
  expect(suggestFor(record, findSettings(0), atMs)).toBe('testAgain');
});

test('a log judged under settings this station never had is not trusted for its skin test', () => {
  const { log } = play([...asked, ...tested('lengths'), mixed, weighBowl('lengths', '9', '25')]);
  const forged = log.map((event) =>
    event.type === 'SKIN_TEST_NOTED'
      ? { ...event, settingsId: 77, payload: { ...event.payload, seen: 'notReadYet' } }
      : { ...event, settingsId: 77 },
  );
  expect(replay('story', JSON.parse(JSON.stringify(forged)), findSettings)).toMatchObject({
    ok: false,
  });
});
