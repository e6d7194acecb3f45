import { For } from 'solid-js';
import { ASSUMED_PACKING, ASSUMED_REGAIN } from '../../../../shared/heat/press/bundle';
import { ASSUMED_SECTIONS_MM } from '../../../../shared/heat/press/choices';
import { type PressFigure, pressMarks } from '../../../../shared/heat/press/marks';
import { ASSUMED_BETWEEN_PRESSES_S } from '../../../../shared/heat/press/press';
import { ASSUMED_WORKS_ABOVE_C } from '../../../../shared/heat/press/readPress';
import { heatThresholds } from '../../../../shared/heat/thresholds';
import { brand } from '../../../../shared/units/brand';
import { formatQuantity, formatTemperature } from '../../../../shared/units/format';
import type { UnitSettings } from '../../../../shared/units/quantity';
import type { Celsius } from '../../../../shared/units/temperature';
import { Explain } from '../../../parts/Explain';
import { useWords } from '../../../parts/useWords';
import { saySource } from '../../../words/saySource';
import '../../map/map.css';
import { sayTimes } from './sayPress';

/** "Why?" beside the picture: every figure in it with its mark, and what is left out. */
export function WhyPress(props: { readonly boilingC: Celsius; readonly units: UnitSettings }) {
  const words = useWords();
  const said = () => words.press;
  const writeC = (celsius: number) => formatTemperature(brand<Celsius>(celsius), props.units, words.locale);
  const percent = (share: number) =>
    formatQuantity(Math.round(share * 100), 'percent', props.units, words.locale);
  const writeMm = (mm: number) => formatQuantity(mm, 'millimetres', props.units, words.locale);
  const startOf = (id: 'poresRiseFast' | 'cortexSoftens') =>
    writeC(heatThresholds.find((each) => each.id === id)?.from ?? Number.NaN);
  const figures = (): Readonly<Record<PressFigure, string>> => ({
    conduction: said().why.conduction,
    boilingPoint: said().why.boilingPoint(writeC(props.boilingC)),
    works: said().why.works(writeC(ASSUMED_WORKS_ABOVE_C)),
    poresRiseFast: said().why.tooHot.poresRiseFast(startOf('poresRiseFast')),
    cortexSoftens: said().why.tooHot.cortexSoftens(startOf('cortexSoftens')),
    heats: said().why.heats,
    water: said().why.water(
      percent(ASSUMED_REGAIN.dry),
      percent(ASSUMED_REGAIN.damp),
      percent(ASSUMED_REGAIN.wet),
    ),
    bundle: said().why.bundle(percent(ASSUMED_PACKING)),
    pause: said().why.pause(formatQuantity(ASSUMED_BETWEEN_PRESSES_S, 'seconds', props.units, words.locale)),
    sections: said().why.sections(
      writeMm(Math.min(...ASSUMED_SECTIONS_MM)),
      writeMm(Math.max(...ASSUMED_SECTIONS_MM)),
    ),
    structure: said().why.structure(
      sayTimes('damp', words, props.units),
      sayTimes('wet', words, props.units),
    ),
  });
  const ids = Object.keys(pressMarks) as readonly PressFigure[];
  return (
    <Explain title={said().whyTitle} act="why-press">
      <div class="hair-explained press-why">
        <p>{said().estimate}</p>
        <For each={ids}>
          {(id, at) => (
            <details class="explained" data-explained={id} open={at() === 0}>
              <summary>{figures()[id]}</summary>
              <p class="soft" data-line="source">
                {saySource(pressMarks[id], words)}
              </p>
            </details>
          )}
        </For>
        <p>{said().leftOut}</p>
      </div>
    </Explain>
  );
}
