import { afterEach, expect, it, vi } from 'vitest';
import type { Consultation } from '../../../../machines/consultation/consultation';
import { EverybodyProvider } from '../../../../src/screens/everybody';
import { MoreForClient } from '../../../../src/screens/leaving/MoreForClient';
import type { StepProps } from '../../../../src/screens/stepProps';
import { act, layOnBench, press, seen, settle } from '../bench';
import { type Played, playUntil, tap } from '../playStory';

const minute = 60_000;
const second = 1_000;
const told = playUntil('OUTCOME_RECORDED', 'lengths');

/** The same as if it had begun at another moment. */
const shift = ({ consultation }: Played, byMs: number, id: string): Consultation => ({
  ...consultation,
  id,
  record: {
    ...consultation.record,
    ticket: id,
    clocks: consultation.record.clocks.map((clock) => ({
      ...clock,
      startedAtMs: clock.startedAtMs + byMs,
      dueAtMs: clock.dueAtMs + byMs,
    })),
  },
});

/** The card is open at one client, and these others are at the station. */
async function openBeside(...others: readonly Consultation[]) {
  const More = (props: StepProps) => (
    <EverybodyProvider value={() => [props.consultation, ...others]}>
      <MoreForClient {...props} onWho={() => undefined} onDone={() => undefined} />
    </EverybodyProvider>
  );
  const print = vi.fn();
  vi.stubGlobal('print', print);
  const bench = layOnBench(More, told);
  await press('way-card');
  return { ...bench, print };
}
const note = () => seen('.card-note');
const mayPrint = () => !(act('print-card') as HTMLButtonElement).disabled;

afterEach(() => vi.unstubAllGlobals());

/** A head nobody looks at in between. */
const applied = playUntil('BOWL_APPLIED');
const head: Played = {
  ...applied,
  consultation: {
    ...applied.consultation,
    record: {
      ...applied.consultation.record,
      clocks: applied.consultation.record.clocks.map((clock) => ({ ...clock, looks: null })),
    },
  },
};
const strand = playUntil('STRAND_STARTED', 'ends');
/** When another client's clock began, so that so much of it has gone by while the card is open. */
const goneBy = (played: Played, ms: number, id: string) => shift(played, told.atMs - played.atMs - ms, id);

it('opens the print window where nothing calls', async () => {
  const { print } = await openBeside();
  expect(note()).toContain('While the tablet’s print window is open nothing calls');
  await press('print-card');
  expect(print).toHaveBeenCalledOnce();
});

it('is refused from five minutes before a head goes to the basin, with whose it is and when', async () => {
  const { print, pass } = await openBeside(goneBy(head, 18 * minute - second, 'K.L.'));
  expect(mayPrint()).toBe(true);
  pass(second);
  await settle();
  expect(note()).toMatch(
    /^Not now: Chair \d · K\.L\. · HEAD lengths calls at \d\d:\d\d, and while the print window/,
  );
  expect(mayPrint()).toBe(false);
  await press('print-card');
  expect(print).not.toHaveBeenCalled();
});

it('is refused for a look, and for one that waits already, until somebody saw to it', async () => {
  const { pass } = await openBeside(goneBy(strand, minute, 'M.N.'));
  expect(note()).toMatch(/M\.N\. · STRAND 1 ends calls at/);
  pass(2 * minute);
  await settle();
  expect(note()).toMatch(/M\.N\. · STRAND 1 ends waits since \d\d:\d\d, .* See to it first\.$/);
});

it('names the first of several', async () => {
  await openBeside(goneBy(head, 18 * minute, 'K.L.'), goneBy(strand, minute, 'M.N.'));
  expect(note()).toContain('M.N.');
  expect(note()).not.toContain('K.L.');
});

it('is refused for a clock of the same client', async () => {
  const More = (props: StepProps) => (
    <MoreForClient {...props} onWho={() => undefined} onDone={() => undefined} />
  );
  const off = { type: 'STRAND_TAKEN_OFF', answers: { zone: 'ends', why: 'levelReached' } } as const;
  layOnBench(More, tap(playUntil('STRAND_STARTED', 'lengths'), minute, off));
  await press('way-card');
  expect(note()).toContain('STRAND 2 lengths calls at');
  expect(mayPrint()).toBe(false);
});
