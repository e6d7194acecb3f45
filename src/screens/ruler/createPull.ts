import { createMemo, createSignal } from 'solid-js';
import { findPullMarksMm, type PulledStrand, pullField, readPull } from '../../../shared/hair/pull';
import { computeExtensionPercent, type StretchRefusal } from '../../../shared/hair/stretch';
import { type NumberRefusal, readNumber } from '../../../shared/units/numberField';
import type { UnitSettings } from '../../../shared/units/quantity';

/** The readings in the order in which they are made. */
export const readings = ['rest', 'pulled', 'back'] as const;
export type Reading = (typeof readings)[number];

/** What is wrong with the reading in hand: its text, or its place beside the others. */
export type PullFault =
  | { readonly kind: 'text'; readonly number: NumberRefusal }
  | { readonly kind: 'order'; readonly code: StretchRefusal };

const clean = { rest: '', pulled: '', back: '' } as const satisfies Readonly<Record<Reading, string>>;

/**
 * One strand being measured: three readings, tapped on the ruler or typed, one after the other, then what they say.
 * What was typed stays as it was typed. Checked in tests/src/screens/ruler.
 */
export function createPull(units: () => UnitSettings) {
  const [texts, setTexts] = createSignal<Readonly<Record<Reading, string>>>(clean);
  const [at, setAt] = createSignal<Reading | 'told'>('rest');
  /** At which step it snapped; null while it did not. */
  const [snappedAt, setSnappedAt] = createSignal<Reading | null>(null);
  const [isTried, setIsTried] = createSignal(false);
  const [isMeant, setIsMeant] = createSignal(false);
  const read = (reading: Reading) => readNumber(texts()[reading], pullField, units());
  const find = (reading: Reading): number | null => {
    const figure = read(reading);
    return figure.ok ? figure.value : null;
  };
  const set = (reading: Reading, text: string) => setTexts({ ...texts(), [reading]: text });
  const extension = () => computeExtensionPercent(find('rest') ?? Number.NaN, find('pulled') ?? Number.NaN);
  const findOrderFault = (reading: Reading): StretchRefusal | null => {
    if (reading === 'rest') return null;
    const stretched = extension();
    if (!stretched.ok) return stretched.error;
    return stretched.value === 0 ? 'notPulled' : null;
  };
  const pulled = createMemo(() => {
    const [restMm, pulledMm, backMm] = [find('rest'), find('pulled'), find('back')];
    if (restMm === null) return null;
    if (snappedAt() !== null) {
      // What is no reading of a pull is none, and no figure is made of it.
      const isRead = pulledMm !== null && findOrderFault('pulled') === null;
      return readPull({ restMm, pulledMm: isRead ? pulledMm : null, backMm: null });
    }
    return pulledMm === null || backMm === null ? null : readPull({ restMm, pulledMm, backMm });
  });
  const fault = createMemo((): PullFault | null => {
    const here = at();
    if (here === 'told') return null;
    const figure = read(here);
    if (!figure.ok) {
      const isOpen = figure.error.code === 'empty' && !isTried();
      return isOpen ? null : { kind: 'text', number: figure.error };
    }
    const code = findOrderFault(here);
    return code === null ? null : { kind: 'order', code };
  });
  const goTo = (next: Reading | 'told') => {
    setIsTried(false);
    setIsMeant(false);
    setAt(next);
  };
  const told = (): PulledStrand | null => {
    const said = pulled();
    return at() === 'told' && said?.ok === true ? said.value : null;
  };
  return {
    at,
    texts,
    find,
    fault,
    type: (text: string) => {
      const here = at();
      if (here !== 'told') set(here, text);
    },
    /** So many millimetres, on the ruler: to half a millimetre, and never less than the first one. */
    tap: (mm: number) => {
      const here = at();
      if (here !== 'told') set(here, String(Math.max(Math.round(mm * 2) / 2, pullField.min)));
    },
    marks: () => {
      const restMm = at() === 'rest' ? null : find('rest');
      return restMm === null ? null : findPullMarksMm(restMm);
    },
    /** How far it is pulled so far, %; null while nobody can tell. */
    extensionPercent: (): number | null => {
      const stretched = extension();
      return stretched.ok ? stretched.value : null;
    },
    next: () => {
      const here = at();
      if (here === 'told') return;
      setIsTried(true);
      if (fault() !== null) return;
      goTo(readings[readings.indexOf(here) + 1] ?? 'told');
    },
    back: () => {
      const here = at();
      const before = here === 'told' ? (snappedAt() ?? 'back') : readings[readings.indexOf(here) - 1];
      setSnappedAt(null);
      goTo(before ?? 'rest');
    },
    snap: () => {
      const here = at();
      if (here === 'told') return;
      setSnappedAt(here);
      goTo('told');
    },
    again: () => {
      setTexts(clean);
      setSnappedAt(null);
      goTo('rest');
    },
    told,
    /** So long is hardly any hair: it says nothing before somebody says that it was so. */
    isDoubted: () => told()?.isDoubtful === true && !isMeant(),
    confirm: () => setIsMeant(true),
  };
}

export type Pull = ReturnType<typeof createPull>;
