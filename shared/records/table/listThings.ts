import { msPerMinute, msPerSecond } from '../../units/time';
import type { BowlRecord, ConsultationRecord, Stamp, StrandRecord } from '../record';
import type { ColumnName } from './columns';

/** What a row has to say, in canonical units; moments in ms since 1970-01-01 UTC. */
export type Said = Partial<
  Record<ColumnName, string | number | readonly string[] | readonly number[] | null | undefined>
>;

/** One thing that was told or done. */
export interface Thing {
  readonly kind: 'visit' | 'strand' | 'look' | 'bowl' | 'lifted' | 'correction' | 'reaction';
  readonly stamp: Stamp | null;
  readonly said: Said;
}

type Looked = StrandRecord | BowlRecord;

const mixOf = ({ line, batch, developerPercent, ratio, heat, minutes }: Looked): Said => ({
  ...{ line, batch, ratio, heat, minutes },
  developer: developerPercent,
});

const looksOf = ({ looks }: Looked): readonly Thing[] =>
  looks.map((look, index) => {
    const { of, zone, level, undertone, feel, stinging, hair } = look;
    const said = { number: index + 1, what: of, zone, level, undertone, feel, stinging, hair };
    return { kind: 'look', stamp: look, said };
  });

/** How long past its time did it come off, s? Null while its clock runs, and where it has none. */
function countOverS({ clocks }: ConsultationRecord, id: string | null): number | null {
  const clock = clocks.find((each) => each.id === id);
  if (clock?.endedAtMs == null) return null;
  return Math.max(0, Math.floor((clock.endedAtMs - clock.dueAtMs) / msPerSecond));
}

function listOfStrand(record: ConsultationRecord, strand: StrandRecord): readonly Thing[] {
  const { number, zone, minutesOn, ended, outcome, missedLooksAtMs, clock } = strand;
  const said: Said = {
    ...mixOf(strand),
    ...{ number, zone, minutesOn, what: ended?.how, ended: ended?.atMs },
    ...{ over: countOverS(record, clock), missedLooks: missedLooksAtMs.length },
    ...{ fibre: outcome?.fibre, stretch: outcome?.stretch, evenness: outcome?.evenness },
    ...{ level: outcome?.level, grade: outcome?.grade },
  };
  return [{ kind: 'strand', stamp: strand, said }, ...looksOf(strand)];
}

function listOfBowl(record: ConsultationRecord, bowl: BowlRecord, index: number): readonly Thing[] {
  const { zone, kind, state, shades, bottles = [], weighed = [], colourG, missedLooksAtMs } = bowl;
  const { startedAtMs, endedAtMs = null } = record.clocks.find(({ id }) => id === bowl.clock) ?? {};
  const isOff = startedAtMs !== undefined && endedAtMs !== null;
  const said: Said = {
    ...mixOf(bowl),
    ...{ number: index + 1, zone, what: `${kind} ${state}`, ended: endedAtMs, colour: colourG },
    shades: shades.map(({ shade, parts }) => `${shade} ${parts}`),
    bottles: bottles.map(({ percent }) => percent),
    weighed: weighed.map(({ amountG }) => amountG),
    minutesOn: isOff ? Math.floor((endedAtMs - startedAtMs) / msPerMinute) : null,
    ...{ over: countOverS(record, bowl.clock), missedLooks: missedLooksAtMs.length },
  };
  return [{ kind: 'bowl', stamp: bowl, said }, ...looksOf(bowl)];
}

function tellVisit({ answers, opened, ended, decision, plan }: ConsultationRecord): Thing {
  const { service, reach, targetLevel } = answers.client ?? {};
  const said: Said = {
    ...{ what: ended?.how ?? 'open', ended: ended?.atMs, code: ended?.reason },
    ...{ service, reach, targetLevel, suggested: decision?.suggested, decision: decision?.decision },
    ...{ setting: plan?.settingC, rest: plan?.restH, back: plan?.back },
  };
  return { kind: 'visit', stamp: opened, said };
}

function listNotes({ judged, corrections, dismissed, reaction }: ConsultationRecord): readonly Thing[] {
  const lifted = judged.map((stamp): Thing => {
    const { rule, code, words } = stamp;
    return { kind: 'lifted', stamp, said: { what: rule, code, words } };
  });
  const corrected = corrections.map((stamp): Thing => {
    const { answer, code, words } = stamp;
    return { kind: 'correction', stamp, said: { what: answer, code, words } };
  });
  const none = dismissed.map((stamp): Thing => {
    return { kind: 'reaction', stamp, said: { what: 'none', code: stamp.why } };
  });
  if (reaction === null) return [...lifted, ...corrected, ...none];
  const said = { what: 'recorded', words: reaction.signs };
  return [...lifted, ...corrected, ...none, { kind: 'reaction', stamp: reaction, said }];
}

/** The visit, and then all that was told or done in it, in the order of the log. */
export function listThings(record: ConsultationRecord): readonly Thing[] {
  const things = [
    ...record.strands.flatMap((strand) => listOfStrand(record, strand)),
    ...record.bowls.flatMap((bowl, index) => listOfBowl(record, bowl, index)),
    ...listNotes(record),
  ];
  const place = ({ stamp }: Thing): number => stamp?.seq ?? 0;
  return [tellVisit(record), ...things.sort((one, other) => place(one) - place(other))];
}
