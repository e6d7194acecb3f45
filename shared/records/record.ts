import type { Decision } from '../judgement/decisions';
import type { RuleId } from '../judgement/rules';
import type { BowlProof } from './bowlProof';
import type { Clock } from './clock';
import { type Fibre, MODEL_VERSION } from './event';
import type { Answers } from './forms/asked';
import type { BowlAnswers, PlanAnswers, StretchAnswers } from './forms/bowl';
import type { LookAnswers, OutcomeAnswers, SkinTestAnswers, StrandAnswers } from './forms/test';
import type { LastTime } from './lastTime';
import type { Correctable } from './steps';
import type { TonerProof } from './tonerProof';
import type { Zone } from './zones';

/** Who did it, and when. */
export interface Stamp {
  readonly atMs: number;
  readonly by: string;
  /** Place in the log, from 0: what came after what, whatever the clock said. */
  readonly seq: number;
}

export interface OutcomeRecord extends OutcomeAnswers, Stamp {
  /** The worse of what was seen, felt and pulled. */
  readonly grade: Exclude<Fibre, 'unknown'>;
}

export interface StrandRecord extends StrandAnswers, Stamp {
  readonly number: number;
  readonly clock: string;
  /** What the plan was when this strand was started; it stands for that plan only. */
  readonly planKey: string;
  readonly looks: readonly (LookAnswers & Stamp)[];
  /** When looks fell due that nobody made, by the newest entry of the log; all of them once it has ended. */
  readonly missedLooksAtMs: readonly number[];
  /** Why it was taken off; null while it runs, and when it broke. */
  readonly why: string | null;
  readonly ended: (Stamp & { readonly how: 'takenOff' | 'broke' | 'discarded' }) | null;
  /** For how many whole minutes it was on, never beyond its clock; null while it runs. This is what was tested. */
  readonly minutesOn: number | null;
  readonly outcome: OutcomeRecord | null;
  /** The worst that was recorded of it and taken back by name; null where nothing was. */
  readonly retracted: OutcomeRecord['grade'] | null;
  /** Last time's outcome, carried: never below or beyond what was on the head then. Null for a strand of today. */
  readonly carried: {
    readonly fromId: string;
    readonly maxDeveloperPercent: number;
    readonly maxMinutes: number;
  } | null;
  /** A named correction took away what this strand stood for. */
  readonly isVoid: boolean;
}

export interface SkinTestRecord extends SkinTestAnswers, Stamp {
  /** When it was read, which may be before it was noted here. */
  readonly readAtMs: number;
  /** By how much the clock was set back since: it may be so much older than it looks, never younger. */
  readonly olderByMs: number;
}

export interface IncompatibilityRecord extends Stamp {
  readonly seen: 'running' | 'nothing' | 'reacted';
  /** The history it was made for; another history needs another test. */
  readonly historyKey: string;
  /** Since when its cutting is kept, by the tablet's clock as it was put right since; null while it stands in the glass. */
  readonly keptSinceMs: number | null;
}

export interface DecisionRecord extends Stamp {
  readonly decision: Decision;
  readonly suggested: Decision;
  readonly planKey: string;
}

/** How the hair on the head came back, wet, after a rinse. */
export interface StretchRecord extends StretchAnswers, Stamp {}

export interface BowlRecord extends BowlAnswers, Stamp {
  /** A toner goes on after a rinse, on the strength of what is felt then; everything else on that of a strand. */
  readonly kind: 'tested' | 'toner';
  /** The strand that allows it, and what stood in the log when it was weighed; none of a toner. */
  readonly strand: number;
  readonly proof: BowlProof | null;
  readonly toner: TonerProof | null;
  /** The longest it may stay on, under what was tested and decided. */
  readonly maxMinutes: number;
  readonly state: 'weighed' | 'on' | 'rinsed' | 'thrown';
  /** It was thrown away because her skin was not calm when it was to go on. */
  readonly isSkinNotCalm: boolean;
  readonly clock: string | null;
  /** When its zone was covered: its clock runs since it was begun, which is the longer time. */
  readonly allOnAtMs: number | null;
  /** Place in the log of its rinse. */
  readonly rinsedSeq: number | null;
  readonly looks: readonly (LookAnswers & Stamp)[];
  /** As for a strand. */
  readonly missedLooksAtMs: readonly number[];
}

export interface OverrideRecord extends Stamp {
  readonly rule: RuleId;
  readonly code: string;
  readonly words: string;
}

export interface CorrectionRecord extends Stamp {
  readonly answer: Correctable;
  readonly code: string;
  readonly words: string;
  /** Of a stop that was handed on: those it lifts. Models before 6 did not keep it. */
  readonly speaksFor?: readonly SpokenFor[];
}

/** A stop, by the record it stands in, its kind, and the digest of the entry that told it there (`listToldStops`). */
export interface SpokenFor {
  readonly record: string;
  readonly stop: string;
  /** SHA-256, 64 hex digits; of a record that cannot be read that of its whole log. */
  readonly entry: string;
}

/** A reaction that was suspected and then said to be none: by whom, when and why, and who had suspected it. */
export interface DismissedRecord extends Stamp {
  readonly why: string;
  readonly suspected: Pick<Stamp, 'atMs' | 'by'>;
}

/** How a consultation can end. */
export const endings = ['done', 'weSaidNo', 'clientSaidNo', 'calledOff', 'reaction'] as const;
export type Ending = (typeof endings)[number];

/** One client's consultation as the fold of its log: nobody keeps another copy of what happened. */
export interface ConsultationRecord {
  readonly id: string;
  readonly ticket: string;
  readonly chair: number;
  /** Who does her hair: whoever was named at the start, else who started her. */
  readonly stylist: string;
  readonly opened: Stamp | null;
  readonly inheritedStop: boolean;
  /** Last time, where a person said that she is the same client. */
  readonly lastTime: LastTime | null;
  readonly answers: Answers;
  /** When reactions, scalp and age were told: they hold for that day. */
  readonly todayAtMs: number | null;
  /** Since when it is said to be damp somewhere; null while it is not, and while nobody has felt it. */
  readonly dampSinceMs: number | null;
  /** When the wet stretch was told: it holds for that day. */
  readonly stretchAtMs: number | null;
  readonly skinTest: SkinTestRecord | null;
  /** Skin tests of the same ticket that a person named as another client's. */
  readonly notHerSkinTests: readonly string[];
  readonly incompatibility: IncompatibilityRecord | null;
  readonly overrides: readonly OverrideRecord[];
  /** Every stop a named person ever lifted here, also those that were judged anew since: what the day is told. */
  readonly judged: readonly OverrideRecord[];
  readonly corrections: readonly CorrectionRecord[];
  readonly strands: readonly StrandRecord[];
  readonly decision: DecisionRecord | null;
  readonly bowls: readonly BowlRecord[];
  /** Felt on the head, today, each after a rinse. */
  readonly stretches: readonly StretchRecord[];
  readonly clocks: readonly Clock[];
  /** Between visits: since when, and until when. */
  readonly parked: { readonly atMs: number; readonly untilAtMs: number } | null;
  readonly reaction: (Stamp & { readonly signs: readonly string[]; readonly care: string | null }) | null;
  /** Each time a suspected reaction was said to be none. */
  readonly dismissed: readonly DismissedRecord[];
  readonly plan: (PlanAnswers & Stamp) | null;
  readonly ended: (Stamp & { readonly how: Ending; readonly reason: string | null }) | null;
  /** By which model it is judged: that of its newest entry while a log is read, of this station for what is tapped. */
  readonly modelVersion: number;
  readonly nextSeq: number;
  /** The newest moment any entry was stamped with: the clock of the tablet may not lie before it. */
  readonly newestAtMs: number;
}

/** A consultation of which nothing has been said yet. */
export const beginRecord = (id: string): ConsultationRecord => ({
  id,
  ticket: '',
  chair: 0,
  stylist: '',
  opened: null,
  inheritedStop: false,
  lastTime: null,
  answers: {},
  todayAtMs: null,
  dampSinceMs: null,
  stretchAtMs: null,
  skinTest: null,
  notHerSkinTests: [],
  incompatibility: null,
  overrides: [],
  judged: [],
  corrections: [],
  strands: [],
  decision: null,
  bowls: [],
  stretches: [],
  clocks: [],
  parked: null,
  reaction: null,
  dismissed: [],
  plan: null,
  ended: null,
  modelVersion: MODEL_VERSION,
  nextSeq: 0,
  newestAtMs: 0,
});

/** The newest strand that stands for this zone. */
export const findStrand = (record: ConsultationRecord, zone: Zone): StrandRecord | undefined =>
  record.strands.findLast((strand) => strand.zone === zone);

/** The newest bowl for this zone. */
export const findBowl = (record: ConsultationRecord, zone: Zone): BowlRecord | undefined =>
  record.bowls.findLast((bowl) => bowl.zone === zone);

/** Is anything on skin or hair of the head at this moment? */
export const isAnythingOnHead = (record: ConsultationRecord): boolean =>
  record.bowls.some((bowl) => bowl.state === 'on');
