import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Consultation } from '../../../../machines/consultation/consultation';
import { InventedProvider } from '../../../../src/parts/useInvented';
import { MoreForClient } from '../../../../src/screens/leaving/MoreForClient';
import type { StepProps } from '../../../../src/screens/stepProps';
import { listCardLooks } from '../../../../src/screens/strandCard/listCardLooks';
import { findFirstCard, listCardStrands } from '../../../../src/screens/strandCard/viewCard';
import { hasAct, layOnBench, press, seen } from '../bench';
import { type Played, playUntil, tap } from '../playStory';

const More = (props: StepProps) => (
  <MoreForClient {...props} onWho={() => undefined} onDone={() => undefined} />
);
const row = (name: string) => seen(`.card-to-print > .strand-card [data-row="${name}"] dd`);
const rows = () =>
  [...document.querySelectorAll<HTMLElement>('.card-to-print > .strand-card [data-row]')].map(
    ({ dataset }) => dataset.row,
  );
const stamps = () =>
  [...document.querySelectorAll<HTMLElement>('.card-to-print > .strand-card [data-stamp]')].map(
    ({ textContent }) => textContent,
  );
const minute = 60_000;
const started = () => playUntil('STRAND_STARTED', 'lengths');
const look = (played: Played, afterMs: number, level: string, feel = 'sound') =>
  tap(played, afterMs, { type: 'LOOKED', answers: { of: 'strand', zone: 'lengths', level, feel } });
const off = (played: Played, zone: string, afterMs: number, by = 'Opal', why = 'levelReached') =>
  tap(played, afterMs, { type: 'STRAND_TAKEN_OFF', answers: { zone, why } }, by);
const outcome = (played: Played, zone: string, answers: Record<string, string> = {}, by = 'Opal') =>
  tap(
    played,
    minute,
    {
      type: 'OUTCOME_RECORDED',
      answers: {
        zone,
        fibre: 'sound',
        stretch: 'springsBack',
        wentPast30: 'no',
        level: '7',
        evenness: 'even',
        ...answers,
      },
    },
    by,
  );
/** Opens the card of this client, and of this strand where there are several. */
async function openCard(played: Played, number?: number, component: typeof More = More): Promise<void> {
  layOnBench(component, played);
  await press('way-card');
  if (number !== undefined && hasAct(`card-of-${number}`)) await press(`card-of-${number}`);
}
const recordOf = ({ consultation }: Played): Consultation['record'] => consultation.record;

afterEach(() => vi.unstubAllGlobals());

describe('the strand card', () => {
  it('is offered once a strand is out of its mix, not while it lies in it', async () => {
    const played = started();
    layOnBench(More, played);
    expect(hasAct('way-card')).toBe(false);
    cleanup();
    await openCard(off(played, 'lengths', 5 * minute));
    expect(stamps()).toEqual(['No outcome yet']);
  });

  it('says all that the strand was', async () => {
    const played = playUntil('OUTCOME_RECORDED', 'lengths');
    const record = recordOf(played);
    const strand = findFirstCard(listCardStrands(record));
    if (!strand?.outcome) throw new Error('the story has no outcome');
    await openCard(played);
    const head = seen('.card-to-print > .strand-card header');
    expect(head).toContain(`Strand ${strand.number}full strand`);
    expect(head).toContain(`Chair ${record.chair} · ${record.ticket}`);
    expect(head).toMatch(/20\d\d$/);
    expect(stamps()).toEqual([]);
    expect(row('place')).toMatch(/^lengths · .* · 30 hairs · build-up washed off$/);
    expect(row('line')).toBe(strand.line);
    expect(row('batch')).toBe(strand.batch === '' ? '–' : strand.batch);
    expect(row('mix')).toBe('6 % bottle (20 vol) · 1 : 2 · no heat');
    expect(row('fibre')).not.toBe('');
    expect(row('stretch')).not.toBe('');
    expect(row('evenness')).not.toBe('');
    expect(seen('.card-to-print .strand-card-tape')).toBe('Tape the tested hair here');
  });

  it('says the level told before, reached and wanted', async () => {
    const [played, wanted] = [
      outcome(off(off(started(), 'lengths', minute), 'ends', minute), 'lengths', { level: '6.5' }),
      7,
    ];
    expect(recordOf(played).answers.client?.targetLevel).toBe(wanted);
    await openCard(played, 2);
    expect(row('level')).toBe('from 5 · reached 6.5 · wanted 7');
  });

  it('says for how long it was on beside what was planned, to the second, and why it came off', async () => {
    await openCard(off(started(), 'lengths', 6 * minute + 7_900));
    expect(row('times')).toMatch(/^\d\d:\d\d to \d\d:\d\d · on 6:07, counts as 6 min · planned 25 min$/);
    expect(row('why')).toBe('Level reached');
  });

  it('says that it was given more time, and that nothing beyond its clock counts', async () => {
    const longer = tap(started(), minute, {
      type: 'CLOCK_EXTENDED',
      answers: { clock: 'strand-lengths-2', minutes: '10', reason: 'greyResists' },
    });
    await openCard(off(longer, 'lengths', 36 * minute, 'Opal', 'timeIsUp'), 2);
    expect(row('times')).toContain('on 37:00, counts as 35 min · planned 25 min, then 35 min');
    expect(row('why')).toBe('Time is up');
  });

  it('writes each look with its minutes and seconds, what was felt, and the missed ones among them', async () => {
    const looked = look(look(started(), 2 * minute + 5_000, '5.5'), 9 * minute, '6', 'rough');
    await openCard(off(looked, 'lengths', minute));
    expect(row('looks')).toBe('2:05 5.5 · 5:00 missed · 8:00 missed · 11:05 6 rough');
  });

  it('says so where nobody looked, and nothing was due', async () => {
    await openCard(off(started(), 'lengths', minute));
    expect(row('looks')).toBe('none made');
  });

  it('marks the undertone as an estimate where no look told it, and nothing else: all the rest is fact', async () => {
    const looked = look(started(), 2 * minute, '5.5');
    await openCard(outcome(off(looked, 'lengths', 20 * minute), 'lengths'), 2);
    const marked = [...document.querySelectorAll('.card-to-print > .strand-card .card-estimate')];
    expect(marked.map((each) => each.closest<HTMLElement>('[data-row]')?.dataset.row)).toEqual(['undertone']);
    expect(row('undertone')).toMatch(/to expect here: an estimate$/);
    expect(seen('.card-to-print > .strand-card')).not.toContain('The strand decides');
  });

  it.each([
    ['gold', 'gold, as last seen'],
    ['asExpected', 'orange to gold-orange, as last seen'],
  ])('tells the undertone that was seen last as fact: %s', async (undertone, told) => {
    const answers = { of: 'strand', zone: 'lengths', level: '5.5', feel: 'sound', undertone };
    const looked = tap(started(), 2 * minute, { type: 'LOOKED', answers });
    const unread = look(looked, 3 * minute, 'unknown');
    await openCard(outcome(off(unread, 'lengths', 20 * minute), 'lengths'), 2);
    expect(row('undertone')).toBe(told);
    expect(document.querySelector('.card-to-print > .strand-card .card-estimate')).toBeNull();
  });

  it('says what was decided, within which limits, and who did what', async () => {
    const both = off(off(started(), 'ends', 3 * minute), 'lengths', 22 * minute, 'Juno', 'timeIsUp');
    const told = outcome(outcome(both, 'ends'), 'lengths', {}, 'Juno');
    const decided = tap(told, minute, { type: 'DECIDED', answers: { decision: 'smallerLift' } }, 'Juno');
    await openCard(decided, 2);
    expect(row('decision')).toBe('Smaller lift · no stronger than 3 % (10 vol) · at most 25 min');
    expect(row('by')).toMatch(
      /^Opal started it · Juno took it off, recorded it \d\d:\d\d, decided \d\d:\d\d$/,
    );
    await press('card-of-1');
    expect(row('decision')).toContain('at most 3 min');
  });

  it('says no decision before there is one, and that nothing goes on where none may', async () => {
    const both = off(off(started(), 'ends', minute), 'lengths', 24 * minute, 'Opal', 'timeIsUp');
    const told = outcome(outcome(both, 'ends', { fibre: 'gummy' }), 'lengths');
    await openCard(told, 2);
    expect(rows()).not.toContain('decision');
    cleanup();
    await openCard(tap(told, minute, { type: 'DECIDED', answers: { decision: 'endsOut' } }), 1);
    expect(row('decision')).toBe('Ends out · nothing on the ends');
    expect(row('fibre')).toBe('Gummy');
  });

  it('is of the strand that is chosen, the newest first; paper gets the same one', async () => {
    await openCard(playUntil('OUTCOME_RECORDED', 'lengths'));
    const numbers = () =>
      [...document.querySelectorAll<HTMLElement>('.strand-card')].map(({ dataset }) => dataset.strand);
    expect(numbers()).toEqual(['2', '2']);
    await press('card-of-1');
    expect(numbers()).toEqual(['1', '1']);
    expect(seen('.paper > .strand-card')).toBe(seen('.card-to-print > .strand-card'));
  });

  it('opens the browser’s print, and leaves no paper behind when it is left', async () => {
    const print = vi.fn();
    vi.stubGlobal('print', print);
    await openCard(playUntil('OUTCOME_RECORDED', 'lengths'));
    await press('print-card');
    expect(print).toHaveBeenCalledOnce();
    await press('all-ways');
    expect(document.querySelector('.paper')).toBeNull();
  });

  it('of the invented salon says so, on paper too', async () => {
    const Demo = (props: StepProps) => (
      <InventedProvider value={() => 'demo'}>
        <More {...props} />
      </InventedProvider>
    );
    await openCard(playUntil('OUTCOME_RECORDED', 'lengths'), 2, Demo);
    expect(stamps()).toEqual(['DEMO']);
    expect(seen('.paper [data-stamp="demo"]')).toBe('DEMO');
  });
});

describe('the card of a strand', () => {
  it('that broke says after how long, before its outcome and with it', async () => {
    const broke = tap(look(started(), 2 * minute, '5'), 4 * minute + 12_000, {
      type: 'STRAND_BROKE',
      answers: { zone: 'lengths' },
    });
    await openCard(broke);
    expect(stamps()).toEqual(['Broke']);
    expect(row('why')).toBe('It broke in the mix');
    expect(row('times')).toContain('on 6:12, counts as 6 min · planned 25 min');
    expect(row('outcome')).toBe('not recorded yet');
    expect(row('by')).toBe('Opal started it, saw it break');
    cleanup();
    const told = outcome(off(broke, 'ends', minute), 'lengths', { fibre: 'broken', stretch: 'snaps' });
    await openCard(told, 2);
    expect(stamps()).toEqual(['Broke']);
    expect(row('fibre')).toBe('Broken');
    expect(row('stretch')).toBe('Snaps or mush');
    expect(rows()).not.toContain('undertone');
  });

  it('that was put aside counts for nothing and says why, and another one is shown first', async () => {
    const aside = tap(started(), 3 * minute, {
      type: 'STRAND_DISCARDED',
      answers: { zone: 'lengths', why: 'wrongPlace' },
    });
    await openCard(outcome(off(aside, 'ends', 5 * minute), 'ends'));
    expect(document.querySelector<HTMLElement>('.strand-card')?.dataset.strand).toBe('1');
    expect(seen('[data-act="card-of-2"]')).toBe('STRAND 2 lengths · put aside');
    await press('card-of-2');
    expect(stamps()).toEqual(['Put aside: counts for nothing']);
    expect(row('why')).toBe('Put aside: Snipped in the wrong place');
    expect(row('times')).not.toContain('counts as');
    expect(rows().filter((key) => ['outcome', 'fibre', 'decision'].includes(key ?? ''))).toEqual([]);
  });

  it('without an outcome says so, and which one was taken back', async () => {
    const both = off(off(started(), 'ends', minute), 'lengths', minute);
    await openCard(both, 2);
    expect(stamps()).toEqual(['No outcome yet']);
    expect(row('outcome')).toBe('not recorded yet');
    cleanup();
    const record = recordOf(both);
    const strands = record.strands.map((each) => ({ ...each, retracted: 'rough' as const }));
    await openCard({ ...both, consultation: { ...both.consultation, record: { ...record, strands } } }, 2);
    expect(row('outcome')).toBe('not recorded yet; taken back: rough');
  });
});

describe('what goes on a card', () => {
  const record = recordOf(playUntil('OUTCOME_RECORDED', 'lengths'));
  const [strand] = listCardStrands(record);
  if (strand === undefined) throw new Error('the story has no outcome');

  it('is no strand of last time, none that a correction voided, none that is in the mix', () => {
    const carried = { fromId: 'x', maxDeveloperPercent: 6, maxMinutes: 20 };
    const others = [
      { ...strand, carried },
      { ...strand, isVoid: true },
      { ...strand, ended: null },
    ];
    expect(listCardStrands({ strands: others })).toEqual([]);
    expect(listCardStrands({ strands: [...others, strand] })).toEqual([strand]);
  });

  it('is the first look and the newest eleven of many, and how many are left out', () => {
    const seenAt = { of: 'strand', zone: strand.zone, feel: 'sound', by: 'Opal', level: 5 } as const;
    const looks = Array.from({ length: 30 }, (_, seq) => ({
      ...seenAt,
      seq,
      atMs: strand.atMs + seq * 60_000,
    }));
    const bare = { ...record, clocks: [] };
    const { shown, left } = listCardLooks(bare, { ...strand, looks, missedLooksAtMs: [] });
    expect(shown).toHaveLength(12);
    expect(left).toBe(30 - 12);
    expect(shown[0]?.sinceMs).toBe(0);
    expect(shown.at(-1)?.sinceMs).toBe(29 * 60_000);
    const twelve = listCardLooks(bare, { ...strand, looks: looks.slice(0, 12), missedLooksAtMs: [] });
    expect([twelve.shown.length, twelve.left]).toEqual([12, 0]);
  });
});
