import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { salon } from '../../seeds/salon';
import { computeBowlPercent } from '../../shared/chemistry/ratio';
import { thinOnScale } from '../../shared/chemistry/thinning';
import { mixture, type Order } from '../../shared/judgement/mixture';
import { issuePermit, type MixPermit } from '../../shared/judgement/permit';
import { brand } from '../../shared/units/brand';
import { change, lowRisk, ofType, tell, until } from '../shared/records/telling';
import { holds } from '../shared/seeded';
import { checkAnswer, checkFigure } from './check';

const source = 'exact rationals, fraction.js';
const exactly = (figure: number) => new Fraction(String(figure));

const developers = [3, 6, 9, 12] as const;
const ratios = [1, 1.5, 2] as const;

/** A permit for each bottle and ratio, off a strand that held with them. */
const permits = developers.flatMap((developerPercent) =>
  ratios.map((ratio): MixPermit => {
    const tested = {
      developerPercent: `${developerPercent}`,
      ratio: `${ratio}`,
      heat: 'foil',
      minutes: '25',
    };
    const told = tell(change(until('BOWL_WEIGHED', lowRisk), ofType('STRAND_STARTED'), tested));
    const permit = issuePermit(told.record, 'lengths', salon, told.atMs);
    if (!permit.ok) throw new Error(permit.error.code);
    return permit.value;
  }),
);

const steps = fc.constantFrom(0.1, 0.5, 1);
const tenths = (min: number, max: number) =>
  fc.integer({ min: min * 10, max: max * 10 }).map((tenth) => tenth / 10);
const orders = fc.record({
  permit: fc.constantFrom(...permits),
  colourG: tenths(5, 300),
  parts: fc.array(fc.oneof(tenths(0.3, 20), fc.constantFrom(0.25, 0.5, 1, 2)), {
    minLength: 1,
    maxLength: 6,
  }),
  stepG: steps,
});

/** Whole steps by parts: rounded down, then one more where most was lost, the earlier first. */
function shareExactly(count: Fraction, parts: readonly number[]): readonly Fraction[] {
  const all = parts.reduce((sum, part) => sum.add(exactly(part)), new Fraction(0));
  const shares = parts.map((part) => count.mul(exactly(part)).div(all));
  const lost = (index: number) => shares[index]?.sub(shares[index].floor()) ?? new Fraction(0);
  const left = shares.reduce((rest, share) => rest.sub(share.floor()), count).valueOf();
  const more = [...parts.keys()].sort((a, b) => lost(b).compare(lost(a))).slice(0, left);
  return shares.map((share, index) => share.floor().add(more.includes(index) ? 1 : 0));
}

describe('a bowl, beside exact rationals', () => {
  it('has the very grams of each, and its per cent to 1e-12', () => {
    let mixed = 0;
    holds(
      fc.property(orders, ({ permit, colourG, parts, stepG }) => {
        const { ratio, line, heat } = permit.tested;
        const order: Order = {
          ...{ zone: 'lengths', line, heat, ratio, colourG },
          developerPercent: permit.maxDeveloperPercent,
          minutes: permit.maxMinutes,
          shades: parts.map((each, index) => ({ shade: `Mist ${index}`, parts: each })),
        };
        const made = mixture(permit, order, stepG);
        const step = exactly(stepG);
        const count = exactly(colourG).div(step).floor();
        const shares = shareExactly(count, parts);
        const developer = count.mul(exactly(ratio)).round();
        const input = JSON.stringify({ colourG, parts, stepG, ratio });
        if (!made.ok) {
          const least = Math.min(...parts);
          const all = parts.reduce((sum, part) => sum.add(exactly(part)), new Fraction(0));
          const isCoarse = count.mul(exactly(least)).compare(all) < 0;
          const off = developer.div(count).div(exactly(ratio)).sub(1).abs();
          const expected = isCoarse || off.compare(0.05) > 0;
          checkAnswer({ input, got: made.error, expected: { code: 'stepTooCoarse' }, source });
          checkAnswer({ input: `${input} is too coarse`, got: true, expected, source });
          return;
        }
        mixed += 1;
        const grams = made.value.shades.map(({ amountG }) => amountG);
        const expected = shares.map((share) => share.mul(step).valueOf());
        checkAnswer({ input, got: grams, expected, source });
        const same = (name: string, got: number, exact: Fraction, tolerance = 0) =>
          checkFigure({ input: `${name} of ${input}`, got, expected: exact.valueOf(), tolerance, source });
        same('developer', made.value.developerG, developer.mul(step));
        same('total', made.value.totalG, developer.add(count).mul(step));
        same('remainder', made.value.remainderG, exactly(colourG).sub(count.mul(step)));
        const bottle = exactly(permit.maxDeveloperPercent);
        const inBowl = bottle.mul(exactly(ratio)).div(exactly(ratio).add(1));
        same('per cent', made.value.bowlPercent, inBowl, 1e-12);
      }),
      2000,
    );
    expect(mixed).toBeGreaterThan(1000);
  });

  it('is as strong for every bottle and ratio that a field takes', () => {
    holds(
      fc.property(tenths(0.5, 12), tenths(0.5, 5), (bottle, ratio) => {
        const made = computeBowlPercent(brand(bottle), ratio);
        const expected = exactly(bottle).mul(exactly(ratio)).div(exactly(ratio).add(1));
        const got = made.ok ? made.value : Number.NaN;
        checkFigure({
          ...{ input: `${bottle} % at 1 : ${ratio}`, got, tolerance: 1e-12, source },
          expected: expected.valueOf(),
        });
      }),
      2000,
    );
  });
});

describe('two bottles, beside exact rationals', () => {
  it('have the very grams of each, and together the strength that is told to 1e-12', () => {
    const bottles = fc.record({
      weakPercent: tenths(0.5, 8),
      strongPercent: tenths(4, 12),
      wantedPercent: tenths(0.5, 12),
      totalG: tenths(5, 1000),
    });
    let thinned = 0;
    holds(
      fc.property(bottles, steps, (asked, stepG) => {
        const made = thinOnScale(asked, stepG);
        const [weak, strong, wanted] = [asked.weakPercent, asked.strongPercent, asked.wantedPercent].map(
          exactly,
        );
        if (!made.ok || weak === undefined || strong === undefined || wanted === undefined) return;
        thinned += 1;
        const step = exactly(stepG);
        const count = exactly(asked.totalG).div(step).floor();
        const ofStrong = count.mul(wanted.sub(weak)).div(strong.sub(weak)).floor();
        const ofWeak = count.sub(ofStrong);
        const together = ofStrong.mul(strong).add(ofWeak.mul(weak)).div(count);
        const input = JSON.stringify({ ...asked, stepG });
        const got = [made.value.strongG, made.value.weakG];
        const expected = [ofStrong.mul(step).valueOf(), ofWeak.mul(step).valueOf()];
        checkAnswer({ input, got, expected, source });
        checkFigure({
          ...{ input, got: made.value.madePercent, tolerance: 1e-12, source },
          expected: together.valueOf(),
        });
        checkAnswer({
          ...{ input: `${input} is no stronger than wanted`, expected: true, source },
          got: together.compare(wanted) <= 0 && made.value.madePercent <= asked.wantedPercent,
        });
      }),
      2000,
    );
    expect(thinned).toBeGreaterThan(500);
  });
});
