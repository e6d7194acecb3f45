import { findAnotherPlace, type Snip } from '../../shared/hair/whereToSnip';
import type { Decision } from '../../shared/judgement/decisions';
import { findLeastProven, suggestFor } from '../../shared/judgement/findings';
import { issuePermit } from '../../shared/judgement/permit';
import { listPlannedZones } from '../../shared/judgement/plannedZones';
import { planSnips } from '../../shared/judgement/planSnips';
import type { RuleId } from '../../shared/judgement/rules';
import { isIncompatibilityDue, isLifting, listOpenStops } from '../../shared/judgement/stops';
import { classify, type RawEvent } from '../../shared/records/classify';
import type { ConsultationRecord } from '../../shared/records/record';
import { INCOMPATIBILITY_MS } from '../../shared/records/reduce/answers';
import type { Settings } from '../../shared/records/settings';
import { askSteps } from '../../shared/records/steps';
import { type Zone, zones } from '../../shared/records/zones';
import { msPerMinute } from '../../shared/units/time';
import { advance, beginConsultation, type Consultation } from '../consultation/consultation';
import { lessonUnits, tellTruth } from './readTruth';
import { type Settled, usualMixes } from './settled';
import { seeSkinTest, seeStrand } from './strandSight';
import type { Sitting } from './strength';

/** What would have been known, and suggested, had every answer been true and every strand well snipped. */
export interface TrueCourse {
  readonly record: ConsultationRecord;
  readonly suggested: Decision;
  readonly stops: readonly RuleId[];
  readonly mayMix: readonly Zone[];
}

/** Looked at every so often, min: what suspect hair asks for. common practice, no source. */
const LOOK_EVERY_MIN = 3;

/** A course as far as it was played. */
interface Playing {
  readonly sitting: Sitting;
  readonly settled: Settled;
  readonly settings: Settings;
  readonly consultation: Consultation;
  readonly atMs: number;
}

/** One tap further, through the same doors as the trainee's; the same where it is refused: what stops her stops her here. */
function tap(playing: Playing, afterMs: number, raw: RawEvent): Playing {
  const { settings, consultation } = playing;
  const atMs = playing.atMs + afterMs;
  const context = { settings, settingsId: 0, atMs, by: 'truth', inheritsStop: false };
  const event = classify(consultation.record, raw, context);
  const next = event.ok ? advance(consultation, event.value) : null;
  return next?.ok === true ? { ...playing, consultation: next.value, atMs } : playing;
}

const suggest = ({ consultation, settings, atMs }: Playing): Decision =>
  suggestFor(consultation.record, settings, atMs);

function askTruly(begun: Playing): Playing {
  const { lesson } = begun.sitting;
  const { seat } = lesson;
  const seen = seeSkinTest(lesson, begun.atMs);
  const opened = tap(begun, 0, {
    type: 'OPENED',
    answers: { ticket: seat.ticket, chair: String(seat.chair) },
  });
  return askSteps.reduce((playing, step) => {
    const told = tellTruth(lesson, step);
    const answers = step === 'client' ? { ...told, ...begun.settled.plan } : told;
    const said = tap(playing, msPerMinute, { type: 'ANSWERED', step, answers });
    const noted =
      step === 'client' && seen !== null ? tap(said, 0, { type: 'SKIN_TEST_NOTED', answers: seen }) : said;
    return tap(noted, 0, { type: 'STEP_CONFIRMED', answers: { step } });
  }, opened);
}

/** A cutting is tried where it is due. */
function clearWay(asked: Playing): Playing {
  if (!isIncompatibilityDue(asked.consultation.record.answers)) return asked;
  const { glass } = asked.sitting.lesson.truth;
  const stands = tap(asked, 0, { type: 'INCOMPATIBILITY_STARTED' });
  return tap(stands, INCOMPATIBILITY_MS, { type: 'INCOMPATIBILITY_READ', answers: { seen: glass } });
}

/** One strand into its mix. */
function startStrand(before: Playing, zone: Zone, place: Snip['place']): Playing {
  const { record } = before.consultation;
  const lifts = isLifting(record.answers.client?.service ?? 'lighten');
  const mix = before.settled.findMix(zone) ?? usualMixes[lifts ? 'lift' : 'deposit'];
  return tap(before, 0, {
    type: 'STRAND_STARTED',
    answers: {
      zone,
      place,
      buildUp: 'washedOff',
      line: mix.line,
      developerPercent: String(Math.min(mix.developerPercent, before.settings.profile.ceilingPercent)),
      ratio: String(mix.ratio),
      heat: mix.heat,
      minutes: String(mix.minutes),
      makersLimitMin: String(mix.minutes),
      lookEveryMin: String(LOOK_EVERY_MIN),
    },
  });
}

/** When each strand that runs comes off, in order: when its time is up, or at the look that finds it broken. */
const listOff = ({ sitting, consultation }: Playing) =>
  consultation.record.strands
    .filter(({ ended }) => ended === null)
    .map(({ zone, atMs, minutes }) => {
      const looks = Array.from({ length: Math.floor(minutes / LOOK_EVERY_MIN) }, (_, look) => look + 1);
      const goneAtMs = [...looks.map((look) => look * LOOK_EVERY_MIN), minutes]
        .map((afterMin) => atMs + afterMin * msPerMinute)
        .find((lookMs) => seeStrand(sitting, consultation.record, zone, lookMs)?.hasGone);
      return { zone, hasGone: goneAtMs !== undefined, offAtMs: goneAtMs ?? atMs + minutes * msPerMinute };
    })
    .sort((one, other) => one.offAtMs - other.offAtMs);

/** Every strand that runs is looked at until it is off, and told as it came out. */
function watchAll(running: Playing): Playing {
  const off = listOff(running);
  const ended = off.reduce(
    (playing, { zone, hasGone, offAtMs }) =>
      tap(
        playing,
        offAtMs - playing.atMs,
        hasGone
          ? { type: 'STRAND_BROKE', answers: { zone } }
          : { type: 'STRAND_TAKEN_OFF', answers: { zone, why: 'timeIsUp' } },
      ),
    running,
  );
  return off.reduce((playing, { zone }) => tellOutcome(playing, zone), ended);
}

function tellOutcome(off: Playing, zone: Zone): Playing {
  const sight = seeStrand(off.sitting, off.consultation.record, zone, off.atMs);
  if (sight === null) return off;
  const { fibre, stretch, wentPast30, evenness } = sight;
  const shown = fibre === 'broken' ? {} : { level: String(sight.level), evenness };
  return tap(off, 0, { type: 'OUTCOME_RECORDED', answers: { zone, fibre, stretch, wentPast30, ...shown } });
}

/** One more strand of the zone that is least proven, from another place; the same where none is left, or none may start. */
function testAnother(before: Playing): Playing {
  const { record } = before.consultation;
  const place = findAnotherPlace(planSnips(record.answers), record.strands);
  const zone = findLeastProven(record, before.atMs)?.zone;
  if (place === null || zone === undefined) return before;
  const again = tap(before, 0, { type: 'DECIDED', answers: { decision: 'testAgain' } });
  const started = startStrand(again, zone, place);
  return started === again ? before : watchAll(started);
}

/** A strand of each zone where the map snips it, and one more while the table asks for it. */
function testAll(cleared: Playing): Playing {
  const { answers } = cleared.consultation.record;
  const snips = planSnips(answers);
  const started = listPlannedZones(answers.client?.reach).reduce((playing, zone) => {
    const snip = snips.find((each) => each.zone === zone);
    return snip === undefined ? playing : startStrand(playing, zone, snip.place);
  }, cleared);
  let tested = watchAll(started);
  let before = cleared;
  while (tested !== before && suggest(tested) === 'testAgain') {
    before = tested;
    tested = testAnother(before);
  }
  return tested;
}

/**
 * What would have come of it, had she told the truth and had every strand been snipped where it tells most?
 * Through the real judge, chart, fold, table and permit. The mix is the trainee's, if it is one that proves anything.
 * Checked in tests/machines/practice/trueCourse.test.ts.
 */
export function playTruth(sitting: Sitting, settings: Settings, atMs: number, settled: Settled): TrueCourse {
  const begun: Playing = {
    sitting,
    settled,
    settings: { ...settings, units: lessonUnits },
    consultation: beginConsultation('true'),
    atMs,
  };
  const tested = testAll(clearWay(askTruly(begun)));
  const suggested = suggest(tested);
  const decided = tap(tested, 0, { type: 'DECIDED', answers: { decision: suggested } });
  const { record } = decided.consultation;
  return {
    record,
    suggested,
    stops: listOpenStops(record, begun.settings),
    mayMix: zones.filter((zone) => issuePermit(record, zone, begun.settings, decided.atMs).ok),
  };
}
