import type { ClosedRecord } from '../../../shared/records/closedRecord';
import type { Settings } from '../../../shared/records/settings';
import { BigButton } from '../../parts/BigButton';
import { PlainPage } from '../../parts/PlainPage';
import { useWords } from '../../parts/useWords';
import { LastVisit } from './LastVisit';

/** Last time, before she is started: whether it is she is said here or on the start itself. */
export function LastVisitPage(props: {
  readonly closed: ClosedRecord;
  readonly settings: Settings;
  readonly onBack: () => void;
  readonly onSame: () => void;
}) {
  const words = useWords();
  return (
    <PlainPage
      step="lastVisit"
      kicker={words.moments.date(props.closed.endedAtMs)}
      title={words.lastVisit.title}
      actions={
        <>
          <BigButton act="back-to-start" isWay onPress={props.onBack}>
            {words.general.back}
          </BigButton>
          <BigButton kind="primary" act="open-same" onPress={props.onSame}>
            {words.start.goSame}
          </BigButton>
        </>
      }
    >
      <LastVisit closed={props.closed} settings={props.settings} />
    </PlainPage>
  );
}
