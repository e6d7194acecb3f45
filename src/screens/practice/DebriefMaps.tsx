import { createMemo } from 'solid-js';
import type { Answers } from '../../../shared/records/forms/asked';
import { StrandMap } from '../../parts/strandMap/StrandMap';
import { useWords } from '../../parts/useWords';
import { sayStrandMap } from '../map/sayStrandMap';
import { viewHair } from '../map/viewHair';
import type { DebriefPart } from './DebriefPage';

/** The strand as it was answered beside the strand as it is. */
export function DebriefMaps(props: DebriefPart) {
  const words = useWords();
  const said = () => words.practice;
  const draw = (answers: Answers) =>
    sayStrandMap(viewHair(answers, props.settings), answers, words, props.settings.units);
  const told = createMemo(() => draw(props.told.map.told.answers));
  const isTrue = createMemo(() => draw(props.told.map.true.answers));
  return (
    <section class="panel panel-wide" data-panel="maps">
      <h2>{said().mapTitle}</h2>
      <div class="debrief-maps">
        <figure data-map-of="told">
          <figcaption>{said().mapTold}</figcaption>
          <StrandMap view={told()} />
        </figure>
        <figure data-map-of="true">
          <figcaption>{said().mapTrue}</figcaption>
          <StrandMap view={isTrue()} />
        </figure>
      </div>
    </section>
  );
}
