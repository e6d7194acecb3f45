import { describe, expect, it } from 'vitest';
import { salon } from '../../seeds/salon';
import { makePerson, type Person } from './person';
import { askAll, decide, endStrand, putOn, startStrand, weigh } from './shortWay';
import { useStation } from './station';
import { playStep, setUp } from './story';

const station = useStation();

const minute = 60_000;
const startAtMs = Date.UTC(2026, 5, 2, 13, 0);

/** One running clock, as the test set it going: nothing of it is read from the station. */
interface Running {
  readonly chair: number;
  readonly name: string;
  readonly startedAtMs: number;
  readonly minutes: number;
  /** First look after so many minutes, then every so many; null where nobody looks. Nobody looks here. */
  readonly looks: readonly [first: number, every: number] | null;
}

const dueOf = ({ startedAtMs, minutes }: Running): number => startedAtMs + minutes * minute;

/** What a person with a watch would say is next, where nobody has looked yet: the first look, and at the last the end. */
function findNext(clock: Running, nowMs: number): { readonly atMs: number; readonly says: string } {
  const dueAtMs = dueOf(clock);
  const isHead = clock.name.startsWith('HEAD');
  const isGlass = clock.name === 'GLASS';
  const end = isGlass ? 'read' : isHead ? 'rinse' : 'take off';
  const warning = isHead ? 'to the basin · ' : '';
  if (nowMs >= dueAtMs) return { atMs: dueAtMs, says: isGlass ? 'read it now' : `${end} now` };
  const look = clock.looks === null ? dueAtMs : clock.startedAtMs + clock.looks[0] * minute;
  if (!isHead && nowMs >= look) return { atMs: look, says: 'look now' };
  if (dueAtMs - nowMs <= 2 * minute) return { atMs: dueAtMs, says: `${warning}${end} in` };
  if (clock.looks === null) return { atMs: dueAtMs, says: `${end} in` };
  return { atMs: look, says: nowMs < look ? 'look in' : 'look now' };
}

/** As what does it call at this moment: a look, the basin or the end, or that more than three minutes late? */
function sayCall(clock: Running, nowMs: number): string {
  const lateMs = nowMs - dueOf(clock);
  if (lateMs >= 3 * minute) return 'Overrun';
  if (lateMs >= 0 || (clock.name.startsWith('HEAD') && lateMs >= -2 * minute)) return 'Due now';
  return clock.looks !== null && nowMs >= clock.startedAtMs + clock.looks[0] * minute ? 'Look due' : 'Next';
}

/**
 * What hurts soonest comes first: over on a head, long over off it, to the basin, over off the head, to be looked at on a
 * head, then off it, all else.
 */
function rank(clock: Running, nowMs: number): number {
  const isHead = clock.name.startsWith('HEAD');
  const leftMs = dueOf(clock) - nowMs;
  if (leftMs <= 0 && isHead) return 0;
  if (leftMs <= 0) return leftMs <= -3 * minute ? 1 : 3;
  if (leftMs <= 2 * minute && isHead) return 2;
  if (findNext(clock, nowMs).says !== 'look now') return 6;
  return isHead ? 4 : 5;
}

const writeDigits = (leftMs: number): string => {
  const seconds = leftMs < 0 ? Math.floor(-leftMs / 1000) : Math.ceil(leftMs / 1000);
  const digits = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
  return leftMs < 0 ? `+${digits}` : digits;
};

/** Every place as the bar shows it, chair by chair, and the strip. */
const readBar = ({ page }: Person) =>
  page.evaluate(() => {
    const textOf = (place: Element, part: string) => place.querySelector(part)?.textContent?.trim() ?? '';
    return {
      clients: document.querySelectorAll('.place[data-consultation]').length,
      places: [...document.querySelectorAll<HTMLElement>('.place:has(.place-digits)')].map((place) => ({
        chair: Number(place.dataset.chair),
        name: textOf(place, '.place-what'),
        says: textOf(place, '.place-says'),
        digits: textOf(place, '.place-digits'),
      })),
      strips: [...document.querySelectorAll('.strip')].map((strip) => ({
        whose: textOf(strip, '.strip-whose'),
        what: textOf(strip, '.strip-what'),
        digits: textOf(strip, '.strip-digits'),
      })),
    };
  });

/** What the bar must show of these clocks now. */
function sayBar(clocks: readonly Running[], tickets: Readonly<Record<number, string>>, nowMs: number) {
  const next = clocks.map((clock) => ({ ...clock, ...findNext(clock, nowMs) }));
  const [first] = [...next].sort(
    (one, other) => rank(one, nowMs) - rank(other, nowMs) || one.atMs - other.atMs,
  );
  return {
    clients: 4,
    places: next.map(({ chair, name, says, atMs }) => ({
      chair,
      name,
      says,
      digits: writeDigits(atMs - nowMs),
    })),
    strips: [
      {
        whose: `${first === undefined ? '' : sayCall(first, nowMs)} · Chair ${first?.chair} · ${tickets[first?.chair ?? 0]}`,
        what: `${first?.name}·${first?.says}`,
        digits: writeDigits((first?.atMs ?? 0) - nowMs),
      },
    ],
  };
}

describe('four clients with four clocks', () => {
  it('are each right after time has flown, after a reload and after the page was hidden; none is doubled', async () => {
    const person = await makePerson(station.browser, station.address, 'Juno', startAtMs);
    await setUp(person, 'Juno', salon);
    const tickets: Readonly<Record<number, string>> = { 1: 'A.K.', 2: 'B.L.', 3: 'C.M.', 4: 'D.N.' };
    const clocks: Running[] = [];
    const setGoing = (clock: Omit<Running, 'startedAtMs'>) =>
      clocks.push({ ...clock, startedAtMs: person.nowMs() });

    const head = [...askAll('C.M.', '3', 'none'), startStrand('20'), ...endStrand(20), decide, weigh, putOn];
    for (const step of head) await playStep(person, step);
    setGoing({ chair: 3, name: 'HEAD roots', minutes: 20, looks: [5, 5] });
    await person.act('bar');

    for (const step of [...askAll('A.K.', '1', 'none'), startStrand('35')]) await playStep(person, step);
    setGoing({ chair: 1, name: 'STRAND 1 roots', minutes: 35, looks: [2, 5] });
    await person.act('bar');

    for (const step of askAll('D.N.', '4', 'metallicColour')) await playStep(person, step);
    await person.pass(1_000);
    await person.kept(() => person.act('glass-start'));
    setGoing({ chair: 4, name: 'GLASS', minutes: 30, looks: null });
    await person.act('bar');

    for (const step of [...askAll('B.L.', '2', 'none'), startStrand('25')]) await playStep(person, step);
    setGoing({ chair: 2, name: 'STRAND 1 roots', minutes: 25, looks: [2, 5] });
    await person.act('bar');
    clocks.sort((one, other) => one.chair - other.chair);

    const expectBar = async () => {
      expect(await readBar(person)).toEqual(sayBar(clocks, tickets, person.nowMs()));
    };
    await expectBar();
    for (const [seconds, how] of [
      [61, 'pass'],
      [90, 'sleep'],
      [297, 'pass'],
      [480, 'sleep'],
      [193, 'pass'],
      [1, 'sleep'],
      [300, 'pass'],
      [600, 'sleep'],
    ] as const) {
      await person[how](seconds * 1000);
      await expectBar();
      await person.reload();
      await expectBar();
    }

    for (const clock of clocks) {
      await person.open(clock.chair);
      const faces = person.page.locator('main [data-clock]');
      expect(await faces.count()).toBe(1);
      expect(Number(await faces.getAttribute('data-due-at'))).toBe(dueOf(clock));
      expect(await faces.locator('.clock-digits').textContent()).toBe(
        writeDigits(dueOf(clock) - person.nowMs()),
      );
      await person.act('bar');
    }
    const ends: Readonly<Record<number, string>> = {
      1: 'take-off',
      2: 'take-off',
      3: 'rinsed',
      4: 'glass-nothing',
    };
    const led: number[] = [];
    while (clocks.length > 0) {
      const [strip] = (await readBar(person)).strips;
      await person.act('strip');
      const kicker = (await person.page.locator('.kicker').textContent()) ?? '';
      expect(kicker.split(' · ').slice(0, 2).join(' · ')).toBe(
        strip?.whose.split(' · ').slice(1).join(' · '),
      );
      const [, chair = ''] = /Chair (\d)/.exec(strip?.whose ?? '') ?? [];
      led.push(Number(chair));
      await person.pass(minute);
      const end = ends[Number(chair)] ?? '';
      await person.kept(() =>
        end === 'rinsed' ? person.hold(person.page.locator('[data-act="rinsed"]')) : person.act(end),
      );
      clocks.splice(
        clocks.findIndex((clock) => clock.chair === Number(chair)),
        1,
      );
      await person.act('bar');
      if (clocks.length > 0) await expectBar();
    }
    expect(led.toSorted()).toEqual([1, 2, 3, 4]);
    expect(await person.page.locator('.strip').textContent()).toBe('No clock is running.');
    expect(person.complaints).toEqual([]);
  });
});
