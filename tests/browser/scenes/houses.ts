import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import { closeRecord } from '../../../shared/records/closedRecord';
import type { Settings } from '../../../shared/records/settings';
import { classifySkinTest } from '../../../shared/records/skinTest/classify';
import {
  nameClosedLog,
  nameOpenLog,
  nameSkinTestLog,
  SETTINGS_LOG,
  UNJUDGED_LOG,
} from '../../../src/station/logNames';
import { writeUnjudged } from '../../../src/station/unjudged';
import type { Logs } from '../memory';
import {
  bothOn,
  dayMs,
  event,
  fullSalon,
  hourMs,
  minuteMs,
  nowMs,
  type Seated,
  say,
  seat,
  until,
  untilConfirmed,
  steps as whole,
} from './clients';

const keepSettings = (settings: Settings): Logs => ({
  [SETTINGS_LOG]: [{ settings, by: 'Opal', atMs: nowMs - 90 * dayMs }],
});

/** Nobody has sat down, nothing was set. */
export const newHouse = (): Logs => ({});
/** The invented salon before the first client of the day. */
export const emptyHouse = (): Logs => keepSettings(salon);

/** The same, where lines are wanted after the pulses. */
export const spokenHouse = (): Logs => keepSettings({ ...salon, spoken: true });

const openLog = (seated: Seated): Logs => {
  const { id, log } = seat(seated);
  return { [nameOpenLog(id)]: log };
};

/** One client at the third chair, and nobody else. */
export const alone =
  (steps: readonly StoryStep[], agoMs = 1_000) =>
  (): Logs => ({
    ...emptyHouse(),
    ...openLog({ chair: 3, ticket: 'Q.F.', steps, agoMs }),
  });

/** The same of a salon that has set nobody to call. */
export const aloneUncalled = (steps: readonly StoryStep[]) => (): Logs => ({
  ...alone(steps)(),
  ...keepSettings({ ...salon, contact: '' }),
});

const parkedUntil = (afterMs: number): readonly StoryStep[] => [
  ...untilConfirmed('heatSpray'),
  event('PARKED', { untilAtMs: nowMs + afterMs }),
];

/** Everybody who is there when it could not be fuller: strands and heads due, a reaction, a stop, one who waits. */
const others: readonly Seated[] = [
  { chair: 1, ticket: 'Wamemwom-QW.', steps: until('LOOKED', 'lengths'), agoMs: 6 * minuteMs },
  { chair: 2, ticket: 'M.W.', steps: until('BOWL_APPLIED'), agoMs: 27 * minuteMs },
  { chair: 4, ticket: 'Mowgwum-M.W.', steps: bothOn, agoMs: 14 * minuteMs },
  {
    chair: 5,
    ticket: 'G.Q.',
    steps: [...until('BOWL_APPLIED'), event('REACTION_SUSPECTED', {}, 5 * minuteMs)],
    agoMs: minuteMs,
  },
  {
    chair: 6,
    ticket: 'Ommwhelm-W.M',
    steps: [...until('OPENED'), say('client', { reactions: ['hives', 'tightChest'] })],
    agoMs: 3 * minuteMs,
  },
  { chair: 7, ticket: 'B.D.', steps: until('STRAND_TAKEN_OFF'), agoMs: 2 * minuteMs },
  { chair: 8, ticket: 'Wemmblum-G.W', steps: until('BOWL_WEIGHED'), agoMs: 2 * minuteMs },
  { chair: 9, ticket: 'Qumwimow-M.M', steps: until('STRAND_STARTED', 'lengths'), agoMs: 4 * minuteMs },
  { chair: 10, ticket: 'Momwegwum-WM', steps: parkedUntil(2 * dayMs), agoMs: 3 * hourMs },
  { chair: 11, ticket: 'H.J.', steps: parkedUntil(90 * minuteMs), agoMs: 50 * hourMs },
];

const decisionDue: Seated = { chair: 3, ticket: 'Quwemmowm-MW', steps: until('OUTCOME_RECORDED', 'lengths') };

const seatAll = (all: readonly Seated[]): Logs =>
  Object.assign(keepSettings(fullSalon), ...all.map((each) => openLog({ settings: fullSalon, ...each })));

/** The fullest bar. */
export const fullHouse = (): Logs => seatAll([...others, decisionDue]);

/** The fullest bar with one chair left. */
export const houseWithRoom = (): Logs => seatAll(others);

/** The fullest bar, where the third chair has this client. */
export const among =
  (steps: readonly StoryStep[], agoMs = 1_000) =>
  (): Logs =>
    seatAll([...others, { ...decisionDue, steps, agoMs }]);

/** An ordinary afternoon. */
export const usualHouse = (): Logs => ({
  ...emptyHouse(),
  ...openLog({ chair: 1, ticket: 'A.K.', steps: until('LOOKED', 'ends'), agoMs: minuteMs }),
  ...openLog({ chair: 3, ticket: 'Q.F.', steps: until('BOWL_APPLIED'), agoMs: 8 * minuteMs }),
  ...openLog({ chair: 4, ticket: 'R.V.', steps: untilConfirmed('hotTools'), agoMs: minuteMs }),
  ...openLog({ chair: 10, ticket: 'H.J.', steps: parkedUntil(2 * dayMs), agoMs: 3 * hourMs }),
});

/** Records closed today, or so many days ago, one after the other; each went so far before she left. */
export const withClosed =
  (logs: () => Logs, tickets: readonly string[], settings = salon, daysAgo = 0, steps = whole) =>
  (): Logs => {
    const records = tickets.map((ticket, index) => {
      const agoMs = (tickets.length - index) * 20 * minuteMs + daysAgo * dayMs;
      const { record, log } = seat({ chair: 20 + index, ticket, steps, agoMs, settings });
      return closeRecord({ ...record, id: `${record.id}${daysAgo === 0 ? '' : daysAgo}` }, log);
    });
    return { ...logs(), [nameClosedLog(nowMs - daysAgo * dayMs)]: records };
  };

/** `cameHoursAgo`: it was put on at another station, and came in then. */
type TestOn = readonly [ticket: string, hoursAgo: number, cameHoursAgo?: number];

/** Skin tests put on so many hours ago, nobody has read them: some wait, some are due, some have lapsed. */
export const withSkinTests =
  (logs: () => Logs, tests: readonly TestOn[], settings = salon) =>
  (): Logs => ({
    ...logs(),
    ...Object.fromEntries(
      tests.map(([ticket, hoursAgo, cameHoursAgo], index) => {
        const atMs = nowMs - hoursAgo * hourMs;
        const line = settings.shelf.findLast(({ kind }) => kind === 'colour')?.name ?? '';
        const answers = {
          ticket,
          method: 'makersMethod',
          site: 'innerElbow',
          line,
          putOnAtMs: atMs,
          seen: 'notReadYet',
        };
        const put = classifySkinTest(
          null,
          { type: 'SKIN_TEST_PUT_ON', answers },
          { settings, settingsId: 0, atMs, by: 'Juno' },
        );
        if (!put.ok) throw new Error(JSON.stringify(put.error));
        const told = [{ entry: put.value, profile: settings.profile }];
        return [
          nameSkinTestLog(`skin${String(index).padStart(8, '0')}`),
          cameHoursAgo === undefined ? [put.value] : [{ told, cameAtMs: nowMs - cameHoursAgo * hourMs }],
        ];
      }),
    ),
  });

/** Of this ticket a record and a skin test of another station, which nobody here can judge. */
export const withUnjudged = (logs: () => Logs, ticket: string) => (): Logs => {
  const opened = { payload: { ticket } };
  const tell = (kind: string, first: object) => ({
    ...{ id: `${kind}:there001:`, kind },
    body: { id: 'there001', log: [first] },
  });
  return {
    ...logs(),
    [UNJUDGED_LOG]: [
      writeUnjudged(tell('consultation', opened), nowMs - 2 * dayMs, 'newer'),
      writeUnjudged(tell('skinTest', { entry: opened }), nowMs - dayMs, 'notJudged'),
    ],
  };
};
