import type { StrandRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { formatPercent, formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import { sayVolumes } from '../bottleAndBowl';

/** The mix of the strand before, said in one line: the next one gets the same unless it is changed. */
export function SameMix(props: {
  readonly strand: StrandRecord;
  readonly settings: Settings;
  readonly onChange: () => void;
}) {
  const words = useWords();
  const said = () => words.strandTest.start;
  const units = () => props.settings.units;
  const write = (value: number, quantity: 'count' | 'minutes') =>
    formatQuantity(value, quantity, units(), words.locale);
  const { strand } = props;
  return (
    <section class="panel" data-panel="same-mix">
      <h2>{said().sameMix(write(strand.number, 'count'))}</h2>
      <p>
        {[
          strand.line,
          words.mix.bottle(
            formatPercent(strand.developerPercent, units(), words.locale),
            sayVolumes(strand.developerPercent, words, units()),
          ),
          words.mix.limitRatio(write(strand.ratio, 'count')),
          words.mix.limitHeat[strand.heat],
          write(strand.minutes, 'minutes'),
          said().limit(write(strand.makersLimitMin, 'minutes')),
        ].join(' · ')}
      </p>
      <div class="aside-actions">
        <BigButton act="another-mix" onPress={props.onChange}>
          {said().anotherMix}
        </BigButton>
      </div>
    </section>
  );
}
