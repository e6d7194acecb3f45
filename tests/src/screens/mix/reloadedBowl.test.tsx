import { afterEach, expect, it, vi } from 'vitest';
import type { BowlRecord } from '../../../../shared/records/record';
import type { Zone } from '../../../../shared/records/zones';
import { dropDrafts } from '../../../../src/screens/keptDraft';
import { createLasting } from '../../../../src/screens/lastingDrafts';
import { BowlPage } from '../../../../src/screens/mix/BowlPage';
import type { StepProps } from '../../../../src/screens/stepProps';
import { choose, layOnBench, press, seen, settle } from '../bench';
import { playBothDecided, settings } from '../playStory';

afterEach(() => dropDrafts('story'));

const minute = 60_000;
const bowlOf = (zone: Zone) => (props: StepProps) => <BowlPage {...props} zone={zone} />;
const open = () => layOnBench(bowlOf('lengths'), playBothDecided());
type Bench = ReturnType<typeof open>;
const newest = (bench: Bench): BowlRecord | undefined => bench.consultation().record.bowls.at(-1);

const openScale = async (): Promise<void> => {
  document.querySelector<HTMLElement>('[data-ledger="summary"]')?.click();
  await settle();
  await press('weigh-in');
};

/** 40 g of powder and the developer are in. */
async function pourBoth(): Promise<void> {
  await choose('colourG', '40');
  await openScale();
  await choose('pour0-0', '40');
  await choose('pour1-0', '80');
}

it('keeps pours and the developer’s time while the bowl of another zone is weighed', async () => {
  const bench = open();
  await pourBoth();
  bench.pass(10 * minute);
  bench.show(bowlOf('ends'));
  await press('weigh');
  expect(newest(bench)?.zone).toBe('ends');
  bench.pass(2 * minute);
  bench.show(bowlOf('lengths'));
  await openScale();
  expect(seen('[data-figure="in"]')).toBe('120 g of 120 g in');
  await press('weighed-in');
  expect(newest(bench)).toMatchObject({ zone: 'lengths', mixedMinAgo: 12 });
});

it('begins the next bowl of the zone empty', async () => {
  const bench = open();
  await pourBoth();
  await press('weighed-in');
  expect(newest(bench)?.zone).toBe('lengths');
  expect(localStorage.getItem('strandproof.bowlsBegun')).toBe('[]');
});

it('is no younger for a clock that was put back by eight minutes in between', async () => {
  const bench = open();
  await pourBoth();
  bench.pass(10 * minute - 8 * minute);
  await bench.submit({ type: 'CLOCK_CORRECTED', answers: { shiftMs: String(-8 * minute) } });
  await press('weighed-in');
  expect(newest(bench)?.mixedMinAgo).toBe(10);
});

it('outlives a reload of the page, and is forgotten when she is done', async () => {
  const bench = open();
  await pourBoth();
  bench.unmount();
  // A page that was loaded anew knows nothing but what the tablet kept.
  vi.resetModules();
  const fresh = await import('../../../../src/screens/keptDraft');
  const { lasting } = await import('../../../../src/screens/lastingDrafts');
  const read = () => {
    const name = `story/bowl/lengths/${bench.consultation().record.decision?.seq}/0`;
    return [name, `${name}/pours`].map((each) => fresh.createKeptDraft(each, {}, settings, lasting).raw());
  };
  expect(read()).toMatchObject([{ colourG: '40' }, { 'pour0-0': '40', 'pour1-0': '80' }]);
  expect(read()[1]).toHaveProperty('developerAtMs');
  fresh.dropDrafts('story');
  expect(read()).toEqual([{}, {}]);
});

it('takes nothing that cannot be read for a bowl', () => {
  for (const line of ['{', '7', '[["story/x",{"pour0-0":{}}]]', '[["story/x"]]']) {
    const store = createLasting({ getItem: () => line, setItem: () => undefined });
    expect(store.read('story/x')).toBe(undefined);
  }
});
