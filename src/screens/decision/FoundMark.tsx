import './foundMark.css';

/** A circle for what is well, a diamond for what to heed, a triangle for what failed: shape and colour say the same. */
export type FoundShape = 'clear' | 'heed' | 'stop';

const drawings: Readonly<Record<FoundShape, string>> = {
  clear: 'M12 2 A10 10 0 1 0 12 22 A10 10 0 1 0 12 2 Z',
  heed: 'M12 1 L23 12 L12 23 L1 12 Z',
  stop: 'M12 2 L23 22 H1 Z',
};

export function FoundMark(props: { readonly shape: FoundShape }) {
  return (
    <svg class="found-mark" data-shape={props.shape} viewBox="0 0 24 24" aria-hidden="true">
      <path d={drawings[props.shape]} />
    </svg>
  );
}
