import { describe, expect, it } from 'vitest';
import { debrief } from '../../../machines/practice/debrief';
import { sitThrough as sit } from '../../../machines/practice/sitThrough';
import type { RawForm } from '../../../shared/records/readForm';
import { defaultSettings } from '../../../shared/records/settings';
import { findLesson } from './findLesson';
import { perfect } from './trainee';

const celsius = { ...defaultSettings, units: { temperature: 'C', mass: 'g', length: 'cm' } as const };

function finish(id: string, finishes: RawForm) {
  const lesson = findLesson(id);
  const sat = sit(lesson, { ...perfect, finishes: () => finishes }, 1, celsius);
  const told = debrief(lesson, sat.practiceLog, sat.consultation.log, sat.settings);
  if (told === null) throw new Error(`${id} has no debrief`);
  return told;
}
const styled = { finish: 'styled', tool: 'flatIron' };
const flagOf = (told: ReturnType<typeof finish>, id: string) =>
  told.flags.find(({ flag }) => flag.id === id)?.how;

describe('today’s finish', () => {
  it('without a hot tool is right, costs nothing and misses nothing', () => {
    for (const id of ['sugarySpray', 'siliconeSpray', 'safeClient']) {
      const told = finish(id, { finish: 'noHotTool' });
      expect(told.finish).toMatchObject({ isRight: true, against: [] });
      expect(told.failedBy, id).toEqual([]);
      expect(told.score, id).toBe(100);
      expect(told.asked.some(({ path }) => path.startsWith('heatSpray.'))).toBe(false);
    }
  });

  it('is wrong with what burns near a plate, however cool it is set', () => {
    const told = finish('sugarySpray', { ...styled, spray: 'cove  MIST', settingC: '100' });
    expect(told.finish.against).toEqual(['alcoholBurns']);
    expect(told.failedBy).toEqual(['finish']);
    expect(flagOf(told, 'sugarCaramelises')).toBe('seen');
    expect(told.isPassed).toBe(false);
  });

  it('is wrong as she asks for it, and its findings stood on the screen', () => {
    const told = finish('siliconeSpray', { ...styled, spray: 'Harbour veil', settingC: '221' });
    expect(told.finish.against).toEqual(
      expect.arrayContaining(['tooHot', 'siliconeGivesFormaldehyde', 'd5Boils']),
    );
    expect(told.failedBy).toEqual(['finish']);
    expect(flagOf(told, 'd5Boils')).toBe('seen');
    expect(flagOf(told, 'siliconeGivesFormaldehyde')).toBe('seen');
  });

  it('is right once she is talked down, and what held at that setting was seen', () => {
    const told = finish('siliconeSpray', { ...styled, spray: 'Harbour veil', settingC: '180' });
    expect(told.finish.isRight).toBe(true);
    expect(flagOf(told, 'siliconeGivesFormaldehyde')).toBe('seen');
  });

  it('is too hot without any spray as well', () => {
    const told = finish('safeClient', { ...styled, spray: 'none', settingC: '215' });
    expect(told.finish.against).toEqual(['tooHot']);
    expect(told.failedBy).toEqual(['finish']);
  });
});
