import type { Call, CallKind } from '../../../shared/records/call';
import type { Clock } from '../../../shared/records/clock';

/** How each call is called, beside its shape and its sound. */
const calls: Readonly<Record<CallKind, string>> = {
  look: 'Toca revisar',
  due: 'Ya toca',
  overrun: 'Pasado de hora',
};

const ends: Readonly<Record<Clock['kind'], string>> = {
  strand: 'saque el mechón',
  head: 'enjuague',
  incompatibility: 'lea el vaso',
  dry: 'palpe el cabello',
};

/** What is to be done, as it is spoken. */
const sayToDo = (why: Call['why'], kind: Clock['kind']): string => {
  if (why === 'basin') return 'al lavabo';
  if (why === 'look') return kind === 'head' ? 'revise el color' : 'revise el mechón';
  return ends[kind];
};

/** What calls somebody: its words beside the shape, the way to quiet, and the line that is spoken. */
export const alarm = {
  silence: 'Silenciar',
  calls,
  /** Spoken aloud where other clients hear it: a chair, and neither name nor ticket. */
  spoken: (chair: string, why: Call['why'], kind: Clock['kind']) =>
    why === 'overrun'
      ? `Silla ${chair}, pasado de hora: ${sayToDo(why, kind)}`
      : `Silla ${chair}: ${sayToDo(why, kind)}`,
};
