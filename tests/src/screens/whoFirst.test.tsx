import { describe, expect, it } from 'vitest';
import type { Consultation } from '../../../machines/consultation/consultation';
import { listUnheard } from '../../../src/screens/alarm/listCalls';
import { viewBar } from '../../../src/screens/bar/viewBar';
import { listDue } from '../../../src/screens/clocks/listDue';
import { begunAgo } from './begunAgo';
import { playUntil } from './playStory';

const { consultation: strand } = playUntil('STRAND_STARTED', 'lengths');
const { consultation: head, atMs: nowMs } = playUntil('BOWL_APPLIED');

/** Strands and heads of 25 minutes, so long ago; a head is looked at every few minutes, and so is a strand. */
const looked = [3, 6, 9, 12, 15, 18, 21, 24, 27];
const open: readonly Consultation[] = [
  begunAgo(strand, 'look since 6', nowMs, 8, []),
  begunAgo(strand, 'strand overrun', nowMs, 40, looked),
  begunAgo(strand, 'look since 1', nowMs, 8, [3]),
  begunAgo(head, 'head to the basin', nowMs, 24, looked),
  begunAgo(strand, 'strand at its end', nowMs, 26, looked),
  begunAgo(head, 'head at its end', nowMs, 26, looked),
  begunAgo(head, 'head overrun', nowMs, 29, looked),
];

const order = [
  'head overrun',
  'head at its end',
  'strand overrun',
  'head to the basin',
  'strand at its end',
  'look since 6',
  'look since 1',
];

describe('the sound, the strip and the line above the actions', () => {
  const ids = (due: readonly { readonly consultation: Consultation }[]) =>
    due.map(({ consultation }) => consultation.id);

  it.each([
    ['in one order', open],
    ['in the other', open.toReversed()],
  ])('send to the same client first, seated %s', (_title, clients) => {
    expect(ids(listUnheard(clients, new Map(), nowMs))).toEqual(order);
    expect(ids(viewBar(clients, 8, nowMs).due)).toEqual(order);
    expect(ids(listDue(clients, undefined, nowMs))).toEqual(order);
  });
});
