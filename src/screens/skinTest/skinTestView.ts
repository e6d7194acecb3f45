import {
  findLapsesAtMs,
  findReadableAtMs,
  judgeSkinTest,
  judgeTest,
  type SkinTestStatus,
} from '../../../shared/judgement/skinTest';
import type { SkinTestToken } from '../../../shared/records/event';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { type CameIn, findCameIn } from './cameIn';

/** How a skin test stands, also where there is none or none is asked for. */
export type AnyStatus = SkinTestStatus | 'missing' | 'notNeeded';

/** How the skin test stands, and what may be done about it now. */
export interface SkinTestView {
  readonly token: SkinTestToken;
  readonly status: AnyStatus;
  readonly putOnAtMs: number | null;
  readonly readableAtMs: number | null;
  readonly lapsesAtMs: number | null;
  readonly readAtMs: number | null;
  /** Of one that was put on at another station and waits longer here. */
  readonly cameIn: CameIn | null;
  /** When one that is put on now may be read. */
  readonly earliestAtMs: number;
  readonly isReadable: boolean;
  readonly mayPutOn: boolean;
}

/** How does the skin test stand now? Checked in tests/src/screens/app.test.tsx. */
export function viewSkinTest(record: ConsultationRecord, settings: Settings, nowMs: number): SkinTestView {
  const { profile } = settings;
  const token = judgeSkinTest(record, profile, nowMs);
  const { skinTest } = record;
  const putOnAtMs = skinTest?.putOnAtMs ?? null;
  const readableAtMs = skinTest === null ? null : findReadableAtMs(skinTest, profile);
  return {
    token,
    status: token === 'notNeeded' || skinTest === null ? noTest(token) : judgeTest(skinTest, profile, nowMs),
    putOnAtMs,
    readableAtMs,
    lapsesAtMs: skinTest === null ? null : findLapsesAtMs(skinTest, profile),
    readAtMs: skinTest?.readAtMs ?? null,
    cameIn: skinTest === null ? null : findCameIn(skinTest, profile),
    earliestAtMs: findReadableAtMs({ putOnAtMs: nowMs }, profile),
    isReadable: token === 'waiting' && readableAtMs !== null && nowMs >= readableAtMs,
    mayPutOn: token === 'missing' || token === 'lapsed',
  };
}

const noTest = (token: SkinTestToken): AnyStatus => (token === 'notNeeded' ? 'notNeeded' : 'missing');
