import { describe, expect, it } from 'vitest';
import type { BowlProof } from '../../../shared/records/bowlProof';
import type { RawEvent } from '../../../shared/records/classify';
import { findGateBreach, type GateBreach } from '../../../shared/records/gateBreach';
import type { BowlRecord, ConsultationRecord } from '../../../shared/records/record';
import { fold } from '../../../shared/records/reduce';
import { andThen, day, lowRisk, ofType, story, tell, until } from './telling';

const { record } = tell(story);
const [bowl] = record.bowls as readonly [BowlRecord];

/** The story's record with its bowl, or what was known when it was weighed, edited by hand. */
const withBowl = (change: Partial<BowlRecord>): ConsultationRecord => ({
  ...record,
  bowls: [{ ...bowl, ...change }],
});
const withProof = (change: Partial<BowlProof>): ConsultationRecord =>
  withBowl({ proof: bowl.proof && { ...bowl.proof, ...change } });
const outcomeSeq = record.strands[1]?.outcome?.seq ?? 0;
const testedFor = (minutes: number) =>
  withProof({ tested: { line: 'Sandbar powder', developerPercent: 6, ratio: 2, heat: 'none', minutes } });

const withTwo = (strongG: number, weakG: number, strong = 9) =>
  withBowl({
    developerPercent: 6,
    bottles: [{ percent: strong }, { percent: 3 }],
    weighed: [...bowl.shades.map(() => 40), strongG, weakG].map((amountG) => ({ amountG })),
  });

const edits: readonly (readonly [string, ConsultationRecord, GateBreach | null])[] = [
  ['nothing changed', record, null],
  ['a strand that is not there', withBowl({ strand: 3 }), 'bowlWithoutStrand'],
  ['the strand of another zone', withBowl({ strand: 1 }), 'bowlWithoutStrand'],
  ['another zone', withBowl({ zone: 'ends' }), 'bowlWithoutStrand'],
  ['neither outcome nor decision', withBowl({ proof: null }), 'bowlWithoutOutcome'],
  ['a decision before the outcome', withProof({ decisionSeq: outcomeSeq - 1 }), 'bowlWithoutDecision'],
  ['a decision that mixes nothing', withProof({ decision: 'weSayNo' }), 'bowlWithoutDecision'],
  ['a rough strand', withProof({ grade: 'rough' }), null],
  ['a gummy strand', withProof({ grade: 'gummy' }), 'bowlAfterFailedStrand'],
  ['a broken strand', withProof({ grade: 'broken' }), 'bowlAfterFailedStrand'],
  ['a strand that was on for as long', testedFor(25), null],
  ['a strand that was on for a minute less', testedFor(24), 'bowlTooStrong'],
  ['another line', withBowl({ line: 'Sandbar cream' }), 'bowlOfAnotherLine'],
  ['the same line in other letters', withBowl({ line: ' SANDBAR powder' }), null],
  ['6.1 % where 6 % was tested', withBowl({ developerPercent: 6.1 }), 'bowlTooStrong'],
  ['3 % where 6 % was tested', withBowl({ developerPercent: 3 }), null],
  ['26 minutes where 25 were tested', withBowl({ minutes: 26 }), 'bowlTooStrong'],
  ['24 minutes where 25 were tested', withBowl({ minutes: 24 }), null],
  ['foil where none was tested', withBowl({ heat: 'foil' }), 'bowlTooStrong'],
  [
    'a carried outcome under a lift',
    withProof({ carried: { strandAtMs: bowl.atMs, service: 'lighten' } }),
    'bowlLiftsOnCarried',
  ],
  [
    'a carried outcome that is a day too old',
    withProof({ carried: { strandAtMs: bowl.atMs - 85 * day, service: 'gloss' } }),
    'bowlOnOldStrand',
  ],
  [
    'a carried outcome of a day before',
    withProof({ carried: { strandAtMs: bowl.atMs - day, service: 'gloss' } }),
    null,
  ],
  // (9 × 41 + 3 × 39) ÷ 80 = 6.075 %, where 6 % was tested. Exact mass balance.
  ['two bottles weighed stronger than was tested', withTwo(41, 39), 'bowlTooStrong'],
  // 12 % is the ceiling of a bottle. published: Reg. (EC) 1223/2009 Annex III entry 12.
  ['a bottle of 12.1 % among two', withTwo(40, 40, 12.1), 'bowlTooStrong'],
  ['two bottles that make what was tested', withTwo(40, 40), null],
  ['another ratio', withBowl({ ratio: 1.5 }), 'bowlTooStrong'],
];

describe('a record that claims a bowl', () => {
  it.each(edits)('with %s', (_what, edited, breach) => expect(findGateBreach(edited)).toBe(breach));

  it('has every one of its bowls looked at, thrown or not', () => {
    const thrown = { ...bowl, state: 'thrown', proof: null } as const;
    expect(findGateBreach({ ...record, bowls: [bowl, thrown] })).toBe('bowlWithoutOutcome');
    expect(findGateBreach({ ...record, bowls: [] })).toBeNull();
  });

  it('keeps what allowed a bowl when another strand of the zone fails afterwards', () => {
    const start = story.find(({ raw }) => ofType('STRAND_STARTED', 'lengths')(raw))?.raw as RawEvent;
    const weighed = tell(story.slice(0, until('BOWL_APPLIED').length));
    const broke: RawEvent = { type: 'STRAND_BROKE', answers: { zone: 'lengths' } };
    const told = andThen(andThen(weighed, start), broke);
    expect(told.record.strands.at(-1)?.ended?.how).toBe('broke');
    expect(findGateBreach(told.record)).toBeNull();
  });

  it('keeps what allowed a bowl that was thrown away, when its outcome is retracted afterwards', () => {
    const weighed = tell(story.slice(0, until('BOWL_APPLIED').length));
    const retract: RawEvent = {
      type: 'OUTCOME_RETRACTED',
      answers: { zone: 'lengths', code: 'wrongTap', words: 'the row above' },
    };
    const thrown = andThen(weighed, { type: 'BOWL_THROWN', answers: { zone: 'lengths' } });
    expect(findGateBreach(andThen(thrown, retract).record)).toBeNull();
  });

  it('is found out wherever its log lost a strand, an outcome or the decision', () => {
    const { log } = tell(lowRisk);
    const allowed = findGateBreach(fold('told', log));
    expect(allowed).toBeNull();
    for (const [seq, event] of log.entries()) {
      const lost = fold('told', log.toSpliced(seq, 1) as never);
      const isNeeded =
        event.type === 'DECIDED' ||
        (['STRAND_STARTED', 'OUTCOME_RECORDED'].includes(event.type) &&
          'zone' in event.tokens &&
          event.tokens.zone === 'lengths');
      if (isNeeded) expect(findGateBreach(lost), `${seq} ${event.type}`).not.toBeNull();
      else expect(findGateBreach(lost), `${seq} ${event.type}`).toBeNull();
    }
  });
});
