import { brand } from '../../../shared/units/brand';
import { CARD_HEIGHT_MM, CARD_WIDTH_MM } from '../../../shared/units/card';
import { formatLength, formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import '../../parts/form/form.css';
import { useWords } from '../../parts/useWords';
import type { CardFit } from './createCardFit';
import './cardOnGlass.css';

/** How far beyond the card its lines reach, px, and how broad they are drawn: the card fits between their inner edges. */
const OVER_PX = 22;
const LINE_PX = 4;

/** How far one press moves the lines, dots of the glass. */
const STEPS = { little: 1, much: 10 } as const;

const keySteps: Readonly<Record<string, number>> = {
  ArrowRight: STEPS.little,
  ArrowUp: STEPS.little,
  ArrowLeft: -STEPS.little,
  ArrowDown: -STEPS.little,
  PageUp: STEPS.much,
  PageDown: -STEPS.much,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
};

/** The corner a card is laid into, and the two lines that are moved until they lie along its other edges. */
export function CardOnGlass(props: { readonly fit: CardFit; readonly units: UnitSettings }) {
  const words = useWords();
  const said = () => words.ruler.set;
  const wide = () => CARD_WIDTH_MM * props.fit.pxPerMm();
  const high = () => CARD_HEIGHT_MM * props.fit.pxPerMm();
  const right = () => LINE_PX + wide();
  const bottom = () => LINE_PX + high();
  const sayFault = () => {
    const fault = props.fit.fault();
    if (fault === null) return '';
    return said().faults[fault.code](formatLength(brand(fault.glassMm / 10), props.units, words.locale));
  };
  const readKey = (event: KeyboardEvent) => {
    const by = keySteps[event.key];
    if (by === undefined) return;
    event.preventDefault();
    props.fit.move(by);
  };
  /** Asked inside the button: read out here, each move would make a new one under the finger. */
  const mover = (act: string, by: number, label: string, isAtEnd: () => boolean) => (
    <BigButton act={act} isWay isDisabled={isAtEnd()} onPress={() => props.fit.move(by)}>
      {label}
    </BigButton>
  );
  return (
    <div class="card-fit">
      <div class="card-words">
        <ol class="card-steps">
          <li>{said().lay}</li>
          <li>{said().move}</li>
          <li>{said().keepHint}</li>
        </ol>
        <div class="card-movers">
          {mover('much-less', -STEPS.much, said().muchLess, props.fit.isLeast)}
          {mover('little-less', -STEPS.little, said().less, props.fit.isLeast)}
          {mover('little-more', STEPS.little, said().more, props.fit.isMost)}
          {mover('much-more', STEPS.much, said().muchMore, props.fit.isMost)}
        </div>
      </div>
      <div
        class="card-glass"
        role="slider"
        tabIndex={0}
        aria-label={said().lines}
        aria-describedby="card-refusal"
        aria-invalid={props.fit.fault() !== null}
        aria-valuemin={Math.round(props.fit.leastPx())}
        aria-valuemax={Math.round(props.fit.mostPx())}
        aria-valuenow={Math.round(wide())}
        aria-valuetext={said().linesAt(
          formatQuantity(Math.round(wide()), 'count', props.units, words.locale),
        )}
        onKeyDown={readKey}
      >
        <svg width={right() + OVER_PX} height={bottom() + OVER_PX} aria-hidden="true">
          <path
            class="card-corner"
            d={`M${LINE_PX / 2} ${bottom() + OVER_PX} V${LINE_PX / 2} H${right() + OVER_PX}`}
          />
          <path
            class="card-line"
            data-line="right"
            d={`M${right() + LINE_PX / 2} 0 V${bottom() + OVER_PX}`}
          />
          <path
            class="card-line"
            data-line="bottom"
            d={`M0 ${bottom() + LINE_PX / 2} H${right() + OVER_PX}`}
          />
          <text class="card-said" x={LINE_PX + wide() / 2} y={LINE_PX + high() / 2} text-anchor="middle">
            {said().card}
          </text>
        </svg>
      </div>
      <p class="field-refusal" id="card-refusal" aria-live="polite">
        {sayFault()}
      </p>
    </div>
  );
}
