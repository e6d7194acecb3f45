import type { Call, CallKind } from '../../../shared/records/call';
import type { Clock } from '../../../shared/records/clock';

/** How each call is called, beside its shape and its sound. */
const calls: Readonly<Record<CallKind, string>> = {
  look: 'Look due',
  due: 'Due now',
  overrun: 'Overrun',
};

const ends: Readonly<Record<Clock['kind'], string>> = {
  strand: 'take the strand off',
  head: 'rinse',
  incompatibility: 'read the glass',
  dry: 'feel the hair',
};

/** What is to be done, as it is spoken. */
const sayToDo = (why: Call['why'], kind: Clock['kind']): string => {
  if (why === 'basin') return 'to the basin';
  if (why === 'look') return kind === 'head' ? 'look at the colour' : 'look at the strand';
  return ends[kind];
};

/** What calls somebody: its words beside the shape, the way to quiet, and the line that is spoken. */
export const alarm = {
  silence: 'Silence',
  calls,
  /** Spoken aloud where other clients hear it: a chair, and neither name nor ticket. */
  spoken: (chair: string, why: Call['why'], kind: Clock['kind']) =>
    why === 'overrun'
      ? `Chair ${chair}, overrun: ${sayToDo(why, kind)}`
      : `Chair ${chair}: ${sayToDo(why, kind)}`,
};
