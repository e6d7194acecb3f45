import * as v from 'valibot';
import { findingTable } from '../../shared/chemistry/ingredients/findingTable';
import { redFlags } from '../../shared/judgement/risk';
import { ruleIds } from '../../shared/judgement/rules';
import type { Raw, RawForm } from '../../shared/records/readForm';
import { shelfEntry } from '../../shared/records/settings';
import { zones } from '../../shared/records/zones';

/** Lengths of texts and other ranges of this file: ASSUMED, wide enough that only rubbish lies outside. */
const words = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(300));
const share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));

/** What is tapped or typed: numbers as texts, in °C, g and cm whatever the station shows. */
const raw: v.GenericSchema<Raw> = v.lazy(() =>
  v.union([v.string(), v.number(), v.array(v.string()), v.array(rawForm), v.null()]),
);
const rawForm: v.GenericSchema<RawForm> = v.record(v.string(), raw);

/** What she says, and the answer that her words mean; null: her words answer nothing. */
const said = v.strictObject({ words, means: raw });

/** Red flags that no stop, no judgement and no ingredient list names. */
export const ownFlags = ['incompatible', 'smoothed', 'fineHair', 'endsAtRisk', 'skinTestLapsed'] as const;
const findingIds = findingTable.map(({ id }) => id);
export const flagIds = [...ruleIds, ...redFlags, ...findingIds, ...ownFlags] as const;
export type FlagId = (typeof flagIds)[number];

const flagSchema = v.strictObject({
  id: v.picklist(flagIds),
  /** Questions whose true answers show it; empty where a test or the record itself shows it. */
  asks: v.array(v.string()),
  why: words,
  /** One of the four marks with its source, as everywhere: `published: …`, `common practice, no source`, and so on. */
  mark: v.pipe(
    v.string(),
    v.maxLength(300),
    v.regex(/^(published: .+|common practice, no source.*|from memory: .+|assumed: .+)$/),
  ),
});

/** What differs, on the strand and on the head, from what the models say of hair like hers. */
const zoneTruthSchema = v.strictObject({
  /**
   * The chance that it breaks in the usual mix, where that is more than is reckoned of her true answers. Less makes no
   * hair better than its history: then it holds by luck, and comes off rough where that history speaks against it.
   */
  chance: v.exactOptional(share),
  /** Of the lift that hair like hers gets, this share. */
  lift: v.exactOptional(share),
  evenness: v.exactOptional(v.picklist(['even', 'patchy', 'banded'])),
});

/**
 * One practice client: invented, with a truth that she does not tell of herself.
 * A trainer can add one as JSON; `readLesson` says what is wrong with it. Which decision is right is stored nowhere:
 * it is judged of the truth.
 */
export const lessonSchema = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][a-zA-Z0-9]{2,39}$/)),
  title: words,
  seat: v.strictObject({
    ticket: v.pipe(v.string(), v.minLength(1), v.maxLength(12)),
    chair: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(30)),
  }),
  /** What she says on sitting down. */
  wants: words,
  /**
   * How she asks for it to be finished, as the form of that step takes it; nothing where she leaves it to the salon.
   * It is a wish and no truth of hers: how it is finished today is the salon's plan.
   */
  finish: v.exactOptional(rawForm),
  /** What she agrees to once she is asked closer about how it is finished, in her words; where this is not said, nothing else. */
  agreesTo: v.exactOptional(v.strictObject({ words, finish: rawForm })),
  /** Where it plays, metres above the sea; the sea itself where nothing is said. */
  altitudeM: v.exactOptional(v.pipe(v.number(), v.minValue(-430), v.maxValue(5500))),
  /** What stands on the shelf there, beside what every lesson has. */
  shelf: v.exactOptional(v.array(shelfEntry)),
  truth: v.strictObject({
    client: rawForm,
    hotTools: rawForm,
    feelHair: rawForm,
    /** The skin test she brings: put on so many hours before she sits down, and what is seen today; null: none. */
    skinTest: v.nullable(
      v.strictObject({
        hoursAgo: v.pipe(v.number(), v.minValue(0), v.maxValue(2400)),
        seen: v.picklist(['nothing', 'reaction']),
      }),
    ),
    /** What her cutting does in the glass. */
    glass: v.picklist(['nothing', 'reacted']),
  }),
  /**
   * By question (`client.reactions`, `hotTools.habits.0.wetness`): at first, and when asked closer, if that differs. Of
   * `feelHair` it is what fingers find at a touch, and when they look again. Of `heatSpray` there is nothing to say: `finish`.
   */
  says: v.record(v.string(), v.strictObject({ first: said, closer: v.exactOptional(said) })),
  /** None where nothing speaks against her: to refuse her is the mistake then. */
  flags: v.array(flagSchema),
  strand: v.strictObject({
    seed: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
    zones: v.exactOptional(v.partial(v.strictObject(v.entriesFromList(zones, zoneTruthSchema)))),
  }),
});

export type Lesson = v.InferOutput<typeof lessonSchema>;
export type Flag = Lesson['flags'][number];
