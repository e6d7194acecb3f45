import { describe, expect, it } from 'vitest';
import { advanceBench, type BenchTrial } from '../../../../shared/records/bench/benchTrial';
import { classifyBench, type RawBenchEvent } from '../../../../shared/records/bench/classify';
import { defaultSettings } from '../../../../shared/records/settings';

const minute = 60_000;
const { units } = defaultSettings;
const classify = (trial: BenchTrial | null, raw: RawBenchEvent, atMs: number, by = 'Opal') =>
  classifyBench(trial, raw, { units, atMs, by });
const begin = { type: 'BENCH_STARTED', answers: { kind: 'dryWet', hair: 'coloured' } } as const;

function start(atMs: number): BenchTrial {
  const event = classify(null, begin, atMs);
  const trial = event.ok ? advanceBench('t1', null, event.value) : null;
  if (trial === null) throw new Error(JSON.stringify(event));
  return trial;
}

describe('a tap about a bench trial', () => {
  it('is an event by name and time', () => {
    expect(classify(null, begin, 5)).toEqual({
      ok: true,
      value: {
        v: 1,
        type: 'BENCH_STARTED',
        payload: { kind: 'dryWet', hair: 'coloured' },
        atMs: 5,
        by: 'Opal',
      },
    });
  });

  it('is refused by nobody, before its trial, or when it may not follow', () => {
    const trial = start(60 * minute);
    const read = { type: 'BENCH_PIECES_READ', answers: { dryPiece: 'slow', wetPiece: 'snaps' } } as const;
    expect(classify(null, begin, 5, '  ')).toEqual({ ok: false, error: { kind: 'nobody' } });
    expect(classify(trial, read, 5)).toMatchObject({ ok: false, error: { kind: 'clockWentBack' } });
    expect(classify(trial, read, 69 * minute)).toEqual({ ok: false, error: { kind: 'notNow' } });
    expect(classify(trial, read, 70 * minute).ok).toBe(true);
    expect(classify(null, { type: 'toString' as 'BENCH_STARTED', answers: {} }, 5)).toEqual({
      ok: false,
      error: { kind: 'unknownEvent' },
    });
  });

  it('names what is missing and what is no answer', () => {
    const half = { type: 'BENCH_STARTED', answers: { kind: 'sauna', hair: null } } as const;
    const said = classify(null, half, 5);
    expect(said).toMatchObject({ ok: false, error: { kind: 'fields' } });
    const paths = !said.ok && said.error.kind === 'fields' ? said.error.fields.map(({ path }) => path) : [];
    expect([...paths].sort()).toEqual(['hair', 'kind']);
  });
});
