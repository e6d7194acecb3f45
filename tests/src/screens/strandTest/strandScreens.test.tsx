import { describe, expect, it } from 'vitest';
import { beginConsultation } from '../../../../machines/consultation/consultation';
import { endsIronedWet } from '../../../../seeds/endsIronedWet';
import type { RawEvent } from '../../../../shared/records/classify';
import { askSteps } from '../../../../shared/records/steps';
import { Outcome } from '../../../../src/screens/strandTest/Outcome';
import { Preparing } from '../../../../src/screens/strandTest/Preparing';
import { Processing } from '../../../../src/screens/strandTest/Processing';
import {
  act,
  choose,
  hasAct,
  layOnBench,
  press,
  pressed,
  pressTwice,
  said,
  seen,
  title,
  type,
  typed,
} from '../bench';
import { type Played, playUntil, playUntilConfirmed, tap } from '../playStory';

const minute = 60_000;

async function fillMix(): Promise<void> {
  await choose('place', 'whereIroned');
  await choose('buildUp', 'washedOff');
  await choose('line', 'Sandbar powder');
  await choose('developerPercent', '6');
  await choose('ratio', '2');
  await type('minutes', '25');
  await choose('makersLimitMin', '45');
}

describe('starting a strand', () => {
  it('says at each field what is missing, keeps what was typed wrong, and starts nothing', async () => {
    const bench = layOnBench(Preparing, playUntilConfirmed('heatSpray'));
    await press('test-ends');
    await press('start-strand');
    expect(pressed('buildUp')).toEqual([]);
    expect([said('place'), said('buildUp')]).toEqual(['Still to be answered.', 'Still to be answered.']);
    expect(said('line')).toBe('Still to be filled in.');
    await fillMix();
    await type('minutes', '1e309');
    await press('start-strand');
    expect(typed('minutes')).toBe('1e309');
    expect(said('minutes')).toContain('no number anybody can measure');
    expect(bench.consultation().record.strands).toEqual([]);
  });

  it('shows the grams as they are typed, and begins the clock', async () => {
    const bench = layOnBench(Preparing, playUntilConfirmed('heatSpray'));
    await press('test-ends');
    await fillMix();
    expect(seen('[data-figure="grams"]')).toBe('Weigh 2 g lightener, 4 g developer');
    await choose('line', 'Sandbar cream');
    expect(seen('[data-figure="grams"]')).toBe('Weigh 2 g colour, 4 g developer');
    expect(seen('[data-caution]')).toContain('Plastic or glass bowl');
    await type('line', 'Gravel powder');
    expect(seen('[data-figure="grams"]')).toBe('Weigh 2 g lightener, 4 g developer');
    expect(seen('[data-caution]')).toContain('Lid on, scoop low');
    await choose('line', 'Sandbar powder');
    expect(seen('[data-figure="strength"]')).toBe('6 % bottle (20 vol), 4 % in the bowl');
    await press('start-strand');
    expect(bench.way()).toContain('processing');
    expect(bench.consultation().record.strands).toMatchObject([
      { zone: 'ends', lookEveryMin: '3', hairs: 30 },
    ]);
  });

  it('says longer than the maker’s limit at the minutes', async () => {
    layOnBench(Preparing, playUntilConfirmed('heatSpray'));
    await press('test-lengths');
    await fillMix();
    await type('minutes', '46');
    await press('start-strand');
    expect(said('minutes')).toBe('Longer than the maker’s limit.');
    await type('minutes', '45');
    expect(said('minutes')).toBe('');
  });

  it('is as she left it when she comes back from another chair', async () => {
    const played = playUntilConfirmed('heatSpray');
    const first = layOnBench(Preparing, played);
    await press('test-lengths');
    await type('batch', 'K-9');
    await type('developerPercent', '13');
    first.unmount();
    layOnBench(Preparing, played);
    await press('test-lengths');
    expect([typed('batch'), typed('developerPercent')]).toEqual(['K-9', '13']);
  });
});

/** The strands are told, then she wants no lift any more: the mix of the strand before is another service's. */
function playToGloss(): Played {
  const client = endsIronedWet.steps.find(({ raw }) => raw.type === 'ANSWERED')?.raw.answers;
  const events: readonly RawEvent[] = [
    { type: 'REOPENED', answers: { step: 'client' } },
    { type: 'ANSWERED', step: 'client', answers: { ...client, service: 'gloss' } },
    ...askSteps.map((step): RawEvent => ({ type: 'STEP_CONFIRMED', answers: { step } })),
  ];
  return events.reduce((played, raw) => tap(played, minute, raw), playUntil('OUTCOME_RECORDED', 'lengths'));
}

it('opens the mix of the strand before where it is refused, and says at its field why', async () => {
  const bench = layOnBench(Preparing, playToGloss());
  const strands = bench.consultation().record.strands.length;
  await press('test-lengths');
  expect(seen('[data-panel="same-mix"]')).toContain('Sandbar powder');
  await choose('place', 'crown');
  await choose('buildUp', 'none');
  await press('start-strand');
  expect(said('line')).toBe('That lifts, and she asked for no lift. Say anew what she wants.');
  await type('line', 'Sandbar gloss');
  expect(typed('line')).toBe('Sandbar gloss');
  await press('start-strand');
  expect(bench.consultation().record.strands).toHaveLength(strands + 1);
});

describe('a strand in the mix', () => {
  it('gets the same mix as the one before with a tap each for its place and the build-up', async () => {
    const bench = layOnBench(Processing, playUntil('STRAND_STARTED', 'ends'));
    await press('another-strand');
    expect(seen('[data-panel="same-mix"]')).toContain('Sandbar powder · 6 % bottle (20 vol) · 1 : 2');
    await choose('place', 'crown');
    await choose('buildUp', 'none');
    await press('start-strand');
    expect(bench.consultation().record.strands[1]).toMatchObject({
      zone: 'lengths',
      line: 'Sandbar powder',
      batch: 'B-17',
    });
  });

  it('is looked at in two taps after the button: the level, then the feel, which keeps it', async () => {
    const bench = layOnBench(Processing, playUntil('STRAND_STARTED', 'ends'));
    bench.pass(3 * minute);
    await press('look');
    await choose('level', '5.5');
    await choose('feel', 'sound');
    expect(bench.consultation().record.strands[0]?.looks).toMatchObject([{ level: 5.5, feel: 'sound' }]);
    expect(title()).toBe('Strand in the mix');
  });

  it('says after the fourth level when she is where she wants to be', async () => {
    const bench = layOnBench(Processing, playUntil('STRAND_STARTED', 'ends'));
    const forecast = '[data-line="forecast"]';
    for (const [minutes, level] of [
      [2, '5.5'],
      [3, '5.5'],
      [3, '6'],
    ] as const) {
      expect(seen(forecast)).toContain('Too few looks to say');
      expect(seen(forecast)).not.toContain('dries out');
      bench.pass(minutes * minute);
      await press('look');
      await choose('level', level);
      await choose('feel', 'sound');
    }
    expect(seen(forecast)).toMatch(
      /^Level 7 perhaps not before it comes off at \d\d:\d\d; \d\d:\d\d at the earliest\. Go on looking\. Lightener that dries out stops lifting\.$/,
    );
    const picture = document.querySelector('.level-plot svg')?.getAttribute('aria-label');
    expect(picture).toContain(
      'level 6 after 8\u00a0min, ahead: about level 7 after 25\u00a0min, from 5.5 to ',
    );
    const clocks = bench
      .consultation()
      .record.clocks.map(({ dueAtMs, startedAtMs }) => dueAtMs - startedAtMs);
    expect(clocks).toEqual([25 * minute]);
    bench.pass(17 * minute);
    expect(seen(forecast)).toBe('');
  });

  it('is to come off once a look found it stretchy, and gets no more time, whatever a later look felt', async () => {
    const bench = layOnBench(Processing, playUntil('STRAND_STARTED', 'ends'));
    const look = async (feel: string) => {
      bench.pass(3 * minute);
      await press('look');
      await choose('level', '5.5');
      await choose('feel', feel);
    };
    await look('rough');
    expect([seen('[data-caution]').includes('stretchy'), hasAct('more-time')]).toEqual([false, true]);
    await look('stretchy');
    await look('sound');
    expect(document.body.textContent).toContain('It was stretchy at a look. Take it off now.');
    expect(document.body.textContent).toContain('It counts as rough at best.');
    expect([act('take-off').dataset.kind, act('look').dataset.kind]).toEqual(['attention', 'plain']);
    expect(hasAct('more-time')).toBe(false);
  });

  it('comes off in one tap once its time is up, and only for a reason before', async () => {
    const bench = layOnBench(Processing, playUntil('STRAND_STARTED', 'ends'));
    await press('take-off');
    expect(title()).toBe('Off before its time: why?');
    expect(bench.last()?.type).toBe('STRAND_STARTED');
    await press('cancel');
    bench.pass(25 * minute);
    await press('take-off');
    expect(bench.last()).toMatchObject({ type: 'STRAND_TAKEN_OFF', payload: { why: 'timeIsUp' } });
  });

  it('breaks only when held, or pressed and confirmed', async () => {
    const bench = layOnBench(Processing, playUntil('STRAND_STARTED', 'ends'));
    expect(act('strand-broke').textContent).toContain('Breaking or mush: ends');
    expect(act('take-off').textContent).toBe('Take off now: ends');
    await press('strand-broke');
    expect(bench.last()?.type).toBe('STRAND_STARTED');
    await pressTwice('strand-broke');
    expect(bench.last()?.type).toBe('STRAND_BROKE');
  });

  it('is extended within the maker’s limit, with a reason', async () => {
    const bench = layOnBench(Processing, playUntil('STRAND_STARTED', 'ends'));
    await press('more-time');
    await type('minutes', '21');
    expect(said('minutes').replaceAll('\u00a0', ' ')).toBe('Too high. 1 min to 20 min.');
    await choose('reason', 'liftIsSlow');
    await press('extend');
    expect(bench.last()?.type).not.toBe('CLOCK_EXTENDED');
    expect(typed('minutes')).toBe('21');
    await type('minutes', '20');
    await press('extend');
    expect(bench.last()).toMatchObject({ type: 'CLOCK_EXTENDED', payload: { minutes: 20 } });
    expect(hasAct('more-time')).toBe(false);
  });

  it('is put aside in the name of whoever takes that on', async () => {
    const bench = layOnBench(Processing, playUntil('STRAND_STARTED', 'ends'));
    await press('take-off');
    await press('discard-strand');
    await choose('by', 'Juno');
    await choose('why', 'lost');
    await press('discard');
    expect(bench.last()).toMatchObject({ type: 'STRAND_DISCARDED', by: 'Juno' });
  });
});

it('shows the strand that runs while another is begun, and while the other one is looked at', async () => {
  const one = layOnBench(Processing, playUntil('STRAND_STARTED', 'ends'));
  await press('another-strand');
  expect(seen('[data-line="running"]')).toContain('STRAND 1 ends');
  one.unmount();
  layOnBench(Processing, playUntil('STRAND_STARTED', 'lengths'));
  await press('look');
  expect(seen('[data-line="running"]')).toContain('STRAND 2 lengths');
});

describe('an outcome', () => {
  it('is asked of each strand that is off, one after the other', async () => {
    const bench = layOnBench(Outcome, playUntil('STRAND_TAKEN_OFF'));
    expect(title()).toBe('Outcome: lengths');
    await press('record-outcome');
    const isOpen = (question: string) =>
      expect([question, pressed(question), said(question)]).toEqual([question, [], 'Still to be answered.']);
    isOpen('fibre');
    // What broke is not pulled, and shows neither a level nor how even it came out.
    await choose('fibre', 'broken');
    expect(seen('.caution[data-kind="stop"] [data-broke="lengths"]')).toContain('The lengths broke after');
    expect(document.querySelector('.sheet')).toBeNull();
    // Back, and nothing that nobody said stands there.
    await press('cancel');
    for (const question of ['fibre', 'stretch', 'wentPast30']) expect(pressed(question)).toEqual([]);
    await choose('fibre', 'sound');
    await press('record-outcome');
    for (const question of ['stretch', 'wentPast30', 'evenness']) isOpen(question);
    expect(said('level')).toBe('A number from 1 to 10.');
    await choose('stretch', 'springsBack');
    await choose('level', '7');
    await choose('wentPast30', 'no');
    await choose('evenness', 'even');
    expect(seen('.sheet-summary')).toContain('All said. Record it, and it counts.');
    await choose('wentPast30', 'yes');
    expect(seen('.sheet-summary')).toContain('All said. It counts as gummy. Record it.');
    await choose('wentPast30', 'no');
    // By whom is whoever is at the tablet, and is said before it is recorded.
    expect(seen('.sheet-summary')).toContain('Recorded by Opal.');
    await press('record-outcome');
    expect(bench.consultation().record.strands[1]?.outcome).toMatchObject({
      fibre: 'sound',
      stretch: 'springsBack',
      wentPast30: 'no',
      level: 7,
      evenness: 'even',
      by: 'Opal',
    });
    expect(title()).toBe('Outcome: ends');
    expect(act('record-outcome')).toBeTruthy();
    expect(hasAct('discard-strand')).toBe(false);
    expect(seen('.caution[data-kind="stop"] [data-broke="ends"]')).toContain('The ends broke after 9 min.');
    expect(document.querySelector('.sheet')).toBeNull();
    await press('record-outcome');
    expect(bench.consultation().record.strands[0]?.outcome).toMatchObject({
      fibre: 'broken',
      stretch: 'snaps',
      wentPast30: 'no',
      grade: 'broken',
    });
  });
});

it('an outcome of hair that was felt to be broken is recorded as that, and the next one begins empty', async () => {
  const bench = layOnBench(Outcome, playUntil('STRAND_TAKEN_OFF'));
  await choose('fibre', 'broken');
  await press('record-outcome');
  expect(bench.consultation().record.strands[1]?.outcome).toMatchObject({
    fibre: 'broken',
    stretch: 'snaps',
  });
  bench.unmount();
  layOnBench(Outcome, playUntil('STRAND_TAKEN_OFF'));
  expect(pressed('fibre')).toEqual([]);
});

describe('a skin test that keeps everything off the head', () => {
  const playWithout = (type: RawEvent['type']): Played =>
    endsIronedWet.steps
      .slice(
        0,
        endsIronedWet.steps.findIndex(({ raw }) => raw.type === type),
      )
      .filter(({ raw }) => raw.type !== 'SKIN_TEST_NOTED')
      .reduce<Played>((played, { afterMs, by, raw }) => tap(played, afterMs, raw, by), {
        consultation: beginConsultation('story'),
        atMs: endsIronedWet.startAtMs,
      });
  const line = '[data-line="skin-test"]';

  it.each([
    ['before the first strand', Preparing, 'STRAND_STARTED'],
    ['while one is in the mix', Processing, 'STRAND_BROKE'],
    ['when its outcome is told', Outcome, 'OUTCOME_RECORDED'],
  ] as const)('is said %s', (_when, page, type) => {
    layOnBench(page, playWithout(type));
    expect(seen(line)).toContain('No skin test yet: nothing goes on the head');
  });

  it('says from when it may be read, and then that it is to be read', async () => {
    const played = playWithout('STRAND_BROKE');
    const answers = { putOnAtMs: played.atMs, seen: 'notReadYet' };
    const bench = layOnBench(Processing, tap(played, minute, { type: 'SKIN_TEST_NOTED', answers }));
    expect(seen(line)).toContain('Skin test to be read from');
    bench.pass(49 * 60 * minute);
    expect(seen(line)).toContain('Skin test to be read now');
  });

  it('is not mentioned when it was read clear', () => {
    layOnBench(Processing, playUntil('STRAND_STARTED', 'ends'));
    expect(seen(line)).toBe('');
  });
});
