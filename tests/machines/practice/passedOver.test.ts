import { describe, expect, it } from 'vitest';
import { listPassedOver } from '../../../machines/practice/passedOver';
import { sitThrough as sit } from '../../../machines/practice/sitThrough';
import { lessons } from '../../../seeds/practice/lessons';
import { askSteps } from '../../../shared/records/steps';
import { careless, perfect } from './trainee';

describe('what a step passed over', () => {
  it('is nothing where everything was asked closer, and is told of a careless trainee at one step alone', () => {
    let count = 0;
    for (const { lesson } of lessons) {
      for (const trainee of [perfect, careless]) {
        const { consultation, settings } = sit(lesson, trainee, 3);
        const said = consultation.record.answers;
        const asked = askSteps.filter((step) => said[step] !== undefined);
        const found = asked.flatMap((step) =>
          listPassedOver(lesson, { hints: [] }, consultation, step, settings),
        );
        if (trainee === perfect) expect(found.map(({ id }) => `${lesson.id} ${id}`)).toEqual([]);
        expect(new Set(found).size).toBe(found.length);
        count += found.length;
      }
    }
    expect(count).toBeGreaterThan(10);
  });

  it('is hinted at once', () => {
    const { lesson } = lessons.find((each) => each.lesson.id === 'wetIronedCurls') ?? {};
    if (lesson === undefined) throw new Error('no such lesson');
    const { consultation, settings } = sit(lesson, careless, 3);
    const list = (hints: Parameters<typeof listPassedOver>[1]['hints']) =>
      listPassedOver(lesson, { hints }, consultation, 'hotTools', settings).map(({ id }) => id);
    const first = list([]);
    expect(first).toContain('ironedWet');
    expect(list(['ironedWet'])).toEqual(first.filter((id) => id !== 'ironedWet'));
  });
});
