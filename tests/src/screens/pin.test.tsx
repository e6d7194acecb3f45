import { createRoot } from 'solid-js';
import { expect, it } from 'vitest';
import { createPinGate } from '../../../src/screens/pin/pinInUse';
import { createPlace } from '../../../src/screens/place';
import { createWho } from '../../../src/screens/who';
import { makeStation } from '../../../src/station/makeStation';
import type { PinInUse } from '../../../src/station/pin/createPin';
import { makeTablet, switchOn } from '../storage/tablet';

/** A PIN that is set, or not, and that any six figures open. */
const makePin = (isSet: boolean | null): PinInUse => {
  let now = isSet;
  return {
    isSet: () => now,
    mayBeSet: true,
    waitLeftMs: () => 0,
    fallsAtMs: () => null,
    refresh: async () => {
      now ??= true;
    },
    attempt: async () => 'right',
    set: async () => true,
    takeOff: async () => true,
    forget: async () => true,
  };
};
const turn = () => new Promise((resolve) => setTimeout(resolve, 0));

/** The ways of a tablet where Opal is known, and the gate before them. */
const open = (pin: PinInUse | undefined) =>
  createRoot(() => {
    const station = makeStation({
      store: switchOn(makeTablet()).store,
      now: () => 0,
      makeId: () => 'client0001',
      publish: () => undefined,
      onAcknowledged: () => undefined,
      onDropped: () => undefined,
    });
    const gate = createPinGate(pin);
    const who = createWho(() => true);
    who.choose('Opal');
    return { gate, place: createPlace(station.readState, who, () => undefined, 'bar', gate.pass) };
  });

it('without a PIN nothing is asked', () => {
  for (const pin of [undefined, makePin(false)]) {
    const { gate, place } = open(pin);
    place.toSettings();
    expect([place.at(), gate.isAsked()]).toEqual(['settings', false]);
  }
});

it.each(['toSettings', 'toKept', 'toTrainer'] as const)('%s waits for it', async (way) => {
  const { gate, place } = open(makePin(true));
  place[way]();
  await turn();
  expect([place.at(), gate.isAsked()]).toEqual(['bar', true]);
  gate.giveUp();
  expect([place.at(), gate.isAsked()]).toEqual(['bar', false]);
  place[way]();
  await turn();
  gate.opened();
  expect([place.at(), place.isGuarded(), gate.isAsked()]).toEqual([way.slice(2).toLowerCase(), true, false]);
});

it.each(['toDay', 'toSkinTests', 'toLessons'] as const)('%s waits for nothing', (way) => {
  const { gate, place } = open(makePin(true));
  place[way]();
  expect([place.isGuarded(), gate.isAsked()]).toEqual([false, false]);
  expect(place.at()).not.toBe('bar');
});

it('once entered it holds until it is closed', async () => {
  const { gate } = open(makePin(true));
  let done = 0;
  const go = () => {
    done += 1;
  };
  gate.pass(go);
  await turn();
  expect(done).toBe(0);
  gate.opened();
  gate.pass(go);
  expect(done).toBe(2);
  gate.close();
  gate.pass(go);
  await turn();
  expect([done, gate.isAsked()]).toEqual([2, true]);
});

it('while it is not known yet whether there is one, that is read first', async () => {
  const { gate } = open(makePin(null));
  gate.pass(() => undefined);
  await turn();
  expect(gate.isAsked()).toBe(true);
});
