import type { ConsultationEvent, Fibre, TokensByType } from '../../shared/records/event';
import { mapZones, setStrand, undecide, withMember } from './factChanges';
import type { Facts } from './facts';

const isFailed = (fibre: Fibre): boolean => fibre === 'gummy' || fibre === 'broken';

/** What was carried stands as if it had been tested, with the hair as it was then. */
const carry = (
  { strands, fibres, isCarried }: Facts,
  { sound, rough }: TokensByType['OUTCOME_CARRIED'],
): Partial<Facts> => {
  const carried = [...sound, ...rough];
  return {
    strands: mapZones(strands, (strand, zone) => (carried.includes(zone) ? 'current' : strand)),
    fibres: mapZones(fibres, (fibre, zone) => {
      if (rough.includes(zone)) return 'rough';
      return sound.includes(zone) ? 'sound' : fibre;
    }),
    isCarried: mapZones(isCarried, (before, zone) => before || carried.includes(zone)),
  };
};

/** What an event about strands changes in the facts; nothing for any other event. */
export function advanceStrands(facts: Facts, event: ConsultationEvent): Partial<Facts> {
  switch (event.type) {
    case 'STRAND_STARTED':
      return {
        ...setStrand(facts, event.tokens.zone, 'running'),
        ...undecide(facts),
        fibres: { ...facts.fibres, [event.tokens.zone]: 'unknown' },
        hasBroken: { ...facts.hasBroken, [event.tokens.zone]: false },
        isCarried: { ...facts.isCarried, [event.tokens.zone]: false },
      };
    case 'OUTCOME_CARRIED':
      return { ...carry(facts, event.tokens), ...undecide(facts) };
    case 'STRAND_DISCARDED':
      return setStrand(facts, event.tokens.zone, 'none');
    case 'STRAND_TAKEN_OFF':
      return setStrand(facts, event.tokens.zone, 'takenOff');
    case 'STRAND_BROKE':
      return {
        ...setStrand(facts, event.tokens.zone, 'takenOff'),
        fibres: { ...facts.fibres, [event.tokens.zone]: 'broken' },
        hasBroken: { ...facts.hasBroken, [event.tokens.zone]: true },
        closedMixes: withMember(facts.closedMixes, `${event.tokens.mix}@${event.tokens.zone}`),
      };
    case 'OUTCOME_RECORDED': {
      const { zone, mix } = event.tokens;
      const fibre = facts.hasBroken[zone] ? 'broken' : event.tokens.fibre;
      return {
        ...setStrand(facts, zone, 'current'),
        ...undecide(facts),
        fibres: { ...facts.fibres, [zone]: fibre },
        ...(isFailed(fibre) ? { closedMixes: withMember(facts.closedMixes, `${mix}@${zone}`) } : {}),
      };
    }
    case 'OUTCOME_RETRACTED': {
      const { zone, mix } = event.tokens;
      return {
        ...setStrand(facts, zone, 'takenOff'),
        ...undecide(facts),
        fibres: { ...facts.fibres, [zone]: 'unknown' },
        closedMixes: facts.closedMixes.filter((closed) => closed !== `${mix}@${zone}`),
      };
    }
    default:
      return {};
  }
}
