import { describe, expect, it } from 'vitest';
import type { Consultation } from '../../../machines/consultation/consultation';
import { defaultSettings } from '../../../shared/records/settings';
import { sayBarDue } from '../../../src/screens/bar/sayBarDue';
import { sayInLine, sayLane } from '../../../src/screens/bar/sayLane';
import { type BarView, isBackLate, viewBar } from '../../../src/screens/bar/viewBar';
import { findWords } from '../../../src/words/words';
import { begunAgo } from './begunAgo';
import { playUntil, playUntilConfirmed, settings, tap } from './playStory';

const move = (consultation: Consultation, id: string, chair: number): Consultation => ({
  ...consultation,
  id,
  record: { ...consultation.record, id, chair },
});

const { consultation: asked, atMs } = playUntilConfirmed('heatSpray');
const { consultation: running, atMs: startedAtMs } = playUntil('STRAND_STARTED', 'lengths');
const parked = tap({ consultation: asked, atMs }, 1, {
  type: 'PARKED',
  answers: { untilAtMs: atMs + 86_400_000 },
}).consultation;

const words = findWords('en');
const { units } = defaultSettings;
const minute = 60_000;

const listRunning = ({ due }: BarView) => due.flatMap((each) => (each.what === 'clock' ? [each] : []));

describe('the bar', () => {
  it('has the places in the order of the chairs, never more than eight', () => {
    const view = viewBar([move(asked, 'b', 5), move(asked, 'a', 2)], 12, atMs);
    expect(view.places.map(({ chair }) => chair)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(view.places.map(({ consultation }) => consultation?.id ?? null)).toEqual([
      null,
      'a',
      null,
      null,
      'b',
      null,
      null,
      null,
    ]);
    expect(viewBar([], 3, atMs).places).toHaveLength(3);
  });

  it('has nobody vanish: who has no place of her own waits in the list', () => {
    const open = [move(asked, 'first', 2), move(asked, 'second', 2), move(asked, 'far', 11)];
    const view = viewBar(open, 12, atMs);
    expect(view.places[1]?.consultation?.id).toBe('first');
    expect(view.waiting.map(({ id }) => id)).toEqual(['second', 'far']);
  });

  it('keeps the parked out of the places', () => {
    const view = viewBar([move(parked, 'away', 2), move(asked, 'here', 2)], 8, atMs);
    expect(view.places[1]?.consultation?.id).toBe('here');
    expect(view.parked.map(({ id }) => id)).toEqual(['away']);
    expect(view.waiting).toEqual([]);
  });

  it('puts the clock first whose look or end comes first, over all clients', () => {
    const later = move(running, 'later', 1);
    const sooner: Consultation = {
      ...move(running, 'sooner', 2),
      record: {
        ...move(running, 'sooner', 2).record,
        clocks: running.record.clocks.map((clock) => ({ ...clock, startedAtMs: clock.startedAtMs - 60_000 })),
      },
    };
    const clocks = listRunning(viewBar([later, sooner], 8, startedAtMs));
    expect(clocks.map(({ consultation, clock }) => [consultation.id, clock.zone])).toEqual([
      ['sooner', 'ends'],
      ['sooner', 'lengths'],
      ['later', 'ends'],
      ['later', 'lengths'],
    ]);
    expect(clocks.map(({ strandNumber }) => strandNumber)).toEqual([1, 2, 1, 2]);
  });

  it('puts a head that must go to the basin before a look that is long due, looked at or not', () => {
    const { consultation, atMs: onAtMs } = playUntil('BOWL_APPLIED');
    const head = move(consultation, 'head', 2);
    const nearMs = onAtMs + 23 * 60_000;
    const began = move(running, 'strand', 1);
    const strand: Consultation = {
      ...began,
      record: {
        ...began.record,
        clocks: running.record.clocks.map((clock) => ({
          ...clock,
          startedAtMs: nearMs - 8 * 60_000,
          dueAtMs: nearMs + 17 * 60_000,
        })),
      },
    };
    const looked = tap({ consultation: head, atMs: onAtMs }, 22 * 60_000, {
      type: 'LOOKED',
      answers: { of: 'head', zone: 'lengths', stinging: 'no' },
    }).consultation;
    for (const one of [head, looked]) {
      const firstAt = (nowMs: number) => listRunning(viewBar([strand, one], 8, nowMs))[0]?.clock.kind;
      expect(firstAt(nearMs)).toBe('head');
      expect(firstAt(nearMs + 10 * 60_000)).toBe('head');
    }
    expect(listRunning(viewBar([strand, looked], 8, nearMs - 1))[0]?.clock.kind).toBe('strand');
  });

  it('leaves out a clock that has ended', () => {
    const { consultation, atMs: brokeAtMs } = playUntil('STRAND_BROKE');
    expect(listRunning(viewBar([consultation], 8, brokeAtMs)).map(({ clock }) => clock.zone)).toEqual([
      'lengths',
    ]);
  });
});

describe('what comes first on the strip', () => {
  const { consultation: onHead, atMs: nowMs } = playUntil('BOWL_APPLIED');
  const reacts = tap({ consultation: onHead, atMs: nowMs }, 0, { type: 'REACTION_SUSPECTED' });
  const order = (open: readonly Consultation[], atMs: number = nowMs) =>
    viewBar(open, 8, atMs).due.map(({ consultation: { id } }) => id);

  it('is a reaction, then what is over (a head before a strand), the basin, a look, and what comes soonest', () => {
    const open = [
      begunAgo(running, 'soonest', nowMs, 1),
      begunAgo(running, 'look', nowMs, 8, [3]),
      begunAgo(onHead, 'basin', nowMs, 24, [3, 6, 9, 12, 15, 18, 21, 24]),
      begunAgo(running, 'strandOver', nowMs, 40),
      begunAgo(onHead, 'headOver', nowMs, 26),
    ];
    expect(order([...open, { ...reacts.consultation, id: 'reacts' }])).toEqual([
      'reacts',
      'headOver',
      'strandOver',
      'basin',
      'look',
      'soonest',
    ]);
  });

  it('of two reactions is the one with colour still on her, then the one told first', () => {
    const rinsed = tap(reacts, 5_000, { type: 'BOWL_RINSED', answers: { zone: 'lengths' } });
    const open = [
      { ...rinsed.consultation, id: 'rinsed' },
      { ...reacts.consultation, id: 'on' },
    ];
    const due = viewBar(open, 8, rinsed.atMs).due.filter(({ what }) => what === 'reaction');
    expect(due.map(({ consultation: { id } }) => id)).toEqual(['on', 'rinsed']);
    const said = due.map((each) => sayBarDue(each, rinsed.atMs + 59_900, words, units));
    expect(said).toEqual([
      { name: 'REACTION', says: 'rinse · on her for', digits: '1:04', tone: 'over' },
      { name: 'REACTION', says: 'off her · since told', digits: '1:04', tone: 'over' },
    ]);
  });

  it('is a look at a strand in its last two minutes too, told as that', () => {
    const near = { ...begunAgo(running, 'near', nowMs, 23.5, [19]), id: 'near' };
    const [clock] = near.record.clocks;
    if (clock === undefined) throw new Error('no clock');
    const looks = { firstAfterMs: 2 * minute, everyMs: 3 * minute };
    const open: Consultation = { ...near, record: { ...near.record, clocks: [{ ...clock, looks }] } };
    const [first] = viewBar([begunAgo(running, 'soonest', nowMs, 1), open], 8, nowMs).due;
    if (first === undefined) throw new Error('nothing is due');
    expect(first.consultation.id).toBe('near');
    expect(sayBarDue(first, nowMs, words, units)).toMatchObject({
      says: 'look now',
      digits: '+3:30',
      tone: 'look',
    });
  });

  it('counts a look from when it fell due, however many were missed since', () => {
    const missed = begunAgo(running, 'missed', nowMs, 9);
    const newer = begunAgo(running, 'newer', nowMs, 6, [2.5]);
    expect(order([newer, missed])).toEqual(['missed', 'newer']);
    const [first, second] = viewBar([newer, missed], 8, nowMs).due.map((due) =>
      sayBarDue(due, nowMs, words, units),
    );
    expect(first).toMatchObject({ says: 'look now', digits: '+7:00', tone: 'look' });
    expect(second).toMatchObject({ says: 'look now', digits: '+1:00' });
  });
});

describe('a lane', () => {
  it('says what to do where no clock runs', () => {
    expect(sayLane(asked, words, atMs, settings)).toEqual({
      what: 'snip and start a strand',
      todo: null,
      tone: 'idle',
    });
    expect(sayLane(playUntil('DECIDED').consultation, words, atMs, settings).what).toBe('weigh the bowl');
    expect(sayLane(playUntil('BOWL_WEIGHED').consultation, words, atMs, settings).what).toBe(
      'put the bowl on',
    );
    expect(sayLane(playUntil('OUTCOME_RECORDED', 'ends').consultation, words, atMs, settings).what).toBe(
      'record the outcome',
    );
  });

  it('says what is in the way, not what the gate refuses', () => {
    const decided = playUntil('DECIDED').consultation;
    const say = (of: Consultation, knot: Parameters<typeof sayLane>[4]) =>
      sayLane(of, words, atMs, settings, knot).what;
    expect(say(decided, 'skinTestWaiting')).toBe('skin test to read');
    expect(say(asked, 'skinTestWaiting')).toBe('snip and start a strand');
    expect(say(asked, 'anotherDay')).toBe('ask her anew today');
    expect(say(asked, 'forAJudgement')).toBe('a stop to judge');
    expect(say(asked, 'incompatibilityOpen')).toBe('glass test first');
    expect(say(playUntil('BOWL_RINSED').consultation, 'strandUsed')).toBe('give the heat plan');
  });

  it('says the same in the row of who waits', () => {
    const snaps = playUntilConfirmed('hotTools');
    const wet = { porosity: 'normal', curl: 'straight', breakage: 'no', wetStretch: 'snaps' };
    const answers = { nape: 'dry', mid: 'dry', ends: 'dry', ...wet };
    let played = tap(snaps, 1, { type: 'ANSWERED', step: 'feelHair', answers });
    played = tap(played, 1, { type: 'STEP_CONFIRMED', answers: { step: 'feelHair' } });
    played = tap(played, 1, { type: 'ANSWERED', step: 'heatSpray', answers: { finish: 'noHotTool' } });
    played = tap(played, 1, { type: 'STEP_CONFIRMED', answers: { step: 'heatSpray' } });
    const { text } = sayInLine(played.consultation, played.atMs, words, settings);
    expect(text).toBe('a stop to judge');
  });

  it('calls for no bowl on her head that is past its half hour', () => {
    const { consultation, atMs: weighedAtMs } = playUntil('BOWL_WEIGHED');
    expect(sayLane(consultation, words, weighedAtMs + 1_800_000, settings).what).toBe('put the bowl on');
    expect(sayLane(consultation, words, weighedAtMs + 1_800_001, settings).what).toBe('throw the bowl away');
  });

  it('says loudly that she is stopped', () => {
    const stopped = tap({ consultation: asked, atMs }, 1, {
      type: 'ANSWERED',
      step: 'client',
      answers: { reactions: ['hives'] },
    }).consultation;
    expect(sayLane(stopped, words, atMs, settings)).toEqual({
      what: 'Stopped',
      todo: 'see why',
      tone: 'over',
    });
  });
});

describe('who is parked', () => {
  it('is listed by her day, and is late once it has passed', () => {
    const later = tap({ consultation: asked, atMs }, 1, {
      type: 'PARKED',
      answers: { untilAtMs: atMs + 2 * 86_400_000 },
    }).consultation;
    const view = viewBar([move(later, 'later', 1), move(parked, 'sooner', 2)], 8, atMs);
    expect(view.parked.map(({ id }) => id)).toEqual(['sooner', 'later']);
    expect(view.parked.map((each) => isBackLate(each, atMs + 86_400_001))).toEqual([true, false]);
    expect(isBackLate(parked, atMs + 86_400_000)).toBe(false);
  });
});
