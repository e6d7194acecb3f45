import { createMemo, Match, Show, Switch } from 'solid-js';
import { findBreakOnHead } from '../../../shared/records/headLooks';
import type { Zone } from '../../../shared/records/zones';
import { Caution } from '../../parts/Caution';
import { HandCaution } from '../../parts/HandCaution';
import { useWords } from '../../parts/useWords';
import type { CautionId } from '../../words/en/cautions';
import { findStuff } from '../findStuff';
import type { StepProps } from '../stepProps';
import { listStandingStops } from '../stopped/viewStopped';
import type { BowlOnHead, HeadView } from './viewHead';

/**
 * What is heeded while something is on: a stop, hair that breaks or is stretchy, else the caution of the moment.
 * Hair that breaks is rinsed lukewarm, neither rubbed nor combed: common practice, no source.
 */
export function HeadHeed(
  props: StepProps & { readonly view: HeadView; readonly one: BowlOnHead | undefined },
) {
  const words = useWords();
  /** What she told, or what showed, only now, and stops her for good: the head is rinsed first. */
  const stop = createMemo(() => listStandingStops(props.consultation.record, props.settings)[0]?.rule);
  /** Where another bowl stands weighed, its own line says what is to be heeded. */
  const isAnyWeighed = () => props.view.others.some(({ bowlState }) => bowlState === 'weighed');
  /** Where the hair breaks under what is on. */
  const breaking = (): Zone | undefined =>
    props.view.on.find(({ bowl }) => findBreakOnHead(bowl) !== undefined)?.bowl.zone;
  /** Where it was stretchy at a look. */
  const weak = (): Zone | undefined => props.view.on.find(({ isWeak }) => isWeak)?.bowl.zone;
  /** The basin waits for no other bowl. */
  const caution = (): CautionId | null => {
    const { one } = props;
    if (one === undefined) return null;
    if (one.reading.phase === 'over') return 'overdue';
    if (one.reading.phase === 'nearlyDue') return 'basin';
    if (isAnyWeighed()) return null;
    return findStuff(props.settings, props.consultation.record.answers, one.bowl.line) === 'lightener'
      ? 'onHead'
      : 'onHeadColour';
  };
  return (
    <Switch fallback={<Show when={caution()}>{(what) => <HandCaution caution={what()} />}</Show>}>
      <Match when={stop()}>
        {(rule) => (
          <Caution kind="stop">
            <p data-stopped-by={rule()}>
              <strong>{words.colourOn.rinseNow}</strong> {words.rules[rule()].what}
            </p>
          </Caution>
        )}
      </Match>
      <Match when={breaking()}>
        {(zone) => (
          <Caution kind="stop">
            <p data-breaks={zone()}>
              <strong>{words.colourOn.hairBreaks(words.general.zones[zone()])}</strong>
            </p>
          </Caution>
        )}
      </Match>
      <Match when={weak()}>
        {(zone) => (
          <Caution>
            <p data-weak={zone()}>
              <strong>{words.colourOn.hairStretchy(words.general.zones[zone()])}</strong>
            </p>
          </Caution>
        )}
      </Match>
    </Switch>
  );
}
