import type { Answers } from '../../../shared/records/forms/asked';
import type { Settings } from '../../../shared/records/settings';
import { Explain } from '../../parts/Explain';
import { useWords } from '../../parts/useWords';
import { HairExplained } from './HairExplained';
import type { HairView } from './viewHair';

/** "Why?" beside the map: every figure behind it, with its inputs, formula, source and mark. */
export function WhyOfHair(props: {
  readonly view: HairView;
  readonly answers: Answers;
  readonly settings: Settings;
}) {
  const words = useWords();
  return (
    <Explain title={words.hair.title}>
      <HairExplained {...props} first="ironMin" />
    </Explain>
  );
}
