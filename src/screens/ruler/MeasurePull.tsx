import { createMemo, Match, Show, Switch } from 'solid-js';
import type { PulledStrand } from '../../../shared/hair/pull';
import { formatQuantity, formatRuler } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import { type BehindRuler, BreakingHolds } from './BreakingHolds';
import { createPull, readings } from './createPull';
import { createRoom } from './createRoom';
import { PullTold } from './PullTold';
import { ReadingInHand } from './ReadingInHand';
import { Ruler } from './Ruler';

/** One wet strand along the ruler: at rest, lightly pulled, let go; then what that says. One reading at a time. */
export function MeasurePull(props: {
  readonly pxPerMm: number;
  readonly units: UnitSettings;
  readonly behind: BehindRuler;
  readonly sayFill: (pulled: PulledStrand) => string;
  readonly onFill: (pulled: PulledStrand) => void;
  readonly onSetRuler: () => void;
}) {
  const words = useWords();
  const said = () => words.ruler;
  const pull = createPull(() => props.units);
  const glass = createRoom(() => document.documentElement);
  const write = (mm: number) => formatRuler(mm, props.units, words.locale);
  const marks = createMemo(() =>
    readings.flatMap((reading) => {
      const mm = pull.find(reading);
      return mm === null ? [] : [{ mm, isHere: pull.at() === reading }];
    }),
  );
  const here = () => {
    const at = pull.at();
    return at === 'told' ? null : at;
  };
  return (
    <div class="measure" data-reading={pull.at()}>
      <Ruler
        pxPerMm={props.pxPerMm}
        isUpright={glass().high > glass().wide}
        marks={marks()}
        pull={pull.marks()}
        label={said().steps[here() ?? 'back'].ask}
        write={write}
        writeFigure={(mm) => formatQuantity(mm, 'count', props.units, words.locale)}
        onTap={pull.tap}
      />
      <div class="measure-words">
        <Switch>
          <Match when={here()}>
            {(reading) => <ReadingInHand pull={pull} reading={reading()} units={props.units} />}
          </Match>
          <Match when={pull.told()}>
            {(told) => (
              <PullTold
                told={told()}
                isDoubted={pull.isDoubted()}
                units={props.units}
                fills={props.sayFill(told())}
              />
            )}
          </Match>
        </Switch>
        <div class="dialog-actions">
          <Show
            when={here() === 'rest'}
            fallback={
              <BigButton act="reading-back" onPress={pull.back}>
                {words.general.back}
              </BigButton>
            }
          >
            <BigButton kind="quiet" act="set-ruler" isWay onPress={props.onSetRuler}>
              {said().setAgain}
            </BigButton>
          </Show>
          <BreakingHolds behind={props.behind} />
          <Show when={here() === 'pulled' || here() === 'back'}>
            <BigButton act="snapped" onPress={pull.snap}>
              {said().snapped}
            </BigButton>
          </Show>
          <Show when={pull.isDoubted()}>
            <BigButton act="it-was-so" onPress={pull.confirm}>
              {said().itWasSo}
            </BigButton>
          </Show>
          <Switch>
            <Match when={here()}>
              {(reading) => (
                <BigButton kind="primary" act="reading-next" onPress={pull.next}>
                  {said().steps[reading()].next}
                </BigButton>
              )}
            </Match>
            <Match when={pull.told()?.isTooLight || pull.told()?.isTooShort || pull.isDoubted()}>
              <BigButton kind="primary" act="measure-again" onPress={pull.again}>
                {said().again}
              </BigButton>
            </Match>
            <Match when={pull.told()}>
              {(told) => (
                <BigButton kind="primary" act="fill-answer" onPress={() => props.onFill(told())}>
                  {said().fill}
                </BigButton>
              )}
            </Match>
          </Switch>
        </div>
      </div>
    </div>
  );
}
