import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../../seeds/endsIronedWet';
import { salon } from '../../../../seeds/salon';
import type { StoryStep } from '../../../../seeds/story';
import { refuse } from '../../../../shared/result';
import { showStation } from '../stationOnTablet';

afterEach(cleanup);

const storyUpTo = (type: string): readonly StoryStep[] =>
  endsIronedWet.steps.slice(0, endsIronedWet.steps.findIndex(({ raw }) => raw.type === type) + 1);

/** Q.F. with colour on, on a tablet whose journal can be made to refuse; nobody has said who is there. */
async function putColourOn(type = 'BOWL_APPLIED') {
  const store = { isRefusing: false };
  const shown = await showStation({
    settings: salon,
    change: ({ journal }) => ({
      journal: {
        ...journal,
        append: async (name, from, lines) =>
          store.isRefusing
            ? refuse({ copy: 'journal', kind: 'quotaExceeded', detail: 'no room' })
            : journal.append(name, from, lines),
      },
    }),
  });
  const id = await shown.play(storyUpTo(type));
  await shown.tap('[data-chair="3"]');
  const readLog = () => shown.station.readState().open.get(id)?.log ?? [];
  return { ...shown, store, readLog, isAsked: () => shown.look('dialog[open] [data-act=who-Opal]') !== null };
}

const emergency = '.emergency';

describe('burning or reaction', () => {
  it('opens the rinse steps at once where the store refuses, says so there, and records on a later tap', async () => {
    const shown = await putColourOn();
    shown.store.isRefusing = true;
    await shown.tap('[data-act=reaction]');
    expect(shown.look(emergency)).not.toBeNull();
    expect(shown.find('.contact').dataset.zone).toBe('lengths');
    expect(shown.find('[data-refusal]').dataset.refusal).toBe('notSaved');
    shown.store.isRefusing = false;
    await shown.tap('[data-act=rinsed-lengths]');
    expect(
      shown
        .readLog()
        .slice(-2)
        .map(({ type }) => type),
    ).toEqual(['REACTION_SUSPECTED', 'BOWL_RINSED']);
    expect(shown.find('main').dataset.step).toBe('reaction');
    expect(shown.look('[data-refusal]')).toBeNull();
  });

  it('asks nobody for a name before it is written that she burns, or that it was rinsed', async () => {
    const shown = await putColourOn();
    expect(shown.isAsked()).toBe(false);
    await shown.tap('[data-act=reaction]');
    expect(shown.isAsked()).toBe(false);
    expect(shown.readLog().at(-1)).toMatchObject({ type: 'REACTION_SUSPECTED', by: 'nobody chosen' });
    await shown.tap('[data-act=rinsed-lengths]');
    expect(shown.isAsked()).toBe(false);
    expect(shown.readLog().at(-1)).toMatchObject({ type: 'BOWL_RINSED', by: 'nobody chosen' });
  });

  it('is one event where a look says that it stings', async () => {
    const shown = await putColourOn();
    await shown.tap('[data-act=look]');
    await shown.tap('[data-act=stinging-yes]');
    expect(shown.look(emergency)).not.toBeNull();
    expect(shown.readLog().at(-1)).toMatchObject({ type: 'LOOKED', by: 'nobody chosen' });
  });

  it('opens the rinse steps although the look that says so cannot be kept', async () => {
    const shown = await putColourOn();
    await shown.tap('[data-act=look]');
    shown.store.isRefusing = true;
    await shown.tap('[data-act=stinging-yes]');
    expect(shown.look(emergency)).not.toBeNull();
    expect(shown.find('[data-refusal]').dataset.refusal).toBe('notSaved');
    expect(shown.readLog().at(-1)?.type).toBe('BOWL_APPLIED');
  });

  it('goes back where she was when it was none and nothing could be written', async () => {
    const shown = await putColourOn();
    shown.store.isRefusing = true;
    await shown.tap('[data-act=reaction]');
    await shown.tap('[data-act=no-reaction]');
    expect(shown.find('main').dataset.step).toBe('colourOn');
  });

  it('is recorded whole by one hold once the store takes it', async () => {
    const shown = await putColourOn();
    shown.store.isRefusing = true;
    await shown.tap('[data-act=reaction]');
    shown.store.isRefusing = false;
    await shown.hold('[data-act=record-reaction]');
    await shown.tap('[data-act=who-Opal]');
    expect(shown.readLog().slice(-2)).toMatchObject([
      { type: 'REACTION_SUSPECTED', by: 'nobody chosen' },
      { type: 'REACTION_RECORDED', by: 'Opal' },
    ]);
  });
});

it('a strand that breaks, and one whose time is up, are written before anybody is asked for a name', async () => {
  const shown = await putColourOn('STRAND_STARTED');
  expect(shown.isAsked()).toBe(false);
  await shown.hold('[data-act=strand-broke]');
  expect(shown.isAsked()).toBe(false);
  expect(shown.readLog().at(-1)).toMatchObject({ type: 'STRAND_BROKE', by: 'nobody chosen' });
});
