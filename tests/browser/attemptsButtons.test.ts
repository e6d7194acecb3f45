import { describe, expect, it } from 'vitest';
import type { StoryStep } from '../../seeds/story';
import { mixingDecisions } from '../../shared/judgement/decisions';
import type { RawEvent } from '../../shared/records/classify';
import type { RawForm } from '../../shared/records/readForm';
import { stepsBefore } from './makeLog';
import { readLogs } from './memory';
import type { Person } from './person';
import { expectNoMix, force, pressAll, sayRefusal, seat as seatAt } from './seat';
import { askAll, decide, endStrand, putOn, startStrand, weigh } from './shortWay';
import { useStation } from './station';
import { playStep } from './story';
import { answer, fill } from './typing';

const station = useStation();

const seat = (beginning: readonly StoryStep[]): Promise<Person> =>
  seatAt(station.browser, station.address, [beginning]);

const isRaw = (type: string, answers: RawForm): StoryStep => ({
  afterMs: 1_000,
  by: 'Juno',
  raw: { type, answers } as RawEvent,
});
const readyForStrand = askAll('G.G.', '1', 'none');
const broken = [
  ...readyForStrand,
  startStrand('20'),
  isRaw('STRAND_BROKE', { zone: 'roots' }),
  isRaw('OUTCOME_RECORDED', {
    zone: 'roots',
    fibre: 'broken',
    stretch: 'snaps',
    wentPast30: 'no',
  }),
];
const decided = [...readyForStrand, startStrand('20'), ...endStrand(20), decide];

describe('a button that is made to work is refused by the gate behind it, in a sentence', () => {
  it('a strand before the glass', async () => {
    const person = await seat(askAll('G.G.', '1', 'metallicColour'));
    await person.open(1);
    expect(await person.page.locator('[data-act^="test-"]').count()).toBe(0);
    await person.kept(() => pressAll(person.page));
    await person.isAt('preparing');
    const entries = [...(await readLogs(person.page)).values()].flat() as readonly { type?: string }[];
    const types = entries.map(({ type }) => type);
    expect(types).toContain('INCOMPATIBILITY_STARTED');
    expect(types).not.toContain('STRAND_STARTED');
  });

  it('damp hair', async () => {
    const person = await seat(stepsBefore(readyForStrand, 'STEP_CONFIRMED'));
    await person.open(1);
    await person.act('next');
    await person.isAt('hotTools');
    await playStep(person, isRaw('ANSWERED', { habits: [], smoke: 'no', history: ['none'] }));
    await person.act('next');
    await person.isAt('feelHair');
    const felt = {
      nape: 'damp',
      mid: 'dry',
      ends: 'dry',
      porosity: 'low',
      curl: 'straight',
      breakage: 'no',
      wetStretch: 'springsBack',
    };
    await playStep(person, isRaw('ANSWERED', felt));
    const { logLength } = await person.where();
    await force(person.page.locator('[data-act="next"]'));
    expect(await person.page.locator('.held-up').textContent()).toBe('Damp: dry it and look again.');
    expect(await sayRefusal(person)).toContain('The hair is damp: that hides what it is like.');
    expect(await person.where()).toEqual({ step: 'feelHair', logLength });
  });

  it('a decision to mix after a strand that broke: no button leads to one', async () => {
    const person = await seat(broken);
    await person.open(1);
    await person.act('show-freer');
    for (const decision of mixingDecisions) {
      expect(await person.page.locator(`[data-option="${decision}"]`).count()).toBe(0);
    }
    expect(await person.page.locator('[data-act="override-freer"]').count()).toBe(0);
    await person.isAt('decision');
    await expectNoMix(person);
  });

  it('a bowl that is stronger than the strand', async () => {
    const person = await seat(decided);
    await person.open(1);
    await fill(person, { colourG: '30', developerPercent: '12' });
    await force(person.page.locator('[data-act="weigh"]'));
    expect(await sayRefusal(person)).toContain('Stronger than the strand and the decision allow.');
    const logs = [...(await readLogs(person.page)).values()].flat() as readonly { type?: string }[];
    expect(logs.filter(({ type }) => type === 'BOWL_WEIGHED')).toEqual([]);
  });

  it('a button kept from when it was right', async () => {
    const person = await seat(decided);
    await person.open(1);
    await fill(person, { colourG: '30' });
    const kept = await person.page.locator('[data-act="weigh"]').elementHandle();
    await person.act('more-for-client');
    await person.act('way-back');
    await person.act('back-to-client');
    await person.kept(() => person.act('go-back'));
    await answer(person, 'targetLevel', '8');
    await person.kept(() => person.act('change-answer'));
    await kept?.evaluate((button: HTMLButtonElement) => {
      document.querySelector('main')?.append(button);
      button.click();
      button.remove();
    });
    await person.page.waitForTimeout(200);
    await person.isAt('client');
    await expectNoMix(person);
  });

  it('and the same bowl, when nothing is made up, is weighed', async () => {
    const person = await seat(decided);
    await person.open(1);
    for (const step of [weigh, putOn]) await playStep(person, step);
    await person.isAt('colourOn');
  });
});
