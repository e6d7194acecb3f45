import { afterEach, describe, expect, it } from 'vitest';
import { ColourOn } from '../../../../src/screens/colourOn/ColourOn';
import { Finish } from '../../../../src/screens/finish/Finish';
import { dropDrafts } from '../../../../src/screens/keptDraft';
import { MixScreen } from '../../../../src/screens/mix/MixScreen';
import { Reaction } from '../../../../src/screens/reaction/Reaction';
import { act, choose, hasAct, layOnBench, press, pressTwice, said, seen, title, type, typed } from '../bench';
import { planSaid } from '../planSaid';
import { playUntil, tap } from '../playStory';

afterEach(() => dropDrafts('story'));

const minute = 60_000;
const primaries = () =>
  [...document.querySelectorAll<HTMLElement>('.step-actions [data-kind="primary"]')].map(
    ({ dataset }) => dataset.act,
  );
const isDisabled = (name: string) => (act(name) as HTMLButtonElement).disabled;

describe('at the scale', () => {
  it('refuses in words what goes beyond the strand, and keeps what was typed', async () => {
    const bench = layOnBench(MixScreen, playUntil('DECIDED'));
    expect(title()).toBe('Bowl for the lengths');
    await choose('developerPercent', '12');
    expect(seen('[data-panel="bowl-said"]')).toContain('Stronger than the strand and the decision allow.');
    expect(isDisabled('weigh')).toBe(true);
    expect(said('developerPercent')).toBe('Too high. 0.5\u00a0% to 3\u00a0%.');
    await type('minutes', '-0');
    expect(said('minutes')).toContain('Minus zero is not a number here.');
    expect(typed('minutes')).toBe('-0');
    await type('minutes', '25');
    await choose('developerPercent', '3');
    expect(seen('[data-figure="strength"]')).toBe('3 % bottle (10 vol), 2 % in the bowl');
    expect(seen('[data-figure="developer"]')).toBe('100 g');
    await press('weigh');
    expect(bench.last()).toMatchObject({ type: 'BOWL_WEIGHED', payload: { developerPercent: 3 } });
  });

  it('puts a weighed bowl on in one tap, and throws it away only when held', async () => {
    const bench = layOnBench(MixScreen, playUntil('BOWL_WEIGHED'));
    await press('throw');
    expect(bench.last()?.type).toBe('BOWL_WEIGHED');
    await press('apply');
    expect(bench.way()).toContain('colourOn');
  });

  it('asks for the skin with the tap that begins, and begins on none that is not calm', async () => {
    const bench = layOnBench(MixScreen, playUntil('BOWL_WEIGHED'));
    const aloud = seen('[data-panel="say-first"]');
    for (const value of ['chair', 'lengths', 'Sandbar powder', '3 % bottle (10 vol)', '25 min', 'use by']) {
      expect(aloud).toContain(value);
    }
    await press('skin-not-calm');
    expect(bench.last()?.type).toBe('BOWL_WEIGHED');
    expect(document.querySelector('[data-act="apply"]')).toBeNull();
    await press('calm-after-all');
    await press('apply');
    expect(bench.last()).toMatchObject({ type: 'BOWL_APPLIED', payload: { skinFirst: 'calm' } });
  });

  it('throws the bowl of skin that is not calm, writes why, and goes back to ask how it is', async () => {
    const bench = layOnBench(MixScreen, playUntil('BOWL_WEIGHED'));
    await press('skin-not-calm');
    expect(document.body.textContent).toContain('Nothing goes on skin that is not calm.');
    await pressTwice('throw');
    const { log } = bench.consultation();
    expect(log.at(-2)).toMatchObject({ type: 'BOWL_THROWN', payload: { why: 'skinNotCalm' } });
    expect(log.at(-1)).toMatchObject({ type: 'REOPENED', payload: { step: 'client' } });
    expect(document.body.textContent).toContain('thrown away: skin not calm');
    expect(document.querySelector('[data-act="weigh"], [data-act="mix-lengths"]')).toBeNull();
  });

  it('offers at once to mix again what was thrown away, and nothing that reads as putting on', async () => {
    const bench = layOnBench(MixScreen, playUntil('BOWL_WEIGHED'));
    await pressTwice('throw');
    expect(bench.last()?.type).toBe('BOWL_THROWN');
    expect(title()).toBe('Bowl for the lengths');
    expect(primaries()).toEqual(['weigh']);
  });

  it('offers first to finish once the last bowl was rinsed', () => {
    layOnBench(MixScreen, playUntil('BOWL_RINSED'));
    expect(primaries()).toEqual(['finish']);
  });
});

describe('on the head', () => {
  it('asks at every look whether it stings, and yes opens the rinse steps', async () => {
    const bench = layOnBench(ColourOn, playUntil('BOWL_APPLIED'));
    bench.pass(5 * minute);
    await press('look');
    expect(title()).toBe('Any stinging or burning?');
    await press('hair-sound');
    expect(bench.last()).toMatchObject({ type: 'LOOKED', payload: { stinging: 'no' } });
    await press('look');
    await press('stinging-yes');
    expect(bench.way()).toContain('suspected');
  });

  it('asks at every look whether the hair holds: stretchy hair stays on no longer, hair that breaks has had its time', async () => {
    const bench = layOnBench(ColourOn, playUntil('BOWL_APPLIED'));
    bench.pass(5 * minute);
    await press('look');
    await press('hair-stretchy');
    expect(bench.last()).toMatchObject({ type: 'LOOKED', payload: { stinging: 'no', hair: 'stretchy' } });
    expect(seen('[data-weak="lengths"]')).toContain('rinse the lengths now, do not wait');
    expect(hasAct('all-on')).toBe(false);
    expect(act('rinsed').dataset.kind).toBe('danger');
    expect(hasAct('more-time')).toBe(false);
    await press('look');
    await press('hair-breaking');
    expect(bench.last()).toMatchObject({ payload: { hair: 'stretchy' } });
    await press('hair-breaking-confirm');
    expect(bench.last()).toMatchObject({ type: 'LOOKED', payload: { stinging: 'no', hair: 'breaking' } });
    expect(bench.last()).toMatchObject({ tokens: { breaks: true } });
    expect(seen('.caution[data-kind="stop"]')).toContain('The hair breaks: rinse the lengths now');
    expect(seen('.large-clock')).toContain('rinse now');
    expect(act('rinsed').dataset.kind).toBe('danger');
    expect(act('look').dataset.kind).toBe('plain');
    await pressTwice('rinsed');
    expect(bench.last()?.type).toBe('BOWL_RINSED');
  });

  it('is rinsed before its time when that is held', async () => {
    const bench = layOnBench(ColourOn, playUntil('BOWL_APPLIED'));
    await pressTwice('rinsed');
    expect(bench.last()?.type).toBe('BOWL_RINSED');
  });

  it('is rinsed by no stray tap, before its time or after it, and stands in the corner once it is due', async () => {
    const places = () =>
      [...document.querySelectorAll<HTMLElement>('.step-actions [data-act]')].map(
        ({ dataset }) => dataset.act,
      );
    const bench = layOnBench(ColourOn, playUntil('BOWL_APPLIED'));
    expect(places()).toEqual(['rinsed', 'look']);
    await press('rinsed');
    expect(bench.last()?.type).toBe('BOWL_APPLIED');
    bench.pass(30 * minute);
    expect(places().filter((name) => name !== 'rinsed-confirm')).toEqual(['look', 'rinsed']);
    await press('rinsed');
    expect(bench.last()?.type).toBe('BOWL_APPLIED');
    await press('rinsed-confirm');
    expect(bench.last()?.type).toBe('BOWL_RINSED');
  });
});

describe('a reaction', () => {
  it('counts contact time on, is recorded when held, and closes only after the rinse', async () => {
    const bench = layOnBench(ColourOn, playUntil('BOWL_APPLIED'));
    await press('look');
    await press('stinging-yes');
    bench.show(Reaction);
    bench.pass(90_000);
    expect(seen('.contact-digits')).toBe('1:30');
    await pressTwice('record-reaction');
    expect(bench.last()).toMatchObject({ type: 'REACTION_RECORDED', payload: { signs: ['unclear'] } });
    await press('care');
    await choose('care', 'rinsedAndDoctor');
    expect(isDisabled('give-care')).toBe(true);
    await press('cancel');
    await press('rinsed-lengths');
    bench.pass(5 * minute);
    expect(seen('[data-water="lengths"] .contact-digits')).toBe('5:00');
    await press('care');
    expect(seen('[data-line="water-short"]')).toContain('5:00 of 20 min');
    await press('give-care');
    expect(bench.consultation().record.ended).toBeNull();
    await press('give-care-confirm');
    expect(bench.consultation().record.ended?.how).toBe('reaction');
  });

  it('takes further signs after it was recorded', async () => {
    const bench = layOnBench(ColourOn, playUntil('BOWL_APPLIED'));
    await press('look');
    await press('stinging-yes');
    bench.show(Reaction);
    await press('signs');
    await choose('signs', 'burning');
    await pressTwice('record-reaction');
    expect(title()).toBe('Reaction recorded');
    await press('more-signs');
    await choose('signs', 'blisters');
    await pressTwice('record-reaction');
    expect(bench.consultation().record.reaction?.signs).toEqual(['burning', 'blisters']);
  });

  it.each([
    ['breath', 'rinsedAndDoctor', 'call 112 or your local emergency number now'],
    ['faint', 'rinsed', 'call 112 or your local emergency number now'],
    ['faint', 'callRefused', ''],
    ['blisters', 'rinsed', 'a doctor has to look'],
    ['eyes', 'rinsed', 'a doctor has to look'],
    ['swelling', 'rinsed', 'a doctor has to look'],
    ['hives', 'rinsed', 'a doctor has to look'],
    ['breath', 'emergencyCalled', ''],
    ['blisters', 'rinsedAndDoctor', ''],
    ['stinging', 'rinsed', ''],
  ])('of %s, with %s done, says what is still too little: “%s”', async (sign, care, line) => {
    const bench = layOnBench(ColourOn, playUntil('BOWL_APPLIED'));
    await press('look');
    await press('stinging-yes');
    bench.show(Reaction);
    await press('signs');
    await choose('signs', sign);
    await pressTwice('record-reaction');
    await press('rinsed-lengths');
    bench.pass(20 * minute);
    await press('care');
    expect(seen('[data-line="too-little"]') === '').toBe(sign === 'stinging');
    await choose('care', care);
    expect(isDisabled('give-care')).toBe(line.startsWith('call'));
    const told = seen('[data-line="too-little"]');
    expect(told).toContain(line);
    expect(told === '').toBe(line === '');
  });

  it('puts back on what no water ran over after all, from its old start, and asks for it first', async () => {
    const bench = layOnBench(ColourOn, playUntil('BOWL_APPLIED'));
    const [clock] = bench.consultation().record.clocks.filter(({ kind }) => kind === 'head');
    await press('look');
    await press('stinging-yes');
    bench.show(Reaction);
    expect(primaries()).toEqual(['rinsed-lengths']);
    await press('rinsed-lengths');
    expect(bench.way()).toContain('mix');
    bench.pass(minute);
    await press('no-reaction');
    expect(isDisabled('none-wrongTap')).toBe(true);
    await choose('stillOn', 'yes');
    await pressTwice('none-wrongTap');
    expect(bench.last()).toMatchObject({ type: 'NO_REACTION', tokens: { stillOn: ['lengths'] } });
    expect(bench.way()).toContain('colourOn');
    const { record } = bench.consultation();
    expect(record.bowls).toMatchObject([{ state: 'on', rinsedSeq: null }]);
    expect(record.clocks.find(({ id }) => id === clock?.id)).toMatchObject({
      startedAtMs: clock?.startedAtMs,
      dueAtMs: clock?.dueAtMs,
      endedAtMs: null,
    });
  });

  it('goes back where she was when it was none', async () => {
    const bench = layOnBench(ColourOn, playUntil('BOWL_APPLIED'));
    await press('look');
    await press('stinging-yes');
    bench.show(Reaction);
    await press('no-reaction');
    await press('none-lookedNothingSeen');
    expect(bench.way()).not.toContain('calm');
    await press('none-lookedNothingSeen-confirm');
    expect(bench.way()).toContain('calm');
    expect(bench.last()).toMatchObject({ type: 'NO_REACTION', payload: { why: 'lookedNothingSeen' } });
    expect(bench.consultation().record.clocks.some(({ endedAtMs }) => endedAtMs === null)).toBe(true);
  });
});

it('closes with the plan she takes home, not before she has said when she is back, and never with burning skin', async () => {
  const bench = layOnBench(Finish, playUntil('FINISHED'));
  await press('give-plan');
  expect(said('back')).not.toBe('');
  expect(hasAct('print-hand-out')).toBe(false);
  for (const [question, option] of planSaid) await choose(question, option);
  expect(hasAct('print-hand-out')).toBe(true);
  await choose('skinNow', 'burns');
  expect(said('skinNow')).toContain('Not home yet.');
  expect(hasAct('print-hand-out')).toBe(false);
  await press('give-plan');
  expect(bench.consultation().record.plan).toBeNull();
  await choose('skinNow', 'pink');
  await choose('lateItching', 'notTold');
  expect(said('lateItching')).toContain('Not told yet.');
  expect(hasAct('print-hand-out')).toBe(false);
  await press('give-plan');
  expect(bench.consultation().record.plan).toBeNull();
  await choose('lateItching', 'saidItBack');
  await choose('back', 'weeks8');
  expect(seen('[data-line=back]')).toContain('In 8 weeks');
  const { clocks, bowls } = bench.consultation().record;
  const { startedAtMs = 0, endedAtMs } = clocks.find(({ kind }) => kind === 'head') ?? {};
  const minutesOn = ((endedAtMs ?? 0) - startedAtMs) / minute;
  expect(minutesOn).not.toBe(bowls[0]?.minutes);
  expect(seen('.plan-done'), 'really on').toContain(`${Math.floor(minutesOn)} min`);
  await press('give-plan');
  expect(bench.consultation().record.plan).toMatchObject({
    ...{ passes: 1, restH: 48, back: 'weeks8' },
    ...{ skinNow: 'pink', toolsNow: 'offCooling', cardNow: 'byHand', lateItching: 'saidItBack' },
  });
  expect(bench.consultation().record.ended?.how).toBe('done');
});

it('says beside a figure that it is hotter than suggested, at it and over her card, and takes it', async () => {
  const bench = layOnBench(Finish, playUntil('FINISHED'));
  expect(said('settingC')).toBe('');
  expect(seen('.sheet-hint')).toContain('An estimate');
  await type('settingC', '450');
  expect(seen('.sheet-hint')).toMatch(/^Hotter than the \d+\s°F suggested for this hair/);
  for (const [question, option] of planSaid.slice(1)) await choose(question, option);
  expect(title()).toBe('Hotter than suggested');
  expect(seen('.plan-rules')).toContain('Heat protectant each time: so hot it is a must.');
  await press('give-plan');
  expect(bench.consultation().record.ended?.how).toBe('done');
});

it('says nothing of the kind at the suggested figure', async () => {
  layOnBench(Finish, playUntil('FINISHED'));
  for (const [question, option] of planSaid.slice(1)) await choose(question, option);
  expect(seen('.plan-rules')).toContain('Heat protectant each time.');
  expect(seen('.plan-rules')).toContain('one pass, done within 10 s.');
  await choose('passes', '2');
  expect(seen('.plan-rules')).toContain('2 passes at most, each done within 10 s.');
  expect(title()).toBe('Home with a heat plan');
});

it('counts up since she said that it burns, beside how long the water is to run', async () => {
  const bench = layOnBench(Reaction, playUntil('BOWL_APPLIED'));
  expect(seen('.since-told')).toBe('');
  bench.unmount();
  const reacting = tap(playUntil('BOWL_APPLIED'), minute, { type: 'REACTION_SUSPECTED' });
  const later = layOnBench(Reaction, reacting);
  expect(seen('.since-told')).toBe('Water: a burn 20 min, eyes 15 to 20 min. Since it was told: 0:00');
  later.pass(19 * minute + 59_000);
  expect(seen('.since-told-digits')).toBe('19:59');
  await press('rinsed-lengths');
  later.pass(minute);
  expect(seen('.since-told-digits')).toBe('20:59');
});
