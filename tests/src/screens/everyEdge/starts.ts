import { beginConsultation } from '../../../../machines/consultation/consultation';
import { endsIronedWet } from '../../../../seeds/endsIronedWet';
import type { RawEvent } from '../../../../shared/records/classify';
import type { RawForm } from '../../../../shared/records/readForm';
import { type AskStep, askSteps } from '../../../../shared/records/steps';
import { type Played, playUntil, playUntilConfirmed, tap } from '../playStory';

export const minute = 60_000;

const { steps, startAtMs } = endsIronedWet;
const told = (step: string): RawForm =>
  steps.find(({ raw }) => raw.type === 'ANSWERED' && raw.step === step)?.raw.answers ?? {};
const toldOf = (type: string): RawForm => steps.find(({ raw }) => raw.type === type)?.raw.answers ?? {};

/** More taps on what was played, a minute apart. */
export const and = (played: Played, ...events: readonly RawEvent[]): Played =>
  events.reduce((before, raw) => tap(before, minute, raw), played);

export const off = (zone: string, why = 'looksWeak'): RawEvent => ({
  type: 'STRAND_TAKEN_OFF',
  answers: { zone, why },
});
const outcome = (zone: string): RawEvent => ({
  type: 'OUTCOME_RECORDED',
  answers: { zone, fibre: 'sound', stretch: 'springsBack', level: '7', wentPast30: 'no', evenness: 'even' },
});
const strand = (zone: string): RawEvent => ({
  type: 'STRAND_STARTED',
  answers: { ...toldOf('STRAND_STARTED'), zone },
});
const bowl = (zone: string): RawEvent => ({
  type: 'BOWL_WEIGHED',
  answers: { ...toldOf('BOWL_WEIGHED'), zone, minutes: '15' },
});
const onHead = (zone: string): RawEvent => ({ type: 'BOWL_APPLIED', answers: { zone, skinFirst: 'calm' } });

/** She remembers hives only now. */
export const remembers: RawEvent = {
  type: 'ANSWERED',
  step: 'client',
  answers: { ...told('client'), reactions: ['hives'] },
};

export const opened = (): Played =>
  tap({ consultation: beginConsultation('story'), atMs: startAtMs }, 0, {
    type: 'OPENED',
    answers: { ticket: 'Q.F.', chair: '3' },
  });

/** Each step asked as the story asks it, but for what is said of it here. */
export function asked(instead: Readonly<Record<string, RawForm>> = {}): Played {
  return askSteps.reduce(
    (played, step) =>
      and(
        played,
        { type: 'ANSWERED', step, answers: { ...told(step), ...instead[step] } } as RawEvent,
        ...(step === 'client'
          ? [{ type: 'SKIN_TEST_NOTED', answers: toldOf('SKIN_TEST_NOTED') } as const]
          : []),
        { type: 'STEP_CONFIRMED', answers: { step } },
      ),
    opened(),
  );
}

/** All was asked, and somebody went back to this step. */
export const reopened = (step: AskStep): Played => and(asked(), { type: 'REOPENED', answers: { step } });

/** Box colour nobody knows: a cutting has to stand in its glass first. */
export const glassDue = (): Played => asked({ hotTools: { history: ['unknownBoxColour'] } });
export const glassRuns = (): Played => and(glassDue(), { type: 'INCOMPATIBILITY_STARTED' });
export const glassClear = (): Played =>
  tap(glassRuns(), 31 * minute, { type: 'INCOMPATIBILITY_READ', answers: { seen: 'nothing' } });

const soundAfter = (running: Played): Played => and(offAfter(running), outcome('ends'), outcome('lengths'));
const offAfter = (running: Played): Played =>
  and(tap(running, 25 * minute, off('ends', 'timeIsUp')), off('lengths', 'timeIsUp'));
const decideOn = (sound: Played): Played =>
  and(sound, { type: 'DECIDED', answers: { decision: 'smallerLift' } });

export const preparing = (): Played => playUntilConfirmed('heatSpray');
export const oneRuns = (): Played => playUntil('STRAND_STARTED', 'ends');
export const bothRun = (): Played => playUntil('STRAND_STARTED', 'lengths');
export const bothOff = (): Played => offAfter(bothRun());
export const bothSound = (): Played => soundAfter(bothRun());
export const decided = (): Played => decideOn(bothSound());
/** The same after strands under dry heat, which the scalp does not take. */
export const decidedWarm = (): Played => {
  const warm = (zone: string): RawEvent => {
    const { type, answers } = strand(zone) as Exclude<RawEvent, { type: 'ANSWERED' }>;
    return { type, answers: { ...answers, heat: 'dryHeat' } };
  };
  return decideOn(soundAfter(and(preparing(), warm('ends'), warm('lengths'))));
};
export const lengthsWeighed = (): Played => and(decided(), bowl('lengths'));
export const lengthsOn = (): Played => and(lengthsWeighed(), onHead('lengths'));
/** Beside it the bowl of the ends waits. */
export const endsWaiting = (): Played => and(lengthsOn(), bowl('ends'));
export const bothOn = (): Played => and(lengthsOn(), bowl('ends'), onHead('ends'));

/** Whatever is on the lengths comes off. */
export const rinse = (on: Played): Played => and(on, { type: 'BOWL_RINSED', answers: { zone: 'lengths' } });
export const finish = (rinsed: Played): Played => and(rinsed, { type: 'FINISHED' });

/** The cutting showed nothing, so strands were tested and a bowl is on. */
export const onHeadAfterGlass = (): Played =>
  and(
    decideOn(soundAfter(and(glassClear(), strand('ends'), strand('lengths')))),
    bowl('lengths'),
    onHead('lengths'),
  );
