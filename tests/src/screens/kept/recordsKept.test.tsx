import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../../seeds/endsIronedWet';
import { salon } from '../../../../seeds/salon';
import type { StoryStep } from '../../../../seeds/story';
import { refuse } from '../../../../shared/result';
import { msPerDay } from '../../../../shared/units/time';
import { UNJUDGED_LOG } from '../../../../src/station/logNames';
import { writeUnjudged } from '../../../../src/station/unjudged';
import { play, startAtMs, startStation, storyUpTo } from '../../station/stationUnderTest';
import { makeTablet, switchOn, type Tablet } from '../../storage/tablet';
import { type Shown, showStation } from '../stationOnTablet';

afterEach(cleanup);

const as = (ticket: string, chair: string) => (step: StoryStep) =>
  step.raw.type === 'OPENED'
    ? { ...step, raw: { ...step.raw, answers: { ...step.raw.answers, ticket, chair } } }
    : step;

/** She told of a reaction she had once: that stands for good. */
const stopped: readonly StoryStep[] = [
  ...storyUpTo('OPENED'),
  {
    afterMs: 1_000,
    by: 'Opal',
    raw: { type: 'ANSWERED', step: 'client', answers: { reactions: ['hives'] } },
  },
  { afterMs: 1_000, by: 'Opal', raw: { type: 'WE_SAID_NO', answers: { reason: 'notSafeToday' } } },
];

async function fill(steps: readonly (readonly StoryStep[])[]): Promise<Tablet> {
  const tablet = makeTablet();
  const under = await startStation(tablet);
  await under.station.saveSettings('Opal', salon);
  for (const each of steps) await play(under, each);
  await under.station.stopWriting();
  return tablet;
}

const whole = (ticket: string, chair: string) => endsIronedWet.steps.map(as(ticket, chair));

const toKept = async (shown: Shown) => {
  await shown.tap('[data-act=day]');
  await shown.tap('[data-act=kept]');
};

const byTicket = async (shown: Shown, ticket: string) => {
  await toKept(shown);
  await shown.tap('[data-act=erase-by-ticket]');
  await shown.tap('[data-act=who-Opal]');
  await shown.type('ticket', ticket);
  await shown.tap('[data-act=look-at-hers]');
};

const atMs = startAtMs + msPerDay;

describe('what is kept', () => {
  it('is said with its time and its reason, and nothing is offered before that is over', async () => {
    const shown = await showStation({ tablet: await fill([whole('A.A.', '2')]), atMs });
    await toKept(shown);
    expect(shown.find('[data-panel=kept]').textContent).toContain('1 closed record and 1 skin test');
    expect(shown.find('[data-panel=kept]').textContent).toContain('36 months');
    expect(shown.look('[data-act=look-at-past]')).toBeNull();
  });

  it('is said where there is nothing', async () => {
    const shown = await showStation({ settings: salon });
    await toKept(shown);
    expect(shown.find('[data-panel=kept]').textContent).toContain('Nothing is kept yet.');
    expect(shown.find('[data-panel=erased]').textContent).toContain('Nothing yet.');
  });
});

describe('erasing by ticket', () => {
  it('takes what was not left out, in the name of whoever holds, and says so', async () => {
    const shown = await showStation({
      tablet: await fill([whole('A.A.', '2'), whole('Z.Z.', '3')]),
      atMs,
    });
    await byTicket(shown, 'zz');
    expect(shown.container.querySelectorAll('[data-kept]')).toHaveLength(2);
    await shown.tap('[data-act=kept-go-on]');
    await shown.answer(['code', 'sheAsked']);
    expect(shown.find('.kept-summary').textContent).toContain('1 closed record and 1 skin test');
    await shown.hold('[data-act=erase-for-good]');
    const { closed, skinTests, erasings } = shown.station.readState();
    expect([...closed, ...skinTests].map(({ ticketKey }) => ticketKey)).toEqual(['AA', 'AA']);
    expect(erasings.tombstones).toMatchObject([{ by: 'Opal', code: 'sheAsked' }]);
    expect(shown.find('[data-panel=erased]').textContent).toMatch(
      /Erased\. 2 in all, the last on .* by Opal: she asked/,
    );
  });

  it('leaves what was tapped, and goes nowhere where all of it stays', async () => {
    const shown = await showStation({ tablet: await fill([whole('Z.Z.', '3')]), atMs });
    await byTicket(shown, 'Z.Z.');
    const [first, second] = shown.station
      .readState()
      .closed.concat()
      .map(({ id }) => id);
    expect(second).toBeUndefined();
    await shown.tap(`[data-kept="${first}"]`);
    await shown.tap('[data-act=kept-go-on]');
    await shown.answer(['code', 'wrongClient']);
    expect(shown.find('.kept-summary').textContent).toContain('Goes: 1 skin test, with');
    await shown.tap('[data-act=kept-back]');
    for (const row of shown.container.querySelectorAll<HTMLElement>('[data-kept][aria-pressed=true]'))
      row.click();
    expect((shown.find('[data-act=kept-go-on]') as HTMLButtonElement).disabled).toBe(true);
  });

  it('says before the hold that a stop goes, and finds nothing of who is open', async () => {
    const shown = await showStation({
      tablet: await fill([stopped.map(as('R.R.', '2')), storyUpTo('OPENED').map(as('O.O.', '3'))]),
      atMs,
    });
    await byTicket(shown, 'r r');
    expect(shown.find('[data-kept]').textContent).toContain('a stop stands');
    await shown.tap('[data-act=kept-go-on]');
    await shown.answer(['code', 'sheAsked']);
    expect(shown.find('.caution[data-kind=stop]').textContent).toContain('nothing here warns anybody');
    await shown.tap('[data-act=kept-back]');
    await shown.tap('[data-act=kept-back]');
    await shown.type('ticket', 'oo');
    expect(shown.find('[data-found]').textContent).toContain('Close her first');
    expect((shown.find('[data-act=look-at-hers]') as HTMLButtonElement).disabled).toBe(true);
  });

  it('finds what another station tells and nobody here can judge, says so, and takes it too', async () => {
    const tablet = await fill([]);
    const { store } = switchOn(tablet);
    await store.restore();
    const body = { id: 'there001', log: [{ payload: { ticket: 'R.R.' } }] };
    const document = { id: 'consultation:there001:0', kind: 'consultation', body };
    await store.append(UNJUDGED_LOG, 0, writeUnjudged(document, startAtMs, 'newer'));
    await store.release();
    const shown = await showStation({ tablet, atMs });
    await byTicket(shown, 'r r');
    const row = shown.find('[data-kept="there001"]').textContent;
    expect(row).toContain('Other station’s record · ');
    expect(row).toContain('from a newer edition of the station · a stop stands');
    await shown.tap('[data-act=kept-go-on]');
    await shown.answer(['code', 'sheAsked']);
    expect(shown.find('.kept-summary').textContent).toContain('Goes: 1 closed record, with');
    expect(shown.find('.caution[data-kind=stop]').textContent).toContain('nothing here warns anybody');
    await shown.hold('[data-act=erase-for-good]');
    expect(shown.station.readState().unjudged).toEqual([]);
    expect(shown.station.readLogs().has(UNJUDGED_LOG)).toBe(false);
  });

  it('that a full tablet broke off is told, and is finished with one tap', async () => {
    let isFull = true;
    const shown = await showStation({
      tablet: await fill([whole('Z.Z.', '3')]),
      atMs,
      change: ({ journal }) => ({
        journal: {
          ...journal,
          prepare: async (...given) =>
            isFull
              ? refuse({ copy: 'journal', kind: 'quotaExceeded', detail: '' })
              : journal.prepare(...given),
        },
      }),
    });
    await byTicket(shown, 'Z.Z.');
    await shown.tap('[data-act=kept-go-on]');
    await shown.answer(['code', 'sheAsked']);
    await shown.hold('[data-act=erase-for-good]');
    expect(shown.find('[data-unfinished]').textContent).toContain('not out of every copy yet');
    await shown.tap('[data-act=finish-erasing]');
    expect(shown.look('[data-unfinished]')).not.toBeNull();
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=day]');
    expect(shown.find('[data-act=kept]').textContent).toContain('not finished');
    await shown.tap('[data-act=kept]');
    isFull = false;
    await shown.tap('[data-act=finish-erasing]');
    expect(shown.look('[data-unfinished]')).toBeNull();
    expect(shown.station.readState().erasings.unfinished).toBe(0);
  });
});

describe('what is past its time', () => {
  it('is offered as a list beside the day, goes with one hold, and leaves a stop that stands', async () => {
    const shown = await showStation({
      tablet: await fill([whole('A.A.', '2'), stopped.map(as('R.R.', '3'))]),
      atMs: startAtMs + 37 * 31 * msPerDay,
    });
    await shown.tap('[data-act=day]');
    expect(shown.find('[data-act=kept]').textContent).toBe('Records kept · 2 past their time');
    await shown.tap('[data-act=kept]');
    expect(shown.find('[data-panel=past]').textContent).toContain('With a stop that stands, 1');
    await shown.tap('[data-act=look-at-past]');
    await shown.tap('[data-act=who-Opal]');
    await shown.tap('[data-act=kept-go-on]');
    await shown.hold('[data-act=erase-for-good]');
    const { closed, erasings } = shown.station.readState();
    expect(closed.map(({ ticketKey }) => ticketKey)).toEqual(['RR']);
    expect(erasings.tombstones).toMatchObject([{ by: 'Opal', code: 'keptLongEnough' }]);
  });
});
