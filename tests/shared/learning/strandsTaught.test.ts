import { describe, expect, it } from 'vitest';
import { readCovariates } from '../../../shared/judgement/chance/covariates';
import { gatherTaught, listTaught } from '../../../shared/learning/strandsTaught';
import {
  andThen,
  bothHold,
  change,
  find,
  minute,
  ofStep,
  ofType,
  story,
  type Told,
  tell,
  until,
} from '../records/telling';

const teach = ({ log }: Told) => listTaught({ id: 'told', log });
const howEach = (told: Told) => teach(told).map(({ hasBroken }) => hasBroken);
const end = (told: Told, zone: string) =>
  told.record.strands.find((strand) => strand.zone === zone)?.outcome?.atMs;

const whole = tell(story);

describe('what the strands of a consultation teach', () => {
  it('is how each ended, when that was recorded, and what was known before it', () => {
    const taught = teach(whole);
    expect(taught.map(({ hasBroken }) => hasBroken)).toEqual(
      whole.record.strands.map(({ ended }) => ended?.how === 'broke'),
    );
    expect(taught.map(({ atMs }) => atMs)).toEqual(whole.record.strands.map(({ zone }) => end(whole, zone)));
    const before = tell(until('STRAND_STARTED'));
    for (const { covariates } of taught) expect(covariates).toEqual(readCovariates(before.record.answers));
  });

  it.each([
    ['sound', 'springsBack', false],
    ['rough', 'springsBack', false],
    ['gummy', 'staysLong', true],
  ])('counts %s rightly', (fibre, stretch, hasBroken) => {
    const steps = change(bothHold, ofType('OUTCOME_RECORDED', 'ends'), { fibre, stretch });
    const upTo = steps.slice(0, 1 + steps.findIndex(({ raw }) => ofType('OUTCOME_RECORDED', 'ends')(raw)));
    const found = teach(tell(upTo)).at(-1);
    expect(found?.hasBroken).toBe(hasBroken);
  });

  it('is nothing before an outcome, and of a strand that broke that it broke', () => {
    const running = tell(until('STRAND_TAKEN_OFF').filter(({ raw }) => raw.type !== 'STRAND_BROKE'));
    expect(teach(running)).toEqual([]);
    const broken = andThen(running, { type: 'STRAND_BROKE', answers: { zone: 'ends' } });
    expect(howEach(broken)).toEqual([true]);
  });

  it('is nothing of a strand that was put aside, taken back, or corrected away', () => {
    const running = tell(until('STRAND_TAKEN_OFF').filter(({ raw }) => raw.type !== 'STRAND_BROKE'));
    const aside = andThen(running, { type: 'STRAND_DISCARDED', answers: { zone: 'ends', why: 'lost' } });
    expect(teach(aside)).toEqual([]);
    const told = tell(until('DECIDED', bothHold));
    const back = andThen(told, {
      type: 'OUTCOME_RETRACTED',
      answers: { zone: 'ends', code: 'wrongTap', words: 'meant the lengths' },
    });
    expect(teach(told).length - teach(back).length).toBe(1);
    const corrected = andThen(told, {
      type: 'CORRECTED',
      answers: { answer: 'inherited', code: 'wrongClient', words: 'it was her sister' },
    });
    expect(teach(corrected)).toEqual([]);
  });

  it('is nothing of one that held and was taken off before it had the time to break', () => {
    const taken = (why: string, earlierMs: number) => {
      const steps = change(until('DECIDED', bothHold), ofType('STRAND_TAKEN_OFF'), { why });
      const first = steps.findIndex(({ raw }) => raw.type === 'STRAND_TAKEN_OFF');
      const sooner = steps.map((step, at) =>
        at === first ? { ...step, afterMs: step.afterMs - earlierMs } : step,
      );
      return howEach(tell(sooner));
    };
    for (const why of ['levelReached', 'looksWeak', 'clientLeaves']) {
      expect(taken(why, 0), why).toEqual([false, false]);
      expect(taken(why, 5 * minute), why).toEqual(why === 'levelReached' ? [false, false] : []);
    }
  });

  it('is nothing where colour is only deposited', () => {
    const deposit = tell(until('DECIDED', bothHold)).log.map((event) =>
      event.type === 'ANSWERED' && event.payload.step === 'client'
        ? { ...event, payload: { ...event.payload, answers: { ...event.payload.answers, service: 'gloss' } } }
        : event,
    );
    expect(listTaught({ id: 'told', log: deposit as Told['log'] })).toEqual([]);
  });

  it('never knows what was told after the strand was started', () => {
    const before = tell(until('DECIDED', bothHold));
    const later = andThen(before, {
      ...find(ofStep('feelHair')),
      answers: { ...find(ofStep('feelHair')).answers, breakage: 'much' },
    } as Parameters<typeof andThen>[1]);
    expect(later.record.answers.feelHair?.breakage).toBe('much');
    expect(teach(later).map(({ covariates }) => covariates.breakage)).toEqual(
      teach(before).map(({ covariates }) => covariates.breakage),
    );
  });
});

describe('what several consultations teach', () => {
  it('counts a consultation that lies in two places once, and each strand in the order it was known', () => {
    const one = { id: 'one', log: whole.log };
    const all = gatherTaught([one, { id: 'two', log: whole.log }, one]);
    expect(all).toHaveLength(2 * teach(whole).length);
    expect(all.map(({ atMs }) => atMs)).toEqual(all.map(({ atMs }) => atMs).sort((a, b) => a - b));
  });
});
