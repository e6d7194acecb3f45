import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Consultation } from '../../../machines/consultation/consultation';
import { beganAtMs } from '../../../machines/practice/sitThrough';
import { type StrandSight, seeGlass, seeSkinTest, seeStrand } from '../../../machines/practice/strandSight';
import { listUndertones } from '../../../shared/chemistry/undertone';
import { grades } from '../../../shared/records/gradeOutcome';
import { holds, numberBetween } from '../../shared/seeded';
import { findLesson } from './findLesson';
import { minute, openTruly, startStrand, type Tested, tap } from './openTruly';

/** Lessons in which a strand may truly be tested. */
const ready = [
  'wetIronedCurls',
  'neverChemical',
  'highAltitude',
  'longEnds',
  'safeClient',
  'fineGrey',
] as const;

const anyTested: fc.Arbitrary<Tested> = fc.record({
  zone: fc.constantFrom('lengths', 'ends'),
  place: fc.constantFrom('crown', 'nape'),
  developerPercent: fc.constantFrom(1.5, 3, 6),
  heat: fc.constantFrom('none', 'foil', 'dryHeat'),
});
const anyLook = fc.record({
  of: fc.constantFrom(...ready),
  tested: anyTested,
  seed: fc.nat(),
  min: numberBetween(0, 90),
});
interface Look {
  readonly of: (typeof ready)[number];
  readonly tested: Tested;
  readonly seed: number;
  readonly min: number;
}

const started = new Map<string, Consultation>();
/** The same strand is started but once. */
function start(id: string, tested: Tested): Consultation {
  const key = JSON.stringify([id, tested]);
  const opened = started.get(id) ?? openTruly(findLesson(id));
  const consultation = started.get(key) ?? startStrand(findLesson(id), opened, tested);
  started.set(id, opened).set(key, consultation);
  return consultation;
}

function see({ of, tested, seed, min }: Look): StrandSight {
  const { record } = start(of, tested);
  const sight = seeStrand({ lesson: findLesson(of), seed }, record, tested.zone, beganAtMs + min * minute);
  if (sight === null) throw new Error('a strand that nobody sees');
  return sight;
}

const badness = ({ fibre }: StrandSight): number => grades.indexOf(fibre);
/** How much is lifted; a gloss goes the other way. */
const stronger = { '1.5': 3, '3': 6, '6': 6 } as const;
const hotter = { none: 'foil', foil: 'dryHeat', dryHeat: 'dryHeat' } as const;

describe('what is seen of a practice strand', () => {
  it('is the same for the same sitting', () => {
    holds(
      fc.property(anyLook, (look) => {
        expect(see(look)).toEqual(see(look));
      }),
      200,
    );
  });

  it('never gets better or earlier: with more minutes', () => {
    holds(
      fc.property(anyLook, numberBetween(0, 90), (look, moreMin) => {
        const before = see(look);
        const after = see({ ...look, min: look.min + moreMin });
        expect(badness(after)).toBeGreaterThanOrEqual(badness(before));
        if (before.hasGone) expect(after.hasGone).toBe(true);
      }),
    );
  });

  it('nor with a stronger developer, nor with more heat', () => {
    holds(
      fc.property(anyLook, (look) => {
        const { tested } = look;
        const developerPercent = stronger[String(tested.developerPercent) as keyof typeof stronger];
        const before = badness(see(look));
        expect(badness(see({ ...look, tested: { ...tested, developerPercent } }))).toBeGreaterThanOrEqual(
          before,
        );
        const heat = hotter[tested.heat];
        expect(badness(see({ ...look, tested: { ...tested, heat } }))).toBeGreaterThanOrEqual(before);
      }),
    );
  });

  it('nor from where she irons instead of the nape', () => {
    holds(
      fc.property(anyLook, (look) => {
        const nape = see({ ...look, tested: { ...look.tested, place: 'nape' } });
        const crown = see({ ...look, tested: { ...look.tested, place: 'crown' } });
        expect(badness(crown)).toBeGreaterThanOrEqual(badness(nape));
      }),
      200,
    );
  });

  it('is lighter, or as light, the longer lightener is on, within the trade’s levels, with the undertone of its level', () => {
    holds(
      fc.property(anyLook, numberBetween(0, 60), (look, moreMin) => {
        const [before, after] = [see(look), see({ ...look, min: look.min + moreMin })];
        if (findLesson(look.of).truth.client.service === 'lighten')
          expect(after.level).toBeGreaterThanOrEqual(before.level);
        else expect(after.level).toBeLessThanOrEqual(before.level);
        expect(after.level * 2).toBe(Math.round(after.level * 2));
        expect(listUndertones(after.level)).toContain(after.undertone);
      }),
    );
  });

  it('says as an outcome what it says as a look', () => {
    holds(
      fc.property(anyLook, (look) => {
        const { fibre, feel, hasGone, stretch } = see(look);
        expect(feel === 'stretchy').toBe(fibre === 'gummy' || fibre === 'broken');
        expect(hasGone).toBe(fibre === 'broken');
        expect(stretch === 'snaps').toBe(hasGone);
      }),
      200,
    );
  });

  it('stays as it came off the mix', () => {
    const lesson = findLesson('wetIronedCurls');
    const tested = { zone: 'lengths', place: 'crown', developerPercent: 6, heat: 'none' } as const;
    const on = startStrand(lesson, openTruly(lesson), tested);
    const off = tap(lesson, on, beganAtMs + 20 * minute, {
      type: 'STRAND_TAKEN_OFF',
      answers: { zone: 'lengths', why: 'levelReached' },
    });
    const sitting = { lesson, seed: 3 };
    const atOnce = seeStrand(sitting, off.record, 'lengths', beganAtMs + 20 * minute);
    expect(seeStrand(sitting, off.record, 'lengths', beganAtMs + 90 * minute)).toEqual(atOnce);
    expect(seeStrand(sitting, off.record, 'ends', beganAtMs)).toBeNull();
  });
});

describe('what else is seen', () => {
  it('of a cutting in the glass: nothing at first, and then what it does', () => {
    const lesson = findLesson('compoundHenna');
    const opened = openTruly(lesson);
    expect(seeGlass(lesson, opened.record, beganAtMs)).toBeNull();
    const { record } = tap(lesson, opened, beganAtMs, { type: 'INCOMPATIBILITY_STARTED' });
    expect(seeGlass(lesson, record, beganAtMs + 9 * minute)).toBe('nothing');
    expect(seeGlass(lesson, record, beganAtMs + 10 * minute)).toBe('reacted');
    const box = findLesson('unknownBoxColour');
    const other = tap(box, openTruly(box), beganAtMs, { type: 'INCOMPATIBILITY_STARTED' });
    expect(seeGlass(box, other.record, beganAtMs + 30 * minute)).toBe('nothing');
  });

  it('of a skin test: when it was put on, and what it shows today', () => {
    const seen = seeSkinTest(findLesson('positiveSkinTest'), beganAtMs);
    expect(seen).toEqual({ putOnAtMs: beganAtMs - 51 * 60 * minute, seen: 'reaction' });
    const lesson = findLesson('safeClient');
    expect(seeSkinTest({ ...lesson, truth: { ...lesson.truth, skinTest: null } }, beganAtMs)).toBeNull();
  });
});
