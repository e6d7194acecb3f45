import { describe, expect, it } from 'vitest';
import { outcomeForm } from '../../../shared/records/forms/test';
import { type Grade, gradeOutcome, grades, isAtLeastAsBad } from '../../../shared/records/gradeOutcome';

const { fibre, stretch, wentPast30 } = outcomeForm;
const yesNo = [false, true];

/** Every outcome there is, with and without a strand that broke in the mix. */
const all = fibre.options.flatMap((seen) =>
  stretch.options.flatMap((pulled) =>
    wentPast30.options.flatMap((far) =>
      yesNo.map((hasBroken) => ({ fibre: seen, stretch: pulled, wentPast30: far, hasBroken })),
    ),
  ),
);
const grade = ({ hasBroken, ...outcome }: (typeof all)[number]): Grade => gradeOutcome(outcome, hasBroken);
const best = { fibre: 'sound', stretch: 'springsBack', wentPast30: 'no', hasBroken: false } as const;

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
    [{ fibre: 'rough', stretch: 'staysLong', wentPast30: 'yes' }, 'gummy'],
    [{ fibre: 'gummy', stretch: 'snaps' }, 'broken'],
  ] as const)('of %j is %s', (change, expected) => expect(grade({ ...best, ...change })).toBe(expected));

  it('is never better than any one thing that was found, for all 48 outcomes', () => {
    expect(all).toHaveLength(48);
    for (const found of all) {
      const whole = grade(found);
      for (const name of ['fibre', 'stretch', 'wentPast30', 'hasBroken'] as const) {
        const alone = grade({ ...best, [name]: found[name] });
        expect(isAtLeastAsBad(whole, alone), `${JSON.stringify(found)} ${name}`).toBe(true);
      }
      const parts = (['fibre', 'stretch', 'wentPast30', 'hasBroken'] as const).map((name) =>
        grade({ ...best, [name]: found[name] }),
      );
      expect(parts).toContain(whole);
    }
  });
});
