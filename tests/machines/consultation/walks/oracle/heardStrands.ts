import type { EventOf } from '../../../../../shared/records/event';
import type { LastZone } from '../../../../../shared/records/lastTime';
import type { Zone } from '../../../../../shared/records/zones';

const minuteMs = 60_000;
const dayMs = 86_400_000;
/** An outcome stands for four weeks (ASSUMED). */
const outcomeDays = 28;
/** A carried one for twelve weeks after the strand itself (ASSUMED). */
export const carriedDays = 84;
/** Developers there are bottles of, per cent; the strongest for a smaller lift (common practice). */
const bottles = [1.5, 3, 6, 9, 12];
const smallerLiftPercent = 6;
/** Lightener that lies on the scalp: 20 vol, no dry heat (common practice). */
const onScalpPercent = 6;
/** A mix is gentler from one bottle of 3 % down, or from three quarters of the time (ASSUMED). */
const gentler = { byPercent: 3, ofTime: 0.75 };
const heats = ['none', 'foil', 'dryHeat'];

export type Mix = Pick<
  EventOf<'STRAND_STARTED'>['payload'],
  'line' | 'developerPercent' | 'ratio' | 'heat' | 'minutes'
>;

export interface Strand {
  readonly zone: Zone;
  readonly mix: Mix;
  readonly plan: string;
  readonly startedAtMs: number;
  /** For how long its clock was set, more time included, and the longest the maker allows. */
  setMin: number;
  readonly makersLimitMin: number;
  /** When it came off or broke, on a clock that nobody moved; null while it runs. */
  endedAtMs: number | null;
  hasBroken: boolean;
  hasWeakened: boolean;
  /** An outcome worse than sound was recorded and taken back by name. */
  wasRecordedWeak: boolean;
  /** Worst of what was seen; null before it is recorded, after it is retracted, and once it is put aside. */
  grade: 'sound' | 'rough' | 'bad' | null;
  isVoid: boolean;
  isUsed: boolean;
  isAside: boolean;
  /** What was on the head last time, where its outcome was carried: never more than that. */
  readonly most: Mix | null;
}

/** Two names of a line are one however they are typed. */
export const isSameName = (one: string, other: string): boolean => {
  const bare = (name: string) =>
    name
      .normalize('NFKC')
      .replaceAll(/\p{Cf}/gu, '')
      .trim()
      .toLowerCase();
  return bare(one).split(/\s+/u).join(' ') === bare(other).split(/\s+/u).join(' ');
};

/** Whole minutes it was really on, never beyond what its clock was set to. */
export const countMinutes = ({ startedAtMs, endedAtMs, setMin }: Strand): number =>
  endedAtMs === null ? 0 : Math.floor(Math.min((endedAtMs - startedAtMs) / minuteMs, setMin));

/** The mix for as long as it was really on: this is what a strand proves. */
const proven = (strand: Strand): Mix => ({ ...strand.mix, minutes: countMinutes(strand) });

const isNoGentler = (mix: Mix, than: Mix): boolean =>
  isSameName(mix.line, than.line) &&
  mix.developerPercent > than.developerPercent - gentler.byPercent &&
  mix.minutes > than.minutes * gentler.ofTime &&
  heats.indexOf(mix.heat) >= heats.indexOf(than.heat);

/** Strands in the order they were started. */
export function makeHeardStrands() {
  const strands: Strand[] = [];
  const newest = (zone: Zone): Strand | undefined => strands.findLast((strand) => strand.zone === zone);

  const listBad = (zone: Zone): readonly Strand[] =>
    strands.filter((strand) => strand.zone === zone && (strand.hasBroken || strand.grade === 'bad'));

  return {
    all: strands,
    newest,
    start: (payload: EventOf<'STRAND_STARTED'>['payload'], plan: string, atMs: number): void => {
      strands.push({
        zone: payload.zone,
        mix: payload,
        plan,
        startedAtMs: atMs,
        setMin: payload.minutes,
        makersLimitMin: payload.makersLimitMin,
        endedAtMs: null,
        hasBroken: false,
        hasWeakened: false,
        wasRecordedWeak: false,
        grade: null,
        isVoid: false,
        isUsed: false,
        isAside: false,
        most: null,
      });
    },
    carry: ({ bowl, strand, minutesOn, grade, strandAtMs }: LastZone, plan: string): void => {
      strands.push({
        zone: bowl.zone,
        mix: { ...strand, heat: bowl.heat },
        plan,
        startedAtMs: strandAtMs - minutesOn * minuteMs,
        setMin: minutesOn,
        makersLimitMin: minutesOn,
        endedAtMs: strandAtMs,
        hasBroken: false,
        hasWeakened: false,
        wasRecordedWeak: false,
        grade,
        isVoid: false,
        isUsed: false,
        isAside: false,
        most: bowl,
      });
    },
    /** Did this mix, or one no stronger, fail on this length? */
    isClosed: (zone: Zone, mix: Mix): boolean => listBad(zone).some((bad) => isNoGentler(mix, proven(bad))),
    /** What speaks against the newest strand of a zone, for the plan as it is said now. */
    listFaults: (zone: Zone, plan: string, atMs: number): readonly string[] => {
      const strand = newest(zone);
      if (strand?.grade == null || strand.grade === 'bad' || strand.endedAtMs === null) {
        return ['no sound or rough outcome was recorded'];
      }
      const days = (atMs - strand.endedAtMs) / dayMs;
      return [
        ...(strand.isVoid || strand.plan !== plan ? ['the strand stood for another plan'] : []),
        ...(strand.isUsed ? ['the strand was used'] : []),
        ...(days > (strand.most === null ? outcomeDays : carriedDays)
          ? [`the strand is ${days.toFixed(1)} days old`]
          : []),
        ...(listBad(zone).some((bad) => isNoGentler(proven(strand), proven(bad)))
          ? ['a mix no stronger failed on this length']
          : []),
      ];
    },
    /** What speaks against this bowl beside its newest strand and the decision. `isLifted`: somebody answers for more. */
    listFaultsOfMix: (zone: Zone, mix: Mix, decided: string, isLifted: boolean): readonly string[] => {
      const strand = newest(zone);
      if (strand === undefined) return ['no strand'];
      const tested = proven(strand);
      const isRough = strands.some(
        (each) =>
          each.zone === zone &&
          each.grade === 'rough' &&
          each.plan === strand.plan &&
          !each.isVoid &&
          !each.isUsed &&
          isNoGentler(tested, proven(each)),
      );
      const isCareful = decided === 'gentler' || decided === 'smallerLift' || (isRough && !isLifted);
      const weaker = bottles.findLast((bottle) => bottle <= tested.developerPercent * 0.75);
      const strongest = isCareful ? (weaker ?? tested.developerPercent) : tested.developerPercent;
      const longest =
        isCareful && weaker === undefined ? Math.floor(tested.minutes * gentler.ofTime) : tested.minutes;
      const isOnScalp = /powder/iu.test(mix.line) && zone !== 'ends' && mix.heat !== 'foil';
      return [
        ...(mix.developerPercent > (strand.most?.developerPercent ?? 12) ? ['stronger than last time'] : []),
        ...(mix.minutes > (strand.most?.minutes ?? 60) ? ['longer than last time'] : []),
        ...(isSameName(tested.line, mix.line) ? [] : ['another line']),
        ...(mix.ratio === tested.ratio ? [] : ['another ratio']),
        ...(heats.indexOf(mix.heat) <= heats.indexOf(tested.heat) ? [] : ['hotter']),
        ...(isOnScalp && (mix.developerPercent > onScalpPercent || mix.heat === 'dryHeat')
          ? ['more than the scalp takes, and nobody signed for it']
          : []),
        ...(mix.developerPercent <= strongest ? [] : [`stronger than ${strongest} %`]),
        ...(mix.minutes <= longest ? [] : [`longer than the ${longest} min that were proven`]),
        ...(decided === 'smallerLift' && mix.developerPercent > smallerLiftPercent
          ? ['no smaller lift']
          : []),
      ];
    },
  };
}
