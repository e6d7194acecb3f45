import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { PageActions } from '../../parts/PageActions';
import { useWords } from '../../parts/useWords';
import type { RulerInUse } from '../../tablet/ruler';
import '../day/day.css';
import { CardOnGlass } from './CardOnGlass';
import { createCardFit } from './createCardFit';

/** Among the settings: the ruler of this tablet is set with a card. */
export function RulerPage(props: {
  readonly ruler: RulerInUse;
  readonly units: UnitSettings;
  readonly onLeave: () => void;
}) {
  const words = useWords();
  const fit = createCardFit(props.ruler, () => props.onLeave());
  return (
    <main class="day-page" data-step="ruler">
      <header>
        <h1>{words.ruler.set.title}</h1>
      </header>
      <div class="day-content">
        <CardOnGlass fit={fit} units={props.units} />
      </div>
      <PageActions>
        <BigButton act="leave-ruler" isWay onPress={props.onLeave}>
          {words.general.back}
        </BigButton>
        <BigButton kind="primary" act="keep-ruler" isWay isDisabled={fit.fault() !== null} onPress={fit.keep}>
          {words.ruler.set.keep}
        </BigButton>
      </PageActions>
    </main>
  );
}
