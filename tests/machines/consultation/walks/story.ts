import {
  advance,
  beginConsultation,
  type Consultation,
} from '../../../../machines/consultation/consultation';
import { replay } from '../../../../machines/consultation/replay';
import { classify, type RawEvent } from '../../../../shared/records/classify';
import type { RawForm } from '../../../../shared/records/readForm';
import { type AskStep, askSteps } from '../../../../shared/records/steps';
import type { Zone } from '../../../../shared/records/zones';
import { tellOpenQuestions } from '../../../shared/records/openQuestions';
import {
  cleanAnswers,
  findSettings,
  hourMs,
  minuteMs,
  noteSkinTest,
  recordOutcome,
  say,
  startAtMs,
  startStrand,
  tap,
} from './rawTaps';

/** A tap, or so many milliseconds more before the next one. */
export type Told = RawEvent | number;
/** A consultation and the time it is there. */
export type Scene = Consultation & { readonly atMs: number };

const settings = findSettings(0);

const send = ({ atMs, ...consultation }: Scene, raw: RawEvent) => {
  const context = { settings, settingsId: 0, atMs, by: 'Opal', inheritsStop: false };
  const event = classify(consultation.record, raw, context);
  return event.ok ? advance(consultation, event.value) : event;
};

/** Clocks that a story sets back take the time of the story with them. */
const shiftOf = (raw: RawEvent): number =>
  raw.type === 'CLOCK_CORRECTED' ? Number(raw.answers?.shiftMs) : 0;

/** Plays taps three minutes apart, or later by so many milliseconds as stand before them. Throws at a refusal. */
export function play(story: readonly Told[]): Scene {
  let scene: Scene = { ...beginConsultation('story'), atMs: startAtMs };
  for (const told of story) {
    scene = { ...scene, atMs: scene.atMs + (typeof told === 'number' ? told : 3 * minuteMs + shiftOf(told)) };
    if (typeof told === 'number') continue;
    const next = send(scene, told);
    if (!next.ok) {
      const open = tellOpenQuestions(scene.record.answers, settings);
      throw new Error(`${told.type}: ${JSON.stringify(next.error)}; ${open}`);
    }
    scene = { ...next.value, atMs: scene.atMs };
  }
  return scene;
}

/** Why this tap is refused after this story, as one text; 'taken' when it is not. */
export function tryAfter(story: readonly Told[], raw: RawEvent, afterMs = minuteMs): string {
  const scene = play(story);
  const next = send({ ...scene, atMs: scene.atMs + afterMs }, raw);
  return next.ok ? 'taken' : JSON.stringify(next.error);
}

/** Is the log of this story taken up at the next start? Why not, or 'taken up'. */
export function restart(story: readonly Told[]): string {
  const again = replay('story', JSON.parse(JSON.stringify(play(story).log)), findSettings);
  return again.ok ? 'taken up' : JSON.stringify(again.error);
}

type Answers = { readonly [S in AskStep]?: RawForm };
export const confirm = (step: AskStep): RawEvent => tap('STEP_CONFIRMED', { step });
export const reopen = (step: string): RawEvent => tap('REOPENED', { step });
export const decide = (decision: string): RawEvent => tap('DECIDED', { decision });
export const opened: readonly Told[] = [
  tap('OPENED', { ticket: 'Q.F.', chair: '3' }),
  noteSkinTest(startAtMs, 49 * hourMs, 'nothing'),
];
/** Every step answered and confirmed; `change` names what is said otherwise. Lengths alone, unless said. */
export const ask = (change: Answers = {}): readonly Told[] =>
  askSteps.flatMap((step) => [say(step, answersOf(change)[step]), confirm(step)]);
export const answersOf = (change: Answers = {}) => ({
  client: { ...cleanAnswers.client, reach: 'endsOut', ...change.client },
  hotTools: { ...cleanAnswers.hotTools, ...change.hotTools },
  feelHair: { ...cleanAnswers.feelHair, ...change.feelHair },
  heatSpray: { ...cleanAnswers.heatSpray, ...change.heatSpray },
});
/** A strand that was on for 25 minutes, and what it said. */
export const tested = (zone: Zone, percent = '9', fibre = 'sound'): readonly Told[] => [
  startStrand(zone, percent),
  22 * minuteMs,
  tap('STRAND_TAKEN_OFF', { zone }),
  recordOutcome(zone, fibre),
];
