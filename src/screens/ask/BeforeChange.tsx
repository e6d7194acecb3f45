import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Dialog } from '../../parts/Dialog';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import type { Asking } from './asking';

/** Said before an answer is changed on which strands hang: which of them count no more, and how they count again. */
export function BeforeChange(props: Pick<StepProps, 'settings'> & { readonly asking: Asking }) {
  const words = useWords();
  const said = () => words.leaving.goingBack;
  const strands = () =>
    props.asking
      .falling()
      .map(({ number }) =>
        said().strand(formatQuantity(number, 'count', props.settings.units, words.locale)),
      );
  return (
    <Dialog
      isOpen={props.asking.falling().length > 0}
      title={said().changeTitle}
      onClose={() => props.asking.leaveAsItWas()}
    >
      <div data-panel="before-change" class="going-back">
        <Caution>
          <p>
            <strong>{said().fall(strands())}</strong> {said().putBack}
          </p>
        </Caution>
        <div class="dialog-actions">
          <BigButton act="leave-as-it-was" onPress={() => props.asking.leaveAsItWas()}>
            {said().leaveIt}
          </BigButton>
          <BigButton kind="primary" act="change-answer" onPress={() => props.asking.change()}>
            {said().change}
          </BigButton>
        </div>
      </div>
    </Dialog>
  );
}
