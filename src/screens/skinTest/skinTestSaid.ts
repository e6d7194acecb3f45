import type { SkinTest } from '../../../shared/records/skinTest/skinTest';
import type { Words } from '../../words/words';
import { sayCameIn } from './cameIn';
import type { SkinTestView } from './skinTestView';

const sayAt = (ms: number | null, { moments }: Words): string => (ms === null ? '' : moments.dayAndTime(ms));

/** How does the skin test stand, in one sentence or two? */
export function saySkinTest(view: SkinTestView, words: Words): string {
  const { skinTest } = words;
  const at = (ms: number | null) => sayAt(ms, words);
  switch (view.token) {
    case 'waiting':
      if (view.isReadable) return skinTest.toRead(at(view.putOnAtMs));
      return view.cameIn !== null && view.readableAtMs !== null
        ? sayCameIn(view.cameIn, view.readableAtMs, words)
        : skinTest.waiting(at(view.putOnAtMs), at(view.readableAtMs));
    case 'clear':
      return skinTest.clear(at(view.putOnAtMs), at(view.lapsesAtMs));
    case 'lapsed':
      return skinTest.lapsed(at(view.putOnAtMs));
    default:
      return skinTest[view.token];
  }
}

/** What will the mix wait for, and until when? Empty where the skin test holds nothing up. */
export function sayWhatMixWaitsFor(view: SkinTestView, words: Words): string {
  const { mixWaits } = words.skinTest;
  const short = words.moments.shortDayAndTime;
  switch (view.token) {
    case 'missing':
      return mixWaits.missing(sayAt(view.earliestAtMs, words));
    case 'lapsed':
      return mixWaits.lapsed(sayAt(view.earliestAtMs, words));
    case 'waiting':
      if (view.isReadable) return mixWaits.toRead;
      return view.cameIn === null || view.readableAtMs === null
        ? mixWaits.waiting(sayAt(view.readableAtMs, words))
        : mixWaits.waitingHere(short(view.readableAtMs), short(view.cameIn.thereAtMs));
    default:
      return '';
  }
}

/** By what method, where, and with which product line? */
export function sayHow(
  { method, site, line }: Pick<SkinTest, 'method' | 'site' | 'line'>,
  words: Words,
): string {
  const { form, place } = words.skinTest;
  return place(form.method.options[method], form.site.options[site], line);
}

/** Where, and with which product line? As short as a row of the list. */
export function sayPlace({ site, line }: Pick<SkinTest, 'site' | 'line'>, { skinTest }: Words): string {
  const where = skinTest.form.site.options[site];
  return line === '' ? where : skinTest.placeAndLine(where, line);
}

/** What is to be done about it, and when: two short lines. */
export function sayStatus(
  {
    status,
    readableAtMs,
    lapsesAtMs,
    readAtMs,
    cameIn,
  }: Pick<SkinTestView, 'status' | 'readableAtMs' | 'lapsesAtMs' | 'readAtMs' | 'cameIn'>,
  { skinTests, moments }: Words,
): { readonly what: string; readonly when: string } {
  const at = (ms: number | null) => (ms === null ? '' : moments.shortDayAndTime(ms));
  const day = (ms: number | null) => (ms === null ? '' : moments.shortDay(ms));
  const what = skinTests.status[status];
  switch (status) {
    case 'waiting':
      return { what, when: (cameIn === null ? skinTests.from : skinTests.hereFrom)(at(readableAtMs)) };
    case 'due':
      return { what, when: skinTests.since(at(readableAtMs)) };
    case 'clear':
      return { what, when: skinTests.counts(day(lapsesAtMs)) };
    case 'reaction':
      return { what, when: skinTests.seenAt(at(readAtMs)) };
    case 'lapsed':
    case 'lapsedUnread':
      return { what, when: skinTests.lapsedAt(day(lapsesAtMs)) };
    default:
      return { what, when: '' };
  }
}
