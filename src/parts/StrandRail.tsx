import { For, Show } from 'solid-js';
import type { Decision, MixingDecision } from '../../shared/judgement/decisions';
import type { PermitRefusal } from '../../shared/judgement/permitRefusal';
import { isEarlierStep, type WayStep, waySteps } from '../../shared/records/steps';
import { Knot } from './Knot';
import './rail.css';
import { useWords } from './useWords';

/**
 * Why the knot is tied: what the permit says, or what was decided that mixes nothing; null once a bowl may be weighed.
 * `bowlTooOld`: what stands weighed goes on nobody any more.
 */
export type KnotReason = PermitRefusal['code'] | Exclude<Decision, MixingDecision> | 'bowlTooOld' | null;
export type StepMark = 'done' | 'here' | 'toCome';

/**
 * Is this step behind, here, or still to come? What `isSaid` is done also where she went back before it. Nobody is `here`
 * when she is stopped: then all is to come.
 */
export function markStep(step: WayStep, here: WayStep | null, isSaid = false): StepMark {
  if (here === null) return 'toCome';
  if (step === here) return 'here';
  return isSaid || isEarlierStep(step, here) ? 'done' : 'toCome';
}

/** Why a toner waits; it is the only mix left where one of these is said. */
const tonerReasons: readonly KnotReason[] = ['stretchUnfelt', 'stretchFails', 'stretchDried'];

/** The way as a strand of hair, the knot before the mix. Upright in landscape, lying on top in portrait. */
export function StrandRail(props: {
  readonly here: WayStep | null;
  readonly knot: KnotReason;
  /** A step that stands as it was said. */
  readonly isSaid?: (step: WayStep) => boolean;
  /** A step that was passed, and may be gone back to now, is a button. */
  readonly mayGoTo?: (step: WayStep) => boolean;
  readonly onGoTo?: (step: WayStep) => void;
}) {
  const words = useWords();
  const mark = (step: WayStep) => markStep(step, props.here, props.isSaid?.(step));
  /** At the finish a mix was: what the knot holds up is another one. */
  const sayKnot = () => {
    if (props.knot === null) return words.rail.okToMix;
    const why = words.rail.tiedBy[props.knot];
    if (tonerReasons.includes(props.knot)) return words.rail.noTonerYet(why);
    return props.here === 'finish' ? words.rail.noMoreMix(why) : words.rail.noMixYet(why);
  };
  return (
    <ol class="rail" aria-label={words.rail.name}>
      <For each={waySteps}>
        {(step) => (
          <>
            <Show when={step === 'mix'}>
              <li
                class="rail-knot"
                data-knot={props.knot ?? 'untied'}
                data-state={markStep('mix', props.here) === 'toCome' ? 'toCome' : 'done'}
              >
                <Knot isUntied={props.knot === null} />
                <span class="rail-name">{sayKnot()}</span>
              </li>
            </Show>
            <li
              class="rail-step"
              data-state={mark(step)}
              aria-current={props.here === step ? 'step' : undefined}
            >
              <Show
                when={mark(step) === 'done' && props.mayGoTo?.(step) === true}
                fallback={
                  <>
                    <span class="rail-mark" aria-hidden="true" />
                    <span class="rail-name">{words.rail.steps[step]}</span>
                  </>
                }
              >
                <button
                  type="button"
                  class="rail-go"
                  data-act={`rail-to-${step}`}
                  onClick={() => props.onGoTo?.(step)}
                >
                  <span class="rail-mark" aria-hidden="true" />
                  <span class="rail-name">{words.rail.steps[step]}</span>
                </button>
              </Show>
              <span class="only-heard">{words.rail.states[mark(step)]}</span>
            </li>
          </>
        )}
      </For>
    </ol>
  );
}
