import { type Component, createSignal } from 'solid-js';
import { beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import { FeelHair } from '../../../../src/screens/ask/FeelHair';
import { dropDrafts } from '../../../../src/screens/keptDraft';
import { RulerProvider } from '../../../../src/screens/ruler/rulerInUse';
import type { StepProps } from '../../../../src/screens/stepProps';
import { Outcome } from '../../../../src/screens/strandTest/Outcome';
import type { RulerInUse } from '../../../../src/tablet/ruler';
import { act, choose, hasAct, layOnBench, press, pressed, seen, settle } from '../bench';
import { playUntil, playUntilConfirmed } from '../playStory';

/** A glass that nobody laid a card on, of so many dots to a px. */
function makeRuler(set: number | null, dotsPerPx = 1): RulerInUse {
  const [dotsPerMm, setDotsPerMm] = createSignal(set);
  return {
    dotsPerPx: () => dotsPerPx,
    sides: [1280 * dotsPerPx, 800 * dotsPerPx],
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

let ruler: RulerInUse;
beforeEach(() => {
  ruler = makeRuler(5.9);
});

const input = (): HTMLInputElement => {
  const found = document.querySelector<HTMLInputElement>('.reading input');
  if (found === null) throw new Error('no reading is asked');
  return found;
};
async function read(text: string): Promise<void> {
  input().value = text;
  input().dispatchEvent(new InputEvent('input', { bubbles: true }));
  await settle();
}
async function readAll(...texts: readonly string[]): Promise<void> {
  for (const text of texts) {
    await read(text);
    await press('reading-next');
  }
}
const fault = () => seen('.measure .field-refusal');

async function openFeel() {
  const bench = layOnBench(onGlass(FeelHair, ruler), playUntilConfirmed('hotTools'));
  onTestFinished(() => dropDrafts(bench.consultation().id));
  document.querySelector<HTMLElement>('[data-ledger="wetStretch"]')?.click();
  await press('measure');
  return bench;
}
async function openOutcome() {
  const bench = layOnBench(onGlass(Outcome, ruler), playUntil('STRAND_TAKEN_OFF'));
  onTestFinished(() => dropDrafts(bench.consultation().id));
  document.querySelector<HTMLElement>('[data-ledger="stretch"]')?.click();
  await press('measure');
  return bench;
}
const feltStretch = (bench: Awaited<ReturnType<typeof openFeel>>) =>
  bench.consultation().record.answers.feelHair?.wetStretch;

describe('a wet strand measured at the feel', () => {
  it('fills the answer in, and is said only by the tap on it', async () => {
    const bench = await openFeel();
    await readAll('112', '139', '113');
    expect(seen('.pull-told')).toContain('Stretched 24.1 %. Gave back 96.3 % of that, give or take 8 %.');
    expect(seen('[data-line="fills"]')).toBe('Fills in: Springs back');
    await press('fill-answer');
    expect(hasAct('fill-answer')).toBe(false);
    expect(pressed('wetStretch')).toEqual(['springsBack']);
    expect(seen('[data-act="measure"]')).toBe('Measured: 24.1 %');
    expect(feltStretch(bench)).toBeUndefined();
    await choose('wetStretch', 'springsBack');
    expect(feltStretch(bench)).toBe('springsBack');
  });

  it('is read in millimetres, with the inches of this salon beside them', async () => {
    await openFeel();
    expect(seen('.ruler-room')).toContain('mm');
    await read('139');
    expect(seen('.reading .number-unit')).toBe('mm5.47 in');
    await read('long');
    expect(seen('.reading .number-unit')).toBe('mm');
    await readAll('112', '139', '113');
    expect(seen('[data-line="readings"]')).toBe(
      'At rest 112 mm (4.41 in), pulled to 139 mm (5.47 in), back to 113 mm (4.45 in)',
    );
  });

  it('may be answered otherwise than the ruler says: the finger comes first', async () => {
    const bench = await openFeel();
    await readAll('100', '125', '100');
    await press('fill-answer');
    await choose('wetStretch', 'staysLong');
    expect(feltStretch(bench)).toBe('staysLong');
  });

  it.each([
    ['stays long', ['100', '125', '120'], 'Slow, stays long'],
    ['went past 30 %, whatever it did afterwards', ['100', '131', '100'], 'Snaps or mush'],
  ] as const)('%s', async (_name, texts, option) => {
    await openFeel();
    await readAll(...texts);
    expect(seen('[data-line="fills"]')).toBe(`Fills in: ${option}`);
  });

  it('asks whether one was measured anew that ran to more than twice its length, and fills nothing in', async () => {
    const bench = await openFeel();
    await readAll('100', '1285', '100');
    expect(seen('.pull-told h3')).toBe('Measure again?');
    expect(seen('.pull-told')).toContain('Stretched 1185 %.');
    expect(seen('.pull-told')).toContain(
      'Wet hair broke at 51 % on average. Past 100 % it is most likely a slip of the ruler',
    );
    expect(hasAct('fill-answer')).toBe(false);
    expect(seen('[data-line="fills"]')).toBe('');
    await press('measure-again');
    expect(input().value).toBe('');
    expect(feltStretch(bench)).toBeUndefined();
  });

  it('takes it for mush once somebody says that it went so far, and asks again after another reading', async () => {
    await openFeel();
    await readAll('100', '210', '100');
    await press('it-was-so');
    expect(seen('.pull-told h3')).toBe('Past 30 % on a light pull: gummy.');
    expect(seen('[data-line="fills"]')).toBe('Fills in: Snaps or mush');
    await press('reading-back');
    await readAll('100');
    expect(hasAct('fill-answer')).toBe(false);
    await press('it-was-so');
    await press('fill-answer');
    expect(pressed('wetStretch')).toEqual(['snaps']);
  });

  it('takes one at twice its length as it was seen', async () => {
    await openFeel();
    await readAll('100', '200', '100');
    expect(seen('[data-line="fills"]')).toBe('Fills in: Snaps or mush');
  });

  it('of too light a pull fills nothing in, and is measured again', async () => {
    await openFeel();
    await readAll('100', '110', '100');
    expect(seen('.pull-told')).toContain('Too light a pull to tell.');
    expect(hasAct('fill-answer')).toBe(false);
    await press('measure-again');
    expect(input().value).toBe('');
  });
});

describe('a strand too short to tell', () => {
  it('is told at rest, and fills nothing in where it sprang back', async () => {
    await openFeel();
    await read('20');
    expect(seen('.reached-said')).toContain('Shorter than 50 mm: too short to tell');
    await press('reading-next');
    await readAll('26', '21');
    expect(seen('.pull-told h3')).toBe('Too short to tell.');
    expect(seen('.pull-told')).toContain('Gave back 83.3 % of that, give or take 34 %.');
    expect(hasAct('fill-answer')).toBe(false);
    await press('measure-again');
    expect(input().value).toBe('');
  });

  it('fills in what it showed all the same where it stayed long', async () => {
    await openFeel();
    await readAll('20', '24', '22');
    expect(seen('[data-line="fills"]')).toBe('Fills in: Slow, stays long');
  });
});

it('asks for the return at once, before a slow strand has crept back', async () => {
  await openFeel();
  await readAll('100', '125');
  expect(seen('.measure-how')).toContain('tap at once');
  expect(seen('.measure-how')).toContain('creeping back? Then it is slow');
});

it('has the line that tells how far before there is anything to tell, so that it is read out', async () => {
  await openFeel();
  await readAll('100');
  const line = document.querySelector('.reached-said[role="status"]');
  expect(line?.textContent).toBe('');
  await read('110');
  expect(document.querySelector('.reached-said')).toBe(line);
  expect(line?.textContent).toContain('a little further');
});

describe('a wet strand measured at the outcome', () => {
  it('fills in how it came back and whether it went past 30 %', async () => {
    const bench = await openOutcome();
    await readAll('100', '140', '130');
    expect(seen('[data-line="fills"]')).toBe('Fills in: Slow, stays long · past 30 %: Yes');
    await press('fill-answer');
    expect(pressed('stretch')).toEqual(['staysLong']);
    expect(pressed('wentPast30')).toEqual(['yes']);
    expect(bench.consultation().record.strands.every(({ outcome }) => outcome === null)).toBe(true);
  });

  it('leaves open how far one went that snapped before it was read', async () => {
    await openOutcome();
    await readAll('100');
    await press('snapped');
    expect(seen('[data-line="readings"]')).toBe('At rest 100 mm (3.94 in)');
    expect(seen('[data-line="figures"]').trim()).toBe('');
    expect(seen('[data-line="fills"]')).toBe('Fills in: Snaps or mush');
    await press('fill-answer');
    expect(pressed('stretch')).toEqual(['snaps']);
    expect(pressed('wentPast30')).toEqual([]);
  });

  it.each(['4o', '90', '100'])(
    'makes no figure of “%s” where it snapped: that is no reading',
    async (text) => {
      await openOutcome();
      await readAll('100');
      await read(text);
      await press('snapped');
      expect(seen('[data-line="figures"]').trim()).toBe('');
      expect(seen('[data-line="readings"]')).toBe('At rest 100 mm (3.94 in)');
      await press('fill-answer');
      expect(seen('[data-act="measure"]')).toBe('Measured: it snapped');
    },
  );

  it('goes back to the step at which it snapped', async () => {
    await openOutcome();
    await readAll('100');
    await press('snapped');
    await press('reading-back');
    expect(seen('.measure-ask')).toContain('Pull lightly');
    await readAll('125');
    await press('snapped');
    await press('reading-back');
    expect(seen('.measure-ask')).toContain('Let go');
    await readAll('100');
    await press('reading-back');
    expect(seen('.measure-ask')).toContain('Let go');
  });

  it('asks anew also where one snapped far beyond what hair does', async () => {
    await openOutcome();
    await readAll('100', '1285');
    await press('snapped');
    expect(hasAct('fill-answer')).toBe(false);
    await press('it-was-so');
    await press('fill-answer');
    expect([pressed('stretch'), pressed('wentPast30')]).toEqual([['snaps'], ['yes']]);
  });

  it('keeps past 30 % of one that snapped there', async () => {
    await openOutcome();
    await readAll('100', '145');
    await press('snapped');
    await press('fill-answer');
    expect(pressed('wentPast30')).toEqual(['yes']);
  });
});

describe('a reading', () => {
  it.each([
    ['0', 'Too low. 1 mm to 1500 mm.'],
    ['-3', 'Too low. 1 mm to 1500 mm.'],
    ['3000', 'Too high. 1 mm to 1500 mm.'],
    ['long', 'That is not a number. 1 mm to 1500 mm, digits only.'],
  ])('of “%s” is told, stays as typed and goes no further', async (text, says) => {
    await openFeel();
    await readAll(text);
    expect(fault().replaceAll('\u00a0', ' ')).toBe(says);
    expect(input().value).toBe(text);
    expect(seen('.measure-ask')).toBe('How long is it at rest?');
  });

  it('keeps its buttons while they move it, so that each quick tap is on the same one', async () => {
    await openFeel();
    await readAll('100');
    await read('118');
    const button = act('more');
    for (let taps = 0; taps < 15; taps += 1) await press('more');
    expect(act('more')).toBe(button);
    expect(input().value).toBe('133');
  });

  it('that ends before the rest, or at it, is told', async () => {
    await openFeel();
    await readAll('112', '100');
    expect(fault()).toBe('That is shorter than at rest. Read it again, or go back to the rest.');
    await readAll('112');
    expect(fault()).toBe('That is as long as at rest. Pull lightly, to the first mark.');
    await press('reading-back');
    await readAll('90', '112');
    expect(seen('.measure-ask')).toBe('Let go: where did it come back to?');
  });

  it('is asked for where it is missing, not before', async () => {
    await openFeel();
    expect(fault()).toBe('');
    await press('reading-next');
    expect(fault().replaceAll('\u00a0', ' ')).toBe('A number from 1 mm to 1500 mm.');
  });

  it('moves by a millimetre with the buttons and with the arrow keys, never below the first', async () => {
    await openFeel();
    const key = (name: string) =>
      document
        .querySelector('.ruler-room')
        ?.dispatchEvent(new KeyboardEvent('keydown', { key: name, bubbles: true, cancelable: true }));
    await read('100');
    await press('more');
    key('ArrowRight');
    key('PageDown');
    key('ArrowLeft');
    expect(input().value).toBe('111');
    await read('1');
    await press('less');
    expect(input().value).toBe('1');
  });

  it('is told at once when the pull is enough, and never sends it past 30 %', async () => {
    await openFeel();
    await readAll('100');
    const reached = () => seen('.reached-said');
    for (const [mm, says] of [
      ['110', '10 %: a little further, to the first mark.'],
      ['120', '20 %: enough. Let go.'],
      ['130', '30 %: enough. Let go.'],
      ['131', '31 %: past 30 %. No further: let go. It is kept as seen.'],
      ['200', '100 %: past 30 %. No further: let go. It is kept as seen.'],
      ['201', '101 %: wet hair hardly goes so far. Read it again.'],
    ] as const) {
      await read(mm);
      expect(reached()).toBe(says);
    }
  });
});

describe('a glass that no card was laid on', () => {
  it('says so, offers the card, and does without', async () => {
    ruler = makeRuler(null);
    const bench = await openFeel();
    expect(seen('[data-line="ruler-state"]')).toContain('Not set on this tablet yet.');
    await press('without-ruler');
    await choose('wetStretch', 'springsBack');
    expect(feltStretch(bench)).toBe('springsBack');
  });

  it('keeps its buttons while they move the lines, so that each quick tap is on the same one', async () => {
    ruler = makeRuler(null);
    await openFeel();
    const button = act('much-more');
    await press('much-more');
    expect(act('much-more')).toBe(button);
  });

  it('is measured once the lines fit: by buttons and arrow keys, in dots of the glass', async () => {
    ruler = makeRuler(null, 2);
    await openFeel();
    const start = Number(act('much-more').closest('.card-fit')?.querySelector('svg')?.getAttribute('width'));
    for (const move of ['much-more', 'much-more', 'little-less']) await press(move);
    document
      .querySelector('.card-glass')
      ?.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true, cancelable: true }));
    const end = Number(document.querySelector('.card-glass svg')?.getAttribute('width'));
    expect(end - start).toBeCloseTo(20 / 2, 6);
    await press('keep-ruler');
    expect(ruler.pxPerMm()).toBeCloseTo(149 / 25.4 + 10 / 85.6, 9);
    expect(seen('.measure-ask')).toBe('How long is it at rest?');
  });
});

it('is not offered where there is no glass to measure on', async () => {
  layOnBench(FeelHair, playUntilConfirmed('hotTools'));
  document.querySelector<HTMLElement>('[data-ledger="wetStretch"]')?.click();
  expect(hasAct('measure')).toBe(false);
});
