import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { mixture, orderForStrand } from '../../../shared/judgement/mixture';
import { issuePermit, issueTestPermit } from '../../../shared/judgement/permit';
import { listOpenStops } from '../../../shared/judgement/stops';
import { classify, type RawEvent } from '../../../shared/records/classify';
import { findAskForm } from '../../../shared/records/forms/askedHere';
import { reduce } from '../../../shared/records/reduce';
import type { LocalProfile, Settings } from '../../../shared/records/settings';
import { hasStandingStop } from '../../../shared/records/standingStop';
import { find, lowRisk, ofStep, ofType, type Told, tell, until } from '../records/telling';

const house = (profile: Partial<LocalProfile>): Settings => ({
  ...salon,
  profile: { ...salon.profile, ...profile },
});
const tryIn = (settings: Settings, { record, atMs }: Told, raw: RawEvent) =>
  classify(record, raw, { settings, settingsId: 0, atMs, by: 'Opal', inheritsStop: false });

const beforeStrand = tell(until('STRAND_STARTED'));
const startWith = (settings: Settings, developerPercent: string) => {
  const { answers } = find(ofType('STRAND_STARTED'));
  const raw = { type: 'STRAND_STARTED', answers: { ...answers, developerPercent } } as const;
  const tried = tryIn(settings, beforeStrand, raw);
  return tried.ok ? 'taken' : tried.error;
};
const atTheBottle = (max: number) => ({
  kind: 'fields',
  fields: [expect.objectContaining({ path: 'developerPercent', code: 'tooHigh', max })],
});

// Published: Reg. (EC) 1223/2009 Annex III entry 12: 12 %, ready for use; a house may draw it lower.
describe('the strongest bottle of this house', () => {
  it.each([
    [12, '12.0', '12.1'],
    [9, '9.0', '9.1'],
    [1.5, '1.5', '1.6'],
  ])('of %s %%: %s is tested, %s is refused at its field', (ceilingPercent, allowed, refused) => {
    const settings = house({ ceilingPercent });
    expect(startWith(settings, allowed)).toBe('taken');
    expect(startWith(settings, refused)).toEqual(atTheBottle(ceilingPercent));
  });

  it('is asked again by the permit of a strand, whatever a field let through', () => {
    const permit = issueTestPermit(beforeStrand.record, house({ ceilingPercent: 9 }));
    const mix = {
      line: 'Sandbar powder',
      ratio: 2,
      heat: 'none',
      minutes: 25,
      testG: 6,
      zone: 'ends',
    } as const;
    const weigh = (developerPercent: number) =>
      permit.ok ? mixture(permit.value, orderForStrand({ ...mix, developerPercent }), 1) : permit;
    expect(weigh(9)).toMatchObject({ ok: true });
    expect(weigh(9.1)).toEqual({ ok: false, error: { code: 'overHouseCeiling', most: 9 } });
  });

  it('holds a head that was tested under a freer one: the permit goes no higher', () => {
    const atMix = tell(until('BOWL_WEIGHED', lowRisk));
    const most = (settings: Settings) => {
      const permit = issuePermit(atMix.record, 'lengths', settings, atMix.atMs);
      return permit.ok ? permit.value.maxDeveloperPercent : permit.error;
    };
    expect([12, 6, 5.9, 3].map((ceilingPercent) => most(house({ ceilingPercent })))).toEqual([6, 6, 5.9, 3]);
  });
});

describe('any reaction ever, read strictly', () => {
  const strict = house({ isAnyReactionAbsolute: true });
  const said = (reactions: readonly string[]): RawEvent => {
    const raw = find(ofStep('client'));
    return { ...raw, answers: { ...raw.answers, reactions } } as RawEvent;
  };
  const told = (settings: Settings, reactions: readonly string[]) => {
    const event = tryIn(settings, beforeStrand, said(reactions));
    if (!event.ok) throw new Error(JSON.stringify(event.error));
    const record = reduce(beforeStrand.record, event.value);
    return { event: event.value, record, stops: listOpenStops(record, settings) };
  };

  it('stops for good what only tingled, and hands it on to her next visit', () => {
    const { event, record, stops } = told(strict, ['tingled']);
    expect(event.tokens).toMatchObject({ said: 'absolute' });
    expect(stops).toEqual(['stop.anyReaction']);
    expect(hasStandingStop(record)).toBe(true);
  });

  it('is a matter for a named person where the house does not read it so', () => {
    expect(told(salon, ['tingled']).stops).toEqual(['judgement.tingled']);
    expect(told(salon, ['tingled']).event.tokens).toMatchObject({ said: 'judgement' });
    expect(told(strict, ['none']).stops).toEqual([]);
  });

  it('means next year what it meant: settings that change later change no log', () => {
    expect(listOpenStops(told(strict, ['tingled']).record, salon)).toEqual(['stop.anyReaction']);
    expect(listOpenStops(told(salon, ['tingled']).record, strict)).toEqual(['judgement.tingled']);
  });

  it('is asked as one answer in either house, held where it stops', () => {
    const asked = (settings: Settings) => {
      const form = findAskForm('client', settings.profile);
      return 'reactions' in form ? form.reactions.options.filter((each) => each.startsWith('tingled')) : [];
    };
    expect([asked(salon), asked(strict)]).toEqual([['tingled'], ['tingledStops']]);
    expect(findAskForm('feelHair', strict.profile)).toBe(findAskForm('feelHair', salon.profile));
  });
});
