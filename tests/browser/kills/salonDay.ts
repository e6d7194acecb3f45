import { beginConsultation } from '../../../machines/consultation/consultation';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import type { RawEvent } from '../../../shared/records/classify';
import { encodeLine } from '../../../src/storage/line';
import { type Played, settings, tap } from '../../src/screens/playStory';

/** Who sits where: one consultation for each kind of tap, each told up to the tap before it. */
export const chairs = {
  client: { chair: 1, upTo: 'OPENED', zone: undefined },
  feelHair: { chair: 2, upTo: 'feelHair', zone: undefined },
  strands: { chair: 3, upTo: 'STRAND_STARTED', zone: 'lengths' },
  outcome: { chair: 4, upTo: 'OUTCOME_RECORDED', zone: 'ends' },
  decision: { chair: 5, upTo: 'OUTCOME_RECORDED', zone: 'lengths' },
  bowl: { chair: 6, upTo: 'BOWL_WEIGHED', zone: 'lengths' },
  head: { chair: 7, upTo: 'BOWL_APPLIED', zone: 'lengths' },
  plan: { chair: 8, upTo: 'FINISHED', zone: undefined },
} as const;

export type Place = keyof typeof chairs;
export const places = Object.keys(chairs) as Place[];

/** The id of the consultation at this place. */
export const nameConsultation = (place: Place): string => `seated${place}`;

/** One log of the store as both copies keep it. */
export interface PlantedLog {
  readonly name: string;
  readonly lines: readonly string[];
}

/** Eight clients at once, by the story of the ends ironed wet, each as if her last tap had been a second ago. */
export function makeSalonDay(nowMs: number): readonly PlantedLog[] {
  return [
    {
      name: 'settings',
      lines: [encodeLine(0, JSON.stringify({ settings, by: 'Opal', atMs: nowMs - 1000 }))],
    },
    ...places.map((place) => ({
      name: `open-${nameConsultation(place)}`,
      lines: tellUpTo(place, nowMs - 1000).consultation.log.map((event, seq) =>
        encodeLine(seq, JSON.stringify(event)),
      ),
    })),
  ];
}

/** Her consultation so far, its last tap made at this moment. */
export function tellUpTo(place: Place, lastAtMs: number): Played {
  const { chair, upTo, zone } = chairs[place];
  const last = endsIronedWet.steps.findIndex(({ raw }) =>
    upTo === 'feelHair'
      ? raw.type === 'STEP_CONFIRMED' && raw.answers?.step === 'hotTools'
      : raw.type === upTo && (zone === undefined || raw.answers?.zone === zone),
  );
  if (last === -1) throw new Error(`the story has no ${upTo}`);
  const steps = endsIronedWet.steps.slice(0, last + 1);
  const lasts = steps.reduce((sum, { afterMs }) => sum + afterMs, 0);
  const shiftMs = lastAtMs - lasts - endsIronedWet.startAtMs;
  return steps.reduce<Played>(
    (played, { afterMs, by, raw }) => tap(played, afterMs, seat(raw, `K.${chair}`, chair, shiftMs), by),
    { consultation: beginConsultation(nameConsultation(place)), atMs: lastAtMs - lasts },
  );
}

/** The same tap for another ticket at another chair, with its moments shifted like the clock. */
function seat(raw: RawEvent, ticket: string, chair: number, shiftMs: number): RawEvent {
  const { putOnAtMs } = raw.answers ?? {};
  if (raw.type === 'OPENED') return { ...raw, answers: { ticket, chair: String(chair) } };
  if (typeof putOnAtMs !== 'number') return raw;
  return { ...raw, answers: { ...raw.answers, putOnAtMs: putOnAtMs + shiftMs } } as RawEvent;
}
