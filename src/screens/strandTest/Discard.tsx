import { discardedForm } from '../../../shared/records/forms/test';
import type { Zone } from '../../../shared/records/zones';
import { Caution } from '../../parts/Caution';
import { useWords } from '../../parts/useWords';
import { ByName } from '../ByName';
import type { StepProps } from '../stepProps';

/** A strand that proves nothing is put aside by name; a new one has to be tested. */
export function Discard(props: StepProps & { readonly zone: Zone; readonly onClose: () => void }) {
  const words = useWords();
  const said = () => words.strandTest.processing;
  return (
    <ByName
      {...props}
      title={said().discardTitle}
      also={words.general.zones[props.zone]}
      draft={`discard/${props.zone}/${props.consultation.record.strands.length}`}
      type="STRAND_DISCARDED"
      given={{ zone: props.zone }}
      questions={{ why: discardedForm.why }}
      words={words.strandTest.forms.discarded}
      act="discard"
      doIt={said().discardDo}
      back={words.general.back}
    >
      <Caution>
        <p>{said().discardHint}</p>
      </Caution>
    </ByName>
  );
}
