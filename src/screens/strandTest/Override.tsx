import type { RuleId } from '../../../shared/judgement/rules';
import { mayCiteStrand } from '../../../shared/records/conflict';
import { overriddenForm } from '../../../shared/records/forms/course';
import { Caution } from '../../parts/Caution';
import { useWords } from '../../parts/useWords';
import { ByName } from '../ByName';
import type { StepProps } from '../stepProps';

const { code, words: ownWords } = overriddenForm;

/** A judgement stop is lifted: by whom, for which of a few reasons, and in her own words. */
export function Override(
  props: StepProps & { readonly rule: RuleId; readonly title: string; readonly onClose: () => void },
) {
  const words = useWords();
  const isOffered = (option: string) =>
    option !== 'strandHeld' || mayCiteStrand(props.consultation.record, props.rule);
  const reasons = { ...code, options: code.options.filter(isOffered) };
  return (
    <ByName
      {...props}
      title={props.title}
      draft={`override/${props.rule}`}
      type="OVERRIDDEN"
      given={{ rule: props.rule }}
      questions={{ code: reasons, words: ownWords }}
      words={words.strandTest.forms.override}
      act="override"
      doIt={words.strandTest.preparing.judge}
      back={words.general.doNotSign}
      isLifting
    >
      <Caution>
        <p>
          <strong>{words.rules[props.rule].what}</strong> {words.rules[props.rule].why}
        </p>
      </Caution>
    </ByName>
  );
}
