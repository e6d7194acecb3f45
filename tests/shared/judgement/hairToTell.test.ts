import { describe, expect, it } from 'vitest';
import { listHairToTell } from '../../../shared/judgement/hairToTell';
import type { BowlRecord, ConsultationRecord, StretchRecord } from '../../../shared/records/record';
import type { Zone } from '../../../shared/records/zones';
import { bothHold, change, ofType, story, tell, until } from '../records/telling';

const rinse = (record: ConsultationRecord, ...zones: readonly Zone[]): ConsultationRecord => ({
  ...record,
  bowls: zones.map((zone) => ({ zone, state: 'rinsed', looks: [] as unknown }) as BowlRecord),
});
const held = tell(bothHold).record;
const broken = tell(story).record;
const felt = (stretch: StretchRecord['stretch']) => [
  { zone: 'ends', stretch, before: 'stands', atMs: 0, by: 'MK', seq: 1 } as const,
];

describe('what she hears of her hair', () => {
  it('is nothing where all of it held and was coloured', () => {
    expect(listHairToTell(rinse(held, 'lengths', 'ends'))).toEqual([]);
  });

  it('is that the ends broke and had nothing on', () => {
    expect(listHairToTell(broken)).toMatchObject([{ zone: 'ends', isLeftOut: true, strand: 'broken' }]);
  });

  it('is that a strand gummed, also where a gentler mix went on', () => {
    const gummed = change(until('DECIDED', bothHold), ofType('OUTCOME_RECORDED', 'ends'), { fibre: 'gummy' });
    expect(listHairToTell(rinse(tell(gummed).record, 'lengths', 'ends'))).toEqual([
      {
        zone: 'ends',
        isLeftOut: false,
        strand: 'gummy',
        hasBrokenOnHead: false,
        hasSnapped: false,
        isToCut: false,
      },
    ]);
  });

  it('is that hair snapped wet on the head, and not that it came back slowly', () => {
    const coloured = rinse(held, 'lengths', 'ends');
    expect(listHairToTell({ ...coloured, stretches: felt('snaps') })).toMatchObject([{ hasSnapped: true }]);
    expect(listHairToTell({ ...coloured, stretches: felt('staysLong') })).toEqual([]);
  });

  it('is that hair broke with colour on, which nobody pulled', () => {
    const coloured = rinse(held, 'lengths', 'ends');
    const look = { atMs: 0, by: 'MK', seq: 0, hair: 'breaking' };
    const bowls = coloured.bowls.map((bowl) => ({ ...bowl, rinsedSeq: 3, looks: [look] }) as never);
    expect(listHairToTell({ ...coloured, bowls })).toMatchObject([
      { zone: 'lengths', strand: null, hasBrokenOnHead: true, hasSnapped: false },
      { zone: 'ends', strand: null, hasBrokenOnHead: true, hasSnapped: false },
    ]);
  });

  it('is that planned ends had nothing on, were kept out, or are to be cut', () => {
    expect(listHairToTell(rinse(held, 'lengths'))).toMatchObject([{ zone: 'ends', isLeftOut: true }]);
    const { client } = held.answers;
    const keptOut = { ...held, strands: [], answers: { client: { ...client, reach: 'endsOut' as const } } };
    expect(listHairToTell(rinse(keptOut, 'lengths'))).toMatchObject([{ zone: 'ends', strand: null }]);
    const decision = { ...held.decision, decision: 'cutFirst' } as ConsultationRecord['decision'];
    expect(listHairToTell({ ...rinse(held, 'lengths', 'ends'), decision })).toMatchObject([
      { isToCut: true },
    ]);
  });

  it('is nothing of lengths that nobody meant to colour', () => {
    const roots = {
      ...held,
      strands: [],
      answers: { client: { ...held.answers.client, reach: 'roots' as const } },
    };
    expect(listHairToTell(rinse(roots, 'roots'))).toEqual([]);
  });
});
