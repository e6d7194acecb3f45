import type { BackupRefusal } from '../../shared/records/backupFile';
import type { ClassifyRefusal } from '../../shared/records/conflict';
import type { RecordsRefusal } from '../../shared/records/json/consultationFile';
import type { FieldRefusal } from '../../shared/records/readForm';
import { formatCountdown, formatQuantity } from '../../shared/units/format';
import type { UnitSettings } from '../../shared/units/quantity';
import type { RefusalWords } from './en/refusals';
import type { Words } from './words';

/** Everything the station may answer to a tap. The station's own refusals fit in here, or a screen does not compile. */
export type AnyRefusal =
  | ClassifyRefusal
  | { readonly kind: 'backup'; readonly why: BackupRefusal }
  | { readonly kind: 'records'; readonly why: RecordsRefusal }
  | { readonly kind: 'recordRefused'; readonly ticket: string; readonly entry: number }
  | { readonly kind: 'recordsNotSaved'; readonly came: number }
  | { readonly kind: 'chairTaken' | 'recordDiffers'; readonly ticket: string }
  | { readonly kind: 'skinTestTooEarly'; readonly readableAtMs: number }
  | { readonly kind: 'waitInDoubt'; readonly doubtMs: number }
  | { readonly kind: 'stillReading'; readonly read: number; readonly all: number }
  | { readonly kind: 'skinTestOn' | 'skinTestReacted'; readonly putOnAtMs: number }
  | {
      readonly kind:
        | 'notNow'
        | 'dampHair'
        | 'stoppedElsewhere'
        | 'noSuchChair'
        | 'ticketOpen'
        | 'eraseUnfinished'
        | 'notWriting'
        | 'badSettings'
        | 'notSaved';
    };

const withUnit = (figure: string, unit: string): string => (unit === '' ? figure : `${figure}\u00a0${unit}`);

/** What is wrong at this field? Limits as they are shown and typed. */
export function sayFieldRefusal(refusal: FieldRefusal, words: Words, units: UnitSettings): string {
  const write = (shown: number) => formatQuantity(shown, 'count', units, words.locale);
  const limits = 'min' in refusal && 'max' in refusal ? refusal : null;
  const most = 'most' in refusal && refusal.most !== undefined ? write(refusal.most) : '';
  return words.refusals.fields[refusal.code]({
    low: limits === null ? '' : withUnit(write(limits.min), limits.unit),
    high: limits === null ? '' : withUnit(write(limits.max), limits.unit),
    most,
    step: 'step' in refusal && refusal.step !== undefined ? write(refusal.step) : '',
  });
}

/** Why does last time's outcome not count today? What is new is named. */
export function sayCarry(
  carry: Extract<ClassifyRefusal, { kind: 'carry' }>['carry'],
  words: Words,
): RefusalWords {
  const said = words.refusals.carry[carry.code];
  if (carry.code !== 'new') return said;
  const news = carry.news.map((thing) => words.refusals.news[thing]);
  return { ...said, what: `${said.what}: ${news.join(', ')}.` };
}

/** What was refused, and what clears it? */
export function sayRefusal(refusal: AnyRefusal, words: Words): RefusalWords {
  switch (refusal.kind) {
    case 'fields':
      return words.refusals.lookAtFields;
    case 'permit':
      return words.refusals.permit[refusal.permit.code];
    case 'carry':
      return sayCarry(refusal.carry, words);
    case 'mixture':
      return words.refusals.mixture[refusal.mixture.code];
    case 'backup':
      return words.refusals.backup[refusal.why];
    case 'records':
      return words.refusals.records[refusal.why];
    case 'recordRefused':
      return words.refusals.recordRefused(refusal.ticket, String(refusal.entry));
    case 'recordsNotSaved':
      return words.refusals.recordsNotSaved(String(refusal.came));
    case 'chairTaken':
    case 'recordDiffers':
      return words.refusals[refusal.kind](refusal.ticket);
    case 'skinTestTooEarly':
      return words.refusals.skinTestTooEarly(words.moments.dayAndTime(refusal.readableAtMs));
    case 'bowlTooOld':
      return words.refusals.bowlTooOld(words.moments.time(refusal.useByMs));
    case 'waitInDoubt':
      return words.refusals.waitInDoubt(formatCountdown(refusal.doubtMs));
    case 'stillReading':
      return words.refusals.stillReading(String(refusal.read), String(refusal.all));
    case 'skinTestOn':
    case 'skinTestReacted':
      return words.refusals[refusal.kind](words.moments.dayAndTime(refusal.putOnAtMs));
    default:
      return words.refusals[refusal.kind];
  }
}
