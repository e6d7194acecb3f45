import type { SkinTestToken } from '../records/event';
import type { ClientAnswers } from '../records/forms/client';
import type { ConsultationRecord, SkinTestRecord } from '../records/record';
import type { LocalProfile } from '../records/settings';
import { msPerDay, msPerHour } from '../units/time';

/** When a skin test was put on, and when it came in here, where it was put on at another station. */
type Begun = Pick<SkinTestRecord, 'putOnAtMs' | 'cameAtMs'>;

/** Since when has it surely been on, by this tablet's clock? Another one's may be behind: since it came in at the latest. */
export const findWaitsSinceMs = ({ putOnAtMs, cameAtMs = 0 }: Begun): number => Math.max(putOnAtMs, cameAtMs);

/** When may the skin test be read here at the earliest, under this profile? */
export const findReadableAtMs = (test: Begun, profile: LocalProfile): number =>
  findWaitsSinceMs(test) + profile.skinTestWaitH * msPerHour;

/** What the judgement of a skin test reads, be it of a test's own record or as a consultation noted it. */
export type JudgedSkinTest = Pick<SkinTestRecord, 'putOnAtMs' | 'cameAtMs' | 'seen' | 'olderByMs'> & {
  readonly readAtMs: number | null;
};

/** Until when does it count? On this tablet's clock: what was set back since makes it older, never younger. */
export const findLapsesAtMs = (
  { putOnAtMs, olderByMs }: Pick<JudgedSkinTest, 'putOnAtMs' | 'olderByMs'>,
  profile: LocalProfile,
): number => putOnAtMs - olderByMs + profile.skinTestLapsesDays * msPerDay;

/** `due`: it may be read now, and nobody has. `lapsedUnread`: nobody ever did, in time. */
export type SkinTestStatus = 'waiting' | 'due' | 'clear' | 'lapsed' | 'lapsedUnread' | 'reaction';

/**
 * How does this skin test stand at this moment, whoever it is for? A reaction stays one. It is clear only when it was
 * read after the whole wait of today's profile, whatever the wait was said to be at the time.
 */
export function judgeTest(test: JudgedSkinTest, profile: LocalProfile, nowMs: number): SkinTestStatus {
  if (test.seen === 'reaction') return 'reaction';
  const readableAtMs = findReadableAtMs(test, profile);
  const isRead = test.seen === 'nothing' && test.readAtMs !== null && test.readAtMs >= readableAtMs;
  if (nowMs > findLapsesAtMs(test, profile)) return isRead ? 'lapsed' : 'lapsedUnread';
  if (isRead) return 'clear';
  return nowMs >= readableAtMs ? 'due' : 'waiting';
}

const tokens: Readonly<Record<SkinTestStatus, SkinTestToken>> = {
  waiting: 'waiting',
  due: 'waiting',
  clear: 'clear',
  lapsed: 'lapsed',
  lapsedUnread: 'lapsed',
  reaction: 'positive',
};

/**
 * How does the skin test of this consultation stand at this moment, for what she came for and what is done `also`? Judged anew at every event; a positive one stays
 * positive.
 * "Clear" says that no reaction was seen, never that the product is safe: of 42 people known to be allergic 38
 * noticed a 45-minute open application on the forearm (published: Coenraads et al., Dermatitis 2018).
 */
export function judgeSkinTest(
  { answers, skinTest }: Pick<ConsultationRecord, 'answers' | 'skinTest'>,
  profile: LocalProfile,
  nowMs: number,
  also?: ClientAnswers['service'],
): SkinTestToken {
  if (skinTest?.seen === 'reaction') return 'positive';
  const services = [answers.client?.service, ...(also === undefined ? [] : [also])];
  const isNeeded = services.some((service) => service === undefined || profile.skinTestFor.includes(service));
  if (!isNeeded) return 'notNeeded';
  return skinTest === null ? 'missing' : tokens[judgeTest(skinTest, profile, nowMs)];
}
