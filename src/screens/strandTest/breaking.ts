import { createMemo } from 'solid-js';
import { useWords } from '../../parts/useWords';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';

/**
 * Each strand in the mix, to be held from every view when it breaks: lightener takes no notice of which page is open.
 * Checked in tests/src/screens/strandTest/breaking.test.tsx.
 */
export function createBreaking(props: Pick<StepProps, 'consultation' | 'submit'>) {
  const words = useWords();
  const sender = createSender(props);
  const zones = createMemo(
    () => props.consultation.record.strands.filter(({ ended }) => ended === null).map(({ zone }) => zone),
    [],
    { equals: (one, other) => one.join() === other.join() },
  );
  const strands = createMemo(() =>
    zones().map((zone) => ({
      zone,
      label: words.strandTest.processing.broke(words.general.zones[zone]),
      onHeld: () => void sender.send({ type: 'STRAND_BROKE', answers: { zone } }),
    })),
  );
  return { strands, refusal: sender.refusal };
}
