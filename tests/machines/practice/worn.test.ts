import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Consultation } from '../../../machines/consultation/consultation';
import type { Lesson } from '../../../machines/practice/lesson';
import { listOvershot } from '../../../machines/practice/overshot';
import { beganAtMs } from '../../../machines/practice/sitThrough';
import { seeHead, seeStrand } from '../../../machines/practice/strandSight';
import { ASSUMED_MOST_STRENGTH, findStrength } from '../../../machines/practice/strength';
import { knowHair } from '../../../machines/practice/trueHair';
import { lessons } from '../../../seeds/practice/lessons';
import { holds } from '../../shared/seeded';
import { findLesson } from './findLesson';
import { minute, openTruly, startStrand, tap } from './openTruly';

const usual = { zone: 'lengths', place: 'crown', developerPercent: 6, heat: 'none' } as const;
const start = (lesson: Lesson, zone: 'lengths' | 'ends' = 'lengths'): Consultation =>
  startStrand(lesson, openTruly(lesson), { ...usual, zone });
const withTruth = (lesson: Lesson, truth: Partial<Lesson['truth']>): Lesson => ({
  ...lesson,
  truth: { ...lesson.truth, ...truth },
});

describe('how much hair stands', () => {
  const virgin = findLesson('safeClient');

  it('is never more for a history of damage than for none, on the same draw', () => {
    const { strand } = virgin;
    const { zones: _zones, ...unscripted } = strand;
    holds(
      fc.property(fc.nat(), (seed) => {
        for (const { lesson } of lessons)
          for (const zone of ['lengths', 'ends'] as const) {
            const own = { ...lesson, id: virgin.id, strand: { ...lesson.strand, seed: strand.seed } };
            const fresh = { ...virgin, strand: { ...unscripted, zones: {} } };
            if (knowHair(own).zones[zone].chance < 0.1) continue;
            expect(findStrength({ lesson: own, seed }, zone), `${lesson.id} ${zone}`).toBeLessThanOrEqual(
              Math.max(1.8, findStrength({ lesson: fresh, seed }, zone)),
            );
          }
      }),
      50,
    );
  });

  it('is two hours of the usual mix at the most', () => {
    for (const { lesson } of lessons)
      for (const zone of ['roots', 'lengths', 'ends'] as const)
        for (let seed = 0; seed < 20; seed += 1)
          expect(findStrength({ lesson, seed }, zone)).toBeLessThanOrEqual(ASSUMED_MOST_STRENGTH);
  });

  it('is no more for the weaker of two zones of one head', () => {
    holds(
      fc.property(fc.nat(), (seed) => {
        const { zones: _zones, ...strand } = findLesson('longEnds').strand;
        const lesson = { ...findLesson('longEnds'), strand };
        const [lengths, ends] = (['lengths', 'ends'] as const).map((zone) => ({
          strength: findStrength({ lesson, seed }, zone),
          chance: knowHair(lesson).zones[zone].chance,
        }));
        if (lengths === undefined || ends === undefined) throw new Error('no zones');
        expect(Math.sign(lengths.strength - ends.strength)).not.toBe(
          Math.sign(lengths.chance - ends.chance) || 2,
        );
      }),
      100,
    );
  });

  it('never breaks before the second look, and is seen to weaken first', () => {
    const lesson = findLesson('wetIronedCurls');
    const { record } = start(lesson, 'ends');
    let rough = 0;
    for (let seed = 0; seed < 60; seed += 1) {
      const feels = Array.from(
        { length: 10 },
        (_, look) => seeStrand({ lesson, seed }, record, 'ends', beganAtMs + (look + 1) * 3 * minute)?.fibre,
      );
      expect(feels[0], `seed ${seed}`).toBe('sound');
      expect(feels[1], `seed ${seed}`).not.toBe('broken');
      expect(feels).toContain('broken');
      if (feels.includes('rough') || feels.includes('gummy')) rough += 1;
    }
    expect(rough).toBe(60);
  });
});

describe('a strand', () => {
  it('that came off broken stays so, as light as it was, whatever is planned afterwards', () => {
    const lesson = findLesson('wetIronedCurls');
    const on = start(lesson, 'ends');
    const off = tap(lesson, on, beganAtMs + 30 * minute, { type: 'STRAND_BROKE', answers: { zone: 'ends' } });
    const atMs = beganAtMs + 40 * minute;
    const { client } = off.record.answers;
    const answers = {
      ...off.record.answers,
      client: { ...client, service: 'depositOnly', targetLevel: 5 } as const,
    };
    const changed = { ...off.record, answers };
    for (let seed = 0; seed < 8; seed += 1) {
      const before = seeStrand({ lesson, seed }, off.record, 'ends', atMs);
      expect(before?.fibre).toBe('broken');
      expect(seeStrand({ lesson, seed }, changed, 'ends', atMs)).toEqual(before);
    }
  });

  it('of hair that snaps when wet is never sound, from the first minute on', () => {
    const lesson = findLesson('safeClient');
    const { record } = start(lesson);
    const see = (wetStretch: string, min: number) => {
      const feelHair = { ...lesson.truth.feelHair, wetStretch };
      const sitting = { lesson: withTruth(lesson, { feelHair }), seed: 1 };
      return seeStrand(sitting, record, 'lengths', beganAtMs + min * minute);
    };
    for (const min of [0, 10, 30]) {
      expect(see('snaps', min)?.stretch).toBe('snaps');
      expect(see('snaps', min)?.fibre).not.toBe('sound');
      expect(see('staysLong', min)?.fibre).not.toBe('sound');
      expect(see('springsBack', min)?.fibre).toBe('sound');
    }
  });

  it('that was only deposited on has no undertone to name', () => {
    const grey = findLesson('fineGrey');
    const sitting = { lesson: grey, seed: 1 };
    expect(seeStrand(sitting, start(grey).record, 'lengths', beganAtMs + 10 * minute)?.hasUndertone).toBe(
      false,
    );
    const safe = findLesson('safeClient');
    const lifted = seeStrand({ lesson: safe, seed: 1 }, start(safe).record, 'lengths', beganAtMs + minute);
    expect(lifted?.hasUndertone).toBe(true);
  });

  it('that was left on beyond her level is said to be too light', () => {
    const lesson = findLesson('safeClient');
    const on = start(lesson);
    const takeOff = (min: number) =>
      tap(lesson, on, beganAtMs + min * minute, {
        type: 'STRAND_TAKEN_OFF',
        answers: { zone: 'lengths', why: 'levelReached' },
      }).record;
    expect(listOvershot({ lesson, seed: 1 }, takeOff(6))).toEqual([]);
    const [over] = listOvershot({ lesson, seed: 1 }, takeOff(30));
    expect(over).toMatchObject({ zone: 'lengths', of: 'strand', target: 7 });
    expect(over?.level).toBeGreaterThanOrEqual(8);
    expect(listOvershot({ lesson, seed: 1 }, on.record)).toEqual([]);
  });
});

it('a toner goes on from what lightener left, and lifts nothing', () => {
  const lesson = findLesson('safeClient');
  const on = start(lesson);
  const [strand] = on.record.strands;
  if (strand === undefined) throw new Error('no strand');
  const clock = (id: string, atMin: number, min: number) => ({
    ...on.record.clocks[0],
    id,
    startedAtMs: beganAtMs + atMin * minute,
    endedAtMs: beganAtMs + (atMin + min) * minute,
  });
  const bowl = (kind: 'tested' | 'toner', id: string, developerPercent: number) => ({
    ...{ kind, zone: 'lengths', clock: id, developerPercent, heat: 'none', state: 'rinsed' },
    strand: kind === 'tested' ? strand.number : 0,
  });
  const see = (...bowls: readonly object[]) =>
    seeHead(
      { lesson, seed: 1 },
      { ...on.record, bowls, clocks: [clock('first', 0, 30), clock('then', 40, 10)] } as never,
      'lengths',
      beganAtMs + 60 * minute,
    );
  const lightened = see(bowl('tested', 'first', 6));
  const toned = see(bowl('tested', 'first', 6), bowl('toner', 'then', 1.5));
  expect(lightened?.level).toBeGreaterThan(8);
  expect(toned?.level).toBeGreaterThanOrEqual(7);
  expect(toned?.level).toBeLessThanOrEqual(lightened?.level ?? 0);
});
