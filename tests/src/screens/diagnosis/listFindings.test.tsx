import { expect, it } from 'vitest';
import {
  ASSUMED_BACKUP_DAYS,
  ASSUMED_FULL_SHARE,
  listFindings,
} from '../../../../src/screens/diagnosis/listFindings';
import type { Told } from '../../../../src/screens/diagnosis/told';
import { findWords } from '../../../../src/words/words';
import { toldWell } from './toldWell';

const find = (change: Partial<Told>) => listFindings({ ...toldWell, ...change }, findWords('en'), String);
const toSee = (change: Partial<Told>) =>
  find(change).flatMap(({ topic, todo }) => (todo === null ? [] : [topic]));
const facts = (change: Partial<Told['facts']>) => ({ facts: { ...toldWell.facts, ...change } });
const day = 86_400_000;

it('asks for nothing where all is well, and says each thing once', () => {
  expect(toSee({})).toEqual([]);
  const topics = find({}).map(({ topic }) => topic);
  expect(topics).toEqual([...new Set(topics)]);
  expect(topics).toHaveLength(11);
  expect(find({}).every(({ says }) => says.length > 5)).toBe(true);
});

it.each<[string, Partial<Told>, string]>([
  ['a newer version waits', { waiting: '0.2.0 bbbbbbbb' }, 'build'],
  ['the page is not kept', { page: 'refused' }, 'page'],
  ['there is no store', { mode: 'noStore', examined: null }, 'copies'],
  [
    'a copy is silent',
    { examined: { aside: [], copies: { journal: null, index: 'indexUnavailable' } } },
    'copies',
  ],
  [
    'something was set aside',
    {
      examined: {
        copies: { journal: null, index: null },
        aside: [{ log: 'open', copy: 'index', reason: 'gap' }],
      },
    },
    'aside',
  ],
  ['the browser may delete', facts({ isPersisted: false }), 'kept'],
  ['the browser does not say', facts({ isPersisted: null }), 'kept'],
  ['nothing was ever saved', { lastBackupAtMs: null }, 'backup'],
  ['the clock jumped', { jumpsMs: [90_000] }, 'clock'],
  ['the clock went back', { behindMs: 90_000 }, 'clock'],
  ['the screen goes dark', { screen: 'refused' }, 'screen'],
  ['there is no sound', { sound: 'unavailable' }, 'sound'],
  ['nobody heard it', { heard: null }, 'sound'],
  ['it was not heard', { heard: { answer: 'notHeard', atMs: 0 } }, 'sound'],
  ['the window is small', facts({ widthPx: 915, heightPx: 412 }), 'glass'],
])('where %s it says so, with what to do, and nothing else', (_title, change, topic) => {
  expect(toSee(change)).toEqual([topic]);
  const finding = find(change).find((each) => each.topic === topic);
  expect(finding?.todo?.length).toBeGreaterThan(10);
  expect(finding?.says).not.toBe(find({}).find((each) => each.topic === topic)?.says);
});

it('draws its lines for room and backup where it says it does', () => {
  const roomBytes = 1_000_000_000;
  const full = ASSUMED_FULL_SHARE * roomBytes;
  expect(toSee(facts({ roomBytes, usedBytes: full - 1 }))).toEqual([]);
  expect(toSee(facts({ roomBytes, usedBytes: full }))).toEqual(['room']);
  const since = ASSUMED_BACKUP_DAYS * day;
  expect(toSee({ lastBackupAtMs: toldWell.atMs - since })).toEqual([]);
  expect(toSee({ lastBackupAtMs: toldWell.atMs - since - 1 })).toEqual(['backup']);
});

it('says what another window knows as that, and asks for nothing', () => {
  expect(toSee({ mode: 'watching', examined: null })).toEqual([]);
});
