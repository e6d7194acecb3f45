import type { ClockReading } from '../../../shared/records/clock';
import type { Zone } from '../../../shared/records/zones';
import { general } from './general';

type Phase = ClockReading['phase'];

/** What is said before the digits; they count down to the take-off, and up once it is over. */
const strand: Readonly<Record<Phase, string>> = {
  running: 'take off in',
  lookDue: 'look now · take off in',
  nearlyDue: 'take off in',
  over: 'take off now',
  ended: 'off',
};

const head: Readonly<Record<Phase, string>> = {
  running: 'rinse in',
  lookDue: 'look now · rinse in',
  nearlyDue: 'to the basin · rinse in',
  over: 'rinse now',
  ended: 'rinsed',
};

const glass: Readonly<Record<Phase, string>> = {
  running: 'read in',
  lookDue: 'look now · read in',
  nearlyDue: 'read in',
  over: 'read it now',
  ended: 'read',
};

const dry: Readonly<Record<Phase, string>> = {
  running: 'feel it again in',
  lookDue: 'feel it again in',
  nearlyDue: 'feel it again in',
  over: 'feel it again now',
  ended: 'dry',
};

/** The words of a clock: STRAND or HEAD always first. */
export const clock = {
  strand,
  head,
  incompatibility: glass,
  dry,
  strandName: (number: string, zone: Zone | null) =>
    zone === null ? `STRAND ${number}` : `STRAND ${number} ${general.zones[zone]}`,
  headName: (zone: Zone | null) => (zone === null ? 'HEAD' : `HEAD ${general.zones[zone]}`),
  glassName: 'GLASS',
  dryName: 'DRYING',
  firstLookIn: (left: string) => `First look in ${left}`,
  nextLookIn: (left: string) => `Next look in ${left}`,
  lookNow: 'Look now',
  lookIn: 'look in',
  lookDue: 'look now',
  /** When it ends, said so that nobody takes it for the look's time. */
  endsAt: {
    strand: (time: string) => `take off at ${time}`,
    head: (time: string) => `rinse at ${time}`,
    incompatibility: (time: string) => `read at ${time}`,
    dry: (time: string) => `feel it again at ${time}`,
  },
  /** Due for another client than the one in view. */
  elsewhere: {
    look: (since: string) => `look now, since ${since}`,
    basin: (at: string) => `to the basin, rinse at ${at}`,
    overrun: (ends: string) => `overrun, ${ends}`,
    reaction: (since: string) => `burning or reaction, on since ${since}`,
    end: {
      strand: (since: string) => `take off now, since ${since}`,
      head: (since: string) => `rinse now, since ${since}`,
      incompatibility: (since: string) => `read it now, since ${since}`,
      dry: (since: string) => `feel it again, since ${since}`,
    },
    more: (count: string) => `+${count}`,
  },
  missedLooks: (count: string) => `Looks missed: ${count}`,
};
