import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { firstVisit, secondVisit, strandsMeanwhile } from '../../../seeds/fullHeadLightening';
import type { StoryStep } from '../../../seeds/story';
import type { RawEvent } from '../../../shared/records/classify';
import { type Shown, showStation } from './stationOnTablet';

afterEach(cleanup);

/** Two days later, with her strands tested meanwhile or without. */
async function comeBack(before: readonly StoryStep[]): Promise<Shown> {
  const shown = await showStation({ settings: firstVisit.settings, atMs: firstVisit.startAtMs });
  await shown.play(before);
  await shown.turnClock(firstVisit.startAtMs + 51 * 3_600_000);
  await shown.tap('[data-act=parked]');
  await shown.tap('[data-act=open-parked]');
  await shown.tap('[data-act=who-Wren]');
  await shown.tap('[data-act=resume]');
  return shown;
}

const tested = [...firstVisit.steps, ...strandsMeanwhile];
const stepOf = (shown: Shown) => shown.find('main').dataset.step;
const readRecord = (shown: Shown) => [...shown.station.readState().open.values()][0]?.record;

describe('whoever is back on another day', () => {
  it('is asked what is new since she was here, read aloud', async () => {
    const shown = await comeBack(tested);
    expect(stepOf(shown)).toBe('anotherDay');
    expect(shown.find('h1').textContent).toBe('Anything new?');
    for (const line of ['reactions', 'scalp', 'age', 'tools', 'history']) shown.find(`[data-line=${line}]`);
    expect(shown.look('[data-question=wetStretch]')).toBeNull();
  });

  it('with nothing new is at the decision by one tap, her strands kept', async () => {
    const shown = await comeBack(tested);
    await shown.tap('[data-act=nothing-new]');
    expect(stepOf(shown)).toBe('decision');
    expect(readRecord(shown)?.answers.client).toMatchObject({
      reactions: ['none'],
      scalp: 'sound',
      ageBand: 'over',
    });
    expect(readRecord(shown)?.strands.map(({ isVoid }) => isVoid)).toEqual([false, false]);
  });

  it('has her skin test read there by one tap, and is asked on', async () => {
    const shown = await comeBack(tested);
    await shown.tap('[data-act=skin-test-nothing]');
    expect(readRecord(shown)?.skinTest?.seen).toBe('nothing');
    expect(stepOf(shown)).toBe('anotherDay');
    expect(shown.look('[data-act=skin-test-nothing]')).toBeNull();
  });

  it('is stopped there by a skin test that reacted', async () => {
    const shown = await comeBack(tested);
    await shown.hold('[data-act=skin-test-reaction]');
    expect(stepOf(shown)).toBe('stopped');
  });

  it('with news is at the step that asks, where only the questions of the day stand open', async () => {
    const shown = await comeBack(tested);
    await shown.tap('[data-act=something-new]');
    expect(stepOf(shown)).toBe('client');
    expect(shown.find('.sheet').dataset).toMatchObject({ sheet: 'reactions', left: '3' });
    expect(shown.find('[data-ledger=service] .ledger-value').textContent).toBe('Lighten');
  });

  it('before any strand goes on where she was', async () => {
    const shown = await comeBack(firstVisit.steps);
    await shown.tap('[data-act=nothing-new]');
    expect(stepOf(shown)).toBe('preparing');
  });

  it('with nothing new has still tingled, and that is judged anew by name', async () => {
    const tingled = firstVisit.steps.map((step) =>
      step.raw.answers?.reactions === undefined
        ? step
        : {
            ...step,
            raw: { ...step.raw, answers: { ...step.raw.answers, reactions: ['tingled'] } } as RawEvent,
          },
    );
    const shown = await comeBack(tingled);
    const line = shown.find('[data-line=reactions] dd').textContent;
    expect(line).toBe('Tingled, gone on rinsing; nothing else since');
    await shown.tap('[data-act=nothing-new]');
    expect(stepOf(shown)).toBe('preparing');
    expect(readRecord(shown)?.answers.client?.reactions).toEqual(['tingled']);
    expect(shown.find('[data-judge]').dataset.judge).toBe('judgement.tingled');
  });

  it('halfway through the questions is asked the next one, and nothing behind it is taken as said', async () => {
    const cut = firstVisit.steps.findIndex(({ raw }) => raw.answers?.step === 'hotTools');
    const [park] = firstVisit.steps.slice(-1);
    if (park === undefined) throw new Error('the story does not park');
    const shown = await comeBack([...firstVisit.steps.slice(0, cut), park]);
    await shown.tap('[data-act=nothing-new]');
    expect(stepOf(shown)).toBe('hotTools');
    expect(shown.look('.refusal')).toBeNull();
  });
});

it('she who was left at her chair overnight is asked as well', async () => {
  const shown = await showStation({ settings: firstVisit.settings, atMs: firstVisit.startAtMs });
  await shown.play(firstVisit.steps.slice(0, -1));
  await shown.tap('[data-act=open-place][data-chair="4"], .place[data-chair="4"]');
  await shown.tap('[data-act=who-Wren]');
  expect(stepOf(shown)).toBe('preparing');
  await shown.turnClock(firstVisit.startAtMs + 20 * 3_600_000);
  expect(stepOf(shown)).toBe('anotherDay');
});

it('after the decision the bowl of each zone stands filled in with what was tested, and is one tap', async () => {
  const shown = await showStation({ settings: firstVisit.settings, atMs: firstVisit.startAtMs });
  const decided = secondVisit.findIndex(({ raw }) => raw.type === 'DECIDED');
  await shown.play([...tested, ...secondVisit.slice(0, decided + 1)]);
  await shown.tap('.place[data-chair="4"]');
  await shown.tap('[data-act=who-Wren]');
  expect(shown.find('[data-weighs]').dataset.weighs).toBe('lengths');
  await shown.tap('[data-act=weigh]');
  expect(shown.find('[data-weighs]').dataset.weighs).toBe('ends');
  await shown.tap('[data-act=weigh]');
  expect(
    readRecord(shown)?.bowls.map(({ zone, line, batch, developerPercent, ratio, minutes }) => ({
      zone,
      line,
      batch,
      developerPercent,
      ratio,
      minutes,
    })),
  ).toEqual(
    ['lengths', 'ends'].map((zone) => ({
      zone,
      line: 'Sandbar powder',
      batch: 'B-21',
      developerPercent: 6,
      ratio: 2,
      minutes: expect.any(Number),
    })),
  );
  await shown.tap('[data-act=apply]');
  expect(stepOf(shown)).toBe('colourOn');
});

it('from the next bowl all bowls are one tap away, and stay until a zone is chosen', async () => {
  const shown = await showStation({ settings: firstVisit.settings, atMs: firstVisit.startAtMs });
  const weighed = secondVisit.findIndex(({ raw }) => raw.type === 'BOWL_WEIGHED');
  await shown.play([...tested, ...secondVisit.slice(0, weighed + 1)]);
  await shown.tap('.place[data-chair="4"]');
  await shown.tap('[data-act=cancel]');
  expect(shown.look('[data-weighs]')).toBeNull();
  await shown.tap('[data-act=apply]');
  await shown.tap('[data-act=who-Wren]');
  expect(stepOf(shown)).toBe('colourOn');
});
