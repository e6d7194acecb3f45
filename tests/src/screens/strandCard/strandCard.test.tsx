import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Consultation } from '../../../../machines/consultation/consultation';
import { MoreForClient } from '../../../../src/screens/leaving/MoreForClient';
import type { StepProps } from '../../../../src/screens/stepProps';
import { listCardLevels, listCardStrands } from '../../../../src/screens/strandCard/viewCard';
import { hasAct, layOnBench, press, seen } from '../bench';
import { type Played, playUntil } from '../playStory';

const More = (props: StepProps) => (
  <MoreForClient {...props} onWho={() => undefined} onDone={() => undefined} />
);
const row = (name: string) => seen(`.card-to-print > .strand-card [data-row="${name}"] dd`);
const recordOf = ({ consultation }: Played): Consultation['record'] => consultation.record;

afterEach(() => vi.unstubAllGlobals());

describe('the strand card', () => {
  it('is not offered before a strand has said something', () => {
    layOnBench(More, playUntil('STRAND_TAKEN_OFF'));
    expect(hasAct('way-card')).toBe(false);
  });

  it('says all that the strand was, and nobody’s name but the one who recorded it', async () => {
    const played = playUntil('OUTCOME_RECORDED', 'lengths');
    const record = recordOf(played);
    const strand = listCardStrands(record)[0];
    if (strand === undefined) throw new Error('the story has no outcome');
    layOnBench(More, played);
    await press('way-card');
    const head = seen('.card-to-print > .strand-card header');
    expect(head).toContain(`Strand ${strand.number}`);
    expect(head).toContain(`Chair ${record.chair} · ${record.ticket}`);
    expect(head).toMatch(/20\d\d$/);
    expect(row('place')).toMatch(/^lengths · /);
    expect(row('line')).toBe(strand.line);
    expect(row('batch')).toBe(strand.batch === '' ? '–' : strand.batch);
    expect(row('developer')).toBe('6 % bottle (20 vol)');
    expect(row('ratio')).toBe('1 : 2');
    expect(row('heat')).toBe('None');
    expect(row('minutes')).toBe(`${strand.minutesOn} min`);
    expect(row('fibre')).not.toBe('');
    expect(row('stretch')).not.toBe('');
    expect(row('level')).toBe(String(strand.outcome.level));
    expect(row('evenness')).not.toBe('');
    expect(row('by')).toContain(strand.outcome.by);
    expect(seen('.card-to-print .strand-card-tape')).toBe('Tape the tested hair here');
    expect(seen('.card-to-print .strand-card footer')).toBe('An estimate. The strand decides.');
  });

  it('writes each level with its minute, the one told before it first', async () => {
    const played = playUntil('OUTCOME_RECORDED', 'lengths');
    const strand = listCardStrands(recordOf(played)).find(({ looks }) => looks.length > 0);
    if (strand === undefined) throw new Error('no strand of the story was looked at');
    layOnBench(More, played);
    await press('way-card');
    if (hasAct(`card-of-${strand.number}`)) await press(`card-of-${strand.number}`);
    for (const look of strand.looks) expect(row('levels')).toContain(`${look.level} at `);
    expect(row('levels')).toMatch(/^[\d.]+ at 0/);
  });

  it('is of the strand that is chosen, the newest first; paper gets the same one', async () => {
    layOnBench(More, playUntil('OUTCOME_RECORDED', 'lengths'));
    await press('way-card');
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
    layOnBench(More, playUntil('OUTCOME_RECORDED', 'lengths'));
    await press('way-card');
    await press('print-card');
    expect(print).toHaveBeenCalledOnce();
    await press('all-ways');
    expect(document.querySelector('.paper')).toBeNull();
  });
});

describe('what goes on a card', () => {
  const record = recordOf(playUntil('OUTCOME_RECORDED', 'lengths'));
  const [strand] = listCardStrands(record);
  if (strand === undefined) throw new Error('the story has no outcome');

  it('is no strand of last time, none that a correction voided, none without an outcome', () => {
    const carried = { fromId: 'x', maxDeveloperPercent: 6, maxMinutes: 20 };
    const others = [
      { ...strand, carried },
      { ...strand, isVoid: true },
      { ...strand, outcome: null },
    ];
    expect(listCardStrands({ strands: others })).toEqual([]);
    expect(listCardStrands({ strands: [...others, strand] })).toEqual([strand]);
  });

  it('is the first level and the newest eleven of many, and how many are left out', () => {
    const look = { of: 'strand', zone: strand.zone, feel: 'sound', by: 'Opal' } as const;
    const looks = Array.from({ length: 30 }, (_, seq) => ({
      ...look,
      seq,
      level: 5,
      atMs: strand.atMs + seq * 60_000,
    }));
    const { shown, left } = listCardLevels(record, { ...strand, looks });
    expect(shown).toHaveLength(12);
    expect(left).toBe(31 - 12);
    expect(shown[0]?.atMin).toBe(0);
    expect(shown.at(-1)?.atMin).toBeCloseTo(29, 1);
    expect(listCardLevels(record, { ...strand, looks: looks.slice(0, 11) }).left).toBe(0);
  });
});
