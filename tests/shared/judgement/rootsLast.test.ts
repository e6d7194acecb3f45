import { describe, expect, it } from 'vitest';
import { areRootsToCome, isRootsLast } from '../../../shared/judgement/rootsLast';
import type { Answers } from '../../../shared/records/forms/asked';

const told = (client: object, history?: readonly string[]) =>
  ({ client: { service: 'lighten', reach: 'fullHead', ...client }, hotTools: { history } }) as Answers;

describe('the roots', () => {
  it('come last on hair nothing was ever done to that is to be lighter', () => {
    for (const service of ['lighten', 'liftAndDeposit'])
      for (const reach of ['fullHead', 'endsOut'])
        expect(isRootsLast(told({ service, reach }, ['none'])), `${service} ${reach}`).toBe(true);
  });

  it('are in no order otherwise: coloured before, not known, not told, roots alone, or no lift', () => {
    expect(isRootsLast(told({}, ['salonColour']))).toBe(false);
    expect(isRootsLast(told({}, ['unknown']))).toBe(false);
    expect(isRootsLast(told({}, []))).toBe(false);
    expect(isRootsLast(told({}))).toBe(false);
    expect(isRootsLast({})).toBe(false);
    expect(isRootsLast(told({ reach: 'roots' }, ['none']))).toBe(false);
    for (const service of ['depositOnly', 'gloss', 'tone'])
      expect(isRootsLast(told({ service }, ['none'])), service).toBe(false);
  });

  it('are still to come until somebody says that all is on', () => {
    const virgin = told({}, ['none']);
    const bowl = { kind: 'tested', zone: 'lengths', allOnAtMs: null } as const;
    expect(areRootsToCome(virgin, bowl)).toBe(true);
    expect(areRootsToCome(virgin, { ...bowl, allOnAtMs: 1 })).toBe(false);
    expect(areRootsToCome(virgin, { ...bowl, zone: 'ends' })).toBe(false);
    expect(areRootsToCome(virgin, { ...bowl, kind: 'toner' })).toBe(false);
    expect(areRootsToCome(told({}, ['salonColour']), bowl)).toBe(false);
  });
});
