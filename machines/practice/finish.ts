import { readIngredientList } from '../../shared/chemistry/ingredients/readIngredientList';
import {
  type IngredientFinding,
  type IngredientFindingId,
  tellIngredients,
} from '../../shared/chemistry/ingredients/tellIngredients';
import { SOFTENING_C } from '../../shared/judgement/chance/covariates';
import { isSameLine } from '../../shared/judgement/mixes';
import type { ConsultationEvent } from '../../shared/records/event';
import type { HeatSprayAnswers } from '../../shared/records/forms/heatSpray';
import type { ConsultationRecord } from '../../shared/records/record';
import type { Settings } from '../../shared/records/settings';
import { brand } from '../../shared/units/brand';
import type { Celsius } from '../../shared/units/temperature';
import type { Lesson } from './lesson';
import { findWish } from './readTruth';

type Finish = Partial<HeatSprayAnswers>;

/** How she is finished today, as it was planned in the end, against what the bottle and the dial say of it. */
export interface FinishPart {
  /** undefined where it was not planned. */
  readonly told: Finish | undefined;
  /** What of it is not to be: a finding of the list, or a setting too hot. */
  readonly against: readonly (IngredientFindingId | 'tooHot')[];
  readonly isRight: boolean;
}

/** What can catch fire near a plate: never on the way to one. */
const fires: readonly string[] = ['alcoholBurns', 'isopropylBurns', 'propellantBurns'];

/** What does the list of this spray tell at this setting? Nothing where no hot tool is used, or no list is kept of it. */
function tellSpray(finish: Finish | undefined, { shelf }: Settings): readonly IngredientFinding[] {
  const { spray, settingC } = finish ?? {};
  if (finish?.finish !== 'styled' || spray === undefined) return [];
  const kept = shelf.find(({ name, kind }) => kind === 'spray' && isSameLine(name, spray));
  const read = readIngredientList(kept?.ingredients ?? '');
  return read.ok
    ? tellIngredients(read.value, settingC === undefined ? undefined : brand<Celsius>(settingC))
    : [];
}

/** Which findings of a spray stood on the screen, whatever was planned in the end? */
export const listFindingsShown = (
  log: readonly ConsultationEvent[],
  settings: Settings,
): ReadonlySet<string> =>
  new Set(
    log.flatMap((event) =>
      event.type === 'ANSWERED' && event.payload.step === 'heatSpray'
        ? tellSpray(event.payload.answers, settings).map(({ id }) => id)
        : [],
    ),
  );

/**
 * Is she finished as she may be? No hot tool is always right. Else nothing that burns near a plate, no setting that softens
 * the cortex, and where the lesson warns of her spray not both that spray and her setting.
 * Checked in tests/machines/practice/finish.test.ts.
 */
export function judgeFinish(lesson: Lesson, { answers }: ConsultationRecord, settings: Settings): FinishPart {
  const told = answers.heatSpray;
  const wished = Number(findWish(lesson).settingC ?? Number.POSITIVE_INFINITY);
  const settingC = told?.finish === 'styled' ? (told.settingC ?? 0) : 0;
  const warned = lesson.flags.map(({ id }) => id as string);
  const against = tellSpray(told, settings)
    .filter(({ plate }) => plate !== 'below')
    .map(({ id }) => id)
    .filter((id) => fires.includes(id) || (warned.includes(id) && settingC >= wished));
  const all = settingC > SOFTENING_C ? [...against, 'tooHot' as const] : against;
  return { told, against: all, isRight: all.length === 0 };
}
