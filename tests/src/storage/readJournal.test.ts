import { describe, expect, it } from 'vitest';
import { encodeLine } from '../../../src/storage/line';
import { readJournal } from '../../../src/storage/readJournal';
import { joinBytes } from './memoryFiles';
import { lineAt, linesUpTo, toBytes } from './tablet';

const whole = toBytes(linesUpTo(3));
const ends = [0, 1, 2, 3].map((count) => toBytes(linesUpTo(count)).length);

describe('reading a journal', () => {
  it('finds every line of a whole one', () => {
    expect(readJournal(whole)).toStrictEqual({
      lines: linesUpTo(3),
      fault: null,
      tailBytes: 0,
      claimed: 3,
      goodBytes: whole.length,
    });
  });

  it('finds nothing, and no fault, in an empty one', () => {
    expect(readJournal(new Uint8Array())).toStrictEqual({
      lines: [],
      fault: null,
      tailBytes: 0,
      claimed: 0,
      goodBytes: 0,
    });
  });

  it('cut at any byte keeps the lines before the cut and calls the rest a tail', () => {
    for (let cut = 0; cut <= whole.length; cut += 1) {
      const kept = ends.filter((end) => end <= cut).length - 1;
      const tail = cut - (ends[kept] ?? 0);
      expect(readJournal(whole.subarray(0, cut)), `cut at ${cut}`).toStrictEqual({
        lines: linesUpTo(kept),
        fault: null,
        tailBytes: tail,
        claimed: kept + (tail > 0 ? 1 : 0),
        goodBytes: ends[kept],
      });
    }
  });

  it('with any one bit changed never says a line that was not written, and never that all is well', () => {
    for (let bit = 0; bit < whole.length * 8; bit += 1) {
      const changed = whole.slice();
      changed[bit >> 3] = (changed[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      const { lines, fault, tailBytes } = readJournal(changed);
      expect(lines, `bit ${bit}`).toStrictEqual(linesUpTo(3).slice(0, lines.length));
      expect(lines.length, `bit ${bit}`).toBeLessThan(3);
      expect(fault !== null || tailBytes > 0, `bit ${bit}`).toBe(true);
    }
  });

  it('calls a bad last line with its newline a tail', () => {
    const { lines, fault, tailBytes, goodBytes } = readJournal(
      joinBytes(toBytes(linesUpTo(2)), new TextEncoder().encode('00000000 2 {}\n')),
    );
    expect({ lines, fault, tailBytes, goodBytes }).toStrictEqual({
      lines: linesUpTo(2),
      fault: null,
      tailBytes: 14,
      goodBytes: ends[2],
    });
  });

  it('calls zeros after the last line a tail, however many', () => {
    const { lines, fault, tailBytes } = readJournal(joinBytes(whole, new Uint8Array(4096)));
    expect({ count: lines.length, fault, tailBytes }).toStrictEqual({
      count: 3,
      fault: null,
      tailBytes: 4096,
    });
  });

  it('calls a bad line with a good one after it a fault', () => {
    const bytes = toBytes([lineAt(0), 'scribble', lineAt(1)]);
    expect(readJournal(bytes)).toMatchObject({ lines: [lineAt(0)], fault: 'badLine', claimed: 2 });
  });

  it('calls a missing place a gap, also at the very end', () => {
    expect(readJournal(toBytes([lineAt(0), lineAt(2)]))).toMatchObject({ fault: 'gap', claimed: 3 });
    expect(readJournal(toBytes([lineAt(1)]))).toMatchObject({ lines: [], fault: 'gap', claimed: 2 });
  });

  it('calls a place that comes twice a repeat, whatever it says', () => {
    expect(readJournal(toBytes([lineAt(0), lineAt(0)]))).toMatchObject({ fault: 'repeat', claimed: 1 });
    expect(readJournal(toBytes([lineAt(0), lineAt(1), encodeLine(0, '"other"')]))).toMatchObject({
      lines: linesUpTo(2),
      fault: 'repeat',
    });
  });
});
