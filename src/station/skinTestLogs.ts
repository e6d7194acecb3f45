import type { FindSettings } from '../../machines/consultation/replay';
import { replaySkinTest, type SkinTestFault } from '../../shared/records/skinTest/replay';
import type { SkinTest } from '../../shared/records/skinTest/skinTest';
import { findGoneOnWith, joinTellings } from '../../shared/records/skinTest/tellings';
import type { Json } from '../storage/json';
import { nameSkinTestLog, readLogId, SKIN_TEST } from './logNames';

type Logs = ReadonlyMap<string, readonly Json[]>;

/** One log of a skin test. Nearly every test has one; two stations that went on with the same test leave two. */
interface Telling {
  readonly name: string;
  readonly test: SkinTest;
}

/** Every log of this skin test, by name. */
export const listSkinTestLogs = (logs: Logs, id: string): readonly (readonly [string, readonly Json[]])[] =>
  [...logs].filter(([name]) => name.startsWith(SKIN_TEST) && readLogId(name) === id);

/** Under which name is one more telling of this test kept? The first that is free. */
export function nameNextLog(logs: Logs, id: string): string {
  let telling = 1;
  while (logs.has(nameSkinTestLog(id, telling))) telling += 1;
  return nameSkinTestLog(id, telling);
}

/** Which log is gone on with? */
export function findOwnLog(logs: Logs, id: string, find: FindSettings): string {
  const [first, ...rest] = listSkinTestLogs(logs, id).flatMap(([name, entries]): readonly Telling[] => {
    const read = replaySkinTest(id, entries, find);
    return read.ok ? [{ name, test: read.value }] : [];
  });
  return first === undefined ? nameSkinTestLog(id) : findGoneOnWith([first, ...rest]).name;
}

/** Every skin test of these logs, each as all its logs together say; what could not be taken up is named. */
export function readSkinTests(
  logs: Logs,
  find: FindSettings,
): {
  readonly tests: readonly SkinTest[];
  readonly refused: readonly { readonly name: string; readonly fault: SkinTestFault }[];
} {
  const tellings = new Map<string, [SkinTest, ...SkinTest[]]>();
  const refused: { name: string; fault: SkinTestFault }[] = [];
  for (const [name, entries] of logs) {
    if (!name.startsWith(SKIN_TEST)) continue;
    const id = readLogId(name);
    const read = replaySkinTest(id, entries, find);
    const others = tellings.get(id);
    if (!read.ok) refused.push({ name, fault: read.error });
    else if (others === undefined) tellings.set(id, [read.value]);
    else others.push(read.value);
  }
  return { tests: [...tellings.values()].map(joinTellings), refused };
}
