import type { JSX } from 'solid-js';
import './said.css';

/** Something to heed. Its shape tells the kind as well as its colour: triangle, octagon, tick, square. */
export function Caution(props: {
  readonly kind?: 'attention' | 'stop' | 'clear' | 'plain';
  readonly children: JSX.Element;
}) {
  const kind = () => props.kind ?? 'attention';
  return (
    <div class="caution" data-kind={kind()}>
      <svg class="caution-mark" viewBox="0 0 24 24" aria-hidden="true">
        <path d={marks[kind()]} />
      </svg>
      <div class="caution-words">{props.children}</div>
    </div>
  );
}

const marks = {
  attention: 'M12 2 L23 22 H1 Z',
  stop: 'M8 1 H16 L23 8 V16 L16 23 H8 L1 16 V8 Z',
  clear: 'M2 13 L6 9 L10 13 L19 3 L23 7 L10 21 Z',
  plain: 'M4 4 H20 V20 H4 Z',
} as const;
