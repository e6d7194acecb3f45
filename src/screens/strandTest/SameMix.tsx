import type { StrandRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import { sayMix } from './sayMix';

/** The mix of the strand before, said in one line: the next one gets the same unless it is changed. */
export function SameMix(props: {
  readonly strand: StrandRecord;
  readonly settings: Settings;
  readonly onChange: () => void;
}) {
  const words = useWords();
  const said = () => words.strandTest.start;
  const write = (value: number, quantity: 'count' | 'minutes') =>
    formatQuantity(value, quantity, props.settings.units, words.locale);
  const { strand } = props;
  return (
    <section class="panel" data-panel="same-mix">
      <h2>{said().sameMix(write(strand.number, 'count'))}</h2>
      <p>
        {[sayMix(strand, words, props.settings), said().limit(write(strand.makersLimitMin, 'minutes'))].join(
          ' · ',
        )}
      </p>
      <div class="aside-actions">
        <BigButton act="another-mix" onPress={props.onChange}>
          {said().anotherMix}
        </BigButton>
      </div>
    </section>
  );
}
