import { createMemo, Show, untrack } from 'solid-js';
import { isHotterThanSuggested, suggestHomeSetting } from '../../../shared/judgement/homeSetting';
import { planForm } from '../../../shared/records/forms/bowl';
import { listNotHome } from '../../../shared/records/notHomeYet';
import { type FieldRefusal, type Raw, type RawForm, readForm } from '../../../shared/records/readForm';
import { writeForm } from '../../../shared/records/writeForm';
import { formatTemperature } from '../../../shared/units/format';
import { readNumber } from '../../../shared/units/numberField';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Paper } from '../../parts/Paper';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { useEverybody } from '../everybody';
import { PartSheet } from '../PartSheet';
import { SentRefusal } from '../SentRefusal';
import type { StepProps } from '../stepProps';
import { whyNotPrint } from '../strandCard/whyNotPrint';
import { HandOut } from './HandOut';
import { PlanCard } from './PlanCard';

/** Offered in one tap. Assumed because they lie well below 400 °F, above which the cortex softens (common practice). */
const ASSUMED_SETTINGS = { C: ['120', '140', '160', '180'], F: ['250', '300', '325', '350'] } as const;
/** The answers that stand on her card. */
const onPaper: readonly string[] = ['settingC', 'passes', 'restH', 'back'];
const otherPicks = { passes: ['1', '2'], restH: ['48', '72', '168'] };

/**
 * What she does at home from today, and what is looked at before she leaves; giving her the plan closes the consultation.
 * How hot stands there as it is suggested, and can be said otherwise. Checked in tests/src/screens/colourOn/bowlScreens.test.tsx.
 */
export function Finish(props: StepProps) {
  const words = useWords();
  const said = () => words.finish;
  const record = () => props.consultation.record;
  const suggested = untrack(() => suggestHomeSetting(record(), props.settings.units.temperature));
  const initial = untrack(() => {
    const { settingC } = writeForm(planForm, { settingC: suggested.settingC }, props.settings.units);
    return settingC === undefined ? {} : { settingC };
  });
  const asked = createEventForm(props, planForm, `${props.consultation.id}/plan`, initial);
  const readPlan = (raw: RawForm) => {
    const context = { units: props.settings.units, hasAgeLine: false, nowMs: untrack(() => props.nowMs) };
    const read = readForm(planForm, raw, context);
    return read.ok && listNotHome(read.value).length === 0 ? read.value : null;
  };
  const plan = createMemo(() => readPlan(asked.draft.raw()));
  /** Her page as it would be printed: how she takes it along is said last, and stands nowhere on it. */
  const toPrint = createMemo(() => readPlan({ ...asked.draft.raw(), cardNow: 'printed' }));
  /** Said at once, and not only when she is on her way. */
  const notHome = (): readonly FieldRefusal[] => listNotHome(asked.draft.raw());
  /** The suggested figure, where what is said is hotter; null where it is not, or is no figure yet. */
  const hotter = createMemo(() => {
    const { units } = props.settings;
    const typed = asked.draft.raw().settingC;
    const read = readNumber(typeof typed === 'string' ? typed : '', planForm.settingC.field, units);
    return read.ok && isHotterThanSuggested(read.value, suggested)
      ? formatTemperature(suggested.settingC, units, words.locale)
      : null;
  });
  /** Said where it takes no room from her card, which is hers and says nothing of it. */
  const sayTitle = () => (plan() !== null && hotter() !== null ? said().hotter : said().title);
  const sayHint = () => {
    const heat = hotter();
    return heat === null ? said().whyThis[suggested.why] : said().hotterWhy(heat);
  };
  const planWords = () => {
    const { settingC, lateItching, ...others } = said().plan;
    const called = props.settings.contact === '' ? { ...lateItching, hint: said().noNumber } : lateItching;
    return { settingC: { ...settingC, hint: sayHint() }, ...others, lateItching: called };
  };
  const sayPrintHint = () =>
    props.settings.contact === '' ? `${said().noNumber} ${said().printHint}` : said().printHint;
  const everybody = useEverybody(() => props.consultation);
  const whyNot = createMemo(() => whyNotPrint(everybody(), props.nowMs, words, props.settings.units));
  const mayPrint = () => toPrint() !== null && whyNot() === null;
  /** What was printed stands for the plan it says: another figure takes "printed" back, and "printed" prints. */
  const onChange = (name: string, value: Raw) => {
    if (onPaper.includes(name) && asked.draft.raw().cardNow === 'printed')
      asked.draft.set('cardNow', undefined);
    asked.onChange(name, value);
    if (name === 'cardNow' && value === 'printed') window.print();
  };
  return (
    <StepPage
      page={props.page}
      title={sayTitle()}
      actions={
        <>
          {/* Beside what it is about: her card needs the room above. */}
          <p class="soft step-said closing-line">
            {toPrint() === null ? said().caution : (whyNot() ?? sayPrintHint())}
          </p>
          <Show when={plan()}>
            <BigButton act="print-hand-out" isWay isDisabled={!mayPrint()} onPress={() => window.print()}>
              {said().print}
            </BigButton>
          </Show>
          <BigButton
            kind={plan() === null ? 'plain' : 'primary'}
            act="give-plan"
            onPress={() => void asked.send('PLAN_GIVEN')}
          >
            {said().give}
          </BigButton>
        </>
      }
    >
      <PartSheet
        step={props}
        form={{ ...asked, onChange }}
        questions={planForm}
        words={planWords()}
        picks={{ ...otherPicks, settingC: ASSUMED_SETTINGS[props.settings.units.temperature] }}
        waiting={mayPrint() ? {} : { cardNow: ['printed'] }}
        also={notHome()}
        summary={said().card}
      >
        <PlanCard record={record()} settings={props.settings} plan={plan()} atMs={props.nowMs} />
      </PartSheet>
      <Show when={asked.draft.raw().skinNow === 'burns'}>
        <Caution kind="stop">
          <div class="stop-said">
            <p>{said().burns}</p>
            <BigButton act="reaction-at-finish" isWay onPress={() => props.page.onReaction()}>
              {words.general.reaction}
            </BigButton>
          </div>
        </Caution>
      </Show>
      <SentRefusal refusal={asked.refusal()} />
      <Show when={toPrint()}>
        {(given) => (
          <Paper page="hand-out">
            <HandOut record={record()} settings={props.settings} plan={given()} atMs={props.nowMs} />
          </Paper>
        )}
      </Show>
    </StepPage>
  );
}
