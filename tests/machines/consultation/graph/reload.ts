import { expect } from 'vitest';
import { initialTransition, transition } from 'xstate';
import type { ConsultationState } from '../../../../machines/consultation/consultation';
import { consultationMachine } from '../../../../machines/consultation/consultationMachine';
import type { ConsultationEvent } from '../../../../shared/records/event';
import { type Json, writeJson } from '../../../../src/storage/json';
import { encodeLine, readEntry } from '../../../../src/storage/line';
import { readJournal } from '../../../../src/storage/readJournal';
import { joinBytes } from '../../../src/storage/memoryFiles';
import { makeTablet, switchOn } from '../../../src/storage/tablet';

type Way = readonly ConsultationEvent[];

const [begin] = initialTransition(consultationMachine);
const foldChart = (events: readonly unknown[]): ConsultationState =>
  events.reduce<ConsultationState>(
    (state, event) => transition(consultationMachine, state, event as ConsultationEvent)[0],
    begin,
  );
const show = ({ value, status, context }: ConsultationState) => ({ value, status, facts: context.facts });

/** Ways that are not the beginning of another one: reloading those after every event reloads all. */
export function keepLongest(ways: readonly Way[]): readonly Way[] {
  const texts = ways.map((way) => way.map((event) => JSON.stringify(event)).join('\n')).sort();
  const longest = texts.filter((text, index) => !(texts[index + 1] ?? '').startsWith(text));
  return longest.map((text) => text.split('\n').map((line) => JSON.parse(line) as ConsultationEvent));
}

/** Lives a way, writing each event as one line of a journal, and starts anew from the bytes each time. */
export function reloadAfterEach(way: Way): number {
  const utf8 = new TextEncoder();
  let bytes = new Uint8Array();
  let lived = begin;
  for (const [seq, event] of way.entries()) {
    [lived] = transition(consultationMachine, lived, event);
    const json = writeJson(event as unknown as Json);
    if (json === null) throw new Error(`${event.type} is not plain JSON`);
    bytes = joinBytes(bytes, utf8.encode(`${encodeLine(seq, json)}\n`)) as Uint8Array<ArrayBuffer>;
    const journal = readJournal(bytes);
    expect([journal.fault, journal.lines.length]).toEqual([null, seq + 1]);
    expect(show(foldChart(journal.lines.map(readEntry)))).toEqual(show(lived));
  }
  return way.length;
}

/** Writes every way into a log of its own, in both copies, and reads all of them after a fresh start. */
export async function restartWithAll(ways: readonly Way[]): Promise<void> {
  const tablet = makeTablet();
  const { store } = switchOn(tablet);
  await store.restore();
  for (const [index, way] of ways.entries()) {
    for (const [seq, event] of way.entries()) {
      const written = await store.append(`open-way${index}`, seq, event as unknown as Json);
      expect(written).toMatchObject({ ok: true });
    }
  }
  await store.release();
  const { logs, aside, troubles } = await switchOn(tablet).store.restore();
  expect([logs.size, aside, troubles]).toEqual([ways.length, [], []]);
  for (const [index, way] of ways.entries()) {
    expect(show(foldChart(logs.get(`open-way${index}`) ?? []))).toEqual(show(foldChart(way)));
  }
}
