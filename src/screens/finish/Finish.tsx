import { For, Show } from 'solid-js';
import { planForm } from '../../../shared/records/forms/bowl';
import { brand } from '../../../shared/units/brand';
import { formatPercent, formatQuantity, formatTemperature } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { sayHeat } from '../ask/heatSaid';
import { createEventForm } from '../eventForm';
import '../layout.css';
import { PartForm } from '../PartForm';
import type { StepProps } from '../stepProps';

/** So hot is an iron still said to be minutes after use, °C. published: J. Burn Care Res. 29:650–654, 2008. */
const STILL_HOT_C = 80;

/** Offered in one tap. Assumed because they lie well below 400 °F, above which the cortex softens (common practice). */
const ASSUMED_SETTINGS = { C: ['120', '140', '160', '180'], F: ['250', '300', '325', '350'] } as const;
const otherPicks = { passes: ['1', '2'], restH: ['48', '72', '168'] };

/** What she does at home from today; giving her the plan closes the consultation. */
export function Finish(props: StepProps) {
  const words = useWords();
  const said = () => words.finish;
  const asked = createEventForm(props, planForm, `${props.consultation.id}/plan`, {});
  const told = () => props.consultation.record.answers.hotTools?.habits ?? [];
  const write = (value: number, quantity: 'minutes') =>
    formatQuantity(value, quantity, props.settings.units, words.locale);
  const used = () => props.consultation.record.bowls.filter(({ state }) => state === 'rinsed');
  return (
    <StepPage
      page={props.page}
      title={said().title}
      actions={
        <BigButton kind="primary" act="give-plan" onPress={() => void asked.send('PLAN_GIVEN')}>
          {said().give}
        </BigButton>
      }
    >
      <Caution>
        <p>{said().caution}</p>
      </Caution>
      <Refusal refusal={asked.refusal()} />
      <div class="columns">
        <PartForm
          step={props}
          form={asked}
          questions={planForm}
          words={said().plan}
          picks={{ ...otherPicks, settingC: ASSUMED_SETTINGS[props.settings.units.temperature] }}
        />
        <div class="column">
          <section class="panel">
            <h2>{said().sayToHer}</h2>
            <ul class="reached">
              <For each={said().rules}>{(rule) => <li>{rule}</li>}</For>
              <li>
                {said().ironsStayHot(
                  formatTemperature(brand(STILL_HOT_C), props.settings.units, words.locale),
                )}
              </li>
            </ul>
          </section>
          <Show when={told().length > 0}>
            <section class="panel">
              <h2>{said().atHome}</h2>
              <ul class="reached">
                <For each={sayHeat(told(), words, props.settings.units).tools}>
                  {(tool) => <li>{tool.title}</li>}
                </For>
              </ul>
            </section>
          </Show>
          <Show when={used().length > 0}>
            <section class="panel">
              <h2>{said().done}</h2>
              <ul class="reached">
                <For each={used()}>
                  {(bowl) => (
                    <li>
                      {said().bowl(
                        words.general.zones[bowl.zone],
                        bowl.line,
                        formatPercent(bowl.developerPercent, props.settings.units, words.locale),
                        write(bowl.minutes, 'minutes'),
                      )}
                    </li>
                  )}
                </For>
              </ul>
            </section>
          </Show>
        </div>
      </div>
    </StepPage>
  );
}
