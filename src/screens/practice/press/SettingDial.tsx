import { IRON_SETTINGS_C } from '../../../../shared/heat/press/choices';
import { brand } from '../../../../shared/units/brand';
import { formatTemperature } from '../../../../shared/units/format';
import { findShownUnit, type UnitSettings } from '../../../../shared/units/quantity';
import type { Celsius } from '../../../../shared/units/temperature';
import { useWords } from '../../../parts/useWords';

/** Irons are set in steps of ten, °C or °F. common practice, no source. */
const STEP = 10;

/** The keys of a slider, as steps of the dial. */
const steps: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 3,
  PageDown: -3,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
};

/** To what are the plates set? Two buttons or the arrow keys, ten degrees each; never beyond what irons have. */
export function SettingDial(props: {
  readonly plateC: Celsius;
  readonly units: UnitSettings;
  readonly onSet: (plateC: Celsius) => void;
}) {
  const words = useWords();
  const said = () => words.press;
  const unit = () => findShownUnit('temperature', props.units);
  const lowest = () => Math.ceil(unit().toShown(IRON_SETTINGS_C.from) / STEP) * STEP;
  const highest = () => Math.floor(unit().toShown(IRON_SETTINGS_C.to) / STEP) * STEP;
  const shown = () => Math.round(unit().toShown(props.plateC));
  const move = (by: number) => {
    const next = Math.min(highest(), Math.max(lowest(), shown() + by * STEP));
    props.onSet(brand<Celsius>(unit().toCanonical(next)));
  };
  const turn = (event: KeyboardEvent) => {
    const by = steps[event.key];
    if (by === undefined) return;
    event.preventDefault();
    move(by);
  };
  return (
    <fieldset class="press-question" data-question="setting">
      <legend>{said().asks.setting}</legend>
      <div class="press-options">
        <button
          type="button"
          class="option"
          data-act="cooler"
          disabled={shown() <= lowest()}
          onClick={() => move(-1)}
        >
          {said().less}
        </button>
        <div
          class="press-setting"
          role="slider"
          tabIndex={0}
          aria-label={said().asks.setting}
          aria-valuemin={lowest()}
          aria-valuemax={highest()}
          aria-valuenow={shown()}
          aria-valuetext={formatTemperature(props.plateC, props.units, words.locale)}
          onKeyDown={turn}
        >
          {formatTemperature(props.plateC, props.units, words.locale)}
        </div>
        <button
          type="button"
          class="option"
          data-act="hotter"
          disabled={shown() >= highest()}
          onClick={() => move(1)}
        >
          {said().more}
        </button>
      </div>
    </fieldset>
  );
}
