import { type JSX, Show } from 'solid-js';
import type { RawForm } from '../../../shared/records/readForm';
import { type AskStep, askSteps } from '../../../shared/records/steps';
import { BigButton } from '../../parts/BigButton';
import type { Picks } from '../../parts/form/field';
import { Sheet } from '../../parts/form/Sheet';
import type { Together } from '../../parts/form/sheet/TogetherQuestion';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import type { AnyFormWords } from '../../words/formWords';
import { HeardLine } from '../practice/HeardLine';
import type { StepProps } from '../stepProps';
import './ask.css';
import { type Asking, createAsking } from './asking';
import { BeforeChange } from './BeforeChange';

/** A step that asks: its questions, what they come to so far, back and next. */
export function AskPage(
  props: StepProps & {
    readonly step: AskStep;
    readonly picks?: Picks;
    /** Another way out of this step, before the way back. */
    readonly also?: JSX.Element;
    /** What the answers come to, once all is said, and under which name it stands below the questions. */
    readonly summary: string;
    readonly children?: JSX.Element | ((asking: Asking) => JSX.Element);
    readonly together?: readonly Together[];
    /** A way beside a question, in its corner. */
    readonly corner?: (path: string, asking: Asking) => JSX.Element;
    /** Something has to be done before the next question: by what was tapped so far. */
    readonly isPaused?: (raw: RawForm) => boolean;
    /** What has to be done first, in words: then Next waits. */
    readonly heldUp?: string | null;
    /** What will be waited for later, said quietly beside Next. */
    readonly laterOn?: string;
    /** The question it opens at, where one is to be changed. */
    readonly begin?: string;
    /** Words that hang on the settings, for single questions. */
    readonly words?: AnyFormWords;
  },
) {
  const words = useWords();
  const asking = createAsking(props.step, props);
  const before = () => askSteps[askSteps.indexOf(props.step) - 1];

  return (
    <StepPage
      page={props.page}
      title={words.rail.steps[props.step]}
      actions={
        <>
          <div class="step-said">
            <p class="held-up" role="status">
              {props.heldUp ?? asking.saysMissing(words, props.settings.units)}
            </p>
            <Refusal refusal={asking.refusal()} />
            <Show when={props.laterOn}>{(said) => <p class="soft later-on">{said()}</p>}</Show>
          </div>
          {props.also}
          <Show when={before()}>
            {(step) => (
              <BigButton act="back" onPress={() => props.page.onBackTo(step())}>
                {words.general.back}
              </BigButton>
            )}
          </Show>
          <BigButton
            kind={asking.isComplete() ? 'primary' : 'plain'}
            act="next"
            isDisabled={props.heldUp != null}
            onPress={asking.goOn}
          >
            {words.general.next}
          </BigButton>
        </>
      }
    >
      <Sheet
        form={asking.form}
        words={{ ...words.asked[props.step], ...props.words }}
        draft={asking.draft}
        onChange={asking.keep}
        refusals={asking.refusals()}
        units={props.settings.units}
        hasAgeLine={props.settings.profile.ageLine !== null}
        nowMs={props.nowMs}
        picks={props.picks ?? {}}
        summary={props.summary}
        together={props.together ?? []}
        corner={(path) => props.corner?.(path, asking)}
        beside={(places) => <HeardLine step={props.step} places={places} units={props.settings.units} />}
        {...(props.begin === undefined ? {} : { begin: props.begin })}
        isPaused={props.isPaused?.(asking.draft.raw()) === true}
      >
        <Show
          when={typeof props.children === 'function' && props.children}
          fallback={props.children as JSX.Element}
        >
          {(render) => render()(asking)}
        </Show>
      </Sheet>
      <BeforeChange asking={asking} settings={props.settings} />
    </StepPage>
  );
}
