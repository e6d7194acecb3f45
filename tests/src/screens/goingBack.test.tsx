import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { refuse } from '../../../shared/result';
import { createGoingBack } from '../../../src/screens/leaving/goingBack';
import { settings as playSettings, playUntilConfirmed } from './playStory';
import { type Shown, showStation } from './stationOnTablet';

afterEach(cleanup);

const { steps, settings, startAtMs } = endsIronedWet;
const upTo = (type: string) => steps.slice(0, steps.findIndex(({ raw }) => raw.type === type) + 1);

/** The story as far as this, and its client in view. */
async function comeTo(type: string): Promise<Shown> {
  const shown = await showStation({ settings, atMs: startAtMs });
  const id = await shown.play(upTo(type));
  const chair = shown.station.readState().open.get(id)?.record.chair;
  await shown.tap(`.place[data-chair="${chair}"]`);
  await shown.tap('[data-act=who-Opal]');
  return shown;
}

const readRecord = (shown: Shown) => {
  const record = [...shown.station.readState().open.values()][0]?.record;
  if (record === undefined) throw new Error('nobody is open');
  return record;
};
const readStep = (shown: Shown) => shown.find('main').dataset.step;
const said = (shown: Shown, part: string) => shown.find(`dialog ${part}`).textContent;

describe('going back', () => {
  it('is one tap on the rail while nothing falls by it', async () => {
    const shown = await comeTo('ANSWERED');
    await shown.answer(['service', 'gloss']);
    await shown.play(
      steps.slice(
        2,
        steps.findIndex(({ raw }) => raw.type === 'STRAND_STARTED'),
      ),
      readRecord(shown).id,
    );
    await shown.tap('[data-act=rail-to-hotTools]');
    expect(readStep(shown)).toBe('hotTools');
    const marks = [...document.querySelectorAll<HTMLElement>('.rail-step')].map(
      ({ dataset }) => dataset.state,
    );
    expect(marks, 'what was said stays said').toEqual([
      ...['done', 'here', 'done', 'done'],
      ...['toCome', 'toCome', 'toCome', 'toCome', 'toCome'],
    ]);
    expect(shown.look('[data-act=rail-to-feelHair]')).toBeNull();
    expect(shown.look('[data-act=rail-to-client]')).not.toBeNull();
  });

  it('does not bring up again the page of her skin test that lay over the step', async () => {
    const shown = await comeTo('SKIN_TEST_NOTED');
    const { id } = readRecord(shown);
    if (shown.look('[data-act=skin-test]') === null) await shown.tap('[data-ledger=summary]');
    await shown.tap('[data-act=skin-test]');
    expect(shown.look('[data-panel=skin-test]')).not.toBeNull();
    await shown.play(steps.slice(upTo('SKIN_TEST_NOTED').length, upTo('STEP_CONFIRMED').length), id);
    expect(readStep(shown)).toBe('hotTools');
    await shown.tap('[data-act=rail-to-client]');
    expect(readStep(shown)).toBe('client');
    expect(shown.look('[data-panel=skin-test]')).toBeNull();
  });

  it('says what falls and what stays before anything does, and may be left', async () => {
    const shown = await comeTo('DECIDED');
    await shown.tap('[data-act=rail-to-hotTools]');
    expect(said(shown, '[data-falls=decision]')).toContain('The decision falls.');
    expect(said(shown, '[data-stays=strands]')).toContain('Strand 1, Strand 2 stay.');
    await shown.tap('[data-act=stay-here]');
    expect(readRecord(shown).decision).not.toBeNull();
    await shown.tap('[data-act=rail-to-hotTools]');
    await shown.tap('[data-act=go-back]');
    expect(readStep(shown)).toBe('hotTools');
    expect(readRecord(shown).decision).toBeNull();
  });

  it('asks before an answer is changed on which strands hang; left as it was, nothing is written', async () => {
    const shown = await comeTo('DECIDED');
    await shown.tap('[data-act=rail-to-feelHair]');
    await shown.tap('[data-act=go-back]');
    const before = shown.find('main').dataset.logLength;
    const { porosity } = readRecord(shown).answers.feelHair ?? {};
    const other = porosity === 'low' ? 'normal' : 'low';
    await shown.answer(['porosity', other]);
    expect(said(shown, '[data-panel=before-change]')).toContain('Strand 1, Strand 2 count no more');
    await shown.tap('[data-act=leave-as-it-was]');
    expect(shown.find('main').dataset.logLength).toBe(before);
    expect(readRecord(shown).answers.feelHair?.porosity).toBe(porosity);
    await shown.answer(['porosity', other]);
    await shown.tap('[data-act=change-answer]');
    expect(readRecord(shown).answers.feelHair?.porosity).toBe(other);
    await shown.answer(['porosity', String(porosity)]);
    expect(shown.look('dialog [data-panel=before-change]')).toBeNull();
    expect(readRecord(shown).answers.feelHair?.porosity).toBe(porosity);
  });

  it('that could not be written says so, also where it was one tap, and may be tried again', async () => {
    const { consultation, atMs: nowMs } = playUntilConfirmed('client');
    const tried: string[] = [];
    const going = createGoingBack({
      consultation,
      settings: playSettings,
      nowMs,
      submit: async ({ type }) => {
        tried.push(type);
        return refuse({ kind: 'notNow' });
      },
    });
    going.ask('client');
    await Promise.resolve();
    expect([going.to(), going.refusal()]).toEqual(['client', { kind: 'notNow' }]);
    going.go();
    await Promise.resolve();
    expect(tried).toEqual(['REOPENED', 'REOPENED']);
    going.stay();
    expect(going.to()).toBeNull();
  });
});
