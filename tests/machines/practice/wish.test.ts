import { describe, expect, it } from 'vitest';
import { findTrue, hear } from '../../../machines/practice/asking';
import type { Lesson } from '../../../machines/practice/lesson';
import { checkLesson } from '../../../machines/practice/readLesson';
import { safeClient } from '../../../seeds/practice/safeClient';

const { lesson } = safeClient;
const styled = { finish: 'styled', spray: 'Cove mist', tool: 'flatIron', settingC: '190' };
const asking: Lesson = { ...lesson, finish: styled };

describe('how she asks for it to be finished', () => {
  it('is heard at once, the same when she is asked closer, and is nobody’s truth', () => {
    for (const isCloser of [false, true]) {
      expect(hear(asking, 'heatSpray.finish', isCloser)).toMatchObject({ means: 'styled' });
      expect(hear(asking, 'heatSpray.settingC', isCloser)).toMatchObject({ means: '190', words: null });
    }
    expect(findTrue(asking, 'heatSpray.finish')).toBeNull();
    expect(findTrue(asking, 'heatSpray.settingC')).toBeNull();
  });

  it('is no hot tool where she asks for nothing', () => {
    expect(hear(lesson, 'heatSpray.finish', false).means).toBe('noHotTool');
    expect(hear(lesson, 'heatSpray.settingC', false).means).toBeNull();
  });

  it('has to be one that its form takes, and is not among what she says', () => {
    expect(checkLesson(asking).ok).toBe(true);
    expect(checkLesson({ ...lesson, finish: { ...styled, settingC: '900' } })).toMatchObject({
      error: [{ path: 'finish.settingC', code: 'notTrueAnswer' }],
    });
    const says = { 'heatSpray.finish': { first: { words: 'Iron it.', means: 'styled' } } };
    expect(checkLesson({ ...lesson, says })).toMatchObject({
      error: [{ path: 'says.heatSpray.finish', code: 'noSuchQuestion' }],
    });
  });
});

describe('what does not apply to her', () => {
  const none: Lesson = { ...lesson, says: {} };
  it('is none of it, and not that she does not know', () => {
    expect(hear(none, 'hotTools.bleaches', false).means).toBe('0');
    expect(hear(none, 'hotTools.relaxedWithinTwoWeeks', false).means).toBe('no');
  });

  it('is what the form takes where nothing is said', () => {
    expect(hear(none, 'client.lengthCm', false).means).toBe('unknown');
    expect(hear(none, 'hotTools.bleachReach', false).means).toBe('unknown');
    expect(hear(none, 'hotTools.lastBleachMonthsAgo', false).means).toBe('unknown');
    expect(hear(none, 'hotTools.growth', false).means).toBe('usual');
  });

  it('is nothing where there is no such question', () => {
    for (const path of [
      'hotTools.nothing',
      'client',
      'elsewhere.scalp',
      'client.__proto__',
      'client.scalp.0',
    ])
      expect(hear(none, path, true), path).toMatchObject({ words: null, means: null });
  });
});
