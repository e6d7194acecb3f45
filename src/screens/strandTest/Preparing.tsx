import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js';
import type { RuleId } from '../../../shared/judgement/rules';
import type { Zone } from '../../../shared/records/zones';
import { formatQuantity } from '../../../shared/units/format';
import { Caution } from '../../parts/Caution';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { StrandMap } from '../../parts/strandMap/StrandMap';
import { useWords } from '../../parts/useWords';
import '../layout.css';
import { sayStrandMap } from '../map/sayStrandMap';
import '../map/map.css';
import { viewHair } from '../map/viewHair';
import { WhyOfHair } from '../map/WhyOfHair';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { ChanceLine } from './ChanceLine';
import { Glass } from './Glass';
import { GlassActions } from './GlassActions';
import { HowCareful } from './HowCareful';
import { Override } from './Override';
import { PreparingActions } from './PreparingActions';
import './preparing.css';
import { SkinTestLine } from './SkinTestLine';
import { StartStrand } from './StartStrand';
import { viewPreparing } from './viewPreparing';
import { ZonesToTest } from './ZonesToTest';

type Inside =
  | { readonly kind: 'strand'; readonly zone: Zone }
  | { readonly kind: 'override'; readonly rule: RuleId };

/** Before the first strand: what is to be tested, how carefully, and what stands in the way. */
export function Preparing(props: StepProps) {
  const words = useWords();
  const [inside, setInside] = createSignal<Inside | null>(null);
  const leave = () => setInside(null);
  return (
    <Switch fallback={<Overview {...props} onInside={setInside} />}>
      <Match when={findInside(inside(), 'strand')} keyed>
        {({ zone }) => <StartStrand {...props} zone={zone} onClose={leave} />}
      </Match>
      <Match when={findInside(inside(), 'override')} keyed>
        {({ rule }) => (
          <Override {...props} rule={rule} title={words.strandTest.preparing.stops} onClose={leave} />
        )}
      </Match>
    </Switch>
  );
}

const findInside = <K extends Inside['kind']>(inside: Inside | null, kind: K) =>
  inside?.kind === kind ? (inside as Extract<Inside, { kind: K }>) : null;

function Overview(props: StepProps & { readonly onInside: (inside: Inside) => void }) {
  const words = useWords();
  const said = () => words.strandTest.preparing;
  const view = createMemo(() => viewPreparing(props.consultation, props.settings, props.nowMs));
  const hair = createMemo(() => viewHair(props.consultation.record.answers, props.settings));
  const map = createMemo(() =>
    sayStrandMap(hair(), props.consultation.record.answers, words, props.settings.units, 'whereToSnip'),
  );
  const sender = createSender(props);
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  const isGlassAsked = () => {
    const glass = view().incompatibility;
    return glass !== null && glass.state !== 'clear';
  };
  /** Until the glass is read nothing else comes first. */
  const isGlassOpen = () => isGlassAsked() && view().blockedBy?.code === 'incompatibilityOpen';
  /** Nothing else is to be read first: then there is room for the strand itself. */
  const isClear = () => {
    const { unsaid, openRules, lifted, incompatibility, mayKeep } = view();
    return (
      [unsaid, openRules, lifted].every(({ length }) => length === 0) && incompatibility === null && !mayKeep
    );
  };
  return (
    <StepPage
      page={props.page}
      title={said().title}
      actions={
        <Show
          when={isGlassOpen() && view().incompatibility}
          fallback={
            <PreparingActions
              view={view()}
              sender={sender}
              onTest={(zone) => props.onInside({ kind: 'strand', zone })}
              onJudge={(rule) => props.onInside({ kind: 'override', rule })}
            />
          }
        >
          {(glass) => <GlassActions glass={glass()} sender={sender} />}
        </Show>
      }
    >
      <div class="columns preparing-columns">
        <div class="column">
          <ZonesToTest
            {...props}
            view={view()}
            hair={hair()}
            isGlassAsked={isGlassAsked()}
            isMapShown={isClear()}
          />
        </div>
        <SkinTestLine {...props} />
        <div class="column">
          <Show when={view().unsaid.length > 0}>
            <Caution>
              <p>{said().stepsOpen}</p>
            </Caution>
          </Show>
          <Show when={view().openRules[0]}>
            {(rule) => (
              <Caution>
                <p data-judge={rule()}>
                  <strong>{words.rules[rule()].what}</strong> {words.rules[rule()].why}
                </p>
                <Show when={view().openRules.length > 1}>
                  <p>{said().moreToJudge(write(view().openRules.length - 1))}</p>
                </Show>
              </Caution>
            )}
          </Show>
          <For each={view().lifted}>
            {(lifted) => (
              <p class="soft lifted" data-lifted={lifted.rule}>
                {words.rules[lifted.rule].what} {said().liftedBy(lifted.by, words.moments.time(lifted.atMs))}
              </p>
            )}
          </For>
          <Show when={view().incompatibility}>
            {(glass) => <Glass {...props} glass={glass()} sender={sender} isNext={isGlassOpen()} />}
          </Show>
          <Show when={isClear()}>
            <section class="panel heat-panel" data-panel="strand-map">
              <StrandMap view={map()} />
              <div class="whys">
                <WhyOfHair
                  view={hair()}
                  answers={props.consultation.record.answers}
                  settings={props.settings}
                />
                <ChanceLine
                  answers={props.consultation.record.answers}
                  assumed={view().chance}
                  risk={view().risk}
                  settings={props.settings}
                />
              </div>
            </section>
            <HowCareful view={view()} units={props.settings.units} />
          </Show>
          <Show when={view().mayKeep}>
            <Show
              when={view().zones.some(({ hasFailed }) => hasFailed)}
              fallback={
                <Caution kind="clear">
                  <p>{said().keepHint}</p>
                </Caution>
              }
            >
              <Caution>
                <p data-line="keep-failed">{said().keepFailed}</p>
              </Caution>
            </Show>
          </Show>
        </div>
      </div>
      <Refusal refusal={sender.refusal()} />
    </StepPage>
  );
}
