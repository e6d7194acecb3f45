import { expect, it } from 'vitest';
import { beginConsultation } from '../../../../machines/consultation/consultation';
import { endsIronedWet } from '../../../../seeds/endsIronedWet';
import type { RawEvent } from '../../../../shared/records/classify';
import { DecisionScreen } from '../../../../src/screens/decision/DecisionScreen';
import { act, choose, hasAct, layOnBench, press, pressed, said, seen, title, type } from '../bench';
import { type Played, playUntil, tap } from '../playStory';

/** The story up to the decision, with some of its taps told otherwise. */
const playAsIf = (change: (raw: RawEvent) => RawEvent): Played =>
  endsIronedWet.steps
    .slice(0, endsIronedWet.steps.findLastIndex(({ raw }) => raw.type === 'OUTCOME_RECORDED') + 1)
    .reduce<Played>((played, { afterMs, by, raw }) => tap(played, afterMs, change(raw), by), {
      consultation: beginConsultation('otherwise'),
      atMs: endsIronedWet.startAtMs,
    });

/** The same, of hair that nothing told weakened. */
const playCalm = (): Played =>
  playAsIf((raw) =>
    raw.type === 'ANSWERED' && raw.step === 'hotTools'
      ? { ...raw, answers: { habits: [], smoke: 'no', history: ['none'] } }
      : raw,
  );

it('decides what is suggested in one tap', async () => {
  const bench = layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths'));
  expect(title()).toBe('No lightener on these ends');
  expect(pressed('decision')).toEqual(['endsOut']);
  await press('decide-endsOut');
  expect(bench.way()).toContain('"mix"');
});

it('asks a name, a reason and words before anything freer, and keeps whose they were', async () => {
  const bench = layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths'));
  await press('show-freer');
  await choose('decision', 'gentler');
  expect(hasAct('decide-gentler')).toBe(false);
  await press('override-freer');
  expect(said('by')).toBe('');
  await press('override');
  expect([said('by'), said('code'), said('words')]).toEqual([
    'Still to be filled in.',
    'Still to be answered.',
    'Still to be filled in.',
  ]);
  const waits = [...document.querySelectorAll<HTMLElement>('.step-actions [data-kind="primary"]')];
  expect(
    waits.map(({ dataset }) => dataset.act),
    'waiting comes first',
  ).toEqual(['cancel']);
  expect(bench.consultation().record.overrides).toEqual([]);
  await choose('by', 'Juno');
  await choose('code', 'seniorAgreed');
  await type('words', 'We both pulled it.');
  await press('override');
  expect(bench.consultation().record.overrides).toMatchObject([{ by: 'Juno', words: 'We both pulled it.' }]);
  await press('decide-gentler');
  expect(bench.consultation().record.decision).toMatchObject({
    by: 'Opal',
    decision: 'gentler',
    suggested: 'endsOut',
  });
});

it('says no, and goes on to the ways out', async () => {
  const bench = layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths'));
  await choose('decision', 'weSayNo');
  await press('decide-weSayNo');
  expect(bench.way()).toContain('"decision"');
  await press('go-on');
  expect(bench.countMore()).toBe(1);
});

it('sends cut hair and mere deposit to a new plan', async () => {
  const bench = layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths'));
  await choose('decision', 'cutFirst');
  await press('decide-cutFirst');
  expect(seen('[data-panel="cut-first"]')).toMatch(/^Cut about \d+(\.5)? (in|cm) from the tips/);
  expect(document.querySelectorAll('[data-act="change-plan"]')).toHaveLength(1);
  expect(act('change-plan').dataset.kind).toBe('primary');
  await press('change-plan');
  expect(bench.way()).toContain('"client"');
});

it('takes a wrong outcome back by name, but never that a strand broke', async () => {
  const bench = layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths'));
  expect(hasAct('retract-ends')).toBe(false);
  await press('retract-lengths');
  await choose('code', 'wrongTap');
  await type('words', 'Meant the other one.');
  await press('retract');
  expect(bench.last()).toMatchObject({ type: 'OUTCOME_RETRACTED', by: 'Opal', payload: { zone: 'lengths' } });
});

it('says which zone broke in which mix', () => {
  layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths'));
  expect(seen('[data-failed-in="ends"]')).toBe(
    'Closed on the ends, and anything as strong: Sandbar powder · 6 % bottle (20 vol) · 1 : 2 · no heat · 25 min',
  );
  expect(seen('[data-failed-in="lengths"]')).toBe('');
});

it('says which zone has no strand yet, where one was put aside', () => {
  const asideOf = (zone: string): RawEvent => ({ type: 'STRAND_DISCARDED', answers: { zone, why: 'lost' } });
  const alone = tap(playUntil('STRAND_STARTED', 'lengths'), 60_000, asideOf('lengths'));
  const events: readonly RawEvent[] = [
    { type: 'STRAND_TAKEN_OFF', answers: { zone: 'ends', why: 'levelReached' } },
    {
      type: 'OUTCOME_RECORDED',
      answers: {
        zone: 'ends',
        fibre: 'sound',
        stretch: 'springsBack',
        level: '7',
        wentPast30: 'no',
        evenness: 'even',
      },
    },
  ];
  layOnBench(
    DecisionScreen,
    events.reduce((played, raw) => tap(played, 60_000, raw), alone),
  );
  expect(seen('[data-missing="lengths"]')).toBe('Still missing: a strand from the lengths.');
  expect(seen('[data-missing="ends"]')).toBe('');
});

it('gives no reasons where there are none', () => {
  const reasons = () => document.querySelectorAll('.why li').length;
  const { unmount } = layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths'));
  expect(reasons()).toBeGreaterThan(0);
  unmount();
  layOnBench(DecisionScreen, playCalm());
  expect(seen('[data-failed-in="ends"]')).toContain('Closed on the ends');
  expect(document.querySelector('.why')).toBeNull();
});

it('says what each choice means where it is chosen, and what is not open why', async () => {
  layOnBench(
    DecisionScreen,
    playUntil('OUTCOME_RECORDED', 'lengths', { fibre: 'gummy', stretch: 'staysLong' }),
  );
  expect(seen('[data-option="weSayNo"]')).toContain('No colour today. That is an answer too.');
  expect(seen('.knot-word')).not.toContain('That is an answer too.');
  await press('show-freer');
  expect(seen('[data-option="depositOnly"]')).toContain('with its own strand');
  expect(document.querySelector('[data-option="endsOut"]')).toBeNull();
  expect(seen('[data-line="not-open"]')).toBe(
    'No strand allows: Ends out, Smaller lift, Gentler, As planned.',
  );
});

it('asks no signature of a way that mixes nothing after a strand that failed, and shows each once', async () => {
  const bench = layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths', { fibre: 'gummy' }));
  const options = () =>
    [...document.querySelectorAll<HTMLElement>('[data-option]')].map((tile) => tile.dataset.option);
  expect(options()).toEqual(['weSayNo', 'testAgain', 'cutFirst', 'severalVisits']);
  await press('show-freer');
  expect(options()).toEqual(['depositOnly']);
  await press('cancel');
  await choose('decision', 'testAgain');
  expect(hasAct('override-freer')).toBe(false);
  await press('decide-testAgain');
  expect(bench.way()).toContain('"preparing"');
});

it('says why a strand that felt sound counts as rough: a look found it stretchy', () => {
  const stretchy = playAsIf((raw) =>
    raw.type === 'LOOKED' && raw.answers?.zone === 'lengths'
      ? { ...raw, answers: { ...raw.answers, feel: 'stretchy' } }
      : raw,
  );
  layOnBench(DecisionScreen, stretchy);
  const lengths = seen('[data-finding="rough"]');
  expect(lengths).toContain('rough after 25 min');
  expect(lengths).toContain('stretchy or weak in the mix');
});

it('goes back from a strand that broke to what can explain it, in what she told, and what can be done', async () => {
  layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths'));
  await press('what-happened-ends');
  const told = seen('dialog[open]');
  expect(told).toContain('The strand from the ends broke after 9 min.');
  expect(seen('dialog[open] [data-explains="ironedWet"]')).toContain(
    'Flat iron: wet, 3 days a week, for 24 months.',
  );
  expect(seen('dialog[open] [data-line="nothing"]')).toBe('');
  expect(told).not.toContain('What else can do it');
  expect(seen('dialog[open] [data-line="not-known"]')).toBe('');
  expect(told).toContain('Cut what failed: nothing treats it back.');
  expect(told).toContain('drier and cooler');
  expect(told).toContain('none of them is certain');
});

it('says so where nothing she told would explain it, and what else can', async () => {
  layOnBench(DecisionScreen, playCalm());
  await press('what-happened-ends');
  expect(seen('dialog[open] [data-line="nothing"]')).toContain('would explain it');
  expect(document.querySelectorAll('dialog[open] [data-explains]')).toHaveLength(0);
  expect(seen('dialog[open]')).toContain('Metal salts');
  // She told of no iron.
  expect(seen('dialog[open]')).not.toContain('drier and cooler');
});

it('tells what happened once where several zones failed: of the oldest hair', () => {
  layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths', { fibre: 'gummy' }));
  expect(seen('[data-failed-in="lengths"]')).not.toBe('');
  expect(hasAct('what-happened-ends')).toBe(true);
  expect(hasAct('what-happened-lengths')).toBe(false);
});

it('says what the decision leaves of what was tested: how strong, how long, how often, how far from the tips', async () => {
  layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths'));
  expect(seen('[data-line="limits"]')).toMatch(
    /^At most 3 % \(10 vol\), 25 min, no heat\. Look every 3 min\. Stays \d+(\.5)? (in|cm) from the tips\.$/,
  );
  expect(seen('[data-option="endsOut"]')).toContain('At most 3 %');
});

it('says of what is freer than suggested what a signature would leave, before anybody signs', async () => {
  layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths', { fibre: 'rough' }));
  expect(seen('[data-line="limits"]')).toContain('At most 3 % (10 vol), 25 min');
  await press('show-freer');
  await choose('decision', 'asPlanned');
  expect(seen('.step-page')).toContain('Decided like this, OK to mix. At most 6 % (20 vol), 25 min');
});
