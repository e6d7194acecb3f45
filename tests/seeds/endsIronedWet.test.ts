import { expect, test } from 'vitest';
import { advance, beginConsultation, type Consultation } from '../../machines/consultation/consultation';
import { replay } from '../../machines/consultation/replay';
import { endsIronedWet } from '../../seeds/endsIronedWet';
import { classify } from '../../shared/records/classify';

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
    expect(next, `step ${index} ${raw.type} ${JSON.stringify(consultation.state.value)}`).toMatchObject({
      ok: true,
    });
    if (!next.ok) return;
    consultation = next.value;
  }
  expect(consultation.record.ended?.how).toBe('done');
  const again = replay('story', JSON.parse(JSON.stringify(consultation.log)), () => endsIronedWet.settings);
  expect(again).toMatchObject({ ok: true });
  expect(again.ok && again.value.record).toEqual(consultation.record);
});
