import type { EventOf } from '../../../../../shared/records/event';
import type { Settings } from '../../../../../shared/records/settings';

const hourMs = 3_600_000;

/**
 * The skin test as it was noted. Where two clocks disagree about when it was put on, it has waited since the later and
 * lapses from the earlier moment.
 */
export function makeHeardSkinTest(settingsById: readonly Settings[]) {
  let noted: {
    readonly putOnAtMs: number;
    /** The same on a clock that nobody moved, by the oldest and by the newest note of it. */
    readonly earliestMs: number;
    readonly latestMs: number;
    /** The station's time of a reading that saw nothing. */
    readonly readAtMs: number | null;
    readonly isPositive: boolean;
  } | null = null;

  const profileOf = (settingsId: number) => settingsById[settingsId]?.profile;
  const waitMs = (settingsId: number) =>
    (profileOf(settingsId)?.skinTestWaitH ?? Number.POSITIVE_INFINITY) * hourMs;

  return {
    listFaultsOfNote: ({ payload, atMs, settingsId }: EventOf<'SKIN_TEST_NOTED'>): readonly string[] => [
      ...(payload.putOnAtMs < (noted?.putOnAtMs ?? 0) ? ['it was noted later before'] : []),
      ...(payload.seen === 'nothing' && atMs - payload.putOnAtMs < waitMs(settingsId)
        ? ['it was read too early']
        : []),
    ],
    note: ({ payload, atMs }: EventOf<'SKIN_TEST_NOTED'>, movedMs: number): void => {
      const { putOnAtMs, seen } = payload;
      const realMs = putOnAtMs - movedMs;
      const same = noted?.putOnAtMs === putOnAtMs ? noted : null;
      noted = {
        putOnAtMs,
        earliestMs: Math.min(realMs, same?.earliestMs ?? realMs),
        latestMs: Math.max(realMs, same?.latestMs ?? realMs),
        readAtMs: seen === 'nothing' ? atMs : null,
        isPositive: seen === 'reaction',
      };
    },
    /** Taken back by name. Was it a stop? A mere note is forgotten and voids nothing. */
    takeBack: (): boolean => {
      const isStop = noted?.isPositive === true;
      noted = isStop && noted !== null ? { ...noted, readAtMs: null, isPositive: false } : null;
      return isStop;
    },
    /** A reading stamped ahead of the clock as it was set back has to be done again. */
    doubt: (atMs: number): void => {
      if (noted?.readAtMs != null && noted.readAtMs > atMs) noted = { ...noted, readAtMs: null };
    },
    listFaults: (service: string | undefined, atMs: number, settingsId: number): readonly string[] => {
      const profile = profileOf(settingsId);
      if (profile === undefined) return ['no settings'];
      if (service !== undefined && !(profile.skinTestFor as readonly string[]).includes(service)) return [];
      if (noted?.readAtMs == null) return ['no skin test was read'];
      const hasWaited =
        noted.readAtMs - noted.putOnAtMs >= waitMs(settingsId) && atMs - noted.latestMs >= waitMs(settingsId);
      const isOld = atMs - noted.earliestMs > profile.skinTestLapsesDays * 24 * hourMs;
      return [
        ...(hasWaited ? [] : ['the skin test has not waited']),
        ...(isOld ? ['the skin test lapsed'] : []),
      ];
    },
  };
}
