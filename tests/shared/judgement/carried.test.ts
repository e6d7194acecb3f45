import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstGloss } from '../../../seeds/returningGloss';
import { mixture } from '../../../shared/judgement/mixture';
import { issuePermit } from '../../../shared/judgement/permit';
import { clientForm } from '../../../shared/records/forms/client';
import { findGateBreach } from '../../../shared/records/gateBreach';
import type { LastTime } from '../../../shared/records/lastTime';
import type { Settings } from '../../../shared/records/settings';
import {
  askAgain,
  carry,
  codeOf,
  last,
  openAgain,
  settings,
  todayAtMs,
  tryCarry,
} from '../records/returning';
import { andThen, change, day, hour, ofStep, ofType, type Told, tryRaw } from '../records/telling';
import { holds } from '../seeded';

const off: Settings = { ...settings, carried: false };
const noSkinTest: Settings = { ...settings, profile: { ...settings.profile, skinTestFor: [] } };
const edit = (changed: Partial<LastTime>): Told => askAgain(undefined, openAgain({ ...last, ...changed }));
const [zone] = last.zones;
if (zone === undefined) throw new Error('no zone was on the head');
const editZone = (changed: Partial<typeof zone>): Told => edit({ zones: [{ ...zone, ...changed }] });

const asked = askAgain();
const carried = andThen(asked, carry, 1000, settings);
const decided = andThen(carried, { type: 'DECIDED', answers: { decision: 'asPlanned' } }, 1000, settings);
const ask = (told: Told, inForce = settings, nowMs = told.atMs) => {
  const permit = issuePermit(told.record, 'lengths', inForce, nowMs);
  return permit.ok ? 'allowed' : permit.error.code;
};
const ageMs = 12 * 7 * day;
const first = (step: string) => firstGloss.steps.find(({ raw }) => ofStep(step)(raw))?.raw.answers ?? {};
const sameClient = { type: 'ANSWERED', step: 'client', answers: first('client') } as const;

describe('the outcome of last time', () => {
  it('is carried to the same gloss of the same client who tells nothing new', () => {
    expect(codeOf(tryCarry(asked))).toBe('carried');
    expect(carried.record.strands).toMatchObject([
      {
        zone: 'lengths',
        carried: { fromId: last.id, maxDeveloperPercent: 1.5, maxMinutes: 20 },
        outcome: { grade: 'sound', fibre: 'sound', stretch: 'springsBack', level: 6 },
        ended: { atMs: zone.strandAtMs },
        looks: [],
      },
    ]);
    expect(ask(decided)).toBe('allowed');
  });

  const refused: readonly (readonly [string, string, () => string])[] = [
    ['while the setting is off', 'off', () => codeOf(tryCarry(asked, off))],
    [
      'where nobody said "same client"',
      'notSameClient',
      () => codeOf(tryCarry(askAgain(undefined, openAgain(null)))),
    ],
    ['after a stop that stood', 'stopStood', () => codeOf(tryCarry(edit({ hasStandingStop: true })))],
    [
      'to lightening',
      'lifts',
      () =>
        codeOf(
          tryCarry(
            askAgain((steps) => change(steps, ofStep('client'), { service: 'lighten' })),
            noSkinTest,
          ),
        ),
    ],
    ['from a visit that never came to its end', 'notDone', () => codeOf(tryCarry(edit({ isDone: false })))],
    [
      'to a zone that had no bowl',
      'notDone',
      () => codeOf(tryCarry(askAgain((steps) => change(steps, ofStep('client'), { reach: 'fullHead' })))),
    ],
    [
      'after more than twelve weeks',
      'tooOld',
      () => codeOf(tryCarry(askAgain(undefined, openAgain(last, zone.strandAtMs + ageMs)))),
    ],
    [
      'while the clock lies before the strand',
      'tooOld',
      () => codeOf(tryCarry(editZone({ strandAtMs: todayAtMs + day }))),
    ],
    [
      'to another level',
      'new',
      () => codeOf(tryCarry(askAgain((steps) => change(steps, ofStep('client'), { targetLevel: '6.5' })))),
    ],
    [
      'when it stays long today',
      'stretchSlow',
      () =>
        codeOf(tryCarry(askAgain((steps) => change(steps, ofStep('feelHair'), { wetStretch: 'staysLong' })))),
    ],
    [
      'when the wet stretch was told on another day',
      'notFeltToday',
      () => codeOf(tryCarry(andThen(asked, sameClient, 13 * hour, settings))),
    ],
  ];
  it.each(refused)('is not carried %s', (_when, code, tryIt) => expect(tryIt()).toBe(code));

  it('is carried to the last minute of the twelve weeks', () => {
    const told = askAgain(undefined, openAgain(last, zone.strandAtMs + ageMs - hour));
    expect(codeOf(tryCarry(told, settings, zone.strandAtMs + ageMs))).toBe('carried');
    expect(codeOf(tryCarry(told, settings, zone.strandAtMs + ageMs + 1))).toBe('tooOld');
  });

  it('is not carried beside a strand of today, one put aside excepted, nor a second time', () => {
    const start = firstGloss.steps.find(({ raw }) => ofType('STRAND_STARTED')(raw))?.raw;
    if (start === undefined) throw new Error('no strand in the first visit');
    const running = andThen(asked, start, 1000, settings);
    expect(codeOf(tryCarry(running))).toBe('strandToday');
    const aside = { type: 'STRAND_DISCARDED', answers: { zone: 'lengths', why: 'wrongTap' } } as const;
    expect(codeOf(tryCarry(andThen(running, aside, 1000, settings)))).toBe('carried');
    expect(codeOf(tryCarry(carried))).toBe('strandToday');
  });

  it('is not carried past what even a strand would wait for', () => {
    const damp = askAgain((steps) => change(steps, ofStep('feelHair'), { mid: 'damp' }));
    expect(codeOf(tryCarry(damp))).toBe('permit');
  });

  it('cannot be taken back as a wrong tap', () => {
    const retract = { zone: 'lengths', code: 'wrongTap', words: 'not this one' };
    expect(tryRaw(carried, { type: 'OUTCOME_RETRACTED', answers: retract }, carried.atMs, settings)).toEqual({
      ok: false,
      error: { kind: 'carry', carry: { code: 'notRetractable' } },
    });
  });
});

describe('a bowl on a carried outcome', () => {
  it('is refused at once when the owner turns it off, and allowed when it is on again', () => {
    expect(ask(decided, off)).toBe('carriedOff');
    expect(ask(decided, settings)).toBe('allowed');
  });

  it('is refused when the strand has become too old, and on another day than the wet stretch', () => {
    const late = askAgain(undefined, openAgain(last, zone.strandAtMs + ageMs - hour));
    const told = [carry, { type: 'DECIDED', answers: { decision: 'asPlanned' } } as const].reduce(
      (before, raw) => andThen(before, raw, 1000, settings),
      late,
    );
    expect(ask(told)).toBe('allowed');
    expect(ask(told, settings, zone.strandAtMs + ageMs + 1)).toBe('carriedTooOld');
    expect(ask(decided, settings, decided.atMs + 13 * hour)).toBe('carriedNotToday');
  });

  it('is never more than was on the head last time, whatever was tested then', () => {
    const tested = editZone({
      strand: { ...zone.strand, developerPercent: 6 },
      minutesOn: 45,
      bowl: { ...zone.bowl, developerPercent: 3, minutes: 15 },
    });
    const told = [carry, { type: 'DECIDED', answers: { decision: 'asPlanned' } } as const].reduce(
      (before, raw) => andThen(before, raw, 1000, settings),
      tested,
    );
    const permit = issuePermit(told.record, 'lengths', settings, told.atMs);
    if (!permit.ok) throw new Error(permit.error.code);
    expect(permit.value).toMatchObject({ maxDeveloperPercent: 3, maxMinutes: 15 });
    const order = { ...zone.bowl, developerPercent: 3, minutes: 15 };
    expect(mixture(permit.value, order, 1).ok).toBe(true);
    expect(mixture(permit.value, { ...order, developerPercent: 3.1 }, 1)).toMatchObject({ ok: false });
    expect(mixture(permit.value, { ...order, minutes: 16 }, 1)).toMatchObject({ ok: false });
    expect(mixture(permit.value, { ...order, heat: 'foil' }, 1)).toMatchObject({ ok: false });
    expect(mixture(permit.value, { ...order, line: 'Another cream' }, 1)).toMatchObject({ ok: false });
  });

  it('is the gentler one again where a gentler one than tested was on', () => {
    const told = [carry, { type: 'DECIDED', answers: { decision: 'gentler' } } as const].reduce(
      (before, raw) => andThen(before, raw, 1000, settings),
      editZone({
        strand: { ...zone.strand, developerPercent: 6 },
        bowl: { ...zone.bowl, developerPercent: 3 },
        grade: 'rough',
      }),
    );
    const permit = issuePermit(told.record, 'lengths', settings, told.atMs);
    expect(permit).toMatchObject({ ok: true, value: { maxDeveloperPercent: 3 } });
  });

  it('stands in the record as a bowl that the gate allows, and as none once its service is a lift', () => {
    const weigh = firstGloss.steps.find(({ raw }) => ofType('BOWL_WEIGHED')(raw))?.raw;
    if (weigh === undefined) throw new Error('no bowl in the first visit');
    const { record } = andThen(decided, weigh, 1000, settings);
    expect(findGateBreach(record)).toBeNull();
    const [bowl] = record.bowls;
    if (bowl?.proof?.carried == null) throw new Error('not carried');
    const { proof } = bowl;
    const withCarried = (change: object) => ({
      ...record,
      bowls: [{ ...bowl, proof: { ...proof, carried: { ...proof.carried, ...change } as never } }],
    });
    expect(findGateBreach(withCarried({ service: 'lighten' }))).toBe('bowlLiftsOnCarried');
    expect(findGateBreach(withCarried({ strandAtMs: bowl.atMs - ageMs - 1 }))).toBe('bowlOnOldStrand');
    expect(findGateBreach(withCarried({ strandAtMs: bowl.atMs - ageMs }))).toBeNull();
  });
});

describe('there is no carried way to lightening', () => {
  const lifted = { ...zone.strand, line: 'Sandbar powder' };
  const lines = fc.constantFrom('Sandbar powder', 'sandbar POWDER', 'Sandbar cream', 'Other');
  const world = fc.record({
    before: fc.constantFrom(...clientForm.service.options),
    now: fc.constantFrom(...clientForm.service.options),
    line: lines,
    developerPercent: fc.constantFrom(1.5, 3, 6, 6.1, 9, 12),
    tested: fc.constantFrom(1.5, 3, 6, 9, 12),
    isOn: fc.boolean(),
  });

  it('whatever was done last time, and whatever is wanted today', () => {
    let taken = 0;
    holds(
      fc.property(world, ({ before, now, line, developerPercent, tested, isOn }) => {
        const from = {
          ...last,
          answers: { ...last.answers, client: { ...last.answers.client, service: before } },
          zones: [
            {
              ...zone,
              strand: { ...lifted, line, developerPercent: tested },
              bowl: { ...zone.bowl, line, developerPercent },
            },
          ],
        };
        const told = askAgain((steps) => change(steps, ofStep('client'), { service: now }), openAgain(from));
        const inForce = isOn ? noSkinTest : { ...noSkinTest, carried: false };
        const tried = tryCarry(told, inForce);
        if (!tried.ok) return;
        taken += 1;
        expect([isOn, now === before]).toEqual([true, true]);
        expect(['depositOnly', 'gloss', 'tone']).toContain(now);
        expect(Math.max(developerPercent, tested)).toBeLessThanOrEqual(6);
        expect(line.toLowerCase()).not.toBe('sandbar powder');
      }),
    );
    expect(taken).toBeGreaterThan(0);
  });

  it('nor by what is answered after it was carried: what she wants bears on the plan', () => {
    const lighter = {
      type: 'ANSWERED',
      step: 'client',
      answers: { ...first('client'), service: 'lighten' },
    } as const;
    const told = andThen(decided, lighter, 1000, noSkinTest);
    expect(ask(told, noSkinTest)).not.toBe('allowed');
    const again = andThen(told, { type: 'DECIDED', answers: { decision: 'asPlanned' } }, 1000, noSkinTest);
    expect(ask(again, noSkinTest)).toBe('outcomeOfAnotherPlan');
  });
});
