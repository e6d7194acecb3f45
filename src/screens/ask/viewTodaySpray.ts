import { readIngredientList } from '../../../shared/chemistry/ingredients/readIngredientList';
import { isSameLine } from '../../../shared/judgement/mixes';
import type { HeatSprayAnswers } from '../../../shared/records/forms/heatSpray';
import type { Settings } from '../../../shared/records/settings';
import { brand } from '../../../shared/units/brand';
import { formatTemperature } from '../../../shared/units/format';
import type { Celsius } from '../../../shared/units/temperature';
import type { Words } from '../../words/words';
import { type FindingSaid, type MakerSaid, sayFindings, sayMaker } from '../sayIngredients';
import { type ChairLine, pickChairLines } from './chairLines';

/** What is shown of today's spray; no lines where no list of it is kept. */
export interface TodaySprayView {
  readonly title: string;
  readonly lines: readonly ChairLine[];
  /** All that its list tells, put into words only when somebody asks why. */
  readonly listAll: () => readonly FindingSaid[];
  readonly maker: MakerSaid | null;
}

/**
 * What does the list of today's spray tell at today's setting? Found on the shelf however the spray is typed; null
 * while no spray is told. Checked in tests/src/screens/askStep.test.tsx.
 */
export function viewTodaySpray(
  answers: Partial<HeatSprayAnswers> | undefined,
  { shelf, units }: Settings,
  words: Words,
): TodaySprayView | null {
  const { finish, spray, settingC, tool } = answers ?? {};
  if (finish !== 'styled' || spray === undefined) return null;
  const kept = shelf.find(({ name, kind }) => kind === 'spray' && isSameLine(name, spray));
  const read = readIngredientList(kept?.ingredients ?? '');
  const list = read.ok ? read.value : [];
  const at = settingC === undefined ? {} : { plate: brand<Celsius>(settingC) };
  const maker = sayMaker(kept?.makerSaysUpToC, at.plate, words, units);
  const short = list.length === 0 ? null : sayFindings(list, words, units, { ...at, isShort: true });
  return {
    title:
      at.plate === undefined
        ? words.spray.tellsTitle
        : words.spray.tellsAt(formatTemperature(at.plate, units, words.locale)),
    lines: short === null ? [] : pickChairLines(short, maker, tool, words),
    listAll: () => sayFindings(list, words, units, at),
    maker,
  };
}
