import { describe, expect, it } from 'vitest';
import { type Debrief, debrief } from '../../../machines/practice/debrief';
import type { PracticeEvent } from '../../../machines/practice/practiceEvent';
import { ASSUMED_POINTS } from '../../../machines/practice/score';
import { type Sat, sitThrough as sit } from '../../../machines/practice/sitThrough';
import { defaultSettings } from '../../../shared/records/settings';
import { findLesson, findSeed } from './findLesson';
import { careless, follow, perfect, type Trainee } from './trainee';

const read = (id: string, { practiceLog, consultation, settings }: Sat): Debrief => {
  const told = debrief(findLesson(id), practiceLog, consultation.log, settings);
  if (told === null) throw new Error(`${id} has no debrief`);
  return told;
};
const play = (id: string, trainee: Trainee, seed = 1): Debrief =>
  read(id, sit(findLesson(id), trainee, seed));
const pointsOf = ({ parts }: Debrief, name: string): number | undefined =>
  parts.find((part) => part.name === name)?.points;

describe('the debrief', () => {
  it('shows each part of a score that is their sum and a hundred at the most', () => {
    const whole = Object.values(ASSUMED_POINTS).reduce((sum, points) => sum + points, 0);
    expect(whole).toBe(100);
    for (const told of [play('wetIronedCurls', perfect), play('wetIronedCurls', careless)]) {
      expect(told.score).toBe(told.parts.reduce((sum, { points }) => sum + points, 0));
      expect(told.parts.map(({ name, of }) => [name, of])).toEqual(Object.entries(ASSUMED_POINTS));
      for (const { points, of } of told.parts) {
        expect(points).toBeGreaterThanOrEqual(0);
        expect(points).toBeLessThanOrEqual(of);
      }
    }
  });

  it('says what was asked closer and what is written down truly, in the units of the station', () => {
    const house = { ...defaultSettings, units: { ...defaultSettings.units, temperature: 'F' as const } };
    const told = read('siliconeSpray', sit(findLesson('siliconeSpray'), careless, 1, house));
    const habits = told.asked.find(({ path }) => path === 'hotTools.habits');
    expect(habits).toMatchObject({ wasAskedCloser: false, isToldTruly: false });
    expect(habits?.told).toMatchObject([{ settingC: '359.6' }]);
    expect(habits?.true).toMatchObject([{ settingC: '429.8' }]);
    expect(play('siliconeSpray', perfect).asked.every(({ isToldTruly }) => isToldTruly)).toBe(true);
  });

  it('names what was written down wrongly though she said it truly', () => {
    const deaf: Trainee = {
      ...perfect,
      writes: (question, heard) => (heard === 'high' && question.kind === 'choice' ? 'low' : heard),
    };
    const told = play('wetIronedCurls', deaf);
    expect(told.asked).toContainEqual({
      path: 'feelHair.porosity',
      wasAskedCloser: true,
      isToldTruly: false,
      told: 'low',
      true: 'high',
    });
    expect(pointsOf(told, 'asked')).toBeLessThan(ASSUMED_POINTS.asked);
  });

  it('counts a flag half that was seen only after a hint, and names a missed one with why and source', () => {
    const lesson = findLesson('longEnds');
    const sat = sit(lesson, perfect, 1);
    const hint = {
      v: 1,
      type: 'HINT_SHOWN',
      payload: { flag: 'ironedWet' },
      atMs: 1,
      by: 'Trainee',
    } as const;
    const practiceLog: readonly PracticeEvent[] = [...sat.practiceLog, hint];
    const told = read('longEnds', { ...sat, practiceLog });
    expect(told.flags.map(({ how }) => how)).toEqual(['seen', 'hinted']);
    expect(pointsOf(told, 'flags')).toBe(Math.floor(ASSUMED_POINTS.flags * 0.75));
    const missed = play('longEnds', careless).flags.filter(({ how }) => how === 'missed');
    expect(missed.map(({ flag }) => flag)).toEqual(lesson.flags);
    for (const { flag } of missed) expect([flag.why, flag.mark].every((text) => text !== '')).toBe(true);
  });

  it('sets the map as it was told beside the map as it is', () => {
    const { map } = play('wetIronedCurls', careless);
    expect(map.true.profile.length).toBe(map.told.profile.length);
    const [told, isTrue] = [map.told, map.true].map(({ profile }) => profile.at(-1)?.wetMin.typical ?? 0);
    expect(told).toBe(0);
    expect(isTrue).toBeGreaterThan(0);
    const seen = play('wetIronedCurls', perfect).map;
    expect(seen.told.profile).toEqual(seen.true.profile);
  });

  it('says how long each step took on the clock of the lesson, and which looks were missed', () => {
    const quick = play('safeClient', perfect);
    expect(quick.minutes.map(({ step }) => step)).toEqual([
      'client',
      'hotTools',
      'feelHair',
      'heatSpray',
      'strandTest',
      'decision',
    ]);
    expect(quick.minutes[0]).toEqual({ step: 'client', minutes: 1 });
    expect(quick.minutes[4]?.minutes).toBeGreaterThan(25);
    expect(quick.missedLooks).toEqual([]);
    const blind = play('safeClient', { ...perfect, looks: false });
    expect(blind.missedLooks.length).toBeGreaterThan(4);
    expect(blind.missedLooks.every(({ of }) => of === 'strand')).toBe(true);
    expect(pointsOf(blind, 'looks')).toBe(0);
  });

  it('takes away what was told of a strand otherwise than it came off', () => {
    const told = play('wetIronedCurls', { ...perfect, tells: (sight) => ({ ...sight, fibre: 'gummy' }) });
    expect(pointsOf(told, 'strand')).toBe(ASSUMED_POINTS.strand / 2);
  });

  it('is none where the practice log begins no lesson, or another edition of it', () => {
    const lesson = findLesson('safeClient');
    const { practiceLog, consultation, settings } = sit(lesson, perfect, 1);
    expect(debrief(lesson, practiceLog.slice(1), consultation.log, settings)).toBeNull();
    const changed = { ...lesson, wants: 'Something else.' };
    expect(debrief(changed, practiceLog, consultation.log, settings)).toBeNull();
  });

  it('is there of a sitting that was hardly begun', () => {
    const lesson = findLesson('safeClient');
    const { practiceLog, settings } = sit(lesson, perfect, 1);
    const told = debrief(lesson, practiceLog, [], settings);
    expect(told).toMatchObject({ isPassed: false, minutes: [], missedLooks: [] });
    expect(told?.decision.decided).toBeNull();
  });
});

describe('passed', () => {
  it('is nobody who missed an absolute stop, however much else was right', () => {
    const { fails } = findSeed('compoundHenna');
    const told = play('compoundHenna', follow(fails));
    // Her strands broke in the mix, so she was refused all the same.
    expect(told.decision).toMatchObject({ decided: 'weSayNo', isRight: true });
    expect(told.isPassed).toBe(false);
  });

  it('is nobody who refuses the perfectly safe client', () => {
    const told = play('safeClient', { ...perfect, decides: () => 'weSayNo' });
    expect(told.decision).toMatchObject({ decided: 'weSayNo', suggested: 'asPlanned', isRight: false });
    expect(told.isPassed).toBe(false);
  });

  it('is nobody who says no for something that is not so', () => {
    const told = play('relaxer', {
      ...perfect,
      asksCloser: () => false,
      writes: (question, heard) =>
        question.kind === 'choices' && question.options.includes('hives') ? ['hives'] : heard,
    });
    expect(told.decision).toMatchObject({ decided: 'weSayNo', suggested: 'weSayNo', isRight: false });
    expect(told.isPassed).toBe(false);
    expect(pointsOf(told, 'looks')).toBe(0);
  });

  it('is whoever is a little gentler than the table, and not whoever is freer', () => {
    const decide = (decision: 'gentler' | 'asPlanned' | 'severalVisits') =>
      play('neverChemical', { ...perfect, decides: () => decision });
    expect(decide('gentler').isPassed).toBe(true);
    expect(decide('asPlanned').isPassed).toBe(false);
    expect(decide('severalVisits').isPassed).toBe(false);
  });

  it('is nobody who signs away a stop that truly stands, and the debrief names it', () => {
    const told = play('relaxer', { ...perfect, lifts: () => true });
    expect(told.decision).toMatchObject({
      suggested: 'weSayNo',
      stops: ['judgement.relaxerThenLightener'],
      signedStops: ['judgement.relaxerThenLightener'],
      missedStops: [],
      isRight: false,
    });
    expect(told.failedBy).toContain('stopSigned');
    expect(told.isPassed).toBe(false);
    expect(pointsOf(told, 'decision')).toBe(0);
  });

  it('is nobody who takes every first answer', () => {
    for (const id of ['wetIronedCurls', 'longEnds', 'bleachedThreeTimes', 'unknownBoxColour', 'relaxer']) {
      const told = play(id, { ...careless, lifts: () => false });
      expect(told.failedBy.length, id).toBeGreaterThan(0);
      expect(told.isPassed, id).toBe(false);
    }
  });

  it('is nobody who put unknown colour into peroxide without a glass', () => {
    const told = play('unknownBoxColour', { ...perfect, asksCloser: (path) => path !== 'hotTools.history' });
    expect(told.failedBy).toContain('glassNotRead');
    expect(play('unknownBoxColour', perfect).failedBy).toEqual([]);
  });

  it('is nobody who missed a stop of judgement, though a strand broke and she was refused for that', () => {
    const told = play('snapsWet', { ...perfect, asksCloser: (path) => path !== 'feelHair.wetStretch' });
    expect(told.decision.missedStops).toEqual(['judgement.snapsWhenWet']);
    expect(told.failedBy).toContain('stopMissed');
  });

  it('is whoever says no, or cuts first, once a strand of hers was seen to fail', () => {
    for (const decision of ['weSayNo', 'cutFirst', 'severalVisits'] as const)
      expect(play('wetIronedCurls', { ...perfect, decides: () => decision }).failedBy, decision).toEqual([]);
    const freer = play('wetIronedCurls', { ...perfect, decides: () => 'endsOut' });
    expect(freer.failedBy).toContain('decision');
  });

  it('is nobody who looked at no strand before the alarm called', () => {
    expect(play('safeClient', { ...perfect, looks: false }).failedBy).toEqual(['noLook']);
    expect(play('safeClient', perfect).failedBy).toEqual([]);
  });

  it('sees that the skin test has lapsed once its day is written down', () => {
    const [flag] = play('lapsedSkinTest', perfect).flags;
    expect(flag).toMatchObject({ flag: { id: 'skinTestLapsed' }, how: 'seen' });
  });

  it('finds her talked down to 180 °C once she is asked closer, and that is right', () => {
    const told = play('siliconeSpray', { ...perfect, finishes: careless.finishes });
    expect(told.finish).toMatchObject({ told: { finish: 'styled', settingC: 180 }, isRight: true });
    expect(told.isPassed).toBe(true);
    expect(play('siliconeSpray', careless).finish.isRight).toBe(false);
  });

  it('says which stops would have shown nothing on the head', () => {
    expect(play('blackTattoo', perfect).comesLater).toEqual([{ rule: 'stop.blackTattoo', how: 'daysLater' }]);
    expect(play('wheeze', perfect).comesLater).toEqual([
      { rule: 'stop.persulfateReaction', how: 'inTheBreath' },
    ]);
    expect(play('safeClient', perfect).comesLater).toEqual([]);
  });
});
