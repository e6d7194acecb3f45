import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { RulerInUse } from '../../tablet/ruler';
import { type BehindRuler, BreakingHolds } from './BreakingHolds';
import { CardOnGlass } from './CardOnGlass';
import { createCardFit } from './createCardFit';

/** The ruler is not set on this glass yet, or is set anew: with a card, before the strand is measured. */
export function SetRuler(props: {
  readonly ruler: RulerInUse;
  readonly units: UnitSettings;
  readonly behind: BehindRuler;
  readonly onSet: () => void;
  readonly onLeave: () => void;
}) {
  const words = useWords();
  const fit = createCardFit(props.ruler, () => props.onSet());
  return (
    <div class="measure set-ruler">
      <p class="measure-how" data-line="ruler-state">
        {props.ruler.pxPerMm() === null ? words.ruler.set.notSet : words.ruler.set.isSet}
      </p>
      <CardOnGlass fit={fit} units={props.units} />
      <div class="dialog-actions">
        <BigButton act="without-ruler" isWay onPress={props.onLeave}>
          {words.ruler.without}
        </BigButton>
        <BreakingHolds behind={props.behind} />
        <BigButton kind="primary" act="keep-ruler" isWay isDisabled={fit.fault() !== null} onPress={fit.keep}>
          {words.ruler.set.keep}
        </BigButton>
      </div>
    </div>
  );
}
