import { batch, createMemo, Show } from 'solid-js';
import { isIncompatibilityDue } from '../../../shared/judgement/stops';
import { findDryingClock } from '../../../shared/records/damp';
import type { RawForm } from '../../../shared/records/readForm';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { ClockFace } from '../../parts/ClockFace';
import { useWords } from '../../parts/useWords';
import { isDamp } from '../explainRefusal';
import { fillFeel } from '../ruler/fills';
import { MeasureStretch } from '../ruler/MeasureStretch';
import type { StepProps } from '../stepProps';
import { AskPage } from './AskPage';
import type { Asking } from './asking';

const touches = ['nape', 'mid', 'ends'] as const;
const isToldDamp = (raw: RawForm) => touches.some((name) => raw[name] === 'damp');

/** What fingers find; damp hair is dried and felt again before anything else, and whether a glass test is due. */
export function FeelHair(props: StepProps) {
  const words = useWords();
  const { asking } = words;
  const sayGlass = () => {
    if (!isIncompatibilityDue(props.consultation.record.answers)) return asking.glassNotDue;
    return props.consultation.state.context.facts.incompatibility === 'clear'
      ? asking.glassDone
      : asking.glassDue;
  };
  const isGlassDue = () => sayGlass() === asking.glassDue;
  const drying = createMemo(() => findDryingClock(props.consultation.record));
  const sayDry = ({ draft, keep }: Asking) => {
    batch(() => {
      for (const name of touches) draft.set(name, 'dry');
    });
    keep();
  };
  const glass = () => (
    <section data-panel="glass" data-glass={isGlassDue() ? 'due' : 'notDue'}>
      <Caution kind={isGlassDue() ? 'attention' : 'plain'}>
        <p>{sayGlass()}</p>
      </Caution>
    </section>
  );
  const renderCorner = (path: string, { draft }: Asking) => (
    <Show when={path === 'wetStretch'}>
      <MeasureStretch
        units={props.settings.units}
        behind={props.page}
        sayFill={(pulled) => words.asked.feelHair.wetStretch.options[fillFeel(pulled).wetStretch]}
        onFill={(pulled) => draft.set('wetStretch', fillFeel(pulled).wetStretch)}
      />
    </Show>
  );
  return (
    <AskPage
      {...props}
      step="feelHair"
      summary={asking.glassTitle}
      heldUp={isDamp(props.consultation.record) ? asking.dampTitle : null}
      together={[{ names: touches, option: 'dry', words: asking.touch }]}
      isPaused={isToldDamp}
      corner={renderCorner}
    >
      {(asked: Asking) => (
        <>
          <Show when={isToldDamp(asked.draft.raw())} fallback={glass()}>
            <Caution>
              <p>
                <strong>{asking.dampTitle}</strong> {asking.damp}
              </p>
            </Caution>
            <Show when={drying()}>
              {(clock) => (
                <ClockFace
                  clock={clock()}
                  strandNumber={null}
                  nowMs={props.nowMs}
                  units={props.settings.units}
                />
              )}
            </Show>
            <BigButton kind="primary" act="dry-now" onPress={() => sayDry(asked)}>
              {asking.dryNow}
            </BigButton>
          </Show>
        </>
      )}
    </AskPage>
  );
}
