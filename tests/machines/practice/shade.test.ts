import { describe, expect, it } from 'vitest';
import { findShade } from '../../../machines/practice/shade';
import type { Wearing } from '../../../machines/practice/strength';
import type { Answers } from '../../../shared/records/forms/asked';
import { findLesson } from './findLesson';

const { strand: _strand, ...nobody } = findLesson('safeClient');
const plain = { ...nobody, strand: { seed: 1 } };
const answers = (
  client: Answers['client'],
  hotTools: Answers['hotTools'] = { history: ['none'] },
): Answers => ({
  client: { naturalLevel: 5, endsLevel: 5, targetLevel: 9, ...client },
  hotTools: { ...hotTools },
});
const mix = (developerPercent: number, isLifting = true) =>
  ({ developerPercent, heat: 'none', isLifting }) as const;
type Zone = Parameters<typeof findShade>[2];
/** One coat of the mix on hair of hers, as it was planned with her. */
function see(
  told: Answers,
  zone: Zone,
  wearing: Wearing,
  minutes: number,
  lesson: Parameters<typeof findShade>[0] = plain,
) {
  const { service = 'lighten', targetLevel = 10 } = told.client ?? {};
  return findShade(lesson, told, zone, [{ ...wearing, service, targetLevel, minutes }]);
}
/** Long enough that nothing more comes. */
const LEFT_MIN = 600;
const levelOf = (
  told: Answers,
  percent: number,
  minutes = LEFT_MIN,
  zone: 'lengths' | 'ends' | 'roots' = 'ends',
) => see(told, zone, mix(percent), minutes).level;

describe('how it lifts', () => {
  // The trade’s table for tint on natural hair: common practice, no source.
  it.each([
    [3, 0, 0],
    [6, 1, 2],
    [9, 2, 3],
    [12, 3, 4],
  ])('tint with %d %% lifts natural hair by %d to %d levels', (percent, least, most) => {
    const lifted = levelOf(answers({ service: 'liftAndDeposit' }), percent) - 5;
    expect(lifted).toBeGreaterThanOrEqual(least);
    expect(lifted).toBeLessThanOrEqual(most);
  });

  it('colour does not lift colour, and lightener lifts it less', () => {
    const history = { history: ['salonColour'] } as const;
    expect(levelOf(answers({ service: 'liftAndDeposit' }, history), 12)).toBe(5);
    const [natural, coloured] = [answers({ service: 'lighten' }), answers({ service: 'lighten' }, history)];
    expect(levelOf(coloured, 6)).toBeLessThan(levelOf(natural, 6));
    expect(levelOf(coloured, 6)).toBeGreaterThan(5);
  });

  it('lightener with 20 vol gets most of three to five levels in half an hour, and never past the lightest', () => {
    const lifted = levelOf(answers({ service: 'lighten' }), 6, 30) - 5;
    expect(lifted).toBeGreaterThanOrEqual(3);
    expect(lifted).toBeLessThanOrEqual(5);
    expect(levelOf(answers({ service: 'lighten', endsLevel: 9 }), 12)).toBe(10);
  });

  it('what only deposits goes down to the level she wants, and lifts nothing', () => {
    const gloss = (endsLevel: number) =>
      see(answers({ service: 'gloss', targetLevel: 6, endsLevel }), 'ends', mix(3, false), LEFT_MIN);
    expect(gloss(9).level).toBe(6);
    expect(gloss(4).level).toBe(4);
  });

  it('a lesson may slow it, and a stronger heat quickens it', () => {
    const slow = { strand: { seed: 1, zones: { ends: { lift: 0.5 } } } };
    const told = answers({ service: 'lighten' });
    expect(see(told, 'ends', mix(6), 30, slow).level).toBeLessThan(levelOf(told, 6, 30));
    const hot = { ...mix(6), heat: 'dryHeat' as const };
    expect(see(told, 'ends', hot, 10).level).toBeGreaterThan(levelOf(told, 6, 10));
  });
});

describe('where it begins', () => {
  const atStart = (zone: 'roots' | 'lengths' | 'ends', hotTools: Answers['hotTools']) =>
    levelOf(answers({ service: 'lighten', naturalLevel: 4, endsLevel: 7 }, hotTools), 6, 0, zone);

  it('at the roots as it grows, at the ends as they are, in the lengths by whether anything was put on them', () => {
    const bleached = { history: ['lightener'] } as const;
    expect(
      ['roots', 'lengths', 'ends'].map((zone) => atStart(zone as 'roots', { history: ['none'] })),
    ).toEqual([4, 4, 7]);
    expect(['roots', 'lengths', 'ends'].map((zone) => atStart(zone as 'roots', bleached))).toEqual([4, 7, 7]);
    expect(atStart('lengths', { ...bleached, bleachReach: 'ends' })).toBe(4);
  });

  it('in the middle of the scale where nobody knows', () => {
    expect(levelOf(answers({ service: 'lighten', endsLevel: 'unknown' }), 6, 0)).toBe(5);
  });
});

it('is banded over an old band of bleach, patchy over a box or henna, else even, unless the lesson says so', () => {
  const evennessOf = (hotTools: Answers['hotTools'], strand: Parameters<typeof findShade>[0] = plain) =>
    see(answers({ service: 'lighten' }, hotTools), 'ends', mix(6), 30, strand).evenness;
  expect(evennessOf({ history: ['none'] })).toBe('even');
  expect(evennessOf({ history: ['lightener'], bleachReach: 'band' })).toBe('banded');
  expect(evennessOf({ history: ['boxColour'] })).toBe('patchy');
  expect(evennessOf({ history: ['henna'] })).toBe('patchy');
  const told = { strand: { seed: 1, zones: { ends: { evenness: 'banded' as const } } } };
  expect(evennessOf({ history: ['none'] }, told)).toBe('banded');
});
