import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import { showStation } from './stationOnTablet';

afterEach(cleanup);

const minute = 60_000;
const hour = 60 * minute;

/** A skin test put on at the start, and the tablet's clock that goes on by ten hours at once after twenty. */
async function showDoubt() {
  const shown = await showStation({ settings: salon });
  const startAtMs = endsIronedWet.startAtMs;
  const put = await shown.station.putOnSkinTest('Opal', {
    ticket: 'Q.F.',
    method: 'makersMethod',
    site: 'behindEar',
    line: '',
    putOnAtMs: startAtMs,
    seen: 'notReadYet',
  });
  if (!put.ok) throw new Error(JSON.stringify(put.error));
  await shown.turnClock(startAtMs + 20 * hour);
  await shown.jumpClock(10 * hour);
  const read = async () => {
    const done = await shown.station.changeSkinTest(put.value, 'Juno', {
      type: 'SKIN_TEST_READ',
      answers: { seen: 'nothing' },
    });
    await shown.settle();
    return done.ok ? 'read' : done.error;
  };
  const notice = () => shown.look('[data-notice=clockJumped]')?.textContent ?? null;
  return { ...shown, startAtMs, id: put.value, read, notice };
}

describe('a clock that went on at once while a skin test was on', () => {
  it('lets nobody read it as nothing before that was explained, while a reaction is taken', async () => {
    const shown = await showDoubt();
    await shown.turnClock(shown.startAtMs + 48 * hour);
    expect(await shown.read()).toEqual({ kind: 'waitInDoubt', doubtMs: 10 * hour });
    const reacted = await shown.station.changeSkinTest(shown.id, 'Juno', {
      type: 'SKIN_TEST_READ',
      answers: { seen: 'reaction' },
    });
    expect(reacted.ok).toBe(true);
    await shown.settle();
    expect(shown.look('.notice-bar')).toBeNull();
  });

  it('lets nobody note it as read elsewhere either', async () => {
    const shown = await showDoubt();
    await shown.turnClock(shown.startAtMs + 48 * hour);
    const answers = { ticket: 'A.K.', method: 'unknown', site: 'unknown', line: '', seen: 'nothing' };
    const put = (putOnAtMs: number) => shown.station.putOnSkinTest('Juno', { ...answers, putOnAtMs });
    expect(await put(shown.startAtMs)).toMatchObject({ error: { kind: 'waitInDoubt' } });
    expect((await put(shown.startAtMs - 10 * hour)).ok).toBe(true);
  });

  it('lets it be read without a word once it has waited long enough even so', async () => {
    const shown = await showDoubt();
    await shown.turnClock(shown.startAtMs + 58 * hour - 1);
    expect(await shown.read()).toEqual({ kind: 'waitInDoubt', doubtMs: 10 * hour });
    await shown.turnClock(shown.startAtMs + 58 * hour);
    expect(await shown.read()).toBe('read');
  });

  it('is told at the foot of the screen: slept, and the wait is as it was', async () => {
    const shown = await showDoubt();
    expect(shown.find('.notice-newest').textContent).toContain('went on by 10:00:00 at once');
    await shown.tap('[data-act=read-notices]');
    expect(shown.notice()).toContain('A skin test that is on waits so much longer');
    expect(shown.notice()).not.toContain('counts the whole time');
    await shown.tap('[data-act=clock-slept]');
    expect(shown.look('.notice-bar')).toBeNull();
    await shown.turnClock(shown.startAtMs + 48 * hour);
    expect(await shown.read()).toBe('read');
  });

  it('put ahead: the test waits ten hours more, by the name of whoever says so', async () => {
    const shown = await showDoubt();
    await shown.tap('[data-act=read-notices]');
    await shown.tap('[data-act=clock-put-ahead]');
    await shown.tap('[data-act=who-Juno]');
    expect(shown.look('.notice-bar')).toBeNull();
    await shown.turnClock(shown.startAtMs + 58 * hour - 1);
    expect(await shown.read()).toEqual({
      kind: 'skinTestTooEarly',
      readableAtMs: shown.startAtMs + 58 * hour,
    });
    await shown.turnClock(shown.startAtMs + 58 * hour);
    expect(await shown.read()).toBe('read');
  });

  it('is told to a consultation of the ticket as well', async () => {
    const shown = await showDoubt();
    const opened = await shown.station.open('Juno', { ticket: 'Q.F.', chair: '3', stylist: 'Juno' });
    if (!opened.ok) throw new Error(JSON.stringify(opened.error));
    const putOn = () => shown.station.readState().open.get(opened.value)?.record.skinTest?.putOnAtMs;
    expect(putOn()).toBe(shown.startAtMs);
    const [jump] = [{ atMs: shown.startAtMs + 30 * hour, aheadMs: 10 * hour }];
    expect((await shown.station.sayPutAhead('Juno', jump)).ok).toBe(true);
    expect(putOn()).toBe(shown.startAtMs + 10 * hour);
  });
});

it('tells of what runs that it counts the whole time, and asks nothing', async () => {
  const shown = await showStation({ settings: salon });
  const steps = endsIronedWet.steps.slice(
    0,
    endsIronedWet.steps.findIndex(({ raw }) => raw.type === 'STRAND_STARTED') + 1,
  );
  const id = await shown.play(steps);
  const due = () => shown.station.readState().open.get(id)?.record.clocks.at(-1)?.dueAtMs;
  const before = due();
  await shown.jumpClock(12 * minute);
  expect(due()).toBe(before);
  await shown.tap('[data-act=read-notices]');
  const told = shown.find('[data-notice=clockJumped]');
  expect(told.textContent).toContain('on a head counts the whole time');
  expect(shown.look('[data-act=clock-put-ahead]')).toBeNull();
  await shown.tap('[data-act=clock-slept]');
  expect(shown.look('.notice-bar')).toBeNull();
});

it('says nothing where nothing was on', async () => {
  const shown = await showStation({ settings: salon });
  await shown.jumpClock(5 * hour);
  expect(shown.look('.notice-bar')).toBeNull();
});
