import { accept, type Result, refuse } from '../../result';
import type { ClassifyRefusal } from '../conflict';
import { BY_MAX_LENGTH } from '../event';
import { skinTestForms } from '../forms/skinTest';
import { type RawForm, readForm } from '../readForm';
import type { Settings } from '../settings';
import { findSkinTestConflict, type SkinTestConflict } from './conflict';
import { SKIN_TEST_VERSION, type SkinTestEvent, type SkinTestEventType } from './event';
import type { SkinTest } from './skinTest';

/** What was tapped or typed about a skin test, before anything is judged. */
export interface RawSkinTestEvent {
  readonly type: SkinTestEventType;
  readonly answers: RawForm;
}

interface Context {
  readonly settings: Settings;
  readonly settingsId: number;
  readonly atMs: number;
  readonly by: string;
  /** The consultation within which it is put on; null where it is put on by ticket alone. */
  readonly visit?: string | null;
}

/**
 * What does this tap say of the skin test, or what is wrong with it? `test`: as it stands; null for one put on now.
 * Checked in tests/shared/records/skinTest.
 */
export function classifySkinTest(
  test: SkinTest | null,
  raw: RawSkinTestEvent,
  { settings, settingsId, atMs, by, visit = null }: Context,
): Result<SkinTestEvent, ClassifyRefusal | SkinTestConflict> {
  if (!Object.hasOwn(skinTestForms, raw.type)) return refuse({ kind: 'unknownEvent' });
  if (by.trim() === '' || by.length > BY_MAX_LENGTH) return refuse({ kind: 'nobody' });
  const newestAtMs = test?.newestAtMs ?? 0;
  if (atMs < newestAtMs && raw.type !== 'CLOCK_CORRECTED') {
    return refuse({ kind: 'clockWentBack', newestAtMs });
  }
  const reading = { units: settings.units, hasAgeLine: false, nowMs: atMs, isStation: visit !== null };
  const isForVisit = visit !== null && raw.answers.consent === 'thisVisit';
  const answers = { ...raw.answers, forVisit: isForVisit ? visit : undefined };
  const payload = readForm(skinTestForms[raw.type], answers, reading);
  if (!payload.ok) return refuse({ kind: 'fields', fields: payload.error });
  const event = { v: SKIN_TEST_VERSION, type: raw.type, payload: payload.value, atMs, by, settingsId };
  const conflict = findSkinTestConflict(test, event as SkinTestEvent, settings.profile);
  return conflict === null ? accept(event as SkinTestEvent) : refuse(conflict);
}
