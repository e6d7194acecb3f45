import { describe, expect, it } from 'vitest';
import { issuePermit } from '../../../../shared/judgement/permit';
import { computeBowl, draftBowl } from '../../../../src/screens/mix/bowlDraft';
import { computeThinning } from '../../../../src/screens/mix/thinningForm';
import { playUntil, settings, tap } from '../playStory';

const { consultation, atMs } = playUntil('DECIDED');
const { record } = consultation;

const draftFor = (from: typeof record) => {
  const permit = issuePermit(from, 'lengths', settings, atMs);
  if (!permit.ok) throw new Error(permit.error.code);
  return draftBowl(from, settings, permit.value);
};

describe('the fields of a bowl', () => {
  const draft = draftFor(record);

  it('begin with the mix that was tested, taken down to what the table says of these lengths', () => {
    expect(draft).toMatchObject({
      zone: 'lengths',
      line: 'Sandbar powder',
      batch: 'B-17',
      developerPercent: '3',
      ratio: '2',
      heat: 'none',
      minutes: '25',
      shades: [{ shade: 'Sandbar powder', parts: '1' }],
    });
  });

  it('name the shade as the line is named, to its last letter', () => {
    const line = 'Sandbar harbour wall lightening powder N';
    const strands = record.strands.map((strand) => ({ ...strand, line }));
    expect(draftFor({ ...record, strands })).toMatchObject({ line, shades: [{ shade: line, parts: '1' }] });
  });

  it('begin with all that was tested when a named person took that on', () => {
    const lengths = playUntil('OUTCOME_RECORDED', 'lengths');
    let played = tap(lengths, 1, {
      type: 'OVERRIDDEN',
      answers: { rule: 'judgement.freerThanSuggested', code: 'seniorAgreed', words: 'Both looked.' },
    });
    played = tap(played, 1, { type: 'DECIDED', answers: { decision: 'asPlanned' } });
    expect(draftFor(played.consultation.record)).toMatchObject({ developerPercent: '6', minutes: '25' });
  });

  it('take the shades of another zone’s bowl, and as many grams as their own zone takes', () => {
    const of = (zone: 'lengths' | 'ends', colourG: number) => ({
      kind: 'tested',
      zone,
      colourG,
      shades,
      looks: [],
    });
    const shades = [{ shade: 'Mist 7', parts: 1 }];
    const draftAfter = (...bowls: readonly object[]) => draftFor({ ...record, bowls } as typeof record);
    expect(draftAfter(of('ends', 120))).toMatchObject({
      colourG: '50',
      shades: [{ shade: 'Mist 7', parts: '1' }],
    });
    expect(draftAfter(of('lengths', 35), of('ends', 120))).toMatchObject({ colourG: '35' });
  });

  it('give the grams at once, with the bottle and the bowl', () => {
    expect(computeBowl(record, settings, draft, 'lengths', atMs)).toMatchObject({
      ok: true,
      value: { shades: [{ amountG: 50 }], developerG: 100, totalG: 150, bottlePercent: 3, bowlPercent: 2 },
    });
  });

  it('say why a stronger or longer bowl is refused, before anything is weighed', () => {
    const stronger = computeBowl(record, settings, { ...draft, developerPercent: '6' }, 'lengths', atMs);
    expect(stronger).toEqual({
      ok: false,
      error: { kind: 'mixture', mixture: { code: 'stronger', most: 3 } },
    });
    const longer = computeBowl(record, settings, { ...draft, minutes: '26' }, 'lengths', atMs);
    expect(longer).toEqual({ ok: false, error: { kind: 'mixture', mixture: { code: 'longer', most: 25 } } });
  });

  it('wait while a field is wrong, and never for a zone without a permit', () => {
    const open = computeBowl(record, settings, { ...draft, colourG: 'x' }, 'lengths', atMs);
    expect(open).toEqual({ ok: false, error: { kind: 'open' } });
    const ends = computeBowl(record, settings, draft, 'ends', atMs);
    expect(ends).toEqual({ ok: false, error: { kind: 'permit', permit: { code: 'endsLeftOut' } } });
  });
});

describe('two other bottles', () => {
  const wanted = { wantedPercent: 9, totalG: 80 };

  it('give 9 % from 12 and 6, half and half', () => {
    const raw = { strongPercent: '12', weakPercent: '6' };
    expect(computeThinning(raw, wanted, settings, atMs)).toMatchObject({
      ok: true,
      value: { strongG: 40, weakG: 40 },
    });
  });

  it('are refused at the field, or together', () => {
    const refusalOf = (strongPercent: string, weakPercent: string, house = settings) => {
      const thinned = computeThinning({ strongPercent, weakPercent }, wanted, house, atMs);
      return thinned.ok ? null : thinned.error;
    };
    // 12 % is the law's (EVIDENCE: Reg. 1223/2009 Annex III no. 12), to the tenth.
    expect(refusalOf('12', '6')).toBeNull();
    expect(refusalOf('12.1', '6')).toEqual({ kind: 'bottles', why: 'overCeiling' });
    expect(refusalOf('61', '6')).toMatchObject({ fields: [{ path: 'strongPercent', code: 'tooHigh' }] });
    const house = { ...settings, profile: { ...settings.profile, ceilingPercent: 9 } };
    expect(refusalOf('9', '6', house)).toBeNull();
    expect(refusalOf('9.1', '6', house)).toEqual({ kind: 'bottles', why: 'overHouseCeiling' });
    const swapped = computeThinning({ strongPercent: '6', weakPercent: '12' }, wanted, settings, atMs);
    expect(swapped).toEqual({ ok: false, error: { kind: 'bottles', why: 'notWeaker' } });
  });
});
