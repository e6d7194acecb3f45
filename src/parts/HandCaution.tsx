import type { CautionId } from '../words/en/cautions';
import './handCaution.css';
import { useWords } from './useWords';

/** The one caution for what the hand is about to do, with its own drawing. Sources: src/words/en/cautions.ts. */
export function HandCaution(props: { readonly caution: CautionId }) {
  const words = useWords();
  return (
    <p class="hand-caution" data-caution={props.caution}>
      <svg class="hand-caution-mark" viewBox="0 0 48 48" aria-hidden="true">
        <path d={drawings[props.caution]} />
      </svg>
      <span>{words.cautions[props.caution]}</span>
    </p>
  );
}

const glove =
  'M15 44 V28 L9 22 C6 18 11 15 14 18 L17 21 V9 C17 5 22 5 22 9 V6 C22 2 27 2 27 6 V9 C27 5 32 5 32 9 V12 C32 9 36 9 36 12 V28 C36 33 34 36 34 44 Z M15 37 H34';
const eye = 'M4 24 C14 10 34 10 44 24 C34 38 14 38 4 24 Z M24 18 A6 6 0 1 0 24 30 A6 6 0 1 0 24 18';
const bowl = 'M4 20 H44 C44 32 36 38 24 38 C12 38 4 32 4 20 Z M16 43 H32 M30 20 L38 6';
const dryer = 'M6 10 H30 C40 10 40 28 30 28 H6 Z M16 28 L12 42 H22 L25 28 M40 4 L8 44';
const basin = 'M4 24 H44 C44 36 36 42 24 42 C12 42 4 36 4 24 Z M10 24 V12 C10 4 22 4 22 12 M22 16 V20';
const lidless = 'M10 20 H38 L35 44 H13 Z M14 12 L36 6 M8 4 L42 16';
const goggles =
  'M4 18 H44 V26 C44 34 28 34 26 27 C25 25 23 25 22 27 C20 34 4 34 4 26 Z M4 22 L1 20 M44 22 L47 20';
const can = 'M10 18 H26 V44 H10 Z M14 18 V10 H22 V18 M30 12 L42 6 M31 17 H44 M30 22 L42 28';
const drop = 'M24 4 C34 18 39 24 39 31 A15 14 0 1 1 9 31 C9 24 14 18 24 4 Z';

const drawings: Readonly<Record<CautionId, string>> = {
  snip: glove,
  look: glove,
  weighLightener: eye,
  weighColour: bowl,
  standing: lidless,
  onHead: dryer,
  onHeadColour: eye,
  basin,
  overdue: basin,
  glass: goggles,
  spray: can,
  outcome: drop,
};
