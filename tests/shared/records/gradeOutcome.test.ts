import { describe, expect, it } from 'vitest';
import { outcomeForm } from '../../../shared/records/forms/test';
import {
  findSigns,
  type Grade,
  gradeOutcome,
  grades,
  isAtLeastAsBad,
} from '../../../shared/records/gradeOutcome';
import type { StrandRecord } from '../../../shared/records/record';

const { fibre, stretch, wentPast30 } = outcomeForm;
const yesNo = [false, true];

/** Every outcome there is, of strands that broke in the mix, weakened there, or neither. */
const all = fibre.options.flatMap((seen) =>
  stretch.options.flatMap((pulled) =>
    wentPast30.options.flatMap((far) =>
      yesNo.flatMap((hasBroken) =>
        yesNo.map((hasWeakened) => ({
          fibre: seen,
          stretch: pulled,
          wentPast30: far,
          hasBroken,
          hasWeakened,
        })),
      ),
    ),
  ),
);
const grade = ({ hasBroken, hasWeakened, ...outcome }: (typeof all)[number]): Grade =>
  gradeOutcome(outcome, { hasBroken, hasWeakened });
const best = {
  fibre: 'sound',
  stretch: 'springsBack',
  wentPast30: 'no',
  hasBroken: false,
  hasWeakened: false,
} as const;

describe('the grade of an outcome', () => {
  it('runs from sound over rough and gummy to broken', () => {
    expect(grades).toEqual(['sound', 'rough', 'gummy', 'broken']);
    for (const [index, one] of grades.entries()) {
      for (const [place, other] of grades.entries()) expect(isAtLeastAsBad(one, other)).toBe(index >= place);
    }
  });

  it.each([
    [{}, 'sound'],
    [{ fibre: 'rough' }, 'rough'],
    [{ fibre: 'gummy' }, 'gummy'],
    [{ fibre: 'broken' }, 'broken'],
    // How it comes back: common practice, no source.
    [{ stretch: 'staysLong' }, 'rough'],
    [{ stretch: 'snaps' }, 'broken'],
    // Past 30 % on a light pull is gummy: ASSUMED from the published yield at 27 %, J. Soc. Cosmet. Chem. 17, 1966.
    [{ wentPast30: 'yes' }, 'gummy'],
    [{ hasBroken: true }, 'broken'],
    [{ hasWeakened: true }, 'rough'],
    [{ hasWeakened: true, fibre: 'gummy' }, 'gummy'],
    [{ fibre: 'rough', stretch: 'staysLong', wentPast30: 'yes' }, 'gummy'],
    [{ fibre: 'gummy', stretch: 'snaps' }, 'broken'],
  ] as const)('of %j is %s', (change, expected) => expect(grade({ ...best, ...change })).toBe(expected));

  it('is never better than any one thing that was found, for all 96 outcomes', () => {
    expect(all).toHaveLength(96);
    for (const found of all) {
      const whole = grade(found);
      for (const name of ['fibre', 'stretch', 'wentPast30', 'hasBroken', 'hasWeakened'] as const) {
        const alone = grade({ ...best, [name]: found[name] });
        expect(isAtLeastAsBad(whole, alone), `${JSON.stringify(found)} ${name}`).toBe(true);
      }
      const parts = (['fibre', 'stretch', 'wentPast30', 'hasBroken', 'hasWeakened'] as const).map((name) =>
        grade({ ...best, [name]: found[name] }),
      );
      expect(parts).toContain(whole);
    }
  });
});

describe('what a strand showed in the mix', () => {
  const strand = (change: object) =>
    ({ ended: null, why: null, looks: [], ...change }) as unknown as StrandRecord;

  it('is that it broke, that a look found it stretchy, or that it was taken off because it looked weak', () => {
    expect(findSigns(strand({ ended: { how: 'broke' } }))).toEqual({ hasBroken: true, hasWeakened: false });
    expect(findSigns(strand({ looks: [{ feel: 'sound' }, { feel: 'stretchy' }] })).hasWeakened).toBe(true);
    expect(findSigns(strand({ why: 'looksWeak' })).hasWeakened).toBe(true);
  });

  it('is nothing when it was sound or rough at every look and its time was up', () => {
    const held = strand({
      ended: { how: 'takenOff' },
      why: 'timeIsUp',
      looks: [{ feel: 'sound' }, { feel: 'rough' }],
    });
    expect(findSigns(held)).toEqual({ hasBroken: false, hasWeakened: false });
    expect(findSigns(undefined)).toEqual({ hasBroken: false, hasWeakened: false });
  });
});
