import { createSignal, Show } from 'solid-js';
import type { PulledStrand } from '../../../shared/hair/pull';
import { formatPercent } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { Dialog } from '../../parts/Dialog';
import { useWords } from '../../parts/useWords';
import type { RulerInUse } from '../../tablet/ruler';
import type { BehindRuler } from './BreakingHolds';
import { MeasurePull } from './MeasurePull';
import './measure.css';
import { useRuler } from './rulerInUse';
import { SetRuler } from './SetRuler';

/**
 * "Measure it", in the corner of a question about the wet stretch: a ruler over the whole glass. What it says fills the
 * answer in, and is confirmed by the tap on it. Without it nothing is missing: the tiles answer.
 */
export function MeasureStretch(props: {
  readonly units: UnitSettings;
  readonly behind: BehindRuler;
  /** Which answer the ruler would tap, in words. */
  readonly sayFill: (pulled: PulledStrand) => string;
  readonly onFill: (pulled: PulledStrand) => void;
}) {
  const ruler = useRuler();
  return <Show when={ruler}>{(here) => <Corner {...props} ruler={here()} />}</Show>;
}

function Corner(props: {
  readonly ruler: RulerInUse;
  readonly units: UnitSettings;
  readonly behind: BehindRuler;
  readonly sayFill: (pulled: PulledStrand) => string;
  readonly onFill: (pulled: PulledStrand) => void;
}) {
  const words = useWords();
  const said = () => words.ruler;
  const [isOpen, setIsOpen] = createSignal(false);
  const [isSetting, setIsSetting] = createSignal(false);
  const [last, setLast] = createSignal<PulledStrand | null>(null);
  const close = () => {
    setIsOpen(false);
    setIsSetting(false);
  };
  const fill = (pulled: PulledStrand) => {
    setLast(pulled);
    props.onFill(pulled);
    close();
  };
  const sayLast = () => {
    const pulled = last();
    if (pulled === null) return said().measure;
    const { extensionPercent } = pulled;
    return said().measured(
      extensionPercent === null ? null : formatPercent(extensionPercent, props.units, words.locale),
    );
  };
  return (
    <>
      <button
        type="button"
        class="sheet-way sheet-corner"
        data-act="measure"
        aria-haspopup="dialog"
        onClick={() => setIsOpen(true)}
      >
        {sayLast()}
      </button>
      <Dialog
        isOpen={isOpen()}
        title={isSetting() || props.ruler.pxPerMm() === null ? said().set.title : said().title}
        onClose={close}
      >
        <Show
          when={isSetting() ? null : props.ruler.pxPerMm()}
          fallback={
            <SetRuler
              ruler={props.ruler}
              units={props.units}
              behind={props.behind}
              onSet={() => setIsSetting(false)}
              onLeave={close}
            />
          }
        >
          {(pxPerMm) => (
            <MeasurePull
              pxPerMm={pxPerMm()}
              units={props.units}
              behind={props.behind}
              sayFill={props.sayFill}
              onFill={fill}
              onSetRuler={() => setIsSetting(true)}
            />
          )}
        </Show>
      </Dialog>
    </>
  );
}
