import { ASSUMED_LIGHT_PULL_FROM_PERCENT } from '../../../shared/hair/pull';
import { ASSUMED_LIGHT_PULL_LIMIT_PERCENT } from '../../../shared/hair/stretch';
import { useWords } from '../../parts/useWords';
import { findPoint } from './drawRuler';

/** Between figures and edge, px: where the two marks say what they are. */
const SAID_PX = 104;
const BESIDE_PX = 8;
const LETTER_PX = 16;

/** Where a light pull ends on the ruler: a band from 20 to 30 % with a word at each side, and nothing beyond. */
export function PullBand(props: {
  readonly pull: { readonly fromMm: number; readonly toMm: number };
  readonly along: (mm: number) => number;
  readonly longPx: number;
  readonly acrossPx: number;
  readonly isUpright: boolean;
}) {
  const words = useWords();
  const ends = () => {
    const from = Math.min(props.along(props.pull.fromMm), props.longPx);
    return { from, to: Math.min(props.along(props.pull.toMm), props.longPx) };
  };
  const band = () => {
    const { from, to } = ends();
    return props.isUpright
      ? { x: 0, y: from, width: props.acrossPx, height: to - from }
      : { x: from, y: 0, width: to - from, height: props.acrossPx };
  };
  const stop = () => {
    const { to } = ends();
    return props.isUpright ? `M0 ${to} H${props.acrossPx}` : `M${to} 0 V${props.acrossPx}`;
  };
  const beside = (isEnd: boolean) => {
    const { from, to } = ends();
    const off = BESIDE_PX + (props.isUpright ? LETTER_PX / 2 : 0);
    return findPoint(isEnd ? to + off : from - off, SAID_PX, props.isUpright);
  };
  const anchor = (isEnd: boolean) => {
    if (props.isUpright) return 'middle';
    return isEnd ? 'start' : 'end';
  };
  return (
    <>
      <rect class="ruler-pull" {...band()} />
      <path class="ruler-stop" d={stop()} />
      <text class="ruler-said" {...beside(false)} text-anchor={anchor(false)}>
        {words.ruler.percentMark(ASSUMED_LIGHT_PULL_FROM_PERCENT)}
      </text>
      <text class="ruler-said" {...beside(true)} text-anchor={anchor(true)}>
        {words.ruler.percentMark(ASSUMED_LIGHT_PULL_LIMIT_PERCENT)}
      </text>
    </>
  );
}
