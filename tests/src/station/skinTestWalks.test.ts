import fc from 'fast-check';
import { afterEach, expect, it, vi } from 'vitest';
import type { ConsultationRecord } from '../../../shared/records/record';
import type * as citations from '../../../shared/records/skinTest/citation';
import type { SkinTest } from '../../../shared/records/skinTest/skinTest';
import { formTicketKey } from '../../../shared/records/ticket';
import { makeTablet } from '../storage/tablet';
import { type StationUnderTest, startSalon, startStation } from './stationUnderTest';

type FindCitation = typeof citations.findCitation;

/** A planted fault, in place of what finds out what a consultation has still to be told. */
const planted = vi.hoisted(() => ({ fault: null as null | ((real: FindCitation) => FindCitation) }));

vi.mock('../../../shared/records/skinTest/citation', async (importReal) => {
  const real = await importReal<typeof citations>();
  const findCitation: FindCitation = (...asked) =>
    (planted.fault === null ? real.findCitation : planted.fault(real.findCitation))(...asked);
  return { ...real, findCitation };
});

afterEach(() => {
  planted.fault = null;
});

const hour = 3_600_000;
const tickets = ['Q.F.', 'q f', 'K.L.'] as const;
const how = { method: 'makersMethod', site: 'behindEar' };

/** One thing somebody does; `pick` says which of what there is. */
interface Step {
  readonly what: 'putOn' | 'read' | 'react' | 'takeBack' | 'open' | 'notHers' | 'park' | 'resume' | 'restart';
  readonly pick: number;
  readonly afterH: number;
}

const steps = fc.array(
  fc.record<Step>({
    what: fc.constantFrom(
      'putOn',
      'putOn',
      'read',
      'react',
      'takeBack',
      'open',
      'open',
      'notHers',
      'park',
      'resume',
      'restart',
    ),
    pick: fc.nat(11),
    afterH: fc.constantFrom(0, 1, 30, 60),
  }),
  { minLength: 6, maxLength: 22 },
);

const pickOf = <T>(all: readonly T[], pick: number): T | undefined => all[pick % Math.max(all.length, 1)];

/** Refusals are as good as anything: what stands afterwards is what counts. */
async function take({ station, clock }: StationUnderTest, { what, pick }: Step): Promise<void> {
  const { open, skinTests } = station.readState();
  const test = pickOf(skinTests, pick)?.id ?? '';
  const client = pickOf([...open.keys()], pick) ?? '';
  const change = (type: 'SKIN_TEST_READ' | 'SKIN_TEST_TAKEN_BACK', answers: Record<string, string>) =>
    station.changeSkinTest(test, 'Wren', { type, answers });
  switch (what) {
    case 'putOn':
      await station.putOnSkinTest('Juno', {
        ...how,
        ticket: tickets[pick % 3] ?? '',
        line: pick % 2 === 0 ? 'Sandbar cream' : 'Cove cream',
        putOnAtMs: clock.atMs - (pick % 4) * 20 * hour,
        seen: pick === 11 ? 'nothing' : 'notReadYet',
      });
      return;
    case 'read':
      await change('SKIN_TEST_READ', { seen: 'nothing' });
      return;
    case 'react':
      await change('SKIN_TEST_READ', { seen: 'reaction' });
      return;
    case 'takeBack':
      await change('SKIN_TEST_TAKEN_BACK', {
        what: pick % 2 === 0 ? 'test' : 'reading',
        code: 'wrongTap',
        words: 'x',
      });
      return;
    case 'open':
      await station.open('Opal', { ticket: tickets[pick % 3] ?? '', chair: String((pick % 8) + 1) });
      return;
    case 'notHers': {
      const answers = { answer: 'skinTest', code: 'wrongClient', words: 'x' };
      await station.submit(client, 'Opal', { type: 'CORRECTED', answers });
      return;
    }
    case 'park':
      await station.submit(client, 'Opal', { type: 'PARKED', answers: { untilAtMs: clock.atMs + hour } });
      return;
    default:
      await station.submit(client, 'Opal', { type: 'RESUMED' });
  }
}

/** What a person would say the consultation has to know, worked out from the tests alone. */
function findFault(record: ConsultationRecord, way: string, tests: readonly SkinTest[]): string | null {
  const hers = tests.filter(
    ({ ticket, takenBack, id }) =>
      formTicketKey(ticket) === formTicketKey(record.ticket) &&
      takenBack === null &&
      !record.notHerSkinTests.includes(id),
  );
  const { skinTest } = record;
  if (hers.some(({ seen }) => seen === 'reaction')) {
    if (skinTest?.seen !== 'reaction') return 'a reaction was not told';
    return way.includes('stopped') ? null : 'a reaction did not stop her';
  }
  // Who is away is told of what was taken back once she is taken up again.
  if (record.parked !== null) return null;
  const last = Math.max(...hers.map(({ putOnAtMs }) => putOnAtMs));
  if (hers.length === 0) return skinTest === null ? null : 'she has a test that is none of hers';
  const cited = hers.find(({ id }) => id === skinTest?.skinTestId);
  if (cited === undefined) return 'her test was not told';
  if (cited.putOnAtMs !== last) return 'an older test counts';
  return cited.seen === skinTest?.seen ? null : 'it says otherwise than its test';
}

const counted = { cited: 0, reactions: 0, restarts: 0 };

async function walk(story: readonly Step[]): Promise<void> {
  const tablet = makeTablet();
  let under = await startSalon(tablet);
  for (const step of story) {
    under.clock.atMs += step.afterH * hour;
    if (step.what === 'restart') {
      const { atMs } = under.clock;
      await under.station.stopWriting();
      under = await startStation(tablet, undefined, undefined, atMs, `again${story.indexOf(step)}x`);
      counted.restarts += 1;
    } else await take(under, step);
    const { open, skinTests, notices } = under.station.readState();
    expect(notices).toEqual([]);
    for (const { record, state } of open.values()) {
      expect(findFault(record, JSON.stringify(state.value), skinTests)).toBeNull();
      if (record.skinTest !== null) counted.cited += 1;
      if (record.skinTest?.seen === 'reaction') counted.reactions += 1;
    }
  }
}

const seed = Number(process.env.SEED ?? 20_261_125);
const walks = (numRuns: number) =>
  fc.check(fc.asyncProperty(steps, walk), { seed, numRuns, endOnFailure: true });

it('keeps every open consultation saying what the tests of its ticket say, over random days', async () => {
  const done = await walks(250);
  expect(done.failed ? fc.defaultReportMessage(done) : '').toBe('');
  console.info(`skin tests: ${done.numRuns} walks, seed ${seed}, ${JSON.stringify(counted)}`);
  expect(counted.cited).toBeGreaterThan(500);
  expect(counted.reactions).toBeGreaterThan(100);
  expect(counted.restarts).toBeGreaterThan(50);
});

const faults: Readonly<Record<string, (real: FindCitation) => FindCitation>> = {
  'a reaction is kept quiet': (real) => (record, tests, profile) => {
    const citation = real(record, tests, profile);
    return citation?.raw.answers?.seen === 'reaction' ? null : citation;
  },
  'nothing is ever taken back': (real) => (record, tests, profile) => {
    const citation = real(record, tests, profile);
    return citation?.raw.type === 'CORRECTED' ? null : citation;
  },
  'a test taken back still counts': (real) => (record, tests, profile) =>
    real(
      record,
      tests.map((test) => ({ ...test, takenBack: null })),
      profile,
    ),
  'another ticket counts': (real) => (record, tests, profile) =>
    real(
      record,
      tests.map((test) => ({ ...test, ticketKey: formTicketKey(record.ticket) })),
      profile,
    ),
  'what is not hers counts': (real) => (record, tests, profile) =>
    real({ ...record, notHerSkinTests: [] }, tests, profile),
  'the test put on first counts': (real) => (record, tests, profile) =>
    real(
      record,
      tests.map((test) => ({ ...test, putOnAtMs: -test.putOnAtMs })),
      profile,
    ),
  'nothing is told': () => () => null,
};

it.each(Object.entries(faults))('would be caught: %s', async (_name, fault) => {
  planted.fault = fault;
  expect((await walks(250)).failed).toBe(true);
});
