import { createMemo } from 'solid-js';
import type { UnitSettings } from '../../../../shared/units/quantity';
import { useWords } from '../../../parts/useWords';
import { PressPicture } from './PressPicture';
import { sayPress } from './sayPress';
import type { PressView } from './viewPress';

/** The picture, and in words what came of it. */
export function PressSeen(props: {
  readonly view: PressView;
  /** Something else was chosen, and is not reckoned yet. */
  readonly isOld: boolean;
  readonly units: UnitSettings;
}) {
  const words = useWords();
  const said = () => words.press;
  const told = createMemo(() => sayPress(props.view, words, props.units));
  return (
    <div class="press-seen" aria-busy={props.isOld}>
      <PressPicture view={props.view} units={props.units} label={told().picture} />
      <div class="press-told" data-verdict={props.view.verdict} role="status">
        <p class="press-ends">
          <span class="press-end">
            <svg class="press-key" viewBox="0 0 44 20" aria-hidden="true">
              <path class="press-outside" d="M2 10 H34" />
              <circle class="press-outside-end" cx="34" cy="10" r="8" />
            </svg>
            {said().outside} <strong>{told().outside}</strong>
          </span>
          <span class="press-end">
            <svg class="press-key" viewBox="0 0 44 20" aria-hidden="true">
              <path class="press-middle" d="M2 10 H34" />
              <rect class="press-middle-end" x="27" y="3" width="14" height="14" />
            </svg>
            {said().middle} <strong>{told().middle}</strong>
          </span>
        </p>
        <p class="press-verdict">{told().verdict}</p>
        <p>{told().water}</p>
      </div>
    </div>
  );
}
