import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../../../seeds/endsIronedWet';
import { salon } from '../../../../../seeds/salon';
import { dropDrafts } from '../../../../../src/screens/keptDraft';
import { makeTablet } from '../../../storage/tablet';
import { showStation } from '../../stationOnTablet';

afterEach(() => {
  cleanup();
  dropDrafts('client0001');
});

const minute = 60_000;
const hour = 60 * minute;

async function openBench() {
  const shown = await showStation({ tablet: makeTablet(), settings: salon });
  await shown.tap('[data-act=day]');
  await shown.tap('[data-act=bench]');
  const start = async (kind: string, hair = 'bleached') => {
    await shown.tap('[data-act=start-trial]');
    await shown.tap(`[data-question=kind] [data-option=${kind}]`);
    await shown.tap(`[data-question=hair] [data-option=${hair}]`);
    await shown.tap('[data-act=begin-trial]');
    if (shown.look('[data-act=who-Opal]') !== null) await shown.tap('[data-act=who-Opal]');
  };
  let atMs = endsIronedWet.startAtMs;
  const pass = (ms: number) => {
    atMs += ms;
    return shown.turnClock(atMs);
  };
  const stage = () => shown.find('.bench-clock').dataset.stage;
  const trial = () => shown.station.readState().bench[0];
  return { shown, start, stage, trial, pass };
}

describe('trials at the bench', () => {
  it('says what it needs before anything starts, and starts nothing half chosen', async () => {
    const { shown } = await openBench();
    expect(shown.find('.step-content').textContent).toContain('No trial yet.');
    await shown.tap('[data-act=start-trial]');
    const isClosed = () => shown.find('[data-act=begin-trial]').hasAttribute('disabled');
    expect(isClosed()).toBe(true);
    await shown.tap('[data-question=kind] [data-option=boilSet]');
    expect([isClosed(), shown.find('.bench-rules').textContent]).toEqual([
      true,
      expect.stringMatching(/Lid on, tongs.*Nobody carries boiling water, and nobody leaves it/s),
    ]);
    await shown.tap('[data-question=kind] [data-option=dryWet]');
    expect(shown.find('.bench-rules').textContent).toMatch(/with a clip, never in the hand.*steam burns/s);
    await shown.tap('[data-question=hair] [data-option=unknown]');
    expect(isClosed()).toBe(false);
  });

  it('boils, dries over a day and is read, each by name, and is called on the day’s page when it is due', async () => {
    const { shown, start, stage, trial, pass } = await openBench();
    await start('boilSet');
    expect([stage(), shown.find('.clock-digits').textContent]).toEqual(['boiling', '30:00']);
    expect(shown.find('.caution').textContent).toContain('Nobody leaves it.');
    await pass(30 * minute);
    expect([stage(), shown.look('.clock-digits')]).toEqual(['boiled', null]);
    await shown.tap('[data-act=taken-out]');
    expect([stage(), shown.find('.clock-digits').textContent]).toEqual(['drying', '24:00:00']);
    await shown.tap('[data-act=back-to-list]');
    await shown.tap('[data-act=leave-bench]');
    expect(shown.find('[data-act=bench]').textContent).toBe('Bench trials');
    await pass(25 * hour);
    expect(shown.find('[data-act=bench]').textContent).toBe('Bench trials · 1 due');
    await shown.tap('[data-act=bench]');
    await shown.tap('[data-trial]');
    await shown.tap('[data-question=curl] [data-option=stays]');
    expect([stage(), trial()?.reading]).toMatchObject(['read', { curl: 'stays', by: 'Opal' }]);
    expect(shown.find('.skin-test-facts').textContent).toContain('Stays curled');
  });

  it('keeps both pieces of dry against wet at once', async () => {
    const { shown, start, stage, trial, pass } = await openBench();
    await start('dryWet', 'coloured');
    expect(stage()).toBe('cooling');
    await pass(10 * minute);
    await shown.tap('[data-question=dryPiece] [data-option=springsBack]');
    expect(shown.find('[data-act=keep-pieces]').hasAttribute('disabled')).toBe(true);
    await shown.tap('[data-question=wetPiece] [data-option=snaps]');
    await shown.tap('[data-act=keep-pieces]');
    expect(trial()?.reading).toMatchObject({ pieces: { dryPiece: 'springsBack', wetPiece: 'snaps' } });
    expect(shown.find('.bench-clock').textContent).toContain('dry: Springs back; wet: Snaps');
  });

  it('takes a reading back by name, for a reason and in words, and shows it still', async () => {
    const { shown, start, trial, stage, pass } = await openBench();
    await start('dryWet');
    await pass(11 * minute);
    await shown.tap('[data-question=dryPiece] [data-option=slow]');
    await shown.tap('[data-question=wetPiece] [data-option=slow]');
    await shown.tap('[data-act=keep-pieces]');
    await shown.tap('[data-act=take-back]');
    await shown.hold('[data-act=taken-back]');
    expect(trial()?.isRead).toBe(true);
    await shown.answer(['what', 'reading'], ['code', 'wrongTap']);
    await shown.type('words', 'pieces mixed up');
    await shown.hold('[data-act=taken-back]');
    expect(trial()).toMatchObject({
      isRead: false,
      readingsTakenBack: [{ by: 'Opal', words: 'pieces mixed up' }],
    });
    await shown.tap('[data-trial]');
    expect(stage()).toBe('readable');
    expect(shown.find('.skin-test-facts').textContent).toContain('pieces mixed up');
  });

  it('links the warmth trial, which stands with its spray', async () => {
    const { shown } = await openBench();
    await shown.tap('[data-act=to-warmth]');
    await shown.tap('[data-act=who-Opal]');
    expect(shown.look('[data-step=settings]')).not.toBeNull();
  });
});
