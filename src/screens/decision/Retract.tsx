import { retractedForm } from '../../../shared/records/forms/course';
import type { Zone } from '../../../shared/records/zones';
import { useWords } from '../../parts/useWords';
import { ByName } from '../ByName';
import type { StepProps } from '../stepProps';

const { words: ownWords } = retractedForm;
/** Nobody mishears a strand, and one that feels better dry has not changed. */
const code = { ...retractedForm.code, options: ['wrongTap', 'wrongClient'] } as const;

/** A wrong outcome is taken back by name; it stays in the log. */
export function Retract(props: StepProps & { readonly zone: Zone; readonly onClose: () => void }) {
  const words = useWords();
  const said = () => words.decision;
  return (
    <ByName
      {...props}
      title={said().retractTitle(words.general.zones[props.zone])}
      draft={`retract/${props.zone}`}
      type="OUTCOME_RETRACTED"
      given={{ zone: props.zone }}
      questions={{ code, words: ownWords }}
      words={said().retracted}
      act="retract"
      doIt={said().retractDo}
      back={words.general.cancel}
    />
  );
}
