import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { listTellable, tellLate } from '../../../shared/records/toldLate';
import { nameWay } from './chartUnderTest';
import { hourMs, minuteMs, startAtMs, tap } from './walks/rawTaps';
import { play, type Told, tryAfter } from './walks/story';
import { hives, lengths, stinging, toColourOn, toMix, toWeighed } from './walks/wayToBowl';

const tellable = listTellable(salon.profile);
const places: Readonly<Record<string, readonly Told[]>> = {
  decided: toMix,
  'with a bowl weighed': toWeighed,
  'over the head': toColourOn,
  'over the head, with a reaction looked into': [...toColourOn, stinging],
  stopped: [...toMix, hives],
  parked: [...toMix, tap('PARKED', { untilAtMs: startAtMs + 300 * hourMs })],
  'at the finish': [...toColourOn, 20 * minuteMs, tap('BOWL_RINSED', lengths), tap('FINISHED')],
};

describe('what she tells of late', () => {
  it.each(Object.entries(places))(
    'is taken when she is %s, and keeps what was told before',
    (_where, story) => {
      const { record } = play(story);
      const before = record.answers.client?.reactions?.filter((item) => item !== 'none') ?? [];
      let taken = 0;
      for (const reaction of tellable) {
        const raw = tellLate(record, reaction, salon.units);
        if (raw === null) {
          expect(before).toContain(reaction);
          continue;
        }
        taken += 1;
        expect(raw.answers?.reactions).toEqual([...before, reaction]);
        expect(tryAfter(story, raw)).toBe('taken');
      }
      expect(taken).toBe(tellable.length - before.length);
    },
  );

  it('is a tingle that stops only in a house that reads any reaction strictly', () => {
    expect(tellable).not.toContain('tingledStops');
    const strict = listTellable({ isAnyReactionAbsolute: true });
    expect([...strict].sort()).toEqual([...tellable, 'tingledStops'].sort());
  });

  it('stops at once where nothing is on her, and after the rinse where something is', () => {
    const told = (story: readonly Told[]) => {
      const raw = tellLate(play(story).record, 'swelling', salon.units);
      if (raw === null) throw new Error('told before');
      return raw;
    };
    expect(nameWay(play([...toWeighed, told(toWeighed)]).state)).toBe('stopped');
    const over = [...toColourOn, told(toColourOn)];
    expect(nameWay(play(over).state)).toBe('colourOn');
    expect(nameWay(play([...over, tap('BOWL_RINSED', lengths)]).state)).toBe('stopped');
  });
});
