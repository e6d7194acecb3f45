import { createSignal, Match, Show, Switch } from 'solid-js';
import { countRunS, WARMTH_TRIAL_CAP_S, type WarmthTimes } from '../../../shared/heat/warmthTrial';
import type { RawForm } from '../../../shared/records/readForm';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { PageActions } from '../../parts/PageActions';
import { useWords } from '../../parts/useWords';
import { writeTrial } from './sprayRow';
import { TrialResult } from './TrialResult';
import { TrialRules } from './TrialRules';
import { TrialRun } from './TrialRun';
import './warmthTrial.css';

type Arm = 'bare' | 'sprayed';

/** How soon is a dryer felt, bare and with the spray? Two runs on her own forearms, each stopped at the first warmth. */
export function WarmthTrial(props: {
  readonly spray: string;
  readonly units: UnitSettings;
  readonly nowMs: number;
  readonly onBack: () => void;
  /** It is kept with the spray, unsaved as all that was changed in the settings. */
  readonly onKeep: (trial: RawForm) => void;
}) {
  const words = useWords();
  const said = () => words.warmthTrial;
  const [times, setTimes] = createSignal<Partial<WarmthTimes>>({});
  const [startedAtMs, setStartedAtMs] = createSignal<number | null>(null);
  const arm = (): Arm | null => {
    if (times().bareS === undefined) return 'bare';
    return times().sprayedS === undefined ? 'sprayed' : null;
  };
  const seconds = () => countRunS(startedAtMs() ?? props.nowMs, props.nowMs);
  const isCapped = () => seconds() >= WARMTH_TRIAL_CAP_S;
  const both = (): WarmthTimes | null => {
    const { bareS, sprayedS } = times();
    return bareS === undefined || sprayedS === undefined ? null : { bareS, sprayedS };
  };
  const begin = () => {
    setTimes({});
    setStartedAtMs(null);
  };
  const stop = (which: Arm) => {
    const felt = isCapped() ? null : seconds();
    setStartedAtMs(null);
    setTimes(which === 'bare' ? { bareS: felt } : { ...times(), sprayedS: felt });
  };
  const run = () => (startedAtMs() === null ? null : arm());

  return (
    <main class="day-page warmth-trial" data-step="warmthTrial" data-running={run()}>
      <header>
        <h1>{said().title(props.spray)}</h1>
      </header>
      <div class="day-content">
        <Switch fallback={<TrialRules units={props.units} />}>
          <Match when={run()}>
            {(which) => <TrialRun arm={said().arms[which()]} seconds={seconds()} units={props.units} />}
          </Match>
          <Match when={times().bareS !== undefined}>
            <TrialResult times={times()} units={props.units} />
          </Match>
        </Switch>
      </div>
      <PageActions>
        <Show when={run() === null}>
          <BigButton act="leave-trial" isWay onPress={props.onBack}>
            {words.general.back}
          </BigButton>
        </Show>
        <Show when={startedAtMs() !== null || times().bareS !== undefined}>
          <BigButton act="trial-again" onPress={begin}>
            {said().again}
          </BigButton>
        </Show>
        <Switch>
          <Match when={run()}>
            {(which) => (
              <BigButton kind={isCapped() ? 'attention' : 'primary'} act="warm" onPress={() => stop(which())}>
                {isCapped() ? said().goOn : said().warm}
              </BigButton>
            )}
          </Match>
          <Match when={both()}>
            {(done) => (
              <BigButton
                kind="primary"
                act="keep-trial"
                onPress={() => props.onKeep(writeTrial(done(), props.nowMs))}
              >
                {said().keep}
              </BigButton>
            )}
          </Match>
          <Match when={arm()}>
            {(which) => (
              <BigButton kind="primary" act="start-run" onPress={() => setStartedAtMs(props.nowMs)}>
                {said().start[which()]}
              </BigButton>
            )}
          </Match>
        </Switch>
      </PageActions>
    </main>
  );
}
