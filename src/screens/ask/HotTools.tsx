import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import { AskPage } from './AskPage';
import { HeatPanel } from './HeatPanel';

/** What heat has done at home, and what has been on the hair. */
export function HotTools(props: StepProps) {
  return (
    <AskPage {...props} step="hotTools" summary={useWords().asking.heatTitle}>
      <HeatPanel answers={props.consultation.record.answers} settings={props.settings} />
    </AskPage>
  );
}
