import { createSignal, type JSX } from 'solid-js';
import type { UnitSettings } from '../../../shared/units/quantity';
import { Dialog } from '../../parts/Dialog';
import { useWords } from '../../parts/useWords';
import { ChooseDays } from './ChooseDays';
import type { ShownDays } from './createShownDays';

function Way(props: {
  readonly act: string;
  readonly isPressed?: boolean;
  readonly isDisabled?: boolean;
  readonly onPress: () => void;
  readonly children: JSX.Element;
}) {
  return (
    <button
      type="button"
      class="sheet-way"
      data-act={props.act}
      aria-pressed={props.isPressed}
      disabled={props.isDisabled === true}
      onClick={() => props.onPress()}
    >
      {props.children}
    </button>
  );
}

/** To other days than those that are shown, and to what is kept of clients who have left. */
export function DayWays(props: {
  readonly days: ShownDays;
  readonly findFirstDay: () => string | null;
  readonly units: UnitSettings;
  readonly kept: string;
  readonly onKept: () => void;
  readonly onTaught: () => void;
  readonly onPressPage: () => void;
  /** The way to the trials at the bench, with how many wait to be read. */
  readonly bench: string;
  readonly onBench: () => void;
}) {
  const words = useWords();
  const said = () => words.day;
  const [isChoosing, setIsChoosing] = createSignal(false);
  return (
    <div class="day-which">
      <Way act="day-before" onPress={() => props.days.stepBack(1)}>
        {said().dayBefore}
      </Way>
      <Way act="day-after" isDisabled={props.days.isUpToToday()} onPress={() => props.days.stepBack(-1)}>
        {said().dayAfter}
      </Way>
      <Way act="day-week" isPressed={props.days.isWeek()} onPress={() => props.days.toggleWeek()}>
        {said().sevenDays}
      </Way>
      <Way act="day-choose" isPressed={props.days.isChosen()} onPress={() => setIsChoosing(true)}>
        {said().chooseDays}
      </Way>
      <Way act="kept" onPress={props.onKept}>
        {props.kept}
      </Way>
      <Way act="taught" onPress={props.onTaught}>
        {words.taught.way}
      </Way>
      <Way act="press" onPress={props.onPressPage}>
        {words.press.way}
      </Way>
      <Way act="bench" onPress={props.onBench}>
        {props.bench}
      </Way>
      <Dialog isOpen={isChoosing()} title={said().choose.title} onClose={() => setIsChoosing(false)}>
        <ChooseDays
          shown={props.days.shown()}
          today={props.days.today()}
          firstDay={props.findFirstDay()}
          units={props.units}
          onShow={(range) => {
            props.days.choose(range);
            setIsChoosing(false);
          }}
        />
      </Dialog>
    </div>
  );
}
