import type { ClosedRecord } from '../../../shared/records/closedRecord';
import { BigButton } from '../../parts/BigButton';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import { LastVisit } from './LastVisit';

/** Last time, over whatever step she is at: looked at, and back. */
export function LastVisitOver(
  props: Pick<StepProps, 'page' | 'settings'> & {
    readonly closed: ClosedRecord;
    readonly onBack: () => void;
  },
) {
  const words = useWords();
  return (
    <StepPage
      page={props.page}
      title={words.lastVisit.title}
      also={words.moments.date(props.closed.endedAtMs)}
      actions={
        <BigButton kind="primary" act="last-visit-back" isWay onPress={props.onBack}>
          {words.general.back}
        </BigButton>
      }
    >
      <LastVisit closed={props.closed} settings={props.settings} />
    </StepPage>
  );
}
