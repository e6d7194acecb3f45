// May the page be written there? Only over a page of a report, and over nothing that is read.
import { existsSync, readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { isPage } from './formatSheet.mjs';

/** Is there a file with something in it that no report wrote? @param {string} name */
function isOfOthers(name) {
  if (!existsSync(name)) return false;
  const there = statSync(name);
  if (!there.isFile() || there.size === 0) return false;
  try {
    return !isPage(readFileSync(name, 'utf8'));
  } catch {
    return true;
  }
}

/**
 * What is in the way of a page of this name: one of the files that are read, or a file that no report wrote; else null.
 * Checked in tests/scripts/report.test.ts.
 * @param {string} html
 * @param {readonly string[]} files
 * @returns {'isRead' | 'isOfOthers' | null}
 */
export function findInTheWay(html, files) {
  const place = resolve(html);
  if (files.some((name) => resolve(name) === place)) return 'isRead';
  return isOfOthers(place) ? 'isOfOthers' : null;
}
