import type { StrandRecord } from '../../../shared/records/record';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';

/** A strand that is off while others run: its outcome is one tap away; that it broke looks like a stop. */
export function StrandOff(props: {
  readonly strand: StrandRecord;
  readonly units: UnitSettings;
  readonly onOpen: () => void;
}) {
  const words = useWords();
  const hasBroken = () => props.strand.ended?.how === 'broke';
  const write = (value: number, quantity: 'count' | 'minutes') =>
    formatQuantity(value, quantity, props.units, words.locale);
  const say = () =>
    hasBroken()
      ? words.strandTest.broken.row(write(props.strand.minutesOn ?? 0, 'minutes'))
      : words.strandTest.processing.off;
  return (
    <button
      type="button"
      class="clock-row"
      data-act={`outcome-${props.strand.zone}`}
      data-tone={hasBroken() ? 'over' : undefined}
      onClick={() => props.onOpen()}
    >
      <span>
        <strong>{words.clock.strandName(write(props.strand.number, 'count'), props.strand.zone)}</strong>{' '}
        {say()}
      </span>
    </button>
  );
}
