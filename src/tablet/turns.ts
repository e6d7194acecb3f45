import type { CallKind } from '../../shared/records/call';

/** Somebody is called, and the line that is spoken after the pulses, where that is wanted. */
export interface Calling {
  /** Which call is it? Another clock, and the same clock when it calls anew, is another one. */
  readonly key: string;
  readonly kind: CallKind;
  readonly line: string | null;
}

/** One time that something is heard: whose pulses, and whether her line comes after them. */
export interface Turn {
  readonly calling: Calling;
  readonly line: string | null;
}

/** Once every chair was named, a line is spoken with every so many calls. Assumed because words wear sooner than pulses. */
export const ASSUMED_SPOKEN_EACH = 4;

/**
 * Of several that call, who is heard next? Each one at once when she begins to call; of those that begin together the
 * gravest. After that the gravest again and again; with lines, every chair in turn, first those that were not named yet.
 * Checked in tests/src/tablet/turns.test.ts.
 */
export function makeTurns() {
  let calls: readonly Calling[] = [];
  let begun: ReadonlySet<string> = new Set();
  /** In which turn a chair was named last. */
  const namedIn = new Map<string, number>();
  let turns = 0;
  let lastNamed = 0;

  const take = (calling: Calling, isNamed: boolean): Turn => {
    const line = isNamed ? calling.line : null;
    if (line !== null) {
      namedIn.set(calling.key, turns);
      lastNamed = turns;
    }
    return { calling, line };
  };

  const findToName = (): Calling | undefined => {
    const turnOf = ({ key }: Calling): number => namedIn.get(key) ?? -1;
    const [first] = calls
      .filter(({ line }) => line !== null)
      .sort((one, other) => turnOf(one) - turnOf(other));
    if (first === undefined) return undefined;
    const isUnnamed = !namedIn.has(first.key);
    return isUnnamed || turns - lastNamed >= ASSUMED_SPOKEN_EACH ? first : undefined;
  };

  return {
    calls: () => calls,
    /** These call now, the gravest first. Answers the turn of one that has just begun; null where none has. */
    see(next: readonly Calling[]): Turn | null {
      const fresh = next.find(({ key }) => !begun.has(key));
      calls = next;
      begun = new Set(next.map(({ key }) => key));
      for (const key of namedIn.keys()) if (!begun.has(key)) namedIn.delete(key);
      if (fresh === undefined) return null;
      turns += 1;
      return take(fresh, true);
    },
    /** Nobody has just begun: whose turn is it? Null where nobody calls. */
    next(): Turn | null {
      turns += 1;
      const toName = findToName();
      const calling = toName ?? calls[0];
      return calling === undefined ? null : take(calling, toName !== undefined);
    },
    isCalling: ({ calling }: Turn): boolean => begun.has(calling.key),
    /** Her line was cut short: she is to be named again. */
    unname({ calling, line }: Turn): void {
      if (line !== null) namedIn.delete(calling.key);
    },
  };
}
