import { describe, expect, it } from 'vitest';
import { hear } from '../../../../machines/practice/asking';
import { lessons } from '../../../../seeds/practice/lessons';
import { salon } from '../../../../seeds/salon';
import { askForms } from '../../../../shared/records/forms/asked';
import { askSteps } from '../../../../shared/records/steps';
import { findAsked } from '../../../../src/screens/practice/findAsked';
import { sayHeard } from '../../../../src/screens/practice/sayHeard';
import { findWords } from '../../../../src/words/words';

const words = findWords('en');
const inF = { words, units: salon.units };
const inC = { words, units: { temperature: 'C', mass: 'g', length: 'cm' } } as const;

const say = (id: string, path: string, isCloser: boolean, saying: typeof inF | typeof inC = inF): string => {
  const { lesson } = lessons.find((each) => each.lesson.id === id) ?? {};
  const place = findAsked(path, words);
  if (lesson === undefined || place === null) throw new Error(`nothing is asked at ${path}`);
  return sayHeard(path, hear(lesson, path, isCloser), place, saying);
};

describe('what is heard', () => {
  it('is what she says, in quotes, where the lesson has words for it', () => {
    expect(say('wetIronedCurls', 'hotTools.smoke', false)).toBe('“Smoke? No, nothing ever burnt.”');
    expect(say('wetIronedCurls', 'hotTools.smoke', true)).toContain('white cloud');
  });

  it('is else what is true, in the option’s own words, rows and units of the station', () => {
    expect(say('wetIronedCurls', 'client.scalp', false)).toBe(words.asked.client.scalp.options.sound);
    const rows = say('safeClient', 'hotTools.habits', false);
    expect(rows).toContain(words.asked.hotTools.habits.rows.tool.options.flatIron);
    expect(rows).toMatch(/\d+\u00a0°F/);
    expect(say('safeClient', 'hotTools.habits', false, inC)).toMatch(/\d+\u00a0°C/);
  });

  it('never shows an option’s name in the program, whatever is asked in whatever lesson', () => {
    let count = 0;
    for (const { lesson } of lessons) {
      for (const step of askSteps) {
        for (const name of Object.keys(askForms[step])) {
          for (const isCloser of [false, true]) {
            const said = say(lesson.id, `${step}.${name}`, isCloser);
            expect(said).not.toMatch(/[a-z][A-Z]|\[object|undefined|null/);
            count += said === '' ? 0 : 1;
          }
        }
      }
    }
    expect(count).toBeGreaterThan(200);
  });
});
