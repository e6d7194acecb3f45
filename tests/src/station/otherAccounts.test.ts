import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { RawEvent } from '../../../shared/records/classify';
import {
  type ConsultationBody,
  documentConsultation,
  type RecordDocument,
} from '../../../shared/records/documents/document';
import { listDocuments } from '../../../shared/records/documents/listDocuments';
import { MODEL_VERSION } from '../../../shared/records/event';
import { msPerDay, msPerHour } from '../../../shared/units/time';
import { inheritsStop } from '../../../src/station/inheritsStop';
import { listHeld } from '../../../src/station/merging';
import { makeTablet } from '../storage/tablet';
import { play, type StationUnderTest, startAtMs, startStation } from './stationUnderTest';

const by = 'Opal';
const month = 31 * msPerDay;
const callOff: RawEvent = { type: 'CALLED_OFF', answers: { reason: 'noTime' } };
const hives: RawEvent = { type: 'ANSWERED', step: 'client', answers: { reactions: ['hives'] } };

async function start(idBegins: string, keepMonths: number | null, erasesByItself = false) {
  const under = await startStation(makeTablet(), undefined, undefined, undefined, idBegins);
  await under.station.saveSettings(by, { ...salon, keepMonths, erasesByItself });
  return under;
}

const goTo = (months: number, ...all: readonly StationUnderTest[]): void => {
  for (const { clock } of all) clock.atMs = startAtMs + months * month;
};
const visit = (under: StationUnderTest, ticket: string, ...raws: readonly RawEvent[]) =>
  play(under, [
    { afterMs: 1_000, by, raw: { type: 'OPENED', answers: { ticket, chair: '3' } } },
    ...[...raws, callOff].map((raw) => ({ afterMs: 1_000, by, raw })),
  ]);
const share = ({ station }: StationUnderTest): readonly RecordDocument[] => [
  ...listDocuments(listHeld(station.readLogs()), station.readSettings()),
];
const isStopped = ({ station }: StationUnderTest): boolean => inheritsStop(station.readState(), 'q f');

function findBody(documents: readonly RecordDocument[]): ConsultationBody {
  const found = documents.find(({ kind }) => kind === 'consultation');
  if (found?.kind !== 'consultation') throw new Error('no consultation is shared');
  return found.body;
}

describe('a stop that another account of the same record tells', () => {
  it('of a newer edition does not go with the age of the account that can be read', async () => {
    const short = await start('short', 12);
    const long = await start('long', 36);
    const id = await visit(short, 'Q.F.');
    const body = findBody(share(short));
    const log = body.log.map((entry) => ({ ...Object(entry), modelVersion: MODEL_VERSION + 1 }));
    goTo(13, long, short);
    await long.station.takeDocuments([documentConsultation(body), documentConsultation({ ...body, log })]);
    expect([isStopped(long), long.station.readState().closed.length]).toEqual([true, 1]);
    await visit(short, 'A.K.');
    expect((await short.station.erase(by, { ids: [id], code: 'keptLongEnough' })).ok).toBe(true);
    await long.station.takeDocuments(share(short));
    goTo(37, long);
    await visit(long, 'B.B.');
    await long.station.eraseOverdue();
    expect(isStopped(long)).toBe(true);
  });

  it('does not go by itself with the age of the account that tells none', async () => {
    const there = await start('there', 36);
    const here = await start('here', 36, true);
    const id = await visit(there, 'Q.F.', hives);
    const body = findBody(share(there));
    const [first, last] = [body.log[0], body.log.at(-1)];
    if (first === undefined || last === undefined) throw new Error('an empty log');
    goTo(1, here);
    await here.station.takeDocuments([
      documentConsultation(body),
      documentConsultation({ ...body, log: [first, last] }),
    ]);
    expect(here.station.readState().closed.map((each) => each.id)).toEqual([id, id]);
    goTo(38, here);
    await visit(here, 'B.B.');
    expect((await here.station.eraseOverdue()).ok).toBe(true);
    expect(here.station.readState().closed.filter((each) => each.id === id)).toHaveLength(2);
    expect(isStopped(here)).toBe(true);
  });

  it('stays where a backup comes from the house that erased all there is here for its age', async () => {
    const short = await start('short', 12);
    const long = await start('long', 36);
    const id = await visit(short, 'Q.F.', hives);
    await long.station.takeDocuments(share(short));
    goTo(13, long, short);
    await visit(short, 'A.K.');
    expect((await short.station.erase(by, { ids: [id], code: 'keptLongEnough' })).ok).toBe(true);
    expect((await long.station.bringIn([...short.station.backUp()].join(''))).ok).toBe(true);
    expect([isStopped(long), long.station.readState().settings.settings.keepMonths]).toEqual([true, 36]);
  });
});

it('takes a skin test that was read again after its wait was made longer, there as here', async () => {
  const there = await start('there', null);
  const here = await start('here', null);
  const put = await there.station.putOnSkinTest(by, {
    ...{ ticket: 'Q.F.', method: 'makersMethod', site: 'behindEar', line: '', seen: 'notReadYet' },
    putOnAtMs: there.clock.atMs,
  });
  if (!put.ok) throw new Error(put.error.kind);
  const goToHour = (hours: number, { clock }: StationUnderTest): void => {
    clock.atMs = startAtMs + hours * msPerHour;
  };
  const read = () =>
    here.station.changeSkinTest(put.value, by, { type: 'SKIN_TEST_READ', answers: { seen: 'nothing' } });
  goToHour(24, here);
  await here.station.takeDocuments(share(there));
  goToHour(73, here);
  expect((await read()).ok).toBe(true);
  await here.station.saveSettings(by, { ...salon, profile: { ...salon.profile, skinTestWaitH: 72 } });
  goToHour(97, here);
  expect((await read()).ok).toBe(true);
  goToHour(98, there);
  expect(await there.station.takeDocuments(share(here))).toMatchObject({ value: { refused: [] } });
  expect([isStopped(there), there.station.readState().unjudged]).toEqual([false, []]);
  expect((await there.station.bringIn([...here.station.backUp()].join(''))).ok).toBe(true);
});
