import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { salon } from '../../seeds/salon';
import { type HeardCall, listen } from './alarms/listen';
import { lengthOf, playAlone } from './makeLog';
import { writeLogs } from './memory';
import { makePerson, patience } from './person';
import { askAll, startStrand } from './shortWay';
import { useStation } from './station';

const station = useStation();
const second = 1000;
const minute = 60 * second;
const hour = 60 * minute;

/** One strand for 35 minutes at chair 1, begun at this very moment, in this time zone; a key has given the tablet its sound. */
async function seatOne(startedAtMs: number, zone: string | null = 'America/St_Johns') {
  const steps = [...askAll('A.K.', '1', 'none'), startStrand('35')];
  const { log } = playAlone(steps, startedAtMs - lengthOf(steps), salon, 'client0001');
  let heard: HeardCall[] = [];
  const person = await makePerson(station.browser, station.address, 'Juno', startedAtMs + second, {
    // A zone that the browser was given cannot be changed again: null leaves it for the test to set.
    timezoneId: zone ?? (undefined as unknown as string),
    prepare: async (page) => {
      ({ heard } = await listen(page));
      await writeLogs(page, {
        settings: [{ settings: salon, by: 'Juno', atMs: startedAtMs - hour }],
        'open-client0001': log,
      });
    },
  });
  await person.page.keyboard.press('Shift');
  await expect.poll(() => heard.length, patience).toBe(1);
  /** The calls since that key, by the tablet's own clock. */
  const calls = () => heard.slice(1).map(({ atMs, pitchesHz }) => [atMs - startedAtMs, pitchesHz[0]]);
  return { ...person, calls };
}

const digits = (page: Page) => page.locator('.strip-digits').textContent();
const isCalling = async (page: Page): Promise<boolean> => (await page.locator('.silence').count()) > 0;

describe('a call comes when its time has passed, whatever the clock on the wall does', () => {
  it('in a tab that was hidden: at once when it is seen again, and once', async () => {
    const { page, sleep, calls } = await seatOne(Date.UTC(2026, 5, 2, 13));
    await sleep(20 * minute);
    expect(await isCalling(page)).toBe(true);
    expect(calls()).toEqual([[20 * minute + second, 392]]);
    await page.context().close();
  });

  it.each([
    ['forward', 'America/St_Johns', Date.UTC(2026, 2, 8, 5, 15), 3.5 * hour, 2.5 * hour],
    ['back', 'America/St_Johns', Date.UTC(2026, 10, 1, 4, 15), 2.5 * hour, 3.5 * hour],
  ])('over the night summer time goes %s', async (_way, zone, startedAtMs, beforeMs, afterMs) => {
    const { page, run, calls } = await seatOne(startedAtMs, zone);
    const behind = () => page.evaluate(() => new Date().getTimezoneOffset() * 60_000);
    expect(await behind()).toBe(beforeMs);
    await run(2 * minute - second);
    await page.locator('[data-act="silence"]').tap();
    expect(calls()).toEqual([[2 * minute, 392]]);
    await run(33 * minute - 1);
    await page.clock.runFor(1);
    expect(await behind()).toBe(afterMs);
    expect(calls().filter(([, pitchHz]) => pitchHz === 440)).toEqual([[35 * minute, 440]]);
    expect(await digits(page)).toBe('0:00');
    await page.context().close();
  });

  it('when the tablet is taken to another time zone, and what is left stays as long', async () => {
    const { page, run, calls } = await seatOne(Date.UTC(2026, 5, 2, 13), null);
    const tools = await page.context().newCDPSession(page);
    const left: (string | null)[] = [await digits(page)];
    const behindMin: number[] = [];
    for (const timezoneId of ['Asia/Tokyo', 'Pacific/Marquesas', 'Europe/London']) {
      await tools.send('Emulation.setTimezoneOverride', { timezoneId });
      await run(second);
      behindMin.push(await page.evaluate(() => new Date().getTimezoneOffset()));
      left.push(await digits(page));
    }
    expect(behindMin).toEqual([-540, 570, -60]);
    expect(left).toEqual(['1:59', '1:58', '1:57', '1:56']);
    await run(2 * minute - 4 * second - second);
    expect(calls()).toEqual([]);
    await run(second);
    expect(calls()).toEqual([[2 * minute, 392]]);
    await page.context().close();
  });

  it('when the clock was set back two hours: asked first, then as long as it was, to the second', async () => {
    const { page, run, calls, act } = await seatOne(Date.UTC(2026, 5, 2, 13));
    await run(minute - second);
    expect(await digits(page)).toBe('1:00');
    const backMs = 2 * hour;
    await page.clock.setSystemTime(Date.UTC(2026, 5, 2, 13) + minute - backMs);
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await act('clock-is-right');
    const named = page.locator('[data-act="who-Juno"]');
    await named.waitFor();
    await named.tap();
    await page.locator('.strip').waitFor();
    expect(await digits(page)).toBe('1:00');
    await run(minute - second);
    expect(calls()).toEqual([]);
    await run(second);
    expect(calls()).toEqual([[2 * minute - backMs, 392]]);
    await page.context().close();
  });

  it('when the clock was set ahead half an hour: the strand counts all of it, and that is told, after a reload too', async () => {
    const startedAtMs = Date.UTC(2026, 5, 2, 13);
    const { page, run, calls } = await seatOne(startedAtMs);
    await run(minute - second);
    expect(await page.locator('.notice-bar').count()).toBe(0);
    await page.clock.setSystemTime(startedAtMs + 31 * minute);
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    expect(await digits(page)).toBe('+29:00');
    expect(calls()).toEqual([[31 * minute, 392]]);
    expect(await page.locator('.notice-newest').textContent()).toContain('went on by 30:00 at once');
    await page.reload();
    await page.locator('[data-act="read-notices"]').tap();
    await page.locator('[data-act="clock-slept"]').tap();
    await page.locator('.notice-bar').waitFor({ state: 'detached' });
    await page.context().close();
  });

  it('drifts by nothing over a day of twelve hours', async () => {
    const startedAtMs = Date.UTC(2026, 5, 2, 11);
    const { page, pass, nowMs } = await seatOne(startedAtMs);
    /** Over by so long, as a person with a watch would say it. */
    const say = (overMs: number) => {
      const [minutes, seconds] = [Math.floor(overMs / minute), Math.floor((overMs % minute) / second)];
      const clock = (value: number) => String(value).padStart(2, '0');
      return minutes < 60
        ? `+${minutes}:${clock(seconds)}`
        : `+${Math.floor(minutes / 60)}:${clock(minutes % 60)}:${clock(seconds)}`;
    };
    const drifts: string[] = [];
    await pass(35 * minute);
    while (nowMs() < startedAtMs + 12 * hour) {
      // Timers that come late, by another odd part of a second each time.
      await pass(7 * minute + (nowMs() % 977));
      const due = startedAtMs + 35 * minute;
      const [shown, right] = [await digits(page), say(nowMs() - due)];
      if (shown !== right) drifts.push(`${shown}, not ${right}`);
    }
    expect(drifts).toEqual([]);
    console.log(`after ${(nowMs() - startedAtMs) / hour} h the strip shows ${await digits(page)}: drift 0`);
    await page.context().close();
  });
});
