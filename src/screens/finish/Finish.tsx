import { planForm } from '../../../shared/records/forms/bowl';
import { readForm } from '../../../shared/records/readForm';
import { BigButton } from '../../parts/BigButton';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { PartSheet } from '../PartSheet';
import { SentRefusal } from '../SentRefusal';
import type { StepProps } from '../stepProps';
import { PlanCard } from './PlanCard';

/** Offered in one tap. Assumed because they lie well below 400 °F, above which the cortex softens (common practice). */
const ASSUMED_SETTINGS = { C: ['120', '140', '160', '180'], F: ['250', '300', '325', '350'] } as const;
const otherPicks = { passes: ['1', '2'], restH: ['48', '72', '168'] };

/** What she does at home from today; giving her the plan closes the consultation. */
export function Finish(props: StepProps) {
  const words = useWords();
  const said = () => words.finish;
  const plan = () => {
    const read = readForm(planForm, asked.draft.raw(), {
      units: props.settings.units,
      hasAgeLine: false,
      nowMs: props.nowMs,
    });
    return read.ok ? read.value : null;
  };
  const asked = createEventForm(props, planForm, `${props.consultation.id}/plan`, {});
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
      <PartSheet
        step={props}
        form={asked}
        questions={planForm}
        words={said().plan}
        picks={{ ...otherPicks, settingC: ASSUMED_SETTINGS[props.settings.units.temperature] }}
        summary={said().card}
      >
        <PlanCard
          record={props.consultation.record}
          settings={props.settings}
          plan={plan()}
          atMs={props.nowMs}
        />
      </PartSheet>
      <p class="soft closing-line">{said().caution}</p>
      <SentRefusal refusal={asked.refusal()} />
    </StepPage>
  );
}
