import { For, Show } from 'solid-js';
import { LONGEST_PASS_SECONDS } from '../../../shared/heat/passes';
import { findMark, type HairThresholdId, isOfHair, listThresholdsMet } from '../../../shared/heat/thresholds';
import type { HeatSprayAnswers } from '../../../shared/records/forms/heatSpray';
import { brand } from '../../../shared/units/brand';
import { formatQuantity, formatTemperature } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { HandCaution } from '../../parts/HandCaution';
import { useWords } from '../../parts/useWords';
import { readMark } from '../../words/marks';
import { sayWithKind } from '../map/sayHair';

type Styled = Required<Pick<HeatSprayAnswers, 'tool' | 'settingC'>>;

/** What today's setting does to dry hair at the worst: one of each kind of source, as many as fit. */
const listWorst = (settingC: number) => {
  const met = listThresholdsMet(brand(settingC), 'dry').filter(isOfHair);
  const kindOf = (id: HairThresholdId) => readMark(findMark(id)).kind;
  return met.filter((id, index) => !met.slice(index + 1).some((hotter) => kindOf(hotter) === kindOf(id)));
};

/** What today's tool and setting reach on dry hair, once both are told. */
export function TodayHeat(props: {
  readonly answers: Partial<HeatSprayAnswers> | undefined;
  readonly units: UnitSettings;
  /** That the spray itself can catch fire is told of its list already. */
  readonly tellsFire: boolean;
}) {
  const words = useWords();
  const styled = (): Styled | undefined => {
    const { finish, tool, settingC } = props.answers ?? {};
    return finish === 'styled' && tool !== undefined && settingC !== undefined
      ? { tool, settingC }
      : undefined;
  };
  const reached = () => {
    const today = styled();
    return today === undefined ? [] : listWorst(today.settingC);
  };
  const title = ({ tool, settingC }: Styled) =>
    words.heat.todayTitle(
      words.asked.heatSpray.tool.options[tool],
      formatTemperature(brand(settingC), props.units, words.locale),
    );
  return (
    <Show when={styled()}>
      {(today) => (
        <section class="panel today-heat" data-panel="today-heat" aria-live="polite">
          <h2>{title(today())}</h2>
          <Show when={reached().length > 0} fallback={<p>{words.heat.todayReaches}</p>}>
            <ul class="reached">
              <For each={reached()}>
                {(id) => (
                  <li data-threshold={id}>{sayWithKind(words.heat.thresholds[id], findMark(id), words)}</li>
                )}
              </For>
            </ul>
          </Show>
          <p>
            {words.heat.onePass(formatQuantity(LONGEST_PASS_SECONDS, 'seconds', props.units, words.locale))}
          </p>
          <p data-line="rest-after">{words.heat.restAfter}</p>
          <Show when={!props.tellsFire}>
            <HandCaution caution="spray" />
          </Show>
        </section>
      )}
    </Show>
  );
}
