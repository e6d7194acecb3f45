import { type Accessor, createSignal } from 'solid-js';
import * as v from 'valibot';
import {
  findPinFallsAtMs,
  findPinWaitLeftMs,
  PIN_ROUNDS,
  type PinRecord,
  pinRecordSchema,
  settlePinClock,
} from '../../../shared/pin/pinRecord';
import { makePinStore, type PinStore } from '../../storage/pinStore';
import { isRightPin, makeVerifier } from './derive';

/** What became of a try. `notKept`: the tablet could not write that it was tried, so it was not looked at. */
export type PinTried = 'right' | 'wrong' | 'waits' | 'notKept';

/** The PIN of this tablet. It keeps a screen closed and nothing else: see words/en/pin.ts for what it does not do. */
export interface PinInUse {
  /** Is there one? null until that is read. */
  readonly isSet: Accessor<boolean | null>;
  /** This browser can make one: the page is served securely. */
  readonly mayBeSet: boolean;
  /** ms until the next try, at this moment. */
  readonly waitLeftMs: () => number;
  /** When it falls, as forgotten; null while nobody said that it is. */
  readonly fallsAtMs: () => number | null;
  /** Reads anew what another window may have written. */
  readonly refresh: () => Promise<void>;
  readonly attempt: (pin: string) => Promise<PinTried>;
  /** False where the tablet could not keep it. */
  readonly set: (pin: string) => Promise<boolean>;
  readonly takeOff: () => Promise<boolean>;
  /** Somebody says that it is forgotten: from now on it waits, and then falls. */
  readonly forget: () => Promise<boolean>;
}

/** The PIN of this tablet over its store. Checked in tests/src/station/pin/createPin.test.tsx. */
export function createPin(
  store: PinStore = makePinStore(indexedDB, localStorage),
  readNow: () => number = Date.now,
  rounds: number = PIN_ROUNDS,
): PinInUse {
  const [kept, setKept] = createSignal<PinRecord | null | undefined>();
  const write = async (record: PinRecord | null): Promise<boolean> => {
    try {
      await store.write(record);
    } catch {
      return false;
    }
    setKept(record);
    return true;
  };

  /** What stands in the store, its clock settled; what is forgotten and past its time is taken away. */
  const readKept = async (): Promise<PinRecord | null> => {
    const read = v.safeParse(pinRecordSchema, await store.read());
    if (!read.success) {
      setKept(null);
      return null;
    }
    const settled = settlePinClock(read.output, readNow());
    const falls = findPinFallsAtMs(settled);
    const record = falls !== null && falls <= readNow() ? null : settled;
    const isSame =
      record?.wrongAtMs === read.output.wrongAtMs && record.forgottenAtMs === read.output.forgottenAtMs;
    if (isSame) setKept(record);
    else await write(record);
    return record;
  };
  const refresh = async (): Promise<void> => {
    await readKept();
  };
  void refresh();

  const attempt = async (pin: string): Promise<PinTried> => {
    const record = await readKept();
    if (record === null) return 'right';
    if (findPinWaitLeftMs(record, readNow()) > 0) return 'waits';
    // Counted before it is looked at: whoever pulls the plug in between has had a try.
    const counted = { ...record, wrong: record.wrong + 1, wrongAtMs: readNow() };
    if (!(await write(counted))) return 'notKept';
    if (!(await isRightPin(pin, record))) {
      await write({ ...counted, wrongAtMs: readNow() });
      return 'wrong';
    }
    const verifier = record.rounds < rounds ? await makeVerifier(pin, rounds) : record;
    await write({ ...record, ...pickVerifier(verifier), wrong: 0, forgottenAtMs: null });
    return 'right';
  };

  return {
    isSet: () => {
      const record = kept();
      return record === undefined ? null : record !== null;
    },
    mayBeSet: globalThis.crypto?.subtle !== undefined,
    waitLeftMs: () => {
      const record = kept();
      return record == null ? 0 : findPinWaitLeftMs(record, readNow());
    },
    fallsAtMs: () => {
      const record = kept();
      return record == null ? null : findPinFallsAtMs(record);
    },
    refresh,
    attempt,
    set: async (pin) =>
      write({ ...(await makeVerifier(pin, rounds)), wrong: 0, wrongAtMs: readNow(), forgottenAtMs: null }),
    takeOff: () => write(null),
    forget: async () => {
      const record = await readKept();
      if (record === null || record.forgottenAtMs !== null) return true;
      return write({ ...record, forgottenAtMs: readNow() });
    },
  };
}

const pickVerifier = ({ salt, rounds, key }: Pick<PinRecord, 'salt' | 'rounds' | 'key'>) => ({
  salt,
  rounds,
  key,
});
