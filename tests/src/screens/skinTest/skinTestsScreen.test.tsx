import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../../seeds/endsIronedWet';
import { salon } from '../../../../seeds/salon';
import { type Shown, showStation, startClient } from '../stationOnTablet';

afterEach(cleanup);

const hour = 3_600_000;
const { startAtMs } = endsIronedWet;

async function showTests(): Promise<Shown> {
  const shown = await showStation({ settings: salon });
  await shown.tap('[data-act=skin-tests]');
  return shown;
}

/** From the list: whose, how, where, "it is on now". */
async function putOn(shown: Shown, ticket: string): Promise<void> {
  await shown.tap('[data-act=put-on]');
  await shown.type('ticket', ticket);
  await shown.answer(['method', 'makersMethod'], ['site', 'behindEar'], ['line', 'Sandbar cream']);
  await shown.tap('[data-act=skin-test-keep]');
}

const rows = (shown: Shown): readonly string[] =>
  [...shown.container.querySelectorAll<HTMLElement>('.skin-test-row')].map(
    ({ dataset, textContent }) => `${dataset.status} ${textContent?.replaceAll('\u00a0', ' ')}`,
  );
const heading = (shown: Shown) => shown.find('h1').textContent;

describe('the skin tests', () => {
  it('say what to do where none is on', async () => {
    const shown = await showTests();
    expect(shown.find('main').textContent).toContain('No skin test is on.');
    await shown.tap('[data-act=bar]');
    expect(shown.find('[data-act=skin-tests]').textContent).toBe('Skin tests 0');
  });

  it('are put on without any consultation, wait in the list, and are read when it is time', async () => {
    const shown = await showTests();
    await shown.tap('[data-act=put-on]');
    await shown.type('ticket', 'Q.F.');
    await shown.answer(['method', 'makersMethod'], ['site', 'behindEar'], ['line', 'Sandbar cream']);
    await shown.tap('[data-act=skin-test-keep]');
    // Nobody was chosen: it asks who that is, and goes on.
    await shown.tap('[data-act=who-Opal]');
    expect(rows(shown)).toHaveLength(1);
    expect(rows(shown)[0]).toContain('waiting Q.F.');
    expect(rows(shown)[0]).toContain('from Thu, Mar 5, 05:30');
    expect(shown.station.readState().open.size).toBe(0);
    await shown.turnClock(startAtMs + 48 * hour);
    expect(rows(shown)[0]).toContain('due Q.F.');
    await shown.tap('.skin-test-row');
    expect(shown.find('.skin-test-facts').textContent).toContain(
      'The maker’s method, behind the ear, Sandbar cream.',
    );
    await shown.tap('[data-act=skin-test-nothing]');
    expect(shown.find('.skin-test-figure').dataset.status).toBe('clear');
    expect(shown.look('[data-act=skin-test-nothing]')).toBeNull();
    await shown.tap('[data-act=back-to-list]');
    expect(rows(shown)[0]).toContain('clear Q.F.');
  });

  it('mark the bar when one may be read, and stop nobody’s lane', async () => {
    const shown = await startClient();
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=skin-tests]');
    await putOn(shown, 'K.L.');
    await shown.tap('[data-act=bar]');
    expect(shown.find('[data-act=skin-tests]').textContent).toBe('Skin tests 1');
    await shown.turnClock(startAtMs + 49 * hour);
    expect(shown.find('[data-act=skin-tests]').textContent).toBe('Skin tests 1 · 1 due');
    expect(shown.find('[data-act=skin-tests]').dataset.kind).toBe('attention');
  });

  it('show a reaction after a hold, and stop who is here under that ticket', async () => {
    const shown = await startClient();
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=skin-tests]');
    await putOn(shown, 'Q.F.');
    await shown.tap('.skin-test-row');
    expect(shown.find('.skin-test-facts').textContent).toContain('Chair 3 · Q.F.');
    await shown.hold('[data-act=skin-test-reaction]');
    expect(shown.find('.skin-test-figure').dataset.status).toBe('reaction');
    const [consultation] = [...shown.station.readState().open.values()];
    expect(JSON.stringify(consultation?.state.value)).toContain('stopped');
  });

  it('call no product line the usual one where nobody noted it', async () => {
    const shown = await startClient();
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=skin-tests]');
    await shown.tap('[data-act=put-on]');
    expect(shown.find('[data-ledger=line] .ledger-value').textContent).toBe('not asked');
  });

  it('are offered of no lightener, which they clear nothing of', async () => {
    const shown = await startClient();
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=skin-tests]');
    await shown.tap('[data-act=put-on]');
    await shown.tap('[data-ledger=line]');
    const offered = [...document.querySelectorAll<HTMLElement>('.sheet-question [data-option]')];
    expect(offered.map(({ dataset }) => dataset.option)).toEqual(['Sandbar cream']);
  });

  it('say when it is too early, or one is on already, and keep what was typed', async () => {
    const shown = await startClient();
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=skin-tests]');
    await putOn(shown, 'K.L.');
    await putOn(shown, 'k l');
    expect(shown.find('[data-refusal]').dataset.refusal).toBe('skinTestOn');
    expect(shown.find('[data-ledger=ticket]').textContent).toContain('k l');
    await shown.type('ticket', 'M.N.');
    await shown.tap('[data-act=skin-test-earlier]');
    await shown.type('ticket', 'M.N.');
    await shown.answer(
      ['putOnAtMs', '1d'],
      ['seen', 'nothing'],
      ['method', 'makersMethod'],
      ['site', 'behindEar'],
    );
    await shown.tap('[data-act=skin-test-keep]');
    expect(shown.find('[data-refusal]').textContent).toContain('May be read from');
  });

  it('are taken back by name with a reason, and are gone from the list', async () => {
    const shown = await startClient();
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=skin-tests]');
    await putOn(shown, 'K.L.');
    await shown.tap('.skin-test-row');
    await shown.tap('[data-act=take-back]');
    expect(shown.look('[data-question=what]')).toBeNull();
    await shown.hold('[data-act=taken-back]');
    expect(shown.find('[data-question=code]').dataset.refused).toBe('notAnswered');
    await shown.answer(['code', 'cameOff']);
    await shown.type('words', 'she washed it off');
    await shown.hold('[data-act=taken-back]');
    expect(heading(shown)).toBe('Skin tests');
    expect(rows(shown)).toEqual([]);
    expect(shown.station.readState().skinTests[0]?.takenBack).toMatchObject({ by: 'Opal', code: 'cameOff' });
  });

  it('ask what was wrong where one was read, and a reading taken back is read again', async () => {
    const shown = await startClient();
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=skin-tests]');
    await putOn(shown, 'Q.F.');
    await shown.tap('.skin-test-row');
    await shown.hold('[data-act=skin-test-reaction]');
    await shown.tap('[data-act=take-back]');
    await shown.answer(['what', 'reading'], ['code', 'wrongTap']);
    await shown.type('words', 'held the wrong row');
    await shown.hold('[data-act=taken-back]');
    expect(rows(shown)[0]).toContain('waiting Q.F.');
    const [consultation] = [...shown.station.readState().open.values()];
    expect(JSON.stringify(consultation?.state.value)).toContain('client');
  });

  it('are turned over six at a time', async () => {
    const shown = await startClient();
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=skin-tests]');
    expect(shown.look('[data-act=more-tests]')).toBeNull();
    for (const ticket of ['A.A.', 'B.B.', 'C.C.', 'D.D.', 'E.E.', 'F.F.', 'G.G.']) await putOn(shown, ticket);
    expect(rows(shown)).toHaveLength(6);
    await shown.tap('[data-act=more-tests]');
    expect(rows(shown)).toHaveLength(1);
  });
});

describe('a skin test of another client with the same ticket', () => {
  it('is named as not hers from her own panel, and stays in the list', async () => {
    const shown = await startClient();
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=skin-tests]');
    await putOn(shown, 'Q.F.');
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-chair="3"]');
    await shown.tap('[data-act=skin-test]');
    await shown.tap('[data-act=skin-test-not-hers]');
    await shown.type('words', 'this is the sister');
    await shown.hold('[data-act=not-hers]');
    expect(shown.look('[data-act=skin-test-keep]')).not.toBeNull();
    expect([...shown.station.readState().open.values()][0]?.record.skinTest).toBeNull();
    expect(shown.station.readState().skinTests[0]?.takenBack).toBeNull();
  });
});
