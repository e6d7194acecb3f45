import { createMemo } from 'solid-js';
import type { LookAnswers } from '../../../shared/records/forms/test';
import { formatQuantity } from '../../../shared/units/format';
import { useWords } from '../../parts/useWords';
import { LargeClock } from '../clocks/LargeClock';
import { findStuff } from '../findStuff';
import type { StepProps } from '../stepProps';
import { LevelPlot } from './LevelPlot';
import { LiftLine } from './LiftLine';
import { viewLevels } from './viewLevels';
import { viewLift } from './viewLift';
import type { RunningStrand } from './viewProcessing';

/** The strand that wants something next: its clock, what was seen of it, and when it gets where she wants it. */
export function OneStrand(
  props: Pick<StepProps, 'consultation' | 'settings' | 'nowMs'> & { readonly one: RunningStrand },
) {
  const words = useWords();
  const said = () => words.strandTest.processing;
  const record = () => props.consultation.record;
  /** Each for itself, so that a tick of the clock draws no curve anew. */
  const strand = createMemo(() => props.one.strand);
  const clock = createMemo(() => props.one.clock);
  const isOver = createMemo(() => ['over', 'ended'].includes(props.one.reading.phase));
  const levels = createMemo(() => viewLevels(record(), strand()));
  const lift = createMemo(() => viewLift(levels(), strand(), clock(), isOver()));
  /** Only one that was named: what the level says is no news. */
  const sayUndertone = ({ undertone = 'unknown' }: LookAnswers) =>
    undertone === 'unknown' || undertone === 'asExpected' ? '' : words.strandTest.lift.undertones[undertone];
  const sayLastLook = () => {
    const look = strand().looks.at(-1);
    if (look?.feel === undefined) return said().noLook;
    const level =
      look.level === undefined || look.level === 'unknown'
        ? words.general.dontKnow
        : formatQuantity(look.level, 'level', props.settings.units, words.locale);
    const feel = words.strandTest.forms.look.feel.options[look.feel];
    return said().lastLook(level, sayUndertone(look), feel.toLocaleLowerCase(words.locale));
  };
  return (
    <LargeClock
      clock={clock()}
      strandNumber={strand().number}
      nowMs={props.nowMs}
      units={props.settings.units}
      below={
        <LiftLine
          lift={lift()}
          target={levels().target}
          clock={clock()}
          nowMs={props.nowMs}
          units={props.settings.units}
          isLightener={findStuff(props.settings, record().answers, strand().line) === 'lightener'}
        />
      }
    >
      <LevelPlot
        levels={levels()}
        lift={lift()}
        units={props.settings.units}
        missed={props.one.reading.missedLooks}
      />
      <p class="clock-aside-line">{sayLastLook()}</p>
    </LargeClock>
  );
}
