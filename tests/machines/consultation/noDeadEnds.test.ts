import { expect, test } from 'vitest';
import { advance, beginConsultation, type Consultation } from '../../../machines/consultation/consultation';
import { replay } from '../../../machines/consultation/replay';
import { suggestFor } from '../../../shared/judgement/findings';
import { issuePermit } from '../../../shared/judgement/permit';
import { classify, type RawEvent } from '../../../shared/records/classify';
import type { AskStep } from '../../../shared/records/steps';
import { askSteps } from '../../../shared/records/steps';
import {
  cleanAnswers,
  correct,
  dayMs,
  hourMs,
  minuteMs,
  noteSkinTest,
  recordOutcome,
  retract,
  say,
  settingsById,
  startAtMs,
  startStrand,
  tap,
  weighBowl,
} from './walks/rawTaps';

const [salon] = settingsById;
if (salon === undefined) throw new Error('no settings');

/** Plays taps three minutes apart, or so many milliseconds as stand between them. Throws at a refusal. */
function play(taps: readonly (RawEvent | number)[]): Consultation & { readonly atMs: number } {
  let [consultation, atMs] = [beginConsultation('story'), startAtMs];
  for (const each of taps) {
    atMs += typeof each === 'number' ? each : 3 * minuteMs;
    if (typeof each === 'number') continue;
    const context = {
      settings: salon as NonNullable<typeof salon>,
      settingsId: 0,
      atMs,
      by: 'Opal',
      inheritsStop: false,
    };
    const event = classify(consultation.record, each, context);
    if (!event.ok) throw new Error(`${each.type}: ${JSON.stringify(event.error)}`);
    const next = advance(consultation, event.value);
    if (!next.ok) throw new Error(`${each.type}: not now`);
    consultation = next.value;
  }
  return { ...consultation, atMs };
}

const confirm = (step: AskStep) => tap('STEP_CONFIRMED', { step });
const ends = { ...cleanAnswers, client: { ...cleanAnswers.client, reach: 'endsOut' } };
const opened = [
  tap('OPENED', { ticket: 'Q.F.', chair: '3' }),
  noteSkinTest(startAtMs, 49 * hourMs, 'nothing'),
];
const asked = [...opened, ...askSteps.flatMap((step) => [say(step, ends[step]), confirm(step)])];
const tested = [
  startStrand('lengths', '9'),
  tap('STRAND_TAKEN_OFF', { zone: 'lengths' }),
  recordOutcome('lengths'),
];
const mixed = [tap('DECIDED', { decision: 'asPlanned' })];

const box = { ...cleanAnswers.hotTools, history: ['unknownBoxColour'] };
const askedOfBox = [
  ...opened,
  say('client', ends.client),
  confirm('client'),
  say('hotTools', box),
  confirm('hotTools'),
  ...(['feelHair', 'heatSpray'] as const).flatMap((step) => [say(step, ends[step]), confirm(step)]),
  tap('INCOMPATIBILITY_STARTED'),
];
const readIt = tap('INCOMPATIBILITY_READ', { seen: 'nothing' });

test('the stories below are possible up to where they end', () => {
  expect(play([...asked, ...tested, ...mixed]).record.decision).not.toBeNull();
  expect(play([...askedOfBox, 31 * minuteMs, readIt]).record.incompatibility?.seen).toBe('nothing');
});

test('an outcome that was retracted and recorded anew is as old as the strand it was seen on', () => {
  const { record, atMs } = play([
    ...asked,
    ...tested,
    29 * dayMs,
    retract('lengths'),
    recordOutcome('lengths'),
    ...mixed,
  ]);
  const fresh = {
    ...record,
    skinTest: record.skinTest && { ...record.skinTest, putOnAtMs: atMs - 49 * hourMs },
  };
  expect(issuePermit(fresh, 'lengths', salon, atMs)).toMatchObject({ ok: false });
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
    tap('REOPENED', { step: 'hotTools' }),
    say('hotTools', cleanAnswers.hotTools),
    say('hotTools', box),
    ...back,
    31 * minuteMs,
    readIt,
  ]);
});

test('nothing is suggested on the strength of a strand that was used up', () => {
  const used = [
    ...(['BOWL_APPLIED', 'BOWL_RINSED'] as const).map((type) => tap(type, { zone: 'lengths' })),
    tap('REOPENED', { step: 'decision' }),
  ];
  const { record, atMs } = play([...asked, ...tested, ...mixed, weighBowl('lengths', '9', '25'), ...used]);
  expect(suggestFor(record, salon, atMs)).toBe('testAgain');
});

test('a log judged under settings this station never had is not trusted for its skin test', () => {
  const { log } = play([...asked, ...tested, ...mixed, weighBowl('lengths', '9', '25')]);
  const forged = log.map((event) =>
    event.type === 'SKIN_TEST_NOTED'
      ? { ...event, settingsId: 77, payload: { ...event.payload, seen: 'notReadYet' } }
      : { ...event, settingsId: 77 },
  );
  expect(replay('story', JSON.parse(JSON.stringify(forged)), (id) => settingsById[id])).toMatchObject({
    ok: false,
  });
});
