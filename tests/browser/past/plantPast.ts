import type { Page } from 'playwright-core';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import { closeRecord } from '../../../shared/records/closedRecord';
import { playAlone } from '../makeLog';

/** What stands in the place of her id and of her ticket, until each has her own. */
const ID = 'idofhers0000';
const TICKET = 'TICKETOFHERS';

/** The closed record of the shipped story, as JSON, for whoever has this id and ticket. */
function writeTemplate(): string {
  const { record, log } = playAlone(endsIronedWet.steps, endsIronedWet.startAtMs, salon, ID);
  const closed = closeRecord(record, log);
  if (closed === null) throw new Error('the story does not end');
  const text = JSON.stringify({ ...closed, ticketKey: TICKET });
  return text.replaceAll(`"ticket":${JSON.stringify(record.ticket)}`, `"ticket":"${TICKET}"`);
}

/** The names of so many months, the newest of which is that of the story. */
function nameMonths(count: number): readonly { readonly name: string; readonly atMs: number }[] {
  const last = new Date(endsIronedWet.startAtMs);
  return Array.from({ length: count }, (_, back) => {
    const atMs = Date.UTC(last.getUTCFullYear(), last.getUTCMonth() - back, 1, 12);
    return { name: `closed-${new Date(atMs).toISOString().slice(0, 7)}`, atMs };
  }).reverse();
}

/**
 * Writes so many closed records into both copies, spread over so many months; answers how many bytes one is on average.
 * The lines are made in the page: at a hundred thousand they would be gigabytes on the way there.
 */
export async function plantPast(page: Page, records: number, months: number): Promise<number> {
  const template = writeTemplate();
  const settings = JSON.stringify({ settings: salon, by: 'Opal', atMs: endsIronedWet.startAtMs });
  let bytes = await page.evaluate(writeMonth, {
    name: 'settings',
    template: settings,
    from: 0,
    count: 1,
    atMs: 0,
  });
  bytes = 0;
  for (const [at, { name, atMs }] of nameMonths(months).entries()) {
    const from = Math.floor((records * at) / months);
    const count = Math.floor((records * (at + 1)) / months) - from;
    if (count > 0) bytes += await page.evaluate(writeMonth, { name, template, from, count, atMs });
  }
  return Math.round(bytes / records);
}

/** Runs in the page, so it stands alone: the checksum is that of src/storage/line.ts, which reads what is written here. */
async function writeMonth({
  name,
  template,
  from,
  count,
  atMs,
}: {
  name: string;
  template: string;
  from: number;
  count: number;
  atMs: number;
}): Promise<number> {
  const table = Uint32Array.from({ length: 256 }, (_, byte) => {
    let left = byte;
    for (let bit = 0; bit < 8; bit += 1) left = left & 1 ? (left >>> 1) ^ 0xedb88320 : left >>> 1;
    return left;
  });
  const encoder = new TextEncoder();
  const sum = (text: string): string => {
    let crc = 0xffffffff;
    for (const byte of encoder.encode(text)) crc = (crc >>> 8) ^ (table[(crc ^ byte) & 255] as number);
    return ((crc ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
  };
  const lines: string[] = [];
  for (let seq = 0; seq < count; seq += 1) {
    const number = String(from + seq);
    const json = template
      .replaceAll('idofhers0000', `id${number.padStart(10, '0')}`)
      .replaceAll('TICKETOFHERS', `T${(from + seq) % 40_000}`)
      .replace(/"endedAtMs":\d+/, `"endedAtMs":${atMs + seq}`);
    const body = `${seq} ${json}`;
    lines.push(`${sum(body)} ${body}`);
  }
  const top = await navigator.storage.getDirectory();
  const folder = await top.getDirectoryHandle('journals', { create: true });
  const file = await (await folder.getFileHandle(name, { create: true })).createWritable();
  await file.write(lines.map((line) => `${line}\n`).join(''));
  await file.close();
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open('strandproof');
    opening.onupgradeneeded = () => opening.result.createObjectStore('lines');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => resolve(opening.result);
  });
  await new Promise<void>((resolve, reject) => {
    const change = database.transaction('lines', 'readwrite');
    for (const [seq, line] of lines.entries()) {
      change.objectStore('lines').put(line, `log:${name}:${String(seq).padStart(8, '0')}`);
    }
    change.oncomplete = () => resolve();
    change.onabort = () => reject(change.error);
  });
  database.close();
  return lines.reduce((all, line) => all + line.length, 0);
}
