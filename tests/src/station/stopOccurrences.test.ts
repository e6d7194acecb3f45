import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { classify, type RawEvent } from '../../../shared/records/classify';
import { type ClosedRecord, closeRecord } from '../../../shared/records/closedRecord';
import { digest } from '../../../shared/records/documents/canonical';
import type { ConsultationEvent } from '../../../shared/records/event';
import { beginRecord } from '../../../shared/records/record';
import { reduce } from '../../../shared/records/reduce';
import { inheritsStop, listSpokenFor } from '../../../src/station/inheritsStop';
import type { Unjudged } from '../../../src/station/unjudged';
import { andThen, find, lowRisk, ofStep, type Told, tell, until } from '../../shared/records/telling';

const shared = tell(until('FINISHED', lowRisk));
const { ticket } = shared.record;
const ticketKey = closeRecord(
  andThen(shared, { type: 'CALLED_OFF', answers: { reason: 'noTime' } }).record,
  [],
)?.ticketKey;
const client = find(ofStep('client'));

const acts = ['hives', 'corrects', 'suspects', 'dismisses', 'burning', 'blisters'] as const;
type Act = (typeof acts)[number];
const raws: Readonly<Record<Act, RawEvent>> = {
  hives: { ...client, answers: { ...client.answers, reactions: ['hives'] } } as RawEvent,
  corrects: { type: 'CORRECTED', answers: { answer: 'client', code: 'hasChanged', words: 'not hers' } },
  suspects: { type: 'REACTION_SUSPECTED' },
  dismisses: { type: 'NO_REACTION' },
  burning: { type: 'REACTION_RECORDED', answers: { signs: ['burning'] } },
  blisters: { type: 'REACTION_RECORDED', answers: { signs: ['blisters'] } },
};

/** An account of the record, and beside it by hand which stops stand in it, each with the very entry that told it. */
interface Account {
  readonly told: Told;
  readonly stands: ReadonlyMap<string, string>;
}

/** What this act leaves standing, on paper. */
function stand(before: Account['stands'], act: Act, entry: string): Account['stands'] {
  const stands = new Map(before);
  const note = (kind: string) => void (stands.has(kind) || stands.set(kind, `${kind} ${entry}`));
  const signs = ['burning', 'blisters'].filter((sign) => stands.has(sign));
  if (act === 'hives') note('hives');
  if (act === 'corrects') stands.delete('hives');
  if (act === 'suspects') {
    for (const kind of ['reaction', 'burning', 'blisters']) stands.delete(kind);
    note('reaction');
  }
  if (act === 'dismisses') for (const kind of ['reaction', 'burning', 'blisters']) stands.delete(kind);
  if (act === 'burning' || act === 'blisters') {
    if (signs.length === 0) stands.delete('reaction');
    note('reaction');
    note(act);
  }
  return stands;
}

const goOn = (from: Account, some: readonly Act[], afterMs: number): Account =>
  some.reduce(({ told, stands }, act) => {
    if (act === 'corrects' && told.record.answers.client?.reactions?.includes('hives') !== true) {
      return { told, stands };
    }
    if (act === 'dismisses' && told.record.reaction === null) return { told, stands };
    const after = andThen(told, raws[act], afterMs);
    return { told: after, stands: stand(stands, act, JSON.stringify(after.log.at(-1))) };
  }, from);

const close = ({ record, log }: Told): ClosedRecord => {
  const ended = andThen(
    { record, log, atMs: record.newestAtMs },
    { type: 'CALLED_OFF', answers: { reason: 'noTime' } },
  );
  const closed = closeRecord(ended.record, ended.log);
  if (closed === null) throw new Error('still open');
  return { ...closed, broughtIn: { atMs: 1, settings: [] } };
};

/** What comes in: a record that closed, or one that this edition cannot read. On paper: what stands in it, what it lifts. */
interface Comes {
  readonly closed: readonly ClosedRecord[];
  readonly unjudged: readonly Unjudged[];
  readonly stands: readonly string[];
  readonly lifts: readonly string[];
}

const asAccount = (account: Account): Comes => ({
  closed: [close(account.told)],
  unjudged: [],
  stands: [...account.stands.values()],
  lifts: [],
});

const asUnread = ({ told }: Account): Comes => {
  const { log } = close(told);
  return {
    closed: [],
    unjudged: [
      {
        ...{
          id: told.record.id,
          kind: 'consultation',
          ticket: told.record.ticket,
          ticketKey: ticketKey ?? '',
        },
        ...{ cameAtMs: 0, why: 'notJudged', text: digest(log) },
      },
    ],
    stands: [`unread ${JSON.stringify(log)}`],
    lifts: [],
  };
};

const know = (all: readonly Comes[]) => ({
  open: new Map(),
  closed: all.flatMap(({ closed }) => closed),
  unjudged: all.flatMap(({ unjudged }) => unjudged),
});
/** All that stands in the records of which any stop was not lifted: whoever corrects sees the record, and so each of them. */
const listStanding = (all: readonly Comes[]): readonly string[] => {
  const lifted = new Set(all.flatMap(({ lifts }) => lifts));
  return all.flatMap(({ stands }) => (stands.every((each) => lifted.has(each)) ? [] : stands));
};

/** A consultation of the same ticket in which somebody who sees all this corrects what was handed on. */
function correctSeeing(seen: readonly Comes[], id: string): Comes {
  const speaksFor = listSpokenFor(know(seen), { id, ticket });
  const answers = { answer: 'inherited', code: 'wrongClient', words: 'another client', speaksFor };
  const log: ConsultationEvent[] = [];
  let record = beginRecord(id);
  for (const raw of [
    { type: 'OPENED', answers: { ticket, chair: '3' } },
    { type: 'CORRECTED', answers },
  ] as readonly unknown[] as readonly RawEvent[]) {
    const context = {
      settings: salon,
      settingsId: 0,
      atMs: 1,
      by: 'Opal',
      inheritsStop: true,
      isStation: true,
    };
    const event = classify(record, raw, context);
    if (!event.ok) throw new Error(JSON.stringify(event.error));
    record = reduce(record, event.value);
    log.push(event.value);
  }
  const closed = close({ record, log, atMs: 1 });
  return { closed: [closed], unjudged: [], stands: [], lifts: listStanding(seen) };
}

describe('a stop that was handed on', () => {
  it('is lifted by nobody who did not see that very stop, in whatever order accounts and corrections come in', () => {
    const seen = { stopped: 0, free: 0, again: 0 };
    const some = fc.array(fc.constantFrom(...acts), { maxLength: 3 });
    const drawn = fc.record({
      trunk: some,
      accounts: fc.array(fc.tuple(some, fc.boolean()), { minLength: 2, maxLength: 4 }),
      // Who sees which of all that came before.
      sees: fc.array(fc.nat(255), { minLength: 1, maxLength: 3 }),
      order: fc.infiniteStream(fc.nat(1000)),
    });
    fc.assert(
      fc.property(drawn, ({ trunk, accounts, sees, order }) => {
        const base = goOn({ told: shared, stands: new Map() }, trunk, 1000);
        const all = accounts.map(([own, isUnread], at) => {
          const account = goOn(base, own, 1000 * (at + 2));
          return isUnread ? asUnread(account) : asAccount(account);
        });
        for (const [at, mask] of sees.entries()) {
          const visible = all.filter((_each, index) => Math.floor(mask / 2 ** index) % 2 === 1);
          if (listStanding(visible).length > 0) all.push(correctSeeing(visible, `corrects${at}`));
        }
        const shuffled = all.map((each) => [order.next().value ?? 0, each] as const);
        const inOrder = shuffled.sort(([one], [other]) => one - other).map(([, each]) => each);
        for (let count = 1; count <= inOrder.length; count += 1) {
          const here = inOrder.slice(0, count);
          const isStopped = listStanding(here).length > 0;
          expect(inheritsStop(know(here), ticket)).toBe(isStopped);
          const hasLifted = here.some(({ lifts }) => lifts.length > 0);
          seen[isStopped ? (hasLifted ? 'again' : 'stopped') : 'free'] += 1;
        }
      }),
      { numRuns: 60, seed: 20_261_127 },
    );
    console.info(`stops by occurrence: ${JSON.stringify(seen)}`);
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(10);
  });
});
