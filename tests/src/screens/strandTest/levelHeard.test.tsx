import { describe, expect, it } from 'vitest';
import type { RawEvent } from '../../../../shared/records/classify';
import { DecisionScreen } from '../../../../src/screens/decision/DecisionScreen';
import { Outcome } from '../../../../src/screens/strandTest/Outcome';
import { Processing } from '../../../../src/screens/strandTest/Processing';
import { act, choose, layOnBench, press, said, seen, title, type, typed } from '../bench';
import { type Played, playUntil, tap } from '../playStory';

const minute = 60_000;
const heard = () => seen('[data-line="level-heard"]');
const started = playUntil('STRAND_STARTED', 'ends');
const look = (played: Played, level: string, afterMs = 3 * minute): Played =>
  tap(played, afterMs, { type: 'LOOKED', answers: { of: 'strand', zone: 'ends', level, feel: 'sound' } });
const takeOff = (played: Played): Played =>
  tap(played, 30 * minute, { type: 'STRAND_TAKEN_OFF', answers: { zone: 'ends', why: 'timeIsUp' } });

/** The story, with something else that she wants, up to its first strand. */
const wanting = (answers: Record<string, string>): Played => {
  const client: RawEvent = {
    type: 'ANSWERED',
    step: 'client',
    answers: { ...started.consultation.record.answers.client, ...answers } as never,
  };
  return { ...started, consultation: { ...started.consultation, record: withClient(client) } };
};
const withClient = (raw: RawEvent) => {
  const { record } = started.consultation;
  const { client } = record.answers;
  if (client === undefined || raw.answers === undefined) throw new Error('no client');
  return { ...record, answers: { ...record.answers, client: { ...client, ...raw.answers } } };
};

/** By its tile, or by the way to all of them. */
const chooseLevel = async (level: string) => {
  if (document.querySelector(`[data-option="${level}"]`) === null) await press('other-level');
  await choose('level', level);
};

describe('a level tapped at a look', () => {
  it.each([
    ['7', 'Darker than at the last look (7.5). Kept as you saw it.'],
    ['7.5', ''],
    ['9', ''],
    ['9.5', '2 levels lighter than at the last look (7.5). Kept as you saw it.'],
    ['10', '2.5 levels lighter than at the last look (7.5). Kept as you saw it.'],
  ])('of %s after 7.5 says %j before it is kept, and costs no tap', async (level, words) => {
    const bench = layOnBench(Processing, look(started, '7.5'));
    bench.pass(3 * minute);
    await press('look');
    expect(heard()).toBe('');
    await chooseLevel(level);
    expect(title()).toBe('How does it feel?');
    expect(heard()).toBe(words);
    expect(bench.consultation().record.strands[0]?.looks).toHaveLength(1);
    await choose('feel', 'sound');
    expect(bench.consultation().record.strands[0]?.looks[1]).toMatchObject({ level: Number(level) });
  });

  it('is held against the level told before the start while no look has read one', async () => {
    const bench = layOnBench(Processing, look(started, 'unknown'));
    bench.pass(3 * minute);
    await press('look');
    await choose('level', '4.5');
    expect(heard()).toBe('Darker than before it went on (5). Kept as you saw it.');
    await press('cancel');
    expect(heard()).toBe('');
    await choose('level', '7');
    expect(heard()).toBe('2 levels lighter than before it went on (5). Kept as you saw it.');
  });
});

describe('the level an outcome tells', () => {
  const tell = async (level: string) => {
    await choose('fibre', 'sound');
    if (Number.isInteger(Number(level))) return choose('level', level);
    await choose('level', String(Math.floor(Number(level))));
    document.querySelector<HTMLElement>('[data-ledger="level"]')?.click();
    await press('half-more');
  };

  it.each([
    ['7', ''],
    ['6.5', '0.5 level below what she wants (7), in this mix.'],
    ['6', '1 level below what she wants (7), in this mix.'],
    [
      '5.5',
      'Darker than at the last look (6). Kept as you saw it. 1.5 levels below what she wants (7), in this mix.',
    ],
    ['8', '2 levels lighter than at the last look (6). Kept as you saw it.'],
  ])('of %s after 6, where 7 was wanted, says %j until it is recorded', async (level, words) => {
    const bench = layOnBench(Outcome, takeOff(look(started, '6')));
    expect(heard()).toBe('');
    await tell(level);
    expect(heard()).toBe(words);
    await choose('stretch', 'springsBack');
    await choose('wentPast30', 'no');
    await choose('evenness', 'even');
    expect(heard()).toBe(words);
    await press('record-outcome');
    expect(bench.last()).toMatchObject({ type: 'OUTCOME_RECORDED', payload: { level: Number(level) } });
  });

  it('is not measured against a level she does not want to be lifted to, nor of hair that broke', async () => {
    const bench = layOnBench(Outcome, takeOff(look(wanting({ service: 'gloss' }), '6')));
    await tell('6');
    expect(heard()).toBe('');
    bench.unmount();
    layOnBench(Outcome, takeOff(look(started, '6')));
    await tell('5');
    expect(heard()).not.toBe('');
    await choose('fibre', 'broken');
    expect(document.querySelector('[data-line="level-heard"]')).toBeNull();
    await press('cancel');
  });

  it('that does not exist, 11, stays as it was typed and is refused at its field', async () => {
    const bench = layOnBench(Outcome, takeOff(look(started, '6')));
    await tell('7');
    await type('level', '11');
    expect([typed('level'), said('level').replaceAll('\u00a0', ' ')]).toEqual(['11', 'Too high. 1 to 10.']);
    expect(heard()).toBe('');
    await choose('stretch', 'springsBack');
    await choose('wentPast30', 'no');
    await choose('evenness', 'even');
    await press('record-outcome');
    expect(bench.last()?.type).toBe('STRAND_TAKEN_OFF');
  });

  it('is told again at the decision, with what it means', () => {
    const outcome: RawEvent = {
      type: 'OUTCOME_RECORDED',
      answers: {
        zone: 'lengths',
        fibre: 'sound',
        stretch: 'springsBack',
        level: '6.5',
        wentPast30: 'no',
        evenness: 'even',
      },
    };
    const off = playUntil('OUTCOME_RECORDED', 'ends');
    layOnBench(DecisionScreen, tap(off, minute, outcome));
    expect(seen('[data-zone="lengths"]')).toContain('level 6.5, wanted 7');
    expect(seen('[data-reason="short"]')).toBe('Short of the level she wants, by 0.5.');
    act('decide-endsOut');
    expect(seen('.knot-word')).toContain('Expect less than 6.5; a new strand to promise 7.');
  });
});
