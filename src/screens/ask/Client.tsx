import { createMemo, createSignal, Show, untrack } from 'solid-js';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Dialog } from '../../parts/Dialog';
import { useWords } from '../../parts/useWords';
import type { AnyFormWords } from '../../words/formWords';
import { isNothingDone, StartedByMistake } from '../leaving/StartedByMistake';
import { SkinTestOpener } from '../skinTest/SkinTestOpener';
import { sayWhatMixWaitsFor } from '../skinTest/skinTestSaid';
import { viewSkinTest } from '../skinTest/skinTestView';
import type { StepProps } from '../stepProps';
import { AskPage } from './AskPage';
import { findPlanToChange } from './findPlanToChange';
import { NothingNew } from './NothingNew';
import { Pregnant } from './Pregnant';

/** Whoever is back is asked in one go what is new; anybody else, and whoever has news, question by question. */
export function Client(props: StepProps) {
  const [hasNews, setHasNews] = createSignal(false);
  const last = createMemo(() => {
    const { lastTime, answers } = props.consultation.record;
    return hasNews() || Object.keys(answers).length > 0 ? null : lastTime;
  });
  return (
    <Show when={last()} fallback={<AskClient {...props} />}>
      {(before) => <NothingNew {...props} last={before()} onSomethingNew={() => setHasNews(true)} />}
    </Show>
  );
}

/** What she wants, and whether anything may go on this skin at all. */
function AskClient(props: StepProps) {
  const words = useWords();
  const laterOn = createMemo(() =>
    sayWhatMixWaitsFor(viewSkinTest(props.consultation.record, props.settings, props.nowMs), words),
  );
  /** The age line of this salon, as a number: nobody says "the line". */
  const ageWords = createMemo((): AnyFormWords => {
    const { ageLine } = props.settings.profile;
    if (ageLine === null) return {};
    return {
      ageBand: words.asking.ageBand(formatQuantity(ageLine, 'count', props.settings.units, words.locale)),
    };
  });
  const planToChange = createMemo(() => findPlanToChange(props.consultation));
  /** Opened for a change of the plan: there it begins, and that is said at the question. */
  const begin = untrack(() => {
    const at = planToChange();
    return at === 'any' || at === null ? {} : { begin: at };
  });
  const changeWords = createMemo((): AnyFormWords => {
    const { length, service } = words.asked.client;
    const { hints } = words.asking.planToChange;
    return begin.begin === undefined
      ? {}
      : { [begin.begin]: { ...{ length, service }[begin.begin], hint: hints[begin.begin] } };
  });
  const [isMistakeOpen, setIsMistakeOpen] = createSignal(false);
  const mayCallOff = createMemo(() => isNothingDone(props));
  return (
    <>
      <AskPage
        {...props}
        step="client"
        summary={words.skinTest.title}
        laterOn={laterOn()}
        words={{ ...ageWords(), ...changeWords() }}
        {...begin}
        corner={(path) => path === 'scalp' && <Pregnant />}
        also={
          <Show when={mayCallOff()}>
            <BigButton kind="quiet" act="started-by-mistake" onPress={() => setIsMistakeOpen(true)}>
              {words.leaving.byMistake}
            </BigButton>
          </Show>
        }
      >
        <Show when={planToChange() !== null}>
          <Caution kind="plain">
            <p data-line="change-plan">{words.asking.planToChange.what}</p>
          </Caution>
        </Show>
        <SkinTestOpener {...props} />
      </AskPage>
      <Dialog isOpen={isMistakeOpen()} title={props.page.kicker} onClose={() => setIsMistakeOpen(false)}>
        <StartedByMistake {...props} />
      </Dialog>
    </>
  );
}
