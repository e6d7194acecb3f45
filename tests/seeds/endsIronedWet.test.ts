import { expect, test } from 'vitest';
import { advance, beginConsultation, type Consultation } from '../../machines/consultation/consultation';
import { replay } from '../../machines/consultation/replay';
import { endsIronedWet } from '../../seeds/endsIronedWet';
import { classify } from '../../shared/records/classify';
import { beginRecord } from '../../shared/records/record';
import { reduce } from '../../shared/records/reduce';
import { listOpenQuestions, tellOpenQuestions } from '../shared/records/openQuestions';

test('the story answers every question of every step', () => {
  let record = beginRecord('story');
  const { settings, startAtMs } = endsIronedWet;
  for (const { raw } of endsIronedWet.steps) {
    if (raw.type !== 'ANSWERED') continue;
    const context = { settings, settingsId: 1, atMs: startAtMs, by: 'Opal', inheritsStop: false };
    const event = classify(record, raw, context);
    expect(event, raw.step).toMatchObject({ ok: true });
    if (event.ok) record = reduce(record, event.value);
  }
  // What stands here is a question without an answer in seeds/endsIronedWet.ts.
  expect(listOpenQuestions(record.answers, settings)).toEqual([]);
  expect(listOpenQuestions({}, settings).length).toBeGreaterThan(20);
});

test('the story of the ends ironed wet runs from the first question to a closed record', () => {
  let consultation: Consultation = beginConsultation('story');
  let atMs = endsIronedWet.startAtMs;
  for (const [index, { afterMs, by, raw }] of endsIronedWet.steps.entries()) {
    atMs += afterMs;
    const context = { settings: endsIronedWet.settings, settingsId: 1, atMs, by, inheritsStop: false };
    const event = classify(consultation.record, raw, context);
    expect(event, `step ${index} ${raw.type}`).toMatchObject({ ok: true });
    if (!event.ok) return;
    const next = advance(consultation, event.value);
    const open = tellOpenQuestions(consultation.record.answers, endsIronedWet.settings);
    const where = JSON.stringify(consultation.state.value);
    expect(next, `step ${index} ${raw.type} ${where}, ${open}`).toMatchObject({ ok: true });
    if (!next.ok) return;
    consultation = next.value;
  }
  expect(consultation.record.ended?.how).toBe('done');
  const again = replay('story', JSON.parse(JSON.stringify(consultation.log)), () => endsIronedWet.settings);
  expect(again).toMatchObject({ ok: true });
  expect(again.ok && again.value.record).toEqual(consultation.record);
});
