import { listBreaks } from '../records/breaks';
import { findWorst } from '../records/gradeOutcome';
import type { ConsultationRecord } from '../records/record';
import { listPulled } from '../records/tonerProof';
import { type Zone, zones } from '../records/zones';
import { listPlannedZones } from './plannedZones';

/**
 * What is told of one length: was it left out, did it break or gum, on a strand, with colour on or wet after the rinse, is
 * it to be cut?
 */
export interface HairToTell {
  readonly zone: Zone;
  readonly isLeftOut: boolean;
  readonly strand: 'broken' | 'gummy' | null;
  readonly hasBrokenOnHead: boolean;
  readonly hasSnapped: boolean;
  readonly isToCut: boolean;
}

type Told = Pick<ConsultationRecord, 'answers' | 'strands' | 'decision' | 'bowls' | 'stretches'>;

/** Which lengths were up for colour: those of the plan, those a strand stands for, and the ends where they were kept out. */
function isUpForColour({ answers, strands }: Told, zone: Zone): boolean {
  const reach = answers.client?.reach;
  if (listPlannedZones(reach).includes(zone)) return true;
  return strands.some((strand) => strand.zone === zone) || (zone === 'ends' && reach === 'endsOut');
}

/**
 * What does she hear of her own hair when she goes: what broke or gummed, what had nothing on today, what is to be cut?
 * None of hair that held and was coloured. Checked in tests/shared/judgement/hairToTell.test.ts.
 */
export const listHairToTell = (record: Told): readonly HairToTell[] =>
  zones
    .filter((zone) => isUpForColour(record, zone))
    .map((zone): HairToTell => {
      const breaks = listBreaks(record).filter((each) => each.zone === zone);
      const strand = findWorst(breaks.map((each) => (each.strand === null ? null : each.how)));
      return {
        zone,
        isLeftOut: !record.bowls.some((bowl) => bowl.zone === zone && bowl.state === 'rinsed'),
        strand: strand === 'broken' || strand === 'gummy' ? strand : null,
        hasBrokenOnHead: breaks.some((each) => each.strand === null),
        hasSnapped: listPulled(record, zone, -1).some(({ stretch }) => stretch === 'snaps'),
        isToCut: zone === 'ends' && record.decision?.decision === 'cutFirst',
      };
    })
    .filter(({ zone: _zone, strand, ...told }) => strand !== null || Object.values(told).includes(true));
