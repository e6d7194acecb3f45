import { describe, expect, it } from 'vitest';
import { sitThrough as sit } from '../../../machines/practice/sitThrough';
import { seeHead } from '../../../machines/practice/strandSight';
import { findLesson } from './findLesson';
import { minute, tap } from './openTruly';
import { perfect } from './trainee';

describe('what is seen on her head', () => {
  const weigh = (zone: string) => ({
    type: 'BOWL_WEIGHED' as const,
    answers: {
      zone,
      shades: [{ shade: 'powder', parts: '1' }],
      colourG: '40',
      line: 'Sandbar powder',
      developerPercent: '3',
      ratio: '2',
      heat: 'none',
      minutes: '20',
    },
  });
  /** A careless or a perfect sitting that went as far as the decision, and its lengths in the mix. */
  function putOn(id: string, who: typeof perfect, seed: number) {
    const lesson = findLesson(id);
    const { consultation } = sit(lesson, who, seed);
    const atMs = consultation.record.newestAtMs + minute;
    const weighed = tap(lesson, consultation, atMs, weigh('lengths'));
    const answers = { zone: 'lengths', skinFirst: 'calm' };
    const on = tap(lesson, weighed, atMs, { type: 'BOWL_APPLIED', answers });
    return { sitting: { lesson, seed }, on, weighed, atMs };
  }

  it('is calm and sound on a client with nothing against her, and springs back once it is rinsed', () => {
    const { sitting, on, weighed, atMs } = putOn('safeClient', perfect, 5);
    expect(seeHead(sitting, weighed.record, 'lengths', atMs)).toBeNull();
    expect(seeHead(sitting, on.record, 'lengths', atMs + 15 * minute)).toMatchObject({
      stinging: 'no',
      hair: 'sound',
      stretch: 'springsBack',
    });
    const rinsed = tap(sitting.lesson, on, atMs + 20 * minute, {
      type: 'BOWL_RINSED',
      answers: { zone: 'lengths' },
    });
    const seen = seeHead(sitting, rinsed.record, 'lengths', atMs + 60 * minute);
    expect(seen).toMatchObject({ stretch: 'springsBack' });
    expect(seeHead(sitting, rinsed.record, 'ends', atMs)).toBeNull();
  });

  it('stings on sore skin, and not on a client who is allergic: that comes later, or in the breath', () => {
    const { on, atMs } = putOn('safeClient', perfect, 1);
    const seen = (client: object, truth: object = {}) => {
      const lesson = findLesson('safeClient');
      const other = {
        ...lesson,
        truth: { ...lesson.truth, client: { ...lesson.truth.client, ...client }, ...truth },
      };
      return seeHead({ lesson: other, seed: 1 }, on.record, 'lengths', atMs + 5 * minute)?.stinging;
    };
    for (const scalp of ['tight', 'irritated', 'broken']) expect(seen({ scalp }), scalp).toBe('yes');
    expect(seen({ reactions: ['tingled'] })).toBe('yes');
    expect(seen({}, { glass: 'reacted' })).toBe('yes');
    for (const reaction of ['swelling', 'blackTattoo', 'tightChest'])
      expect(seen({ reactions: [reaction] }), reaction).toBe('no');
    expect(seen({}, { skinTest: { hoursAgo: 54, seen: 'reaction' } })).toBe('no');
  });

  it('breaks there as its strand would have, the longer it is on the worse, and stays broken', () => {
    const { sitting, on, atMs } = putOn('safeClient', perfect, 5);
    const { lesson } = sitting;
    const weak = { ...lesson, strand: { ...lesson.strand, zones: { lengths: { chance: 0.97 } } } };
    const worse = ['sound', 'stretchy', 'breaking'];
    const seen = Array.from({ length: 61 }, (_, min) =>
      worse.indexOf(
        seeHead({ lesson: weak, seed: 5 }, on.record, 'lengths', atMs + min * minute)?.hair ?? '',
      ),
    );
    expect(seen[0]).toBe(0);
    expect(seen.at(-1)).toBe(2);
    expect(seen).toEqual(seen.toSorted((one, other) => one - other));
  });
});
