import { createMemo } from 'solid-js';
import {
  ASSUMED_LIGHT_PULL_FROM_PERCENT,
  ASSUMED_SHORTEST_REST_MM,
  ASSUMED_SLIP_FROM_PERCENT,
} from '../../../shared/hair/pull';
import { ASSUMED_LIGHT_PULL_LIMIT_PERCENT } from '../../../shared/hair/stretch';
import { formatInchesBeside, formatPercent } from '../../../shared/units/format';
import { findShownUnit, type UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { nameRefusalId } from '../../parts/form/Field';
import '../../parts/form/form.css';
import { useWords } from '../../parts/useWords';
import { sayFieldRefusal } from '../../words/sayRefusal';
import type { Pull, Reading } from './createPull';
import './reading.css';

/** One reading: what to do with the strand, its figure, a millimetre less or more, and what is wrong with it. */
export function ReadingInHand(props: {
  readonly pull: Pull;
  readonly reading: Reading;
  readonly units: UnitSettings;
}) {
  const words = useWords();
  const said = () => words.ruler;
  const path = () => `${props.reading}Mm`;
  const saysFault = () => {
    const fault = props.pull.fault();
    if (fault === null) return '';
    if (fault.kind === 'order') return said().faults[fault.code];
    return sayFieldRefusal({ path: path(), ...fault.number }, words, props.units);
  };
  /** The same length as the salon tells it, where that is in inches. */
  const inches = () => {
    const mm = props.pull.find(props.reading);
    return mm === null ? '' : (formatInchesBeside(mm, props.units, words.locale) ?? '');
  };
  const move = (by: number) => props.pull.tap((props.pull.find(props.reading) ?? 0) + by);
  /** Whether it is long enough to tell; how far it is pulled, and what that asks for: never beyond the second mark. */
  const reached = createMemo(() => {
    const restMm = props.reading === 'rest' ? props.pull.find('rest') : null;
    if (restMm !== null && restMm < ASSUMED_SHORTEST_REST_MM) return { isPast: false, says: said().short };
    const percent = props.reading === 'pulled' ? props.pull.extensionPercent() : null;
    if (percent === null) return null;
    const told = formatPercent(percent, props.units, words.locale);
    if (percent > ASSUMED_SLIP_FROM_PERCENT) return { isPast: true, says: said().slip(told) };
    if (percent > ASSUMED_LIGHT_PULL_LIMIT_PERCENT) return { isPast: true, says: said().past(told) };
    const isLess = percent < ASSUMED_LIGHT_PULL_FROM_PERCENT;
    return { isPast: false, says: isLess ? said().further(told) : said().enough(told) };
  });
  return (
    <>
      <h3 class="measure-ask">{said().steps[props.reading].ask}</h3>
      <p class="measure-how">{said().steps[props.reading].how}</p>
      <div class="reading" data-question={path()} data-length={props.units.length}>
        <BigButton act="less" onPress={() => move(-1)}>
          {said().less}
        </BigButton>
        <span class="number-box">
          <input
            type="text"
            inputmode="decimal"
            autocomplete="off"
            aria-label={said().steps[props.reading].ask}
            aria-describedby={nameRefusalId(path())}
            aria-invalid={props.pull.fault() !== null}
            value={props.pull.texts()[props.reading]}
            onInput={(event) => props.pull.type(event.currentTarget.value)}
          />
          <span class="number-unit">
            {findShownUnit('millimetres', props.units).symbol}
            <span class="reading-inches">{inches()}</span>
          </span>
        </span>
        <BigButton act="more" onPress={() => move(1)}>
          {said().oneMore}
        </BigButton>
        {/* There before its words are: what comes with them is often not read out. */}
        <p class="reached-said" data-past={reached()?.isPast === true} role="status">
          {reached()?.says}
        </p>
      </div>
      <p class="field-refusal" id={nameRefusalId(path())} aria-live="polite">
        {saysFault()}
      </p>
    </>
  );
}
