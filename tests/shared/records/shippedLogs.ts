import { returningGloss } from '../../../seeds/returningGloss';
import { salon } from '../../../seeds/salon';
import { classify, type RawEvent } from '../../../shared/records/classify';
import { digest } from '../../../shared/records/documents/canonical';
import type { ConsultationEvent } from '../../../shared/records/event';
import type { RawForm } from '../../../shared/records/readForm';
import { beginRecord, type ConsultationRecord } from '../../../shared/records/record';
import { reduce } from '../../../shared/records/reduce';
import type { Settings } from '../../../shared/records/settings';
import {
  correct,
  hourMs,
  minuteMs,
  noteSkinTest,
  override,
  recordOutcome,
  retract,
  say,
  settingsById,
  startAtMs,
  startStrand,
  tap,
  weighBowl,
} from '../../machines/consultation/walks/rawTaps';
import {
  answersOf,
  ask,
  confirm,
  decide,
  opened,
  play,
  reopen,
  type Told,
  tested,
} from '../../machines/consultation/walks/story';
import { askAgain, carry, settings as glossSalon } from './returning';
import { story, tell } from './telling';

/** A log as a model version wrote it, under which settings, and the record it makes. All of it invented. */
export interface ShippedLog {
  readonly name: string;
  readonly settings: Settings;
  readonly log: readonly ConsultationEvent[];
  readonly record: ConsultationRecord;
}

const zone = { zone: 'lengths' };
const client = (change: RawForm) => say('client', { ...answersOf().client, ...change });
const again = (['client', 'hotTools', 'feelHair', 'heatSpray'] as const).map(confirm);
const toner = {
  ...{ ...zone, line: 'Sandbar cream', developerPercent: '1.5', ratio: '2', minutes: '10' },
  shades: [{ shade: 'Toner', parts: '1' }],
};
const whole = weighBowl('lengths', '9', '20');

/** Stopped, corrected, judged, tested twice, thrown, applied, given more time and rinsed, then toned. */
const winding: readonly Told[] = [
  ...opened,
  correct('skinTest'),
  noteSkinTest(startAtMs, 49 * hourMs, 'nothing'),
  client({ reactions: ['hives'] }),
  correct('client'),
  client({ reactions: ['tingled'] }),
  ...ask({ client: { reactions: ['tingled'] }, hotTools: { history: ['unknownBoxColour'] } }),
  override('judgement.tingled'),
  tap('INCOMPATIBILITY_STARTED'),
  30 * minuteMs,
  tap('INCOMPATIBILITY_READ', { seen: 'nothing' }),
  startStrand('lengths', '9'),
  tap('STRAND_DISCARDED', { ...zone, why: 'wrongPlace' }),
  ...tested('lengths', '9', 'gummy'),
  retract('lengths'),
  recordOutcome('lengths'),
  reopen('client'),
  ...again,
  tap('OUTCOME_KEPT'),
  tap('PARKED', { untilAtMs: startAtMs + 48 * hourMs }),
  hourMs,
  tap('RESUMED'),
  decide('asPlanned'),
  whole,
  tap('BOWL_THROWN', zone),
  whole,
  tap('BOWL_APPLIED', { ...zone, skinFirst: 'calm' }),
  tap('BOWL_ALL_ON', zone),
  tap('LOOKED', { of: 'head', ...zone, stinging: 'yes' }),
  tap('NO_REACTION'),
  tap('CLOCK_EXTENDED', { clock: 'head-lengths-2', minutes: '2', reason: 'greyResists' }),
  tap('ALARM_ACKNOWLEDGED', { clock: 'head-lengths-2' }),
  tap('CLOCK_CORRECTED', { shiftMs: String(-hourMs) }),
  tap('BOWL_RINSED', zone),
  tap('STRETCH_NOTED', { ...zone, stretch: 'springsBack', before: 'stands' }),
  tap('TONER_WEIGHED', toner),
  tap('BOWL_APPLIED', { ...zone, skinFirst: 'calm' }),
  tap('BOWL_RINSED', zone),
  tap('FINISHED'),
  tap('PLAN_GIVEN', {
    settingC: '320',
    back: 'weeks6',
    skinNow: 'calm',
    toolsNow: 'offCooling',
    cardNow: 'printed',
    lateItching: 'saidItBack',
  }),
];

const reaction: readonly Told[] = [
  ...opened,
  ...ask(),
  ...tested('lengths'),
  tap('PLAN_CHANGED'),
  tap('REACTION_SUSPECTED'),
  tap('REACTION_RECORDED', { signs: ['hives'] }),
  tap('CARE_GIVEN', { care: 'rinsedAndDoctor' }),
];

/** A gloss that stood on the strand of an earlier visit. */
function carriedOver(): ShippedLog {
  const asked = askAgain();
  const rest = returningGloss.steps.slice(
    returningGloss.steps.findIndex(({ raw }) => raw.type === carry.type),
  );
  const { log, record } = tell(rest, glossSalon, asked);
  return { name: 'carried', settings: glossSalon, log, record: { ...record, id: 'carried' } };
}

/** A stop that was handed on, and lifted by name: by the station's own words, which stops that speaks for. */
function handedOn(): ShippedLog {
  const entry = digest({ told: 'by an entry of that record' });
  const speaksFor = [{ record: 'earlier1', stop: 'client.reactions.hives', entry }];
  const corrected = correct('inherited');
  const raws: readonly RawEvent[] = [
    tap('OPENED', { ticket: 'Q.F.', chair: '3' }),
    { ...corrected, answers: { ...corrected.answers, speaksFor } } as RawEvent,
    tap('CALLED_OFF', { reason: 'noTime' }),
  ];
  let record = beginRecord('handedOn');
  const log = raws.map((raw, index) => {
    const atMs = startAtMs + index * minuteMs;
    const context = { settings: salon, settingsId: 0, atMs, by: 'Opal', inheritsStop: true, isStation: true };
    const event = classify(record, raw, context);
    if (!event.ok) throw new Error(`${raw.type}: ${JSON.stringify(event.error)}`);
    record = reduce(record, event.value);
    return event.value;
  });
  return { name: 'handedOn', settings: salon, log, record };
}

const endings = {
  CALLED_OFF: 'noTime',
  WE_SAID_NO: 'hairTooWeak',
  CLIENT_SAID_NO: 'changedHerMind',
} as const;

const played = (name: string, told: readonly Told[]): ShippedLog => {
  const { log, record } = play(told);
  return { name, settings: settingsById[0] ?? salon, log, record: { ...record, id: name } };
};

/** The logs that a model version leaves behind for every version after it, as today's code writes them. */
export const makeShippedLogs = (): readonly ShippedLog[] => [
  {
    name: 'ironedWet',
    settings: salon,
    log: tell(story).log,
    record: { ...tell(story).record, id: 'ironedWet' },
  },
  played('winding', winding),
  played('reaction', reaction),
  carriedOver(),
  handedOn(),
  ...Object.entries(endings).map(([type, reason]) =>
    played(type, [...opened, ...ask(), tap(type as keyof typeof endings, { reason })]),
  ),
];
