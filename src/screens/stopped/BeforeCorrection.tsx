import { createMemo, Show } from 'solid-js';
import type { Correctable } from '../../../shared/records/steps';
import { Caution } from '../../parts/Caution';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import { viewCorrection } from './viewCorrection';

/** Said before it is held: what is asked again then, and what counts no more. */
export function BeforeCorrection(
  props: Pick<StepProps, 'consultation' | 'settings' | 'nowMs'> & { readonly answer: Correctable },
) {
  const words = useWords();
  const view = createMemo(() =>
    viewCorrection(props.consultation, props.answer, props.settings, props.nowMs),
  );
  const saysThen = ({ isStillStopped, backAt }: NonNullable<ReturnType<typeof view>>) => {
    if (isStillStopped) return words.leaving.stillStopped;
    return backAt === null ? '' : words.leaving.thenAt(words.rail.steps[backAt]);
  };
  return (
    <Show when={view()}>
      {(seen) => (
        <div data-panel="before-correction">
          <Caution>
            <p>
              <strong>{words.leaving.askedAgain(words.leaving.correctables[props.answer])}</strong>{' '}
              {saysThen(seen())}
            </p>
            <p>
              {seen().voided.length === 0
                ? words.leaving.voidsNothing
                : words.leaving.voids(seen().voided.map((each) => words.leaving.voided[each]))}
            </p>
          </Caution>
        </div>
      )}
    </Show>
  );
}
