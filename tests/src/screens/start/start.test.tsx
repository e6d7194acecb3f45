import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import { type Shown, showStation, startClient } from '../stationOnTablet';

afterEach(cleanup);

const countOpen = ({ station }: Shown) => station.readState().open.size;
const saidAtChair = (shown: Shown) => shown.find('[data-question=chair] .field-refusal').textContent;

/** Q.F. sits at chair 3; somebody else is about to be started. */
async function startAnother(ticket: string): Promise<Shown> {
  const shown = await startClient();
  await shown.tap('[data-act=bar]');
  await shown.tap('[data-act=start]');
  await shown.type('ticket', ticket);
  return shown;
}

describe('the ticket', () => {
  it('is tapped on the letters, and the last one is taken away again', async () => {
    const shown = await startAnother('');
    for (const letter of ['J', '.', 'P', '.', '7']) await shown.tap(`[data-key="${letter}"]`);
    await shown.tap('[data-key="back"]');
    expect((shown.find('[data-question=ticket] input') as HTMLInputElement).value).toBe('J.P.');
    await shown.answer(['chair', '4']);
    await shown.tap('[data-act=open]');
    expect(shown.find('.kicker').textContent).toBe('Chair 4 · J.P.');
  });
});

describe('the chair of a client who is started', () => {
  it('is one tap away, all chairs of the settings, each taken one with whose it is', async () => {
    const shown = await startAnother('J.P.');
    const offered = [...shown.container.querySelectorAll('[data-question=chair] [data-option]')];
    expect(offered.map(({ textContent }) => textContent)).toEqual([
      '1',
      '2',
      '3taken by Q.F.',
      '4',
      '5',
      '6',
      '7',
      '8',
    ]);
    await shown.answer(['chair', '4']);
    await shown.tap('[data-act=open]');
    expect(shown.find('.kicker').textContent).toBe('Chair 4 · J.P.');
  });

  it('where somebody sits is refused with her ticket, and what was typed stays', async () => {
    const shown = await startAnother('J.P.');
    await shown.answer(['chair', '3']);
    expect(saidAtChair(shown)).toBe('Q.F. sits at chair 3. Choose a free chair.');
    await shown.tap('[data-act=open]');
    expect(countOpen(shown)).toBe(1);
    expect((shown.find('[data-question=ticket] input') as HTMLInputElement).value).toBe('J.P.');
  });

  it('is asked for when it is missing', async () => {
    const shown = await startAnother('J.P.');
    await shown.tap('[data-act=open]');
    expect(saidAtChair(shown)).toBe('Choose a chair, 1 to 8.');
  });

  it('is nowhere free where each is taken, and that is said', async () => {
    const shown = await showStation({ settings: { ...salon, chairs: 1 } });
    await shown.tap('[data-act=start-here]');
    await shown.tap('[data-act=who-Opal]');
    await shown.type('ticket', 'J.P.');
    await shown.tap('[data-act=open]');
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=start]');
    expect(shown.find('.start-content').textContent).toContain('Every chair is taken.');
  });
});

describe('who does her hair', () => {
  it('is whoever is at the tablet, until somebody else is tapped', async () => {
    const shown = await startAnother('J.P.');
    const said = () => shown.find('[data-stylist]').dataset.stylist;
    expect(said()).toBe('Opal');
    await shown.answer(['chair', '4']);
    await shown.tap('[data-act=other-stylist]');
    expect(shown.look('[data-question=chair]')).toBeNull();
    await shown.answer(['stylist', 'Juno']);
    expect(said()).toBe('Juno');
    expect(shown.find('[data-question=chair] [aria-pressed=true]').dataset.option).toBe('4');
    await shown.tap('[data-act=open]');
    const records = [...shown.station.readState().open.values()].map(({ record }) => record);
    expect(records.map(({ stylist }) => stylist)).toEqual(['Opal', 'Juno']);
  });
});

describe('a ticket that is open already', () => {
  it('is said before a second one starts, however it is typed, with the way there', async () => {
    const shown = await startAnother('q f');
    expect(shown.find('[data-same-ticket]').textContent).toContain('This ticket is open at chair 3.');
    expect(shown.look('[data-act=open]')).toBeNull();
    await shown.tap('[data-act=go-there]');
    expect(shown.find('.kicker').textContent).toBe('Chair 3 · Q.F.');
    expect(countOpen(shown)).toBe(1);
  });

  it('may be started anyway', async () => {
    const shown = await startAnother('Q.F.');
    await shown.answer(['chair', '5']);
    await shown.tap('[data-act=open-anyway]');
    expect(shown.find('.kicker').textContent).toBe('Chair 5 · Q.F.');
    expect(countOpen(shown)).toBe(2);
  });

  it('is found while she is parked, and nothing is said of another', async () => {
    const shown = await startClient();
    await shown.tap('[data-act=more-for-client]');
    await shown.tap('[data-act=way-park]');
    await shown.answer(['untilAtMs', '2d']);
    await shown.tap('[data-act=park]');
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=start]');
    await shown.type('ticket', 'Q.F');
    expect(shown.find('[data-same-ticket]').textContent).toContain('This ticket is parked, back Thursday');
    await shown.type('ticket', 'Q.G.');
    expect(shown.look('[data-same-ticket]')).toBeNull();
  });
});

it('lists who sits beyond the places of the bar, not as waiting', async () => {
  const shown = await showStation({ settings: { ...salon, chairs: 12 } });
  await shown.tap('[data-act=start]');
  await shown.tap('[data-act=who-Opal]');
  await shown.type('ticket', 'J.P.');
  await shown.answer(['chair', '12']);
  await shown.tap('[data-act=open]');
  await shown.tap('[data-act=bar]');
  await shown.tap('[data-act=parked]');
  expect(shown.find('.parked-list').textContent).toContain('Chair 12 · J.P.ask: what she wants');
});
