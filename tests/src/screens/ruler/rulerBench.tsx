import { type Component, createSignal } from 'solid-js';
import { onTestFinished } from 'vitest';
import { FeelHair } from '../../../../src/screens/ask/FeelHair';
import { dropDrafts } from '../../../../src/screens/keptDraft';
import { RulerProvider } from '../../../../src/screens/ruler/rulerInUse';
import type { StepProps } from '../../../../src/screens/stepProps';
import { Outcome } from '../../../../src/screens/strandTest/Outcome';
import { Processing } from '../../../../src/screens/strandTest/Processing';
import type { RulerInUse } from '../../../../src/tablet/ruler';
import { choose, layOnBench, press, settle } from '../bench';
import { playUntil, playUntilConfirmed, tap } from '../playStory';

/** A glass of so many dots to a px, with so many of them a millimetre; null: nobody laid a card on it. */
export function makeRuler(set: number | null, dotsPerPx = 1): RulerInUse {
  const [dotsPerMm, setDotsPerMm] = createSignal(set);
  return {
    dotsPerPx: () => dotsPerPx,
    sides: () => [1280 * dotsPerPx, 800 * dotsPerPx],
    pxPerMm: () => {
      const dots = dotsPerMm();
      return dots === null ? null : dots / dotsPerPx;
    },
    keep: setDotsPerMm,
  };
}
const onGlass =
  (screen: Component<StepProps>, ruler: RulerInUse): Component<StepProps> =>
  (props) => (
    <RulerProvider value={ruler}>
      {(() => {
        const Screen = screen;
        return <Screen {...props} />;
      })()}
    </RulerProvider>
  );

/** The reading that is asked for. */
export const input = (): HTMLInputElement => {
  const found = document.querySelector<HTMLInputElement>('.reading input');
  if (found === null) throw new Error('no reading is asked');
  return found;
};
export async function read(text: string): Promise<void> {
  input().value = text;
  input().dispatchEvent(new InputEvent('input', { bubbles: true }));
  await settle();
}
/** Each typed and taken. */
export async function readAll(...texts: readonly string[]): Promise<void> {
  for (const text of texts) {
    await read(text);
    await press('reading-next');
  }
}

/** Opens the ruler at the question of the wet stretch, as a client is felt. */
export async function openFeel(ruler: RulerInUse = makeRuler(5.9)) {
  const bench = layOnBench(onGlass(FeelHair, ruler), playUntilConfirmed('hotTools'));
  onTestFinished(() => dropDrafts(bench.consultation().id));
  document.querySelector<HTMLElement>('[data-ledger="wetStretch"]')?.click();
  await press('measure');
  return bench;
}

/** The same at the outcome of a strand. */
export async function openOutcome() {
  const bench = layOnBench(onGlass(Outcome, makeRuler(5.9)), playUntil('STRAND_TAKEN_OFF'));
  onTestFinished(() => dropDrafts(bench.consultation().id));
  // Hair that broke is not pulled.
  await choose('fibre', 'sound');
  document.querySelector<HTMLElement>('[data-ledger="stretch"]')?.click();
  await press('measure');
  return bench;
}

/** The same at the outcome of the ends, while the lengths lie in their mix. */
export async function openWhileRunning(ruler: RulerInUse = makeRuler(5.9)) {
  const off = { type: 'STRAND_TAKEN_OFF', answers: { zone: 'ends', why: 'levelReached' } } as const;
  const played = tap(playUntil('STRAND_STARTED', 'lengths'), 60_000, off);
  const bench = layOnBench(onGlass(Processing, ruler), played);
  onTestFinished(() => dropDrafts(bench.consultation().id));
  await press('outcome-ends');
  await choose('fibre', 'sound');
  document.querySelector<HTMLElement>('[data-ledger="stretch"]')?.click();
  await press('measure');
  return bench;
}
