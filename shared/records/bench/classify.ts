import { accept, type Result, refuse } from '../../result';
import type { UnitSettings } from '../../units/quantity';
import type { ClassifyRefusal } from '../conflict';
import { BY_MAX_LENGTH } from '../event';
import { benchForms } from '../forms/bench';
import { type RawForm, readForm } from '../readForm';
import { type BenchTrial, mayNote } from './benchTrial';
import { BENCH_VERSION, type BenchEvent, type BenchEventType } from './event';

/** What was tapped or typed about a bench trial, before anything is judged. */
export interface RawBenchEvent {
  readonly type: BenchEventType;
  readonly answers: RawForm;
}

/**
 * What does this tap say of the trial, or what is wrong with it? `trial`: as it stands; null for one that starts now.
 * Checked in tests/shared/records/bench/classify.test.ts.
 */
export function classifyBench(
  trial: BenchTrial | null,
  { type, answers }: RawBenchEvent,
  { units, atMs, by }: { readonly units: UnitSettings; readonly atMs: number; readonly by: string },
): Result<BenchEvent, ClassifyRefusal | { readonly kind: 'notNow' }> {
  if (!Object.hasOwn(benchForms, type)) return refuse({ kind: 'unknownEvent' });
  if (by.trim() === '' || by.length > BY_MAX_LENGTH) return refuse({ kind: 'nobody' });
  const newestAtMs = trial?.newestAtMs ?? 0;
  if (atMs < newestAtMs) return refuse({ kind: 'clockWentBack', newestAtMs });
  const payload = readForm(benchForms[type], answers, { units, hasAgeLine: false, nowMs: atMs });
  if (!payload.ok) return refuse({ kind: 'fields', fields: payload.error });
  const event = { v: BENCH_VERSION, type, payload: payload.value, atMs, by } as BenchEvent;
  return mayNote(trial, event) ? accept(event) : refuse({ kind: 'notNow' });
}
