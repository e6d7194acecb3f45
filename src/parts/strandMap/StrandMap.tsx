import { createMemo } from 'solid-js';
import { Bars } from './Bars';
import { Flags } from './Flags';
import { MinutesChart } from './MinutesChart';
import { room, scaleStrand } from './room';
import { StrandItself } from './StrandItself';
import './strandMap.css';
import type { StrandMapView } from './strandMapView';

/**
 * The strand from the scalp to the tip: iron minutes above it as a band with its likely line, old bleach on it, the
 * landmarks, how far the colour goes, for what it was hot enough from where on, and where to snip.
 */
export function StrandMap(props: { readonly view: StrandMapView }) {
  const x = createMemo(() => scaleStrand(props.view.lengthCm));
  const height = () => {
    const { length } = props.view.reached;
    return length === 0 ? room.reachY + 30 : room.barsFrom - 12 + length * room.barHeight;
  };
  return (
    <svg class="strand-map" viewBox={`0 0 ${room.width} ${height()}`} role="img" aria-label={props.view.said}>
      <MinutesChart view={props.view} x={x()} />
      <StrandItself view={props.view} x={x()} />
      <Bars reached={props.view.reached} x={x()} />
      <Flags snips={props.view.snips} x={x()} />
    </svg>
  );
}
