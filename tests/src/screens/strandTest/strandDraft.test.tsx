import { describe, expect, it } from 'vitest';
import { computeTestMix, draftStrand, listLines } from '../../../../src/screens/strandTest/strandDraft';
import { playUntil, playUntilConfirmed, settings } from '../playStory';

const { consultation, atMs } = playUntilConfirmed('heatSpray');
const { record } = consultation;

describe('the fields of a new strand', () => {
  it('begin with a look every 3 minutes on suspect hair', () => {
    expect(draftStrand(record, settings, 'ends')).toEqual({ zone: 'ends', lookEveryMin: '3' });
  });

  it('begin with a look every 5 minutes when nothing speaks against the hair', () => {
    const calm = {
      ...record,
      answers: { ...record.answers, hotTools: { habits: [], smoke: 'no' as const } },
    };
    expect(draftStrand(calm, settings, 'ends')).toEqual({ zone: 'ends', lookEveryMin: '5' });
  });

  it('take over the mix of the strand before, but neither its place nor its zone', () => {
    const { record: later } = playUntil('STRAND_STARTED', 'ends').consultation;
    expect(draftStrand(later, settings, 'lengths')).toMatchObject({
      zone: 'lengths',
      place: undefined,
      line: 'Sandbar powder',
      developerPercent: '6',
      ratio: '2',
      minutes: '25',
      makersLimitMin: '45',
    });
  });

  it('offer the lightener first to someone who wants to go lighter, and never the spray', () => {
    expect(listLines(record, settings)).toEqual(['Sandbar powder', 'Sandbar cream']);
    const gloss = { ...record, answers: { ...record.answers, client: { service: 'gloss' as const } } };
    expect(listLines(gloss, settings)).toEqual(['Sandbar cream', 'Sandbar powder']);
  });
});

describe('the grams of the little mix', () => {
  const mix = { developerPercent: '12', ratio: '1', testG: '6' };

  it('say the bottle, the bowl and the grams of each: 12 % one to one is 6 % in the bowl', () => {
    const made = computeTestMix(record, settings, mix, 'ends', atMs);
    expect(made).toMatchObject({
      ok: true,
      value: { bottlePercent: 12, bowlPercent: 6, developerG: 3, totalG: 6, shades: [{ amountG: 3 }] },
    });
  });

  it('wait while a field is empty or refused', () => {
    const open = { ok: false, error: { kind: 'open' } };
    expect(computeTestMix(record, settings, { ratio: '1' }, 'ends', atMs)).toEqual(open);
    expect(computeTestMix(record, settings, { ...mix, developerPercent: '13' }, 'ends', atMs)).toEqual(open);
    expect(computeTestMix(record, settings, { ...mix, ratio: '1e309' }, 'ends', atMs)).toEqual(open);
  });

  it('are refused when the scale is too coarse for them', () => {
    const made = computeTestMix(record, settings, { ...mix, ratio: '5', testG: '2' }, 'ends', atMs);
    expect(made).toEqual({ ok: false, error: { kind: 'mixture', mixture: { code: 'stepTooCoarse' } } });
  });

  it('are refused, with the reason, while a step is open', () => {
    const early = playUntilConfirmed('client').consultation.record;
    expect(computeTestMix(early, settings, mix, 'ends', atMs)).toEqual({
      ok: false,
      error: { kind: 'permit', permit: { code: 'stepUnsaid' } },
    });
  });
});
