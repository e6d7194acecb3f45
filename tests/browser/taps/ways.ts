import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { firstVisit, secondVisit, strandsMeanwhile } from '../../../seeds/fullHeadLightening';
import { firstGloss, returningGloss } from '../../../seeds/returningGloss';
import type { StoryStep } from '../../../seeds/story';
import { closeRecord } from '../../../shared/records/closedRecord';
import type { Settings } from '../../../shared/records/settings';
import { nameClosedLog } from '../../../src/station/logNames';
import { playAlone } from '../makeLog';
import type { Logs } from '../memory';

/** A piece of work whose taps are counted: what stands before, what is done, and how much it may cost. */
export interface CountedWay {
  readonly name: string;
  /** From where to where, in words. */
  readonly counted: string;
  readonly settings: Settings;
  readonly startAtMs: number;
  /** What stands in the store beside her, such as a closed record. */
  readonly stored?: () => Logs;
  /** Of her, what stands in the store already. */
  readonly before: readonly StoryStep[];
  readonly done: readonly StoryStep[];
  /** Is the way to her from the bar part of it? */
  readonly fromBar: boolean;
  /** Lines that are read aloud and answered together. */
  readonly linesRead?: number;
  /** Every question of every step is answered when it is done. */
  readonly asksAll?: true;
  readonly budget: { readonly contacts: number; readonly seconds: number | null };
}

const { settings, startAtMs, steps } = endsIronedWet;

const cutAt = (isHere: (step: StoryStep) => boolean): number => {
  const at = steps.findIndex(isHere);
  if (at === -1) throw new Error('The story has no such step');
  return at;
};
const tools = cutAt(({ raw }) => raw.type === 'ANSWERED' && raw.step === 'hotTools');
const look = cutAt(({ raw }) => raw.type === 'LOOKED');

/** The strand shows gold where the level says orange to gold-orange. */
const nameUndertone = (step: StoryStep): StoryStep =>
  step.raw.type === 'LOOKED'
    ? { ...step, raw: { ...step.raw, answers: { ...step.raw.answers, undertone: 'gold' } } }
    : step;

/** The one tool of the story, and nothing else of its step. */
const oneTool = steps.slice(tools, tools + 1).map((step): StoryStep => {
  const { raw } = step;
  return raw.type === 'ANSWERED'
    ? { ...step, raw: { ...raw, answers: { habits: raw.answers?.habits } } }
    : step;
});

/** Her initials are two letters. */
const shortTicket = (step: StoryStep): StoryStep =>
  step.raw.type === 'OPENED'
    ? { ...step, raw: { ...step.raw, answers: { ...step.raw.answers, ticket: 'AB' } } }
    : step;
const firstSteps = firstVisit.steps.map(shortTicket);

/** The skin test is read on the way, what is asked anew is one go; the look in between is counted by itself. */
const again = secondVisit.filter(
  ({ raw }) => !['ANSWERED', 'STEP_CONFIRMED', 'OUTCOME_KEPT', 'LOOKED'].includes(raw.type),
);

/** The gloss of five weeks ago, as the station keeps it. */
function closeFirstGloss(): Logs {
  const { steps: told, startAtMs: atMs, settings: then } = firstGloss;
  const { record, log } = playAlone(told.map(shortTicket), atMs, then, 'firstgloss01');
  return { [nameClosedLog(record.newestAtMs)]: [closeRecord(record, log)] };
}

/** What is left to say when nothing is new. */
const glossAgain = returningGloss.steps
  .filter(({ raw }) =>
    ['OPENED', 'DECIDED', 'BOWL_WEIGHED', 'BOWL_APPLIED', 'BOWL_RINSED'].includes(raw.type),
  )
  .map(shortTicket);

/** Budgets: DESIGN of the station: quick, or it is not used. ASSUMED to be what a working day bears. */
export const countedWays: readonly CountedWay[] = [
  {
    name: 'returning gloss, last strand carried',
    counted: 'from the bar until she is rinsed; a look in between is counted by itself',
    settings: returningGloss.settings,
    startAtMs: returningGloss.startAtMs,
    stored: closeFirstGloss,
    before: [],
    done: glossAgain,
    fromBar: true,
    linesRead: 6,
    asksAll: true,
    budget: { contacts: 10, seconds: 45 },
  },
  {
    name: 'one tool',
    counted: 'from the hot-tools step as it opens until the row of the tool is written',
    settings,
    startAtMs,
    before: steps.slice(0, tools),
    done: oneTool,
    fromBar: false,
    budget: { contacts: 5, seconds: null },
  },
  {
    name: 'new full-head lightening, first visit',
    counted: 'from the bar, over the skin test put on and all four steps, until she is parked for two days',
    settings: firstVisit.settings,
    startAtMs: firstVisit.startAtMs,
    before: [],
    done: firstSteps,
    fromBar: true,
    asksAll: true,
    budget: { contacts: 40, seconds: 300 },
  },
  {
    name: 'new full-head lightening, second visit',
    counted:
      'from the bar, over the skin test read and what is asked anew, until both bowls are rinsed; the strands were tested after she had left',
    settings: firstVisit.settings,
    startAtMs: firstVisit.startAtMs,
    before: [...firstSteps, ...strandsMeanwhile],
    done: again,
    fromBar: true,
    asksAll: true,
    linesRead: 5,
    budget: { contacts: 12, seconds: null },
  },
  {
    name: 'one look at a strand',
    counted: 'from the bar until the look is kept',
    settings,
    startAtMs,
    before: steps.slice(0, look),
    done: steps.slice(look, look + 1),
    fromBar: true,
    budget: { contacts: 4, seconds: 5 },
  },
  {
    name: 'one look, with another undertone than the level says',
    counted: 'from her strand in the mix until the look is kept',
    settings,
    startAtMs,
    before: steps.slice(0, look),
    done: steps.slice(look, look + 1).map(nameUndertone),
    fromBar: false,
    budget: { contacts: 4, seconds: 5 },
  },
];
