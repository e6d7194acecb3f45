import { isIron } from '../../../shared/heat/habit';
import type { Answers } from '../../../shared/records/forms/asked';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import type { Words } from '../../words/words';

/** Each iron that touched wet or damp hair, as she told it: how often, for how long. */
export function sayWetHabits({ hotTools }: Answers, words: Words, { units }: Settings): string {
  const { inputs } = words.hair;
  const write = (value: number) => formatQuantity(value, 'count', units, words.locale);
  const told = (name: 'days' | 'months', value: number | 'unknown') =>
    value === 'unknown' ? inputs.notKnown[name] : inputs[name](write(value));
  return (hotTools?.habits ?? [])
    .filter(({ tool, wetness }) => isIron(tool) && wetness !== 'dry')
    .map(({ tool, wetness, daysAWeek, forMonths }) =>
      inputs.tool(words.asked.hotTools.habits.rows.tool.options[tool], [
        inputs.wetness[wetness],
        told('days', daysAWeek),
        told('months', forMonths),
      ]),
    )
    .map((each) => `${each}.`)
    .join(' ');
}
