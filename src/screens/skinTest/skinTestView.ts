import { findReadableAtMs, judgeSkinTest } from '../../../shared/judgement/skinTest';
import type { SkinTestToken } from '../../../shared/records/event';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { msPerDay } from '../../../shared/units/time';

/** How the skin test stands, and what may be done about it now. */
export interface SkinTestView {
  readonly token: SkinTestToken;
  readonly putOnAtMs: number | null;
  readonly readableAtMs: number | null;
  readonly lapsesAtMs: number | null;
  /** When one that is put on now may be read. */
  readonly earliestAtMs: number;
  readonly isReadable: boolean;
  readonly mayPutOn: boolean;
}

/** How does the skin test stand now? Checked in tests/src/screens/app.test.tsx. */
export function viewSkinTest(record: ConsultationRecord, settings: Settings, nowMs: number): SkinTestView {
  const { profile } = settings;
  const token = judgeSkinTest(record, profile, nowMs);
  const putOnAtMs = record.skinTest?.putOnAtMs ?? null;
  const readableAtMs = putOnAtMs === null ? null : findReadableAtMs(putOnAtMs, profile);
  return {
    token,
    putOnAtMs,
    readableAtMs,
    lapsesAtMs: putOnAtMs === null ? null : putOnAtMs + profile.skinTestLapsesDays * msPerDay,
    earliestAtMs: findReadableAtMs(nowMs, profile),
    isReadable: token === 'waiting' && readableAtMs !== null && nowMs >= readableAtMs,
    mayPutOn: token === 'missing' || token === 'lapsed',
  };
}
