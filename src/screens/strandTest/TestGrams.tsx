import type { Mixture } from '../../../shared/judgement/mixture';
import type { Answers } from '../../../shared/records/forms/asked';
import type { Settings } from '../../../shared/records/settings';
import type { Result } from '../../../shared/result';
import { useWords } from '../../parts/useWords';
import { findStuff } from '../findStuff';
import { GramsBeside, type GramsRefusal } from '../GramsBeside';

/** The few grams for the strand, live from the fields; or why there are none. */
export function TestGrams(props: {
  readonly grams: Result<Mixture, GramsRefusal>;
  readonly answers: Answers;
  /** As it stands in its field so far. */
  readonly line: string;
  readonly settings: Settings;
}) {
  const words = useWords();
  return (
    <GramsBeside
      panel="test-grams"
      made={props.grams}
      settings={props.settings}
      say={({ shades, developerG }, write) =>
        words.strandTest.start.weigh(
          write(shades[0]?.amountG ?? 0),
          findStuff(props.settings, props.answers, props.line),
          write(developerG),
        )
      }
      open={words.strandTest.start.gramsOpen}
    />
  );
}
