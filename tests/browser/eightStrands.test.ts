import { describe, expect, it } from 'vitest';
import { salon } from '../../seeds/salon';
import type { StoryStep } from '../../seeds/story';
import type { CallKind } from '../../shared/records/call';
import { isUnheard, listUnheard, makePaper, type PaperStrand } from './alarms/expected';
import { type Acknowledged, type HeardCall, listen } from './alarms/listen';
import { makeChance } from './chance';
import { lengthOf, playAlone } from './makeLog';
import { writeLogs } from './memory';
import { makePerson, patience } from './person';
import { askAll, startStrand } from './shortWay';
import { useStation } from './station';
import { playStep } from './story';

const station = useStation();
const second = 1000;
const minute = 60 * second;
const startAtMs = Date.UTC(2026, 5, 2, 13, 0);
const SEED = Number(process.env.SEED ?? 20261126);
const EVENTS = 200;
/** The station looks at its clock with each full second. */
const TICK_MS = second;
const CLIENTS = 8;
const HOURS = 4;
const ON_MS = 60 * minute;

/** A strand of this zone is put on for an hour. */
const strandOf = (zone: string): StoryStep['raw'] =>
  ({
    type: 'STRAND_STARTED',
    answers: { ...startStrand('60').raw.answers, zone, makersLimitMin: '90' },
  }) as StoryStep['raw'];

/** Lengths and ends of a full head, so that each client can have a strand of each. */
const beginning = (index: number): readonly StoryStep[] => [
  ...askAll(`${'ABCDEFGH'[index]}.K.`, String(index + 1), 'none').map((step) =>
    step.raw.type === 'ANSWERED' && step.raw.step === 'client'
      ? { ...step, raw: { ...step.raw, answers: { ...step.raw.answers, reach: 'fullHead' } } }
      : step,
  ),
  { afterMs: second, by: 'Juno', raw: strandOf('lengths') },
];

/** Eight clients with a strand each, begun a minute and a half apart, the last one just now. */
async function seatEight() {
  const strands: PaperStrand[] = [];
  const logs = Array.from({ length: CLIENTS }, (_, index) => {
    const steps = beginning(index);
    const beginAtMs = startAtMs - lengthOf(steps) - index * 90 * second;
    const { log, record } = playAlone(steps, beginAtMs, salon, `client000${index + 1}`);
    const startedAtMs = record.newestAtMs;
    strands.push({
      id: `client000${index + 1}`,
      chair: index + 1,
      clock: record.strands[0]?.clock ?? '',
      startedAtMs,
      dueAtMs: startedAtMs + ON_MS,
      lookedAtMs: [],
      heardAtMs: Number.NEGATIVE_INFINITY,
      isOff: false,
    });
    return [`open-client000${index + 1}`, log] as const;
  });
  let heard: HeardCall[] = [];
  let entries: Acknowledged[] = [];
  const person = await makePerson(station.browser, station.address, 'Juno', startAtMs + second, {
    prepare: async (page) => {
      ({ heard, entries } = await listen(page));
      await writeLogs(page, {
        settings: [{ settings: salon, by: 'Juno', atMs: startAtMs - 60 * minute }],
        ...Object.fromEntries(logs),
      });
    },
  });
  return { person, strands, heard: () => heard, entries: () => entries };
}

const kindOf = (pitchesHz: readonly number[]): CallKind | 'touch' | 'unknown' => {
  const melody = pitchesHz.map(Math.round).join(' ');
  const melodies: Readonly<Record<string, CallKind | 'touch'>> = {
    '392': 'touch',
    '392 392 392': 'look',
    '440 554 659': 'due',
    '784 659 523 784 659 523': 'overrun',
  };
  return melodies[melody] ?? 'unknown';
};

/** What was written as heard: of whom, which clock, when. Clients are written side by side, so their order is no one's. */
const acknowledged = (entries: readonly Acknowledged[]) =>
  entries
    .filter(({ entry }) => entry.type === 'ALARM_ACKNOWLEDGED')
    .map(({ name, entry }) => `${name.replace('open-', '')} ${entry.payload?.clock} ${entry.atMs}`)
    .sort();

describe('eight strands over four hours', () => {
  it(`call in time, each call once, through ${EVENTS} seeded events`, async () => {
    const chance = makeChance(SEED);
    const { person, strands, heard, entries } = await seatEight();
    const { page } = person;
    const paper = makePaper(person.nowMs());
    paper.strands.push(...strands);
    const expectedAcks: string[] = [];
    /** What was silenced, or heard by going there: each of it must have begun to call before. */
    const heardKeys: string[] = [];
    const counts = new Map<string, number>();
    let written = 0;

    const settleEntries = async () => {
      await expect.poll(() => entries().length, patience).toBeGreaterThanOrEqual(written);
    };
    const hear = (list: readonly PaperStrand[]) => {
      heardKeys.push(...listUnheard(list, paper.seenMs()).map(({ key }) => key));
      for (const strand of list) {
        expectedAcks.push(`${strand.id} ${strand.clock} ${paper.nowMs()}`);
        strand.heardAtMs = paper.nowMs();
        written += 1;
      }
      paper.settle();
      if (list.length > 0) paper.see();
    };
    const unheard = () => paper.strands.filter((strand) => isUnheard(strand, paper.seenMs()));
    const unheardOf = (chair: number) => unheard().filter((strand) => strand.chair === chair);
    const ofChair = (chair: number) =>
      paper.strands.filter((strand) => strand.chair === chair && !strand.isOff);
    const openChair = async (chair: number) => {
      if ((await page.locator('main.bar').count()) === 0) await person.act('bar');
      const list = unheardOf(chair);
      await person.open(chair);
      hear(list);
      await settleEntries();
    };
    const write = async (raw: StoryStep['raw'], change: () => void) => {
      await playStep(person, { afterMs: 0, by: 'Juno', raw });
      written += 1;
      change();
      paper.settle();
      paper.see();
      await settleEntries();
    };

    const isOver = (strand: PaperStrand) => paper.nowMs() >= strand.dueAtMs;
    const acts: Readonly<Record<string, () => Promise<boolean>>> = {
      silence: async () => {
        const list = unheard();
        if (list.length === 0) return false;
        await person.act('silence');
        hear(list);
        await settleEntries();
        return true;
      },
      look: async () => {
        const running = paper.strands.filter((strand) => !strand.isOff && !isOver(strand));
        if (running.length === 0) return false;
        const strand = chance.pick(running);
        await openChair(strand.chair);
        const zone = strand.clock.split('-')[1] ?? '';
        await write({ type: 'LOOKED', answers: { of: 'strand', zone, level: '6', feel: 'sound' } }, () => {
          strand.lookedAtMs.push(paper.nowMs());
          strand.heardAtMs = paper.nowMs();
        });
        return true;
      },
      takeOff: async () => {
        const over = paper.strands.filter((strand) => !strand.isOff && isOver(strand));
        // One of each client stays on as long as she has no second one.
        const free = over.filter(({ id }) => paper.strands.filter((each) => each.id === id).length === 2);
        if (free.length === 0) return false;
        const strand = chance.pick(free);
        await openChair(strand.chair);
        const zone = strand.clock.split('-')[1] ?? '';
        await write({ type: 'STRAND_TAKEN_OFF', answers: { zone, why: 'timeIsUp' } }, () => {
          strand.isOff = true;
        });
        return true;
      },
      another: async () => {
        const ready = strands.filter(
          ({ id, dueAtMs }) =>
            paper.nowMs() > dueAtMs - 10 * minute &&
            paper.strands.filter((each) => each.id === id).length === 1,
        );
        if (ready.length === 0) return false;
        const { id, chair } = chance.pick(ready);
        await openChair(chair);
        const added: PaperStrand = {
          id,
          chair,
          clock: 'strand-ends-2',
          startedAtMs: paper.nowMs(),
          dueAtMs: paper.nowMs() + ON_MS,
          lookedAtMs: [],
          heardAtMs: Number.NEGATIVE_INFINITY,
          isOff: false,
        };
        await write(strandOf('ends'), () => void paper.strands.push(added));
        return true;
      },
      view: async () => {
        if ((await page.locator('main.bar').count()) === 0) await person.act('bar');
        const to = chance.pick(['bar', 'day', 'settings', 'chair'] as const);
        if (to === 'chair') {
          const seats = strands.map(({ chair }) => chair).filter((chair) => ofChair(chair).length > 0);
          if (seats.length > 0) await openChair(chance.pick(seats));
        } else if (to !== 'bar') await person.act(to);
        return true;
      },
      hide: async () => {
        const ms = chance.pick([30, 61, 300]) * second;
        await person.sleep(ms);
        paper.sleep(ms);
        return true;
      },
      reload: async () => {
        await person.reload();
        paper.reload();
        return true;
      },
    };
    const often = [...Array<string>(6).fill('silence'), 'look', 'view', 'takeOff', 'another'];
    const endAtMs = person.nowMs() + HOURS * 60 * minute;
    // A touch gives the tablet its sound; nothing is called for before that in these logs but what paper says too.
    await person.reload();
    paper.reload();

    for (let event = 0; event < EVENTS; event += 1) {
      const left = EVENTS - event;
      const meanS = Math.max(2, (endAtMs - paper.nowMs()) / second / left);
      // Off the full second, so that what is begun here falls due between two ticks.
      const ms = Math.round(meanS * (0.2 + 1.6 * chance.draw())) * second + (event === 0 ? 400 : 0);
      await person.run(ms);
      paper.run(ms);
      expect(paper.nowMs()).toBe(person.nowMs());
      const rare = event % 20 === 7 ? 'reload' : event % 20 === 14 ? 'hide' : null;
      const wanted = rare ?? chance.pick(often);
      const name = (await acts[wanted]?.()) === true ? wanted : 'view';
      if (name !== wanted) await acts.view?.();
      counts.set(name, (counts.get(name) ?? 0) + 1);
      const isCalling = (await page.locator('.silence').count()) > 0;
      expect(isCalling, `after ${name}, event ${event}, seed ${SEED}`).toBe(paper.isCalling());
    }
    await person.run(Math.max(second, endAtMs - paper.nowMs()));
    paper.run(Math.max(second, endAtMs - paper.nowMs()));

    const calls = heard()
      .map(({ atMs, pitchesHz }) => ({ atMs, kind: kindOf(pitchesHz) }))
      .filter(({ kind }) => kind !== 'touch');
    const wrong: string[] = [];
    /** Each call of each strand, by what begins it: when it was heard to begin. */
    const begunAt = new Map<string, number[]>();
    let at = 0;
    let latestMs = 0;
    for (const { atMs, kind, mayLack, lateMs, begins } of paper.calls) {
      const found = calls[at];
      const isIt = found?.kind === kind && found.atMs === atMs;
      if (!isIt && mayLack) continue;
      if (!isIt) {
        wrong.push(
          `expected ${kind} at ${atMs - startAtMs}, heard ${found?.kind} at ${(found?.atMs ?? 0) - startAtMs}`,
        );
        break;
      }
      latestMs = Math.max(latestMs, lateMs);
      for (const key of begins) begunAt.set(key, [...(begunAt.get(key) ?? []), atMs]);
      at += 1;
    }
    const onsets = paper.calls.filter(({ begins }) => begins.length > 0);
    const amid = onsets.filter(({ isAmid }) => isAmid);
    const beganAgain = [...begunAt].flatMap(([key, times]) =>
      times.slice(1).flatMap((atMs) => (paper.newAtMs.includes(atMs) ? [] : [key])),
    );
    console.log(
      `seed ${SEED}: ${paper.strands.length} strands, ${EVENTS} events`,
      Object.fromEntries(counts),
      `${begunAt.size} alarms of their own, ${amid.length} of them while another called for the same,`,
      `${onsets.length} times begun, ${calls.length} calls heard of ${paper.calls.length} expected,`,
      `${expectedAcks.length} silenced, at most ${latestMs} ms late`,
    );
    expect(wrong).toEqual([]);
    expect(calls.length).toBe(at);
    expect(latestMs).toBeLessThan(TICK_MS);
    expect(acknowledged(entries())).toEqual(expectedAcks.toSorted());
    expect(beganAgain).toEqual([]);
    expect(heardKeys.filter((key) => !begunAt.has(key))).toEqual([]);
    expect(amid.length).toBeGreaterThan(10);
    expect(onsets.length).toBeGreaterThan(60);
    for (const kind of ['look', 'due', 'overrun'])
      expect(onsets.filter((each) => each.kind === kind).length).toBeGreaterThan(3);
    expect(person.complaints).toEqual([]);
    await page.context().close();
  });
});
