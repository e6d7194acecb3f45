import { describe, expect, it } from 'vitest';
import type { Consultation } from '../../../../machines/consultation/consultation';
import { type ClosedRecord, closeRecord } from '../../../../shared/records/closedRecord';
import { gatherDay } from '../../../../shared/records/day/dayRecords';
import { writeDay } from '../../../../src/screens/day/dayFile';
import { countBack } from '../../../../src/screens/day/dayNames';
import { readAtOnce } from '../../../shared/records/json/leaving';
import { clear } from '../../../shared/records/skinTest/makeTest';
import { playUntil, settings } from '../playStory';

const whole = playUntil('whole');
const half = playUntil('DECIDED');
const closed = closeRecord({ ...whole.consultation.record, id: 'whole' }, whole.consultation.log);
if (closed === null || clear.test === null) throw new Error('the story did not close');
const open = { ...half.consultation, record: { ...half.consultation.record, id: 'half' } };
const skinTest = { ...clear.test, newestAtMs: whole.atMs };

const save = (
  some: readonly ClosedRecord[],
  others: readonly Consultation[] = [],
  isDemo = false,
): string => {
  const state = {
    closed: some,
    open: new Map(others.map((each) => [each.record.id, each])),
    skinTests: [skinTest],
  };
  const made = { madeAtMs: whole.atMs, isDemo };
  return [...writeDay(gatherDay(state, whole.atMs, countBack(whole.atMs)), () => settings, made)].join('');
};
const asJson = (value: unknown) => JSON.parse(JSON.stringify(value));

describe('the day as a file', () => {
  it('holds what closed and what is open, each with its log, its fold and its settings', () => {
    const { consultations, from, to, madeAtMs } = JSON.parse(save([closed], [open]));
    expect({ from, to, madeAtMs }).toEqual({ from: '2026-03-03', to: '2026-03-03', madeAtMs: whole.atMs });
    expect(consultations.map(({ id }: { id: string }) => id)).toEqual(['whole', 'half']);
    expect(consultations[0].record).toEqual(asJson({ ...whole.consultation.record, id: 'whole' }));
    expect(consultations[0].log.map(({ entry }: { entry: unknown }) => entry)).toEqual(
      asJson(whole.consultation.log),
    );
    expect(consultations[1].record.decision.decision).toBe('endsOut');
    expect(readAtOnce(save([closed], [open]))).toMatchObject({ ok: true });
  });

  it('holds skin tests of that day, and what cannot be read here as it lies', () => {
    const torn = { ...closed, id: 'torn', log: [{ no: 'event' }] };
    expect(JSON.parse(save([torn]))).toMatchObject({
      skinTests: [asJson(skinTest)],
      unread: [asJson(torn)],
      consultations: [],
    });
  });

  it('keeps the settings a record came with, whatever holds here', () => {
    const { staff: _staff, contact: _contact, ...rest } = settings;
    const broughtIn = { atMs: 7, settings: [{ id: 0, settings: { ...rest, chairs: 3 } }] };
    const { consultations } = JSON.parse(save([{ ...closed, broughtIn }]));
    expect(consultations[0].settings[0].settings.chairs).toBe(3);
  });

  it('says of a day of the demo that it is one', () => {
    expect(JSON.parse(save([], [], true)).isDemo).toBe(true);
    expect(JSON.parse(save([])).isDemo).toBe(false);
  });
});
