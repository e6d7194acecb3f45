import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { firstGloss, returningGloss } from '../../../seeds/returningGloss';
import { type Shown, showStation } from './stationOnTablet';

afterEach(cleanup);

/** L.M. had her first gloss; weeks later somebody types the beginning of her ticket at chair 2. */
async function typeTicket(ticket: string, before = firstGloss): Promise<Shown> {
  const shown = await showStation({ settings: before.settings, atMs: before.startAtMs });
  await shown.play(before.steps);
  await shown.turnClock(returningGloss.startAtMs);
  await shown.tap('[data-act=start-here][data-chair="2"]');
  await shown.tap('[data-act=who-Juno]');
  for (const letter of ticket) await shown.tap(`[data-key="${letter}"]`);
  return shown;
}

const plain = (text: string | null | undefined) => text?.replaceAll('\u00a0', ' ');
const said = (shown: Shown) => plain(shown.find('.last-visit').textContent);

describe('last time at a glance', () => {
  it('shows from the start what went on, how strong, for how long, and by whom, and takes nothing over', async () => {
    const shown = await typeTicket('LM');
    const stored = shown.station.readLogs();
    await shown.tap('[data-act=last-visit]');
    expect(shown.find('h1').textContent).toBe('Last time');
    expect(shown.find('.kicker').textContent).toBe('February 3, 2026');
    expect(shown.look('.strand-map')).not.toBeNull();
    expect(said(shown)).toMatch(/lengths: sound, level \d/);
    expect(said(shown)).toMatch(/\d % bottle \(\d+ vol\), [\d.]+ % in the bowl/);
    expect(said(shown)).toMatch(/1 : [\d.]+ · \d+ min on · [\d.]+ g colour, [\d.]+ g developer/);
    expect(said(shown)).toMatch(/DecidedAs planned, by \w+/);
    expect(shown.look('[data-line=standing-stop]')).toBeNull();
    await shown.tap('[data-act=back-to-start]');
    expect((shown.find('.ticket-box') as HTMLInputElement).value).toBe('LM');
    expect(shown.station.readLogs()).toBe(stored);
    expect(shown.station.readState().open.size).toBe(0);
  });

  it('starts her as the same client from there, and asks reactions, scalp and age anew', async () => {
    const shown = await typeTicket('LM');
    await shown.tap('[data-act=last-visit]');
    await shown.tap('[data-act=open-same]');
    expect(shown.find('h1').textContent).toBe('Anything new?');
    const [record] = [...shown.station.readState().open.values()].map((each) => each.record);
    expect(record?.lastTime).not.toBeNull();
    expect(record?.answers).toEqual({});
    const lines = [...shown.container.querySelectorAll<HTMLElement>('[data-line]')];
    expect(lines.map(({ dataset }) => dataset.line)).toEqual(expect.arrayContaining(['reactions', 'scalp']));
    expect(shown.find('[data-line=reactions]').textContent).toContain('black henna');
  });

  it('stands behind “More for this client”, over whatever she is at, and goes back there', async () => {
    const shown = await typeTicket('LM');
    await shown.tap('[data-act=open-same]');
    await shown.tap('[data-act=more-for-client]');
    await shown.tap('dialog [data-act=last-visit]');
    expect(said(shown)).toContain('Decided');
    await shown.tap('[data-act=last-visit-back]');
    expect(shown.find('h1').textContent).toBe('Anything new?');
  });

  it('is not offered to whoever is somebody else', async () => {
    const shown = await typeTicket('LM');
    await shown.tap('[data-act=open]');
    await shown.tap('[data-act=more-for-client]');
    expect(shown.look('dialog [data-act=last-visit]')).toBeNull();
  });

  it('says that ends broke and nothing went on them', async () => {
    const shown = await typeTicket('QF', endsIronedWet);
    await shown.tap('[data-act=last-visit]');
    expect(plain(shown.find('[data-zone=ends]').textContent)).toContain('ends: broken');
    expect(shown.find('[data-zone=ends]').textContent).toContain('Nothing went on.');
    expect(said(shown)).toContain('Ends out');
  });
});

describe('a ticket that is being typed', () => {
  it('finds who begins so, and a tap takes her ticket over', async () => {
    const shown = await typeTicket('L');
    expect(shown.look('[data-last-time]')).toBeNull();
    expect(shown.find('[data-act=earlier-clients]').textContent).toBe('1 earlier client begins with “L”');
    await shown.tap('[data-act=earlier-clients]');
    expect(shown.find('.earlier-clients').textContent).toMatch(/L\.M\.chair \d · February 3, 2026 · Gloss/);
    await shown.tap('[data-act=earlier-client]');
    expect((shown.find('.ticket-box') as HTMLInputElement).value).toBe('L.M.');
    expect(shown.look('[data-act=open-same]')).not.toBeNull();
    expect(shown.look('[data-act=earlier-clients]')).toBeNull();
  });

  it('that looks like a date of birth is refused at once, in words, and opens nobody', async () => {
    const shown = await typeTicket('');
    const input = shown.find('.ticket-box') as HTMLInputElement;
    input.value = '12.05.1990';
    input.dispatchEvent(new Event('input', { bubbles: true }));
    await shown.tap('[data-act=open]');
    expect(shown.find('[data-question=ticket]').dataset.refused).toBe('isBirthDate');
    expect(shown.find('[data-question=ticket] .field-refusal').textContent).toContain('date of birth');
    expect(shown.station.readState().open.size).toBe(0);
    expect(input.value).toBe('12.05.1990');
  });
});
