import { describe, expect, it } from 'vitest';
import { findBarriers } from './accessibility';
import { useKeys } from './hands';
import * as newcomer from './newcomer';
import { makePerson, type Person } from './person';
import { useStation } from './station';
import { playStep, setUp } from './story';

const station = useStation();

describe('without a finger on the glass', () => {
  const barriers: string[] = [];
  const met = new Set<string>();

  /** Runs over each screen once, with what has been filled in. */
  async function examine({ page, pass }: Person): Promise<void> {
    const title = await page.evaluate(
      () => (document.querySelector('dialog[open] h2') ?? document.querySelector('h1'))?.textContent ?? '',
    );
    if (met.has(title)) return;
    met.add(title);
    let isExamined = false;
    const finding = findBarriers(page).finally(() => {
      isExamined = true;
    });
    // The examination waits by the page's own clock, which stands.
    while (!isExamined) await pass(1);
    for (const barrier of await finding) barriers.push(`${title}: ${barrier}`);
  }

  it('the whole way to the weighed bowl is gone with Tab, Enter, Space and letters, the focus always in sight', async () => {
    const person = await makePerson(station.browser, station.address, 'Maren', newcomer.openingDayMs, {
      hands: useKeys,
      hasTouch: false,
    });
    const look = () => examine(person);
    await setUp(person, 'Maren', newcomer.newSalon, look);
    for (const step of [...newcomer.upToOutcomes, newcomer.reason, newcomer.decision, newcomer.bowl]) {
      await playStep(person, step, look);
      await look();
    }
    expect(await person.page.locator('[data-bowl="weighed"]').count()).toBe(1);
    expect(person.complaints).toEqual([]);
  });

  it('and no screen that was met shuts anybody out', () => {
    expect(met.size).toBeGreaterThan(14);
    expect(barriers).toEqual([]);
  });
});
