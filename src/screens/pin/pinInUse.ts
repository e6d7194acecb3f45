import { createContext, createSignal, useContext } from 'solid-js';
import type { PinInUse } from '../../station/pin/createPin';

/** What waits until the PIN was entered. */
export interface PinGate {
  /** Goes on at once where there is no PIN, or it was entered since the bar; else as soon as it is. */
  readonly pass: (goOn: () => void) => void;
  readonly isAsked: () => boolean;
  readonly opened: () => void;
  readonly giveUp: () => void;
  /** Whoever comes next is asked again. */
  readonly close: () => void;
}

/** Checked in tests/src/screens/pin.test.tsx. */
export function createPinGate(pin: PinInUse | undefined): PinGate {
  const [waiting, setWaiting] = createSignal<{ readonly goOn: () => void } | null>(null);
  let isOpen = false;
  const ask = (goOn: () => void): void => {
    if (pin?.isSet() === true) setWaiting({ goOn });
    else goOn();
  };
  return {
    pass: (goOn) => {
      if (pin === undefined || isOpen || pin.isSet() === false) goOn();
      else void pin.refresh().then(() => ask(goOn));
    },
    isAsked: () => waiting() !== null,
    opened: () => {
      isOpen = true;
      const goOn = waiting()?.goOn;
      setWaiting(null);
      goOn?.();
    },
    giveUp: () => setWaiting(null),
    close: () => {
      isOpen = false;
    },
  };
}

const PinContext = createContext<PinInUse | undefined>();
/** The PIN of this tablet; where none is given there is none, and nothing is asked. */
export const PinProvider = PinContext.Provider;
export const usePin = (): PinInUse | undefined => useContext(PinContext);

const passAll: PinGate['pass'] = (goOn) => goOn();
const PassContext = createContext<PinGate['pass']>(passAll);
export const PassProvider = PassContext.Provider;
/** How what is guarded is begun: it waits for the PIN, where there is one. */
export const usePass = (): PinGate['pass'] => useContext(PassContext);
