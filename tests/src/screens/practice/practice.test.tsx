import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import { dropDrafts } from '../../../../src/screens/keptDraft';
import { makeTablet } from '../../storage/tablet';
import { type Shown, showStation } from '../stationOnTablet';
import { beginLesson, makePractice, showPractice } from './inPractice';

const idOf = (shown: Shown): string => [...shown.station.readState().open.keys()][0] ?? '';
let ids: string[] = [];
afterEach(() => {
  cleanup();
  for (const id of ids) dropDrafts(id);
  ids = [];
});
const begin = async (...given: Parameters<typeof beginLesson>) => {
  const shown = await beginLesson(...given);
  ids.push(idOf(shown));
  return shown;
};

/** What the log of this sitting says beside its beginning. */
const told = (shown: Shown) =>
  [...(shown.station.readState().practice?.sittings.values() ?? [])]
    .flat()
    .map(({ type, payload }) => [type, payload] as const);

describe('practice', () => {
  it('is entered from the settings by whoever is there, and not while somebody is at the bar', async () => {
    const { practice, done } = makePractice(false);
    const shown = await showStation({ practice, settings: salon });
    await shown.tap('[data-act=settings]');
    await shown.tap('[data-act=who-Opal]');
    await shown.tap('[data-act=section-practice]');
    expect(shown.find('[data-panel=practice]').textContent).toContain('It is stored apart');
    expect(shown.look('[data-not-now]')).toBeNull();
    await shown.tap('[data-act=enter-practice]');
    expect(done).toEqual(['enter Opal']);
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=start]');
    await shown.type('ticket', 'Q.F.');
    await shown.tap('[data-question=chair] [data-option="3"]');
    await shown.tap('[data-act=open]');
    ids.push(idOf(shown));
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=settings]');
    await shown.tap('[data-act=section-practice]');
    expect(shown.find('[data-not-now]').textContent).toContain('somebody is at the bar');
    expect((shown.find('[data-act=enter-practice]') as HTMLButtonElement).disabled).toBe(true);
  });

  it('that could not be set up says so, and the salon is shown', async () => {
    const { practice } = makePractice(false, false);
    const shown = await showStation({ practice, settings: salon });
    await shown.tap('[data-act=settings]');
    await shown.tap('[data-act=who-Opal]');
    await shown.tap('[data-act=section-practice]');
    await shown.tap('[data-act=enter-practice]');
    expect(shown.find('[data-panel=practice] [role=alert]').textContent).toContain('as it was');
  });

  it('says PRACTICE on every screen, in every window over one, and in the title; nothing leads out but Leave', async () => {
    const shown = await showPractice();
    expect(document.title).toBe('PRACTICE · Strandproof');
    expect(shown.find('.practice-ribbon').textContent).toContain('PRACTICE');
    await shown.tap('[data-act=lesson-safeClient]');
    expect(shown.find('dialog[open] .practice-mark').textContent).toBe('PRACTICE');
    await shown.tap('dialog[open] [data-act=close-dialog]');
    await shown.tap('[data-act=bar]');
    expect(shown.find('.practice-ribbon').textContent).toContain('PRACTICE');
    for (const way of ['day', 'settings', 'load-demo']) {
      expect(shown.look(`[data-act=${way}]`)).toBeNull();
    }
    await shown.tap('[data-act=start]');
    expect(shown.find('[data-step=lessons]').textContent).toContain('Lessons');
    await shown.tap('[data-act=leave-practice]');
    await shown.tap('[data-act=leave-practice-now]');
    expect(shown.done).toEqual(['leave']);
    shown.unmount();
    expect(document.title).toBe('Strandproof');
  });

  it('has a clock of three speeds, kept in its log', async () => {
    const shown = await showPractice();
    await shown.tap('[data-act=speed-60]');
    await shown.tap('[data-act=speed-10]');
    expect(shown.station.readState().practice?.changes.map(({ times }) => times)).toEqual([60, 10]);
    expect(shown.find('[data-act=speed-10]').getAttribute('aria-pressed')).toBe('true');
  });
});

describe('a lesson', () => {
  it('begins at her chair, with what she says beside each question, and asking closer is kept and may change it', async () => {
    const shown = await begin('wetIronedCurls');
    expect(shown.find('.practice-ribbon').textContent).toContain('Curls that look sound · with hints');
    expect(shown.find('[data-heard="client.service"]').textContent).toContain('Two shades lighter all over');
    await shown.goTo('reactions');
    expect(shown.find('[data-heard="client.reactions"]').textContent).toContain('She says: None of these');
    await shown.tap('[data-act=ask-closer]');
    expect(shown.look('[data-act=ask-closer]')).toBeNull();
    expect(told(shown).at(-1)).toEqual(['ASKED_CLOSER', { path: 'client.reactions' }]);
    expect(idOf(shown).startsWith('practice0')).toBe(true);
  });

  it('says otherwise when asked closer, and still does after the page was loaded anew', async () => {
    const tablet = makeTablet();
    const shown = await begin('blackTattoo', 'exam', tablet);
    await shown.goTo('reactions');
    const first = shown.find('[data-heard="client.reactions"]').textContent;
    await shown.tap('[data-act=ask-closer]');
    const closer = shown.find('[data-heard="client.reactions"]').textContent;
    expect(closer).not.toBe(first);
    shown.unmount();
    const { practice } = makePractice(true);
    const again = await showStation({ tablet, practice });
    await again.tap('[data-act=go-on-lesson]');
    if (again.look('[data-act=who-Opal]') !== null) await again.tap('[data-act=who-Opal]');
    await again.goTo('reactions');
    expect(again.find('[data-heard="client.reactions"]').textContent).toBe(closer);
  });

  it('hints at the end of a step at what was passed over, once, and in an examination at nothing', async () => {
    for (const how of ['hints', 'exam'] as const) {
      const shown = await begin('blackTattoo', how);
      await shown.answer(
        ['service', 'depositOnly'],
        ['reach', 'fullHead'],
        ['targetLevel', '5'],
        ['naturalLevel', '5'],
        ['endsLevel', '5'],
        ['length', 'collarbone'],
        ['reactions', 'none'],
        ['scalp', 'sound'],
        ['ageBand', 'over'],
      );
      await shown.tap('[data-act=next]');
      const hinted = told(shown).filter(([type]) => type === 'HINT_SHOWN');
      if (how === 'exam') {
        expect(shown.look('[data-panel=passed-over]')).toBeNull();
        expect(hinted).toEqual([]);
      } else {
        expect(shown.find('[data-panel=passed-over]').textContent).toContain('tattoo');
        expect(hinted.length).toBe(1);
        await shown.tap('[data-act=back-to-passed-over]');
        expect(shown.find('main').dataset.step).toBe('client');
        await shown.tap('[data-act=next]');
        expect(shown.look('[data-panel=passed-over]')).toBeNull();
      }
      shown.unmount();
      cleanup();
    }
  });

  it('is over when she is closed: how it went, and again from there under a ticket of its own', async () => {
    const shown = await begin('blackTattoo', 'exam');
    const first = idOf(shown);
    await shown.goTo('reactions');
    await shown.hold('[data-question=reactions] [data-option=blackTattoo]');
    await shown.tap('[data-act=end]');
    await shown.tap('[data-question=reason] [data-option=notSafeToday]');
    await shown.hold('[data-act=WE_SAID_NO]');
    expect(shown.find('[data-step=debrief] .debrief-result').textContent).toContain('Passed');
    expect(shown.find('[data-step=debrief]').textContent).toContain('not a licence');
    expect(told(shown).at(-1)).toEqual(['LESSON_ENDED', { how: 'finished' }]);
    await shown.tap('[data-act=again]');
    ids.push(idOf(shown));
    expect(idOf(shown)).not.toBe(first);
    expect(shown.station.readState().open.get(idOf(shown))?.record.ticket).toMatch(/ 2$/);
    expect(shown.look('[data-step=stopped]')).toBeNull();
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=start]');
    await shown.tap('[data-act=lesson-blackTattoo]');
    expect((shown.find('[data-act=begin-hints]') as HTMLButtonElement).disabled).toBe(true);
    await shown.tap('[data-act=last-debrief]');
    expect(shown.look('[data-act=again]')).toBeNull();
    await shown.tap('[data-act=to-lessons]');
    await shown.tap('[data-act=leave-off]');
    await shown.tap('[data-act=leave-off-now]');
    expect(shown.find('[data-act=lesson-blackTattoo]').textContent).toContain('Left off');
    expect(told(shown).at(-1)).toEqual(['LESSON_ENDED', { how: 'leftOff' }]);
  });
});
