import { Show } from 'solid-js';
import type { PulledStrand } from '../../../shared/hair/pull';
import { formatPercent, formatRuler } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';
import './pullTold.css';

/** What three readings say: the verdict in words, its per cent, and which answer it would tap. */
export function PullTold(props: {
  readonly told: PulledStrand;
  /** It is hardly hair that goes so far: asked anew, and nothing is filled in. */
  readonly isDoubted: boolean;
  readonly units: UnitSettings;
  readonly fills: string;
}) {
  const words = useWords();
  const said = () => words.ruler;
  const write = (percent: number) => formatPercent(percent, props.units, words.locale);
  const writeMm = (mm: number) => formatRuler(mm, props.units, words.locale);
  const sayReadings = () => {
    const { restMm, pulledMm, backMm } = props.told;
    return said().readings(
      writeMm(restMm),
      pulledMm === null ? null : writeMm(pulledMm),
      backMm === null ? null : writeMm(backMm),
    );
  };
  const readings = () => <p data-line="readings">{sayReadings()}</p>;
  /** How far one went that snapped is there only where it was read. */
  const sayStretched = (percent: number | null) => (percent === null ? '' : said().stretched(write(percent)));
  /** Of a reading to a millimetre so much is in doubt: rounded up, for it is no figure to rely on. */
  const sayReturn = () => {
    const { returnPercent, returnOffPercent } = props.told;
    if (returnPercent === null || returnOffPercent === null) return '';
    return said().gaveBack(write(returnPercent), write(Math.ceil(returnOffPercent)));
  };
  const withheld = (): 'tooShort' | 'tooLight' | null => {
    if (props.told.isTooShort) return 'tooShort';
    return props.told.isTooLight ? 'tooLight' : null;
  };
  return (
    <Show
      when={!props.isDoubted}
      fallback={
        <section class="pull-told" data-verdict="doubted">
          <h3 class="big-word">{said().anew}</h3>
          <p class="lead" data-line="figures">
            {sayStretched(props.told.longestPercent)}
          </p>
          {readings()}
          <p>{said().anewHint}</p>
        </section>
      }
    >
      <section class="pull-told" data-verdict={withheld() ?? props.told.verdict}>
        <Show
          when={withheld()}
          fallback={
            <>
              <h3 class="big-word">{said().verdicts[props.told.verdict]}</h3>
              <p class="lead" data-line="figures">
                {sayStretched(props.told.extensionPercent)} {sayReturn()}
              </p>
              {readings()}
              <p data-line="fills">
                {said().fills} <strong>{props.fills}</strong>
              </p>
              <p class="soft">{said().confirm}</p>
            </>
          }
        >
          {(why) => (
            <>
              <h3 class="big-word">{said().withheld[why()].title}</h3>
              <p class="lead" data-line="figures">
                {sayStretched(props.told.extensionPercent)} {sayReturn()}
              </p>
              {readings()}
              <p>{said().withheld[why()].hint}</p>
            </>
          )}
        </Show>
      </section>
    </Show>
  );
}
