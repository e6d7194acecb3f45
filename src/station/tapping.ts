import type { RawEvent } from '../../shared/records/classify';
import { accept, type Result, refuse } from '../../shared/result';
import type { Board } from './board';
import { reachesHead } from './reachesHead';
import { SKIN_TESTS, type SkinTestKeeping } from './skinTests';
import type { Station } from './station';
import type { SubmitRefusal } from './submitRefusal';
import type { Taking } from './taking';

/** Puts work in a line, or refuses it at the door. */
export type Enqueue = <T>(
  line: string,
  work: () => Promise<Result<T, SubmitRefusal>>,
) => Promise<Result<T, SubmitRefusal>>;

/** Into which line does each tap go? What is said of a skin test goes into its own record, all else to its consultation. */
export function makeTapping(
  board: Board,
  { take }: Pick<Taking, 'take'>,
  skinTests: SkinTestKeeping,
  enqueue: Enqueue,
): Pick<Station, 'submit' | 'submitAll' | 'putOnSkinTest' | 'changeSkinTest'> {
  const readState = board.read;

  /** One tap within the line of its consultation, which says by then, and again after it, what its skin tests say. */
  const takeTap = async (id: string, by: string, raw: RawEvent): Promise<Result<void, SubmitRefusal>> => {
    if (reachesHead(raw.type)) {
      const settled = await skinTests.settle(id);
      if (!settled.ok) return settled;
    }
    const consultation = readState().open.get(id);
    // A skin test is noted in its own record first.
    const isNote = raw.type === 'SKIN_TEST_NOTED';
    if (consultation === undefined || isNote) return refuse({ kind: 'notNow' });
    const taken = await take(consultation, by, raw);
    if (taken.ok) await skinTests.settle(id);
    return taken;
  };

  const submit: Station['submit'] = (id, by, raw) => {
    const noted = readState().open.get(id)?.record.skinTest?.skinTestId;
    const isOfTest = raw.type === 'CORRECTED' && raw.answers?.answer === 'skinTest';
    if (raw.type === 'SKIN_TEST_NOTED') {
      return enqueue(SKIN_TESTS, () => skinTests.noteFor(id, by, raw.answers ?? {}));
    }
    // That it is another client's says nothing of the test itself.
    const isOwn = isOfTest && raw.answers?.code !== 'wrongClient';
    return isOwn && noted !== undefined && readState().skinTests.some((test) => test.id === noted)
      ? enqueue(SKIN_TESTS, () => skinTests.correctFor(id, noted, by, raw))
      : enqueue(id, () => takeTap(id, by, raw));
  };

  return {
    submit,

    submitAll: (id, by, raws) =>
      enqueue(id, async () => {
        for (const raw of raws) {
          const taken = await takeTap(id, by, raw);
          if (!taken.ok) return taken;
        }
        return accept(undefined);
      }),

    putOnSkinTest: (by, answers) => enqueue(SKIN_TESTS, () => skinTests.putOn(by, answers)),

    changeSkinTest: (id, by, raw) => enqueue(SKIN_TESTS, () => skinTests.change(id, by, raw)),
  };
}
