import { findAnotherPlace } from '../../shared/hair/whereToSnip';
import { type Decision, isToBeSigned } from '../../shared/judgement/decisions';
import { findLeastProven, suggestFor } from '../../shared/judgement/findings';
import { listPlannedZones } from '../../shared/judgement/plannedZones';
import { planSnips } from '../../shared/judgement/planSnips';
import { isAbsoluteRule, isOfDecision, type RuleId } from '../../shared/judgement/rules';
import { isIncompatibilityDue, isLifting, listOpenStops } from '../../shared/judgement/stops';
import { classify, type RawEvent } from '../../shared/records/classify';
import type { Question } from '../../shared/records/form';
import { findAskForm } from '../../shared/records/forms/askedHere';
import { isAsked } from '../../shared/records/isAsked';
import type { Raw, RawForm } from '../../shared/records/readForm';
import type { ConsultationRecord } from '../../shared/records/record';
import { defaultSettings, type Settings } from '../../shared/records/settings';
import { type AskStep, askSteps } from '../../shared/records/steps';
import type { Zone } from '../../shared/records/zones';
import { advance, beginConsultation, type Consultation } from '../consultation/consultation';
import { hear, writeHeard } from './asking';
import type { Lesson } from './lesson';
import type { Trainee } from './perfectTrainee';
import { digestLesson, PRACTICE_VERSION, type PracticeEvent } from './practiceEvent';
import { settleLesson } from './practiceRoom';
import { seeGlass, seeSkinTest, seeStrand } from './strandSight';

const minute = 60_000;
/** Every such sitting begins at one moment: 2026-03-03 09:00 UTC. */
export const beganAtMs = 1_772_528_400_000;

export interface Sat {
  readonly practiceLog: readonly PracticeEvent[];
  readonly consultation: Consultation;
  readonly settings: Settings;
  /** Taps that were refused, for whoever reads a failure. */
  readonly refused: readonly string[];
}

type Payload = Extract<PracticeEvent, { type: 'LESSON_BEGUN' }>['payload'];

/**
 * One sitting as somebody like this would play it, tap by tap through the real judge and chart: a lesson that is brought in
 * is tried by it. Checked in tests/machines/practice/trainees.test.ts.
 */
export function sitThrough(
  lesson: Lesson,
  trainee: Trainee,
  seed: number,
  house: Settings = defaultSettings,
): Sat {
  const settings = settleLesson(lesson, house);
  const sitting = { lesson, seed };
  const practiceLog: PracticeEvent[] = [];
  const refused: string[] = [];
  let consultation = beginConsultation('practice0sitting');
  let atMs = beganAtMs;

  const note = (event: Pick<PracticeEvent, 'type' | 'payload'>) =>
    practiceLog.push({ v: PRACTICE_VERSION, atMs, by: 'Trainee', ...event } as PracticeEvent);
  const record = (): ConsultationRecord => consultation.record;
  const suggest = (): Decision => suggestFor(record(), settings, atMs);

  function tap(afterMs: number, raw: RawEvent): boolean {
    atMs += afterMs;
    const context = { settings, settingsId: 0, atMs, by: 'Trainee', inheritsStop: false };
    const event = classify(record(), raw, context);
    const next = event.ok ? advance(consultation, event.value) : null;
    if (next?.ok !== true) {
      refused.push(`${raw.type} ${JSON.stringify(event.ok ? next : event.error)}`);
      return false;
    }
    consultation = next.value;
    return true;
  }

  function ask(step: AskStep): void {
    const raw: Record<string, Raw> = {};
    for (const [name, question] of Object.entries(findAskForm(step, settings.profile))) {
      if (!isAsked(question as Question, raw, { hasAgeLine: settings.profile.ageLine !== null })) continue;
      const path = `${step}.${name}`;
      const isCloser = trainee.asksCloser(path);
      if (isCloser) note({ type: 'ASKED_CLOSER', payload: { path } });
      const heard = writeHeard(path, hear(lesson, path, isCloser).means, settings.units);
      raw[name] = trainee.writes(question as Question, heard);
    }
    const told = step === 'heatSpray' ? trainee.finishes(raw as RawForm) : (raw as RawForm);
    tap(minute, { type: 'ANSWERED', step, answers: told });
  }

  function refuse(): void {
    tap(minute, { type: 'WE_SAID_NO', answers: { reason: 'notSafeToday' } });
  }

  function test(zone: Zone, place: string): boolean {
    const lifts = isLifting(record().answers.client?.service ?? '');
    const mix = lifts
      ? { line: 'Sandbar powder', developerPercent: '6', ratio: '2', minutes: '30' }
      : { line: 'Sandbar cream', developerPercent: '3', ratio: '1', minutes: '20' };
    return tap(minute, {
      type: 'STRAND_STARTED',
      answers: {
        ...{ zone, place: trainee.place ?? place, buildUp: 'washedOff', heat: 'none', ...mix },
        ...{ makersLimitMin: '45', lookEveryMin: '3' },
      },
    });
  }

  /** All that run are looked at together until the last is off. */
  function watch(): void {
    const running = () => record().strands.filter(({ ended }) => ended === null);
    for (let min = 0; running().length > 0 && min < 60; min += 1) {
      atMs += minute;
      for (const strand of running()) {
        const clock = record().clocks.find(({ id }) => id === strand.clock);
        const sight = seeStrand(sitting, record(), strand.zone, atMs);
        const since = (atMs - strand.atMs) / minute;
        const isLook = trainee.looks && since >= 2 && Math.floor(since - 2) % 3 === 0;
        const { zone } = strand;
        if (sight === null || clock === undefined) throw new Error('a strand that nobody sees');
        if (isLook && sight.hasGone) tap(0, { type: 'STRAND_BROKE', answers: { zone } });
        else if (atMs >= clock.dueAtMs)
          tap(0, { type: 'STRAND_TAKEN_OFF', answers: { zone, why: 'timeIsUp' } });
        else if (isLook) {
          const { level, feel } = sight;
          const undertone = sight.hasUndertone ? sight.undertone : 'unknown';
          const look = { of: 'strand', zone, level: String(level), undertone, feel };
          tap(0, { type: 'LOOKED', answers: look });
        }
      }
    }
  }

  function tell(): void {
    for (const strand of record().strands.filter(
      ({ ended, outcome }) => ended !== null && outcome === null,
    )) {
      const seen = seeStrand(sitting, record(), strand.zone, atMs);
      if (seen === null) throw new Error('a strand that nobody sees');
      const { fibre, stretch, wentPast30, level, evenness } = trainee.tells(seen);
      const shown = fibre === 'broken' ? {} : { level: String(level), evenness };
      const { zone } = strand;
      tap(0, { type: 'OUTCOME_RECORDED', answers: { zone, fibre, stretch, wentPast30, ...shown } });
    }
  }

  function testAll(): boolean {
    const { answers } = record();
    const snips = planSnips(answers);
    const started = listPlannedZones(answers.client?.reach).filter((zone) =>
      test(zone, snips.find((snip) => snip.zone === zone)?.place ?? 'crown'),
    );
    if (started.length === 0) return false;
    watch();
    tell();
    for (let more = 0; more < 3 && trainee.decides(suggest()) === 'testAgain'; more += 1) {
      const place = findAnotherPlace(snips, record().strands);
      const zone = findLeastProven(record(), atMs)?.zone;
      if (place === null || zone === undefined) break;
      tap(minute, { type: 'DECIDED', answers: { decision: 'testAgain' } });
      if (!test(zone, place)) break;
      watch();
      tell();
    }
    return true;
  }

  function decide(): void {
    const suggested = suggest();
    const decision = trainee.decides(suggested);
    if (decision === 'weSayNo') {
      refuse();
      return;
    }
    if (isToBeSigned(decision, suggested)) lift('judgement.freerThanSuggested');
    tap(minute, { type: 'DECIDED', answers: { decision } });
  }

  function lift(rule: RuleId): void {
    tap(0, { type: 'OVERRIDDEN', answers: { rule, code: 'knowsHerHair', words: 'She wants it so' } });
  }

  /** null: nothing stands in the way of a strand. */
  function clearWay(): 'refused' | null {
    const open = listOpenStops(record(), settings);
    if (open.some((rule) => isAbsoluteRule(rule) || !trainee.lifts(rule))) return 'refused';
    for (const rule of open.filter((each) => !isOfDecision(each))) lift(rule);
    if (!isIncompatibilityDue(record().answers)) return null;
    tap(0, { type: 'INCOMPATIBILITY_STARTED' });
    atMs += 30 * minute;
    const seen = seeGlass(lesson, record(), atMs) ?? 'nothing';
    tap(0, { type: 'INCOMPATIBILITY_READ', answers: { seen } });
    return seen === 'reacted' ? 'refused' : null;
  }

  function goThrough(): void {
    tap(0, { type: 'OPENED', answers: { ticket: lesson.seat.ticket, chair: String(lesson.seat.chair) } });
    for (const step of askSteps) {
      ask(step);
      const skinTest = step === 'client' ? seeSkinTest(lesson, beganAtMs) : null;
      if (skinTest !== null)
        tap(0, { type: 'SKIN_TEST_NOTED', answers: { ...skinTest, seen: trainee.reads(skinTest.seen) } });
      if (listOpenStops(record(), settings).some(isAbsoluteRule)) {
        refuse();
        return;
      }
      if (!tap(0, { type: 'STEP_CONFIRMED', answers: { step } })) return;
    }
    if (clearWay() === 'refused') refuse();
    else if (testAll()) decide();
  }

  const begun: Payload = { lessonId: lesson.id, seed, isExam: false, digest: digestLesson(lesson) };
  note({ type: 'LESSON_BEGUN', payload: begun });
  goThrough();
  note({ type: 'LESSON_ENDED', payload: { how: 'finished' } });
  return { practiceLog, consultation, settings, refused };
}
