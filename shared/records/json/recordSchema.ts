import * as v from 'valibot';
import { decisions } from '../../judgement/decisions';
import { ruleIds } from '../../judgement/rules';
import type { Clock } from '../clock';
import { eventForms } from '../forms/byEvent';
import { grades } from '../gradeOutcome';
import { answersSchema, lastTimeSchema } from '../lastTime';
import {
  type BowlRecord,
  type ConsultationRecord,
  endings,
  type IncompatibilityRecord,
  type StrandRecord,
} from '../record';
import { schemaOfForm } from '../schema';
import { correctables } from '../steps';
import { zones } from '../zones';

/** Every member of this type, each by its schema: one that is forgotten does not compile. */
type Of<T> = { readonly [N in keyof T]: v.GenericSchema };

export const moment = v.pipe(v.number(), v.safeInteger(), v.description('ms since 1970-01-01 UTC'));
const count = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const figure = v.pipe(v.number(), v.minValue(0));
const text = v.string();
const either = v.boolean();
const zone = v.picklist(zones);
const moments = v.array(moment);
const stamp = { atMs: moment, by: text, seq: count };

const clock = v.strictObject({
  id: text,
  kind: v.picklist(['strand', 'head', 'incompatibility', 'dry']),
  zone: v.nullable(zone),
  startedAtMs: moment,
  looks: v.nullable(v.strictObject({ firstAfterMs: figure, everyMs: figure })),
  dueAtMs: moment,
  limitAtMs: moment,
  lookedAtMs: moments,
  acknowledgedAtMs: v.nullable(moment),
  endedAtMs: v.nullable(moment),
} satisfies Of<Clock>);

const look = schemaOfForm(eventForms.LOOKED, 'whole', stamp);
const outcome = schemaOfForm(eventForms.OUTCOME_RECORDED, 'whole', { ...stamp, grade: v.picklist(grades) });
const carried = v.strictObject({ fromId: text, maxDeveloperPercent: figure, maxMinutes: figure });

const strand = schemaOfForm(eventForms.STRAND_STARTED, 'whole', {
  ...stamp,
  number: count,
  clock: text,
  planKey: text,
  looks: v.array(look),
  missedLooksAtMs: moments,
  why: v.nullable(text),
  ended: v.nullable(v.strictObject({ ...stamp, how: v.picklist(['takenOff', 'broke', 'discarded']) })),
  minutesOn: v.nullable(count),
  outcome: v.nullable(outcome),
  retracted: v.nullable(v.picklist(grades)),
  carried: v.nullable(carried),
  isVoid: either,
} satisfies Partial<Of<StrandRecord>>);

const mix = v.strictObject({
  line: text,
  developerPercent: figure,
  ratio: figure,
  heat: text,
  minutes: figure,
});
const proof = v.strictObject({
  tested: mix,
  grade: v.picklist(grades),
  outcomeSeq: count,
  decisionSeq: count,
  decision: v.picklist(decisions),
  carried: v.nullable(v.strictObject({ strandAtMs: moment, service: text })),
});
const bowl = schemaOfForm(eventForms.BOWL_WEIGHED, 'whole', {
  ...stamp,
  kind: v.picklist(['tested', 'toner']),
  strand: count,
  proof: v.nullable(proof),
  toner: v.nullable(v.strictObject({ stretch: text, stretchSeq: count, rinsedSeq: count })),
  maxMinutes: figure,
  state: v.picklist(['weighed', 'on', 'rinsed', 'thrown']),
  isSkinNotCalm: either,
  clock: v.nullable(text),
  allOnAtMs: v.nullable(moment),
  rinsedSeq: v.nullable(count),
  looks: v.array(look),
  missedLooksAtMs: moments,
} satisfies Partial<Of<BowlRecord>>);

const override = v.strictObject({ ...stamp, rule: v.picklist(ruleIds), code: text, words: text });
const ofCutting = {
  ...stamp,
  seen: v.picklist(['running', 'nothing', 'reacted']),
  historyKey: text,
  keptSinceMs: v.nullable(moment),
} satisfies Of<IncompatibilityRecord>;

const members = {
  id: text,
  ticket: text,
  chair: count,
  stylist: text,
  opened: v.nullable(v.strictObject(stamp)),
  inheritedStop: either,
  lastTime: v.nullable(lastTimeSchema),
  answers: answersSchema,
  todayAtMs: v.nullable(moment),
  dampSinceMs: v.nullable(moment),
  stretchAtMs: v.nullable(moment),
  skinTest: v.nullable(
    schemaOfForm(eventForms.SKIN_TEST_NOTED, 'whole', { ...stamp, readAtMs: moment, olderByMs: figure }),
  ),
  notHerSkinTests: v.array(text),
  incompatibility: v.nullable(v.strictObject(ofCutting)),
  overrides: v.array(override),
  judged: v.array(override),
  corrections: v.array(
    v.strictObject({
      ...stamp,
      answer: v.picklist(correctables),
      code: text,
      words: text,
      speaksFor: v.exactOptional(v.array(v.strictObject({ record: text, stop: text, entry: text }))),
    }),
  ),
  strands: v.array(strand),
  decision: v.nullable(
    v.strictObject({
      ...stamp,
      decision: v.picklist(decisions),
      suggested: v.picklist(decisions),
      planKey: text,
    }),
  ),
  bowls: v.array(bowl),
  stretches: v.array(schemaOfForm(eventForms.STRETCH_NOTED, 'whole', stamp)),
  clocks: v.array(clock),
  parked: v.nullable(v.strictObject({ atMs: moment, untilAtMs: moment })),
  reaction: v.nullable(v.strictObject({ ...stamp, signs: v.array(text), care: v.nullable(text) })),
  dismissed: v.array(
    v.strictObject({ ...stamp, why: text, suspected: v.strictObject({ atMs: moment, by: text }) }),
  ),
  plan: v.nullable(schemaOfForm(eventForms.PLAN_GIVEN, 'whole', stamp)),
  ended: v.nullable(v.strictObject({ ...stamp, how: v.picklist(endings), reason: v.nullable(text) })),
  modelVersion: count,
  nextSeq: count,
  newestAtMs: moment,
} satisfies Of<ConsultationRecord>;

/**
 * What a record of a file says, member by member: for whoever reads the file, never for the station, which folds the log
 * anew. Nothing that the station writes is left out. Checked in tests/shared/records/json/consultationSchema.test.ts.
 */
export const recordSchema: v.GenericSchema = v.strictObject(members);
