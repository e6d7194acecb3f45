import type * as v from 'valibot';
import { accept, type Result } from '../../../shared/result';
import { changesSchema, infoSchema } from './answers';
import type { Ask, AskFailure } from './ask';

/** So many changes are asked for at one go. Assumed because a change is some 200 bytes, so that this is one answer of 400 kB. */
const ASSUMED_CHANGES_AT_ONCE = 2000;

/** What is there, as far as it was read: each name with its edition there. */
export interface There {
  readonly revs: Map<string, string>;
  /** Reads on from where it stood; from the beginning where the database is another one than before, or lost some of it. */
  readOn(ask: Ask): Promise<Result<void, AskFailure>>;
}

/**
 * Keeps in memory what the other side holds, and so needs no place kept anywhere: a station that starts reads the names
 * anew, some 200 bytes a record, and never trusts an old place in a database that was made anew.
 */
export function makeThere(): There {
  const revs = new Map<string, string>();
  let since: string | number | null = null;
  let madeAt: string | number | null = null;

  const forget = (): void => {
    revs.clear();
    since = null;
  };

  const note = ({ results, last_seq }: v.InferOutput<typeof changesSchema>): void => {
    for (const { id, deleted, changes } of results) {
      if (deleted) revs.delete(id);
      else revs.set(id, changes[0]?.rev ?? '');
    }
    since = last_seq;
  };

  return {
    revs,
    async readOn(ask) {
      const info = await ask('', infoSchema);
      if (!info.ok) return info;
      const { doc_count, instance_start_time } = info.value;
      if (since === null || instance_start_time !== madeAt || doc_count < revs.size) forget();
      madeAt = instance_start_time;
      for (let limit = ASSUMED_CHANGES_AT_ONCE; ; ) {
        const from: string = since === null ? '' : `since=${encodeURIComponent(since)}&`;
        const changes = await ask(`_changes?${from}limit=${limit}`, changesSchema);
        if (changes.ok) {
          const isSame = since === changes.value.last_seq;
          note(changes.value);
          if (isSame || changes.value.results.length < limit) return accept(undefined);
        } else if (changes.error === 'tooLarge' && limit > 1) limit = Math.ceil(limit / 8);
        else return changes;
      }
    },
  };
}
