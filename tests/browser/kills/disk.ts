import { existsSync } from 'node:fs';
import { readdir, readFile, rm, stat, truncate } from 'node:fs/promises';
import { join } from 'node:path';
import { readJournal } from '../../../src/storage/readJournal';
import { nameConsultation, type PlantedLog, places } from './salonDay';

/** A journal as it lies on the disk while no browser runs. */
export interface DiskJournal extends PlantedLog {
  readonly path: string;
  readonly writtenAtMs: number;
  /** What follows the last whole line. */
  readonly tail: Uint8Array;
}

/**
 * Which journals lie in this profile? Chromium gives the files of the origin private file system names of its own:
 * they are known by their first line.
 */
export async function readJournals(profileDir: string): Promise<readonly DiskJournal[]> {
  const root = join(profileDir, 'Default', 'File System');
  const journals: DiskJournal[] = [];
  for (const entry of await readdir(root, { recursive: true })) {
    if (!/\/\d{8}$/.test(entry)) continue;
    const path = join(root, entry);
    const bytes = await readFile(path);
    const name = nameLog(bytes);
    if (name === null) continue;
    const { lines, fault, goodBytes } = readJournal(bytes);
    if (fault !== null) throw new Error(`the journal of ${name} is damaged inside: ${fault}`);
    journals.push({
      name,
      path,
      lines,
      tail: bytes.subarray(goodBytes),
      writtenAtMs: (await stat(path)).mtimeMs,
    });
  }
  return journals;
}

function nameLog(bytes: Buffer): string | null {
  const [first = ''] = bytes.toString('utf8').split('\n', 1);
  const json = /^[0-9a-f]{8} 0 (\{.*)$/.exec(first)?.[1];
  if (json === undefined) return null;
  if (json.startsWith('{"settings":')) return 'settings';
  const chair = /^\{"v":\d+,"type":"OPENED","payload":\{"ticket":"[^"]*","chair":(\d+)[,}]/.exec(json)?.[1];
  const place = places[Number(chair) - 1];
  if (place !== undefined) return `open-${nameConsultation(place)}`;
  const endedAtMs = /"endedAtMs":(\d+)/.exec(json)?.[1];
  if (endedAtMs === undefined) throw new Error(`whose journal is this? ${json.slice(0, 80)}`);
  return `closed-${new Date(Number(endedAtMs)).toISOString().slice(0, 7)}`;
}

/** Cuts the journal of an open consultation that was written last somewhere inside its last line. */
export async function cutNewestJournal(
  profileDir: string,
  drawBelow: (below: number) => number,
): Promise<string> {
  const journals = await readJournals(profileDir);
  const open = journals.filter(({ name, lines }) => name.startsWith('open-') && lines.length > 1);
  const [newest] = open.sort((one, other) => other.writtenAtMs - one.writtenAtMs);
  const lastLine = newest?.lines.at(-1);
  if (newest === undefined || lastLine === undefined) throw new Error('there is no journal to cut');
  // At least one byte of the line stays, and at least its newline goes.
  const gone = 1 + drawBelow(Buffer.byteLength(lastLine));
  await truncate(newest.path, (await stat(newest.path)).size - newest.tail.length - gone);
  return newest.name;
}

/** Deletes every IndexedDB of the profile. */
export async function deleteIndexedDb(profileDir: string): Promise<void> {
  const folder = join(profileDir, 'Default', 'IndexedDB');
  if (!existsSync(folder)) throw new Error('the profile has no IndexedDB where it was expected');
  await rm(folder, { recursive: true });
}
