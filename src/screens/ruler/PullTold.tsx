import { Show } from 'solid-js';
import type { PulledStrand } from '../../../shared/hair/pull';
import { formatPercent, formatRuler } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';

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
  /** What was read; how far one went that snapped is there only where it was read. */
  const sayReadings = () => {
    const { restMm, pulledMm, backMm } = props.told;
    return said().readings(
      writeMm(restMm),
      pulledMm > restMm ? writeMm(pulledMm) : null,
      backMm === null ? null : writeMm(backMm),
    );
  };
  const readings = () => <p data-line="readings">{sayReadings()}</p>;
  const sayStretched = () =>
    props.told.pulledMm > props.told.restMm ? said().stretched(write(props.told.extensionPercent)) : '';
  const sayReturn = () => {
    const { returnPercent } = props.told;
    return returnPercent === null ? '' : said().gaveBack(write(returnPercent));
  };
  return (
    <Show
      when={!props.isDoubted}
      fallback={
        <section class="pull-told" data-verdict="doubted">
          <h3 class="big-word">{said().anew}</h3>
          <p class="lead" data-line="figures">
            {said().stretched(write(props.told.longestPercent))}
          </p>
          {readings()}
          <p>{said().anewHint}</p>
        </section>
      }
    >
      <section class="pull-told" data-verdict={props.told.isTooLight ? 'tooLight' : props.told.verdict}>
        <h3 class="big-word">
          {props.told.isTooLight ? said().tooLight : said().verdicts[props.told.verdict]}
        </h3>
        <p class="lead" data-line="figures">
          {sayStretched()} {sayReturn()}
        </p>
        {readings()}
        <Show when={!props.told.isTooLight} fallback={<p>{said().tooLightHint}</p>}>
          <p data-line="fills">
            {said().fills} <strong>{props.fills}</strong>
          </p>
          <p class="soft">{said().confirm}</p>
        </Show>
      </section>
    </Show>
  );
}
