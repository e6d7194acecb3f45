import type { CallKind } from '../../../shared/records/call';
import './alarm.css';

/** An eye, a bell, a triangle: told apart without colour and from afar. */
const shapes: Readonly<Record<CallKind, string>> = {
  look: 'M2 16 Q16 -1 30 16 Q16 33 2 16 Z M16 9 a7 7 0 1 0 0.01 0 Z M16 13 a3 3 0 1 1 -0.01 0 Z',
  due: 'M14 2 h4 v3 q7 2 7 10 v6 l4 4 v2 h-26 v-2 l4 -4 v-6 q0 -8 7 -10 Z M12 28 h8 q-1 4 -4 4 t-4 -4 Z',
  overrun: 'M16 1 L31.5 30 H0.5 Z M14 10 l1 12 h2 l1 -12 Z M14 24 v4 h4 v-4 Z',
};

/** Which of the three calls is it? Its word always stands beside it. */
export function CallShape(props: { readonly kind: CallKind }) {
  return (
    <svg class="call-shape" viewBox="0 0 32 33" aria-hidden="true" data-shape={props.kind}>
      <path d={shapes[props.kind]} />
    </svg>
  );
}
