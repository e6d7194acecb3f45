import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import { classify } from '../../../shared/records/classify';
import { type ClosedRecord, closeRecord } from '../../../shared/records/closedRecord';
import { findLastTime } from '../../../shared/records/findLastTime';
import { parseEvent } from '../../../shared/records/parseEvent';
import { beginRecord } from '../../../shared/records/record';
import { findEvent, lowRisk, nothing, startAtMs, story, type Told, tell, until } from './telling';

const called: StoryStep = {
  afterMs: 1000,
  by: 'Opal',
  raw: { type: 'CALLED_OFF', answers: { reason: 'noTime' } },
};

function close(told: Told, id: string): ClosedRecord {
  const closed = closeRecord({ ...told.record, id }, told.log);
  if (closed === null) throw new Error('this story has no end');
  return closed;
}

const done = close(tell(story), 'done0001');

describe('what was last time', () => {
  it('is the newest closed record of the ticket, however it is typed, in which anything was said', () => {
    const silent = close(tell([...until('ANSWERED'), called]), 'none0001');
    const older = close(tell([...until('SKIN_TEST_NOTED'), called]), 'olds0001');
    expect(findLastTime([older, done, silent], 'q. f')?.id).toBe('done0001');
    expect(findLastTime([done, older], 'Q.F.')?.id).toBe('olds0001');
    expect(findLastTime([done], 'Q.G.')).toBeNull();
    expect(findLastTime([done], '')).toBeNull();
    expect(findLastTime([silent], 'Q.F.')).toBeNull();
  });

  it('holds what was answered, what was mixed for each zone on the head, and the strand it stood on', () => {
    const last = findLastTime([done], 'Q.F.');
    expect(last).toMatchObject({ isDone: true, hasStandingStop: false, endedAtMs: done.endedAtMs });
    expect(last?.answers.client).toMatchObject({ service: 'lighten', targetLevel: 7 });
    expect(last?.zones).toHaveLength(1);
    expect(last?.zones[0]).toMatchObject({
      bowl: { zone: 'lengths', line: 'Sandbar powder', developerPercent: 3, minutes: 25, colourG: 40 },
      strand: { zone: 'lengths', place: 'crown', developerPercent: 6 },
      minutesOn: 25,
      grade: 'sound',
      outcome: { fibre: 'sound', level: 7 },
      strandAtMs: tell(until('OUTCOME_RECORDED')).atMs,
    });
  });

  it('knows both zones of a full head, and nothing of a bowl that was thrown away', () => {
    const both = tell(until('BOWL_WEIGHED', lowRisk));
    expect(findLastTime([close(tell([called], salon, both), 'both0001')], 'Q.F.')).toMatchObject({
      isDone: false,
      zones: [],
    });
  });

  it('is not passed over for an older one when its log is not understood any more', () => {
    const broken = { ...done, id: 'brok0001', log: [{ v: 99 }] };
    expect(findLastTime([done, broken], 'Q.F.')).toBeNull();
  });
});

describe('a person who says "same client"', () => {
  const raw = { type: 'OPENED', answers: { ticket: 'Q.F.', chair: '3', lastTimeId: 'done0001' } } as const;
  const lastTime = findLastTime([done], 'Q.F.');
  const context = { settings: salon, settingsId: 1, atMs: startAtMs, by: 'Opal', inheritsStop: false };

  it('has last time copied into the log by the station, and read again from it', () => {
    const event = classify(nothing.record, raw, { ...context, lastTime });
    if (!event.ok) throw new Error(JSON.stringify(event.error));
    const stored = JSON.parse(JSON.stringify(event.value));
    expect(parseEvent(stored)).toMatchObject({ ok: true, value: { payload: { lastTime } } });
  });

  it('is refused when the station finds nothing, or something else, under that ticket', () => {
    expect(classify(nothing.record, raw, context)).toEqual({ ok: false, error: { kind: 'notLastTime' } });
    const other = lastTime && { ...lastTime, id: 'othr0001' };
    expect(classify(nothing.record, raw, { ...context, lastTime: other })).toMatchObject({ ok: false });
  });

  it('cannot send last time herself, nor name one without it in the log', () => {
    const own = { ...raw, answers: { ticket: 'Q.F.', chair: '3', lastTime: [{}] } };
    const event = classify(beginRecord('told'), own, { ...context, lastTime });
    expect(event.ok && event.value.payload).toEqual({
      ticket: 'Q.F.',
      chair: 3,
      stylist: '',
      lastTimeId: '',
    });
    const opened = findEvent(tell(story), 'OPENED');
    const named = { ...opened, payload: { ...opened.payload, lastTimeId: 'done0001' } };
    expect(parseEvent(named)).toMatchObject({ ok: false, error: 'badPayload' });
    const foreign = { ...opened, payload: { ...opened.payload, lastTime } };
    expect(parseEvent(foreign)).toMatchObject({ ok: false, error: 'badPayload' });
  });
});
