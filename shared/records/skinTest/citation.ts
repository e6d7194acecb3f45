import { isSameLine } from '../../judgement/mixes';
import { findReadableAtMs, judgeTest } from '../../judgement/skinTest';
import type { RawEvent } from '../classify';
import type { RawForm } from '../readForm';
import type { ConsultationRecord } from '../record';
import type { LocalProfile } from '../settings';
import { formTicketKey } from '../ticket';
import { asJudged, type SkinTest } from './skinTest';
import { isOfVisit } from './visit';

/** What a consultation's own log does not say yet of the skin tests of its ticket, and in whose name it is added. */
export interface Citation {
  readonly by: string;
  readonly raw: RawEvent;
}

/** A reading before the whole wait of today's profile is none: it has to be done again. */
function findSeen(test: SkinTest, profile: LocalProfile): SkinTest['seen'] {
  const judged = asJudged(test);
  const isEarly = (judged.readAtMs ?? 0) < findReadableAtMs(judged, profile);
  return test.seen === 'nothing' && isEarly ? 'notReadYet' : test.seen;
}

/** When it came in, where the consultation has to know it: for whoever reads it here, and for what was read here. */
const findCameAtMs = (test: SkinTest, seen: SkinTest['seen']): number | undefined =>
  seen === 'reaction' ? undefined : (seen === 'notReadYet' ? test : asJudged(test)).cameAtMs;

function cite(test: SkinTest, profile: LocalProfile): Citation {
  const { method, site, line, putOnAtMs, olderByMs, id, read } = test;
  const seen = findSeen(test, profile);
  const cameAtMs = findCameAtMs(test, seen);
  const answers: RawForm = {
    method,
    site,
    putOnAtMs,
    seen,
    skinTestId: id,
    olderByMs: String(olderByMs),
    ...(line === '' ? {} : { line }),
    ...(cameAtMs === undefined ? {} : { cameAtMs: String(cameAtMs) }),
    ...(seen === 'notReadYet' || read === null ? {} : { readAtMs: read.atMs }),
  };
  return { by: test.newestBy, raw: { type: 'SKIN_TEST_NOTED', answers } };
}

/** Why a consultation knows no such code: the test came off, so what it says of it has changed. */
const correct = ({
  by,
  code,
  words,
}: {
  readonly by: string;
  readonly code: string;
  readonly words: string;
}) => ({
  by,
  raw: {
    type: 'CORRECTED',
    answers: { answer: 'skinTest', code: code === 'cameOff' ? 'hasChanged' : code, words },
  } as const,
});

/** Does the consultation say of this very test what its own record says? */
function isSaid(
  noted: NonNullable<ConsultationRecord['skinTest']>,
  test: SkinTest,
  profile: LocalProfile,
): boolean {
  if (noted.skinTestId !== test.id) return false;
  if (noted.seen === 'notReadYet') {
    const isSame = noted.putOnAtMs === test.putOnAtMs && noted.cameAtMs === test.cameAtMs;
    return findSeen(test, profile) === 'notReadYet' && isSame;
  }
  return noted.seen === test.seen && noted.readAtMs === test.read?.atMs;
}

/** The tests of this ticket that stand, but for those a person named as another client's; oldest first. */
export const listStandingTests = (
  tests: readonly SkinTest[],
  ticket: string,
  notHers: readonly string[],
): readonly SkinTest[] =>
  tests
    .filter(
      ({ ticketKey, takenBack, id }) =>
        ticketKey === formTicketKey(ticket) && takenBack === null && !notHers.includes(id),
    )
    .sort((one, other) => one.putOnAtMs - other.putOnAtMs || one.noted.atMs - other.noted.atMs);

/**
 * What has this consultation still to be told of the skin tests of its ticket? null: nothing, it says what they say.
 * Its own log stays the one truth for its gate: a reaction of any of them stops it, else the one put on last counts,
 * whatever its product line; what was taken back there by name is taken back here in the same name.
 * Done again after it was written it gives null. Checked in tests/shared/records/skinTest/citation.test.ts.
 */
export function findCitation(
  record: ConsultationRecord,
  tests: readonly SkinTest[],
  profile: LocalProfile,
): Citation | null {
  if (record.opened === null || record.ended !== null) return null;
  const noted = record.skinTest;
  const standing = listStandingTests(tests, record.ticket, record.notHerSkinTests).filter((test) =>
    isOfVisit(test, record.id, tests),
  );
  const reacted = standing.find(({ seen }) => seen === 'reaction');
  // It stops her whatever else is still to be said, and may not be taken now.
  if (reacted !== undefined && noted?.seen !== 'reaction') return cite(reacted, profile);
  const cited = tests.find(({ id }) => id === noted?.skinTestId);
  if (noted !== null && cited !== undefined) {
    if (cited.takenBack !== null) return correct(cited.takenBack);
    const wasWrong = cited.readingsTakenBack.at(-1);
    if (noted.seen === 'reaction' && cited.seen !== 'reaction') {
      return wasWrong === undefined ? null : correct(wasWrong);
    }
  }
  if (noted?.seen === 'reaction') return null;
  const said = standing.at(-1);
  if (said === undefined || (noted !== null && isSaid(noted, said, profile))) return null;
  // What was noted here alone is as good as what was put on before it.
  if (noted !== null && noted.skinTestId === undefined) {
    if (said.putOnAtMs < noted.putOnAtMs) return null;
  }
  return cite(said, profile);
}

/** Why no skin test is put on now. `putOnAtMs`: since when the other one is on. */
export type PutOnRefusal =
  | { readonly kind: 'skinTestOn'; readonly putOnAtMs: number }
  | { readonly kind: 'skinTestReacted'; readonly putOnAtMs: number };

/**
 * May this skin test be put on, beside those that stand? One at a time for a ticket and line, since repeating may
 * itself sensitise (opinion of one toxicologist; the maker decides how often); none at all where one reacted. A reaction
 * told of is always taken.
 */
export function findPutOnRefusal(
  standing: readonly SkinTest[],
  { line, seen }: Pick<SkinTest, 'line' | 'seen'>,
  profile: LocalProfile,
  nowMs: number,
): PutOnRefusal | null {
  if (seen === 'reaction') return null;
  const reacted = standing.find((test) => test.seen === 'reaction');
  if (reacted !== undefined) return { kind: 'skinTestReacted', putOnAtMs: reacted.putOnAtMs };
  const on = standing.find((test) => {
    const status = judgeTest(asJudged(test), profile, nowMs);
    return (status === 'waiting' || status === 'due') && isSameLine(test.line, line);
  });
  return on === undefined ? null : { kind: 'skinTestOn', putOnAtMs: on.putOnAtMs };
}
