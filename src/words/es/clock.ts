import type { ClockReading } from '../../../shared/records/clock';
import type { Zone } from '../../../shared/records/zones';
import { general } from './general';

type Phase = ClockReading['phase'];

/** What is said before the digits; they count down to the take-off, and up once it is over. */
const strand: Readonly<Record<Phase, string>> = {
  running: 'saque en',
  lookDue: 'revise ya · saque en',
  nearlyDue: 'saque en',
  over: 'saque ya',
  ended: 'fuera',
};

const head: Readonly<Record<Phase, string>> = {
  running: 'enjuague en',
  lookDue: 'revise ya · enjuague en',
  nearlyDue: 'al lavabo · enjuague en',
  over: 'enjuague ya',
  ended: 'enjuagado',
};

const glass: Readonly<Record<Phase, string>> = {
  running: 'lea en',
  lookDue: 'revise ya · lea en',
  nearlyDue: 'lea en',
  over: 'léalo ya',
  ended: 'leído',
};

const dry: Readonly<Record<Phase, string>> = {
  running: 'palpe otra vez en',
  lookDue: 'palpe otra vez en',
  nearlyDue: 'palpe otra vez en',
  over: 'palpe otra vez ya',
  ended: 'seco',
};

/** The words of a clock: STRAND or HEAD always first. */
export const clock = {
  strand,
  head,
  incompatibility: glass,
  dry,
  strandName: (number: string, zone: Zone | null) =>
    zone === null ? `MECHÓN ${number}` : `MECHÓN ${number} ${general.zones[zone]}`,
  headName: (zone: Zone | null) => (zone === null ? 'CABEZA' : `CABEZA ${general.zones[zone]}`),
  glassName: 'VASO',
  dryName: 'SECADO',
  firstLookIn: (left: string) => `Primera revisión en ${left}`,
  nextLookIn: (left: string) => `Próxima revisión en ${left}`,
  lookNow: 'Revise ya',
  lookIn: 'revise en',
  lookDue: 'revise ya',
  /** When it ends, said so that nobody takes it for the look's time. */
  endsAt: {
    strand: (time: string) => `saque a las ${time}`,
    head: (time: string) => `enjuague a las ${time}`,
    incompatibility: (time: string) => `lea a las ${time}`,
    dry: (time: string) => `palpe otra vez a las ${time}`,
  },
  /** Due for another client than the one in view. */
  elsewhere: {
    look: (since: string) => `revise ya, desde ${since}`,
    basin: (at: string) => `al lavabo, enjuague a las ${at}`,
    overrun: (ends: string) => `pasado de hora, ${ends}`,
    reaction: (since: string) => `ardor o reacción, puesto desde ${since}`,
    end: {
      strand: (since: string) => `saque ya, desde ${since}`,
      head: (since: string) => `enjuague ya, desde ${since}`,
      incompatibility: (since: string) => `léalo ya, desde ${since}`,
      dry: (since: string) => `palpe otra vez, desde ${since}`,
    },
    more: (count: string) => `+${count}`,
  },
  missedLooks: (count: string) => `Revisiones sin hacer: ${count}`,
};
