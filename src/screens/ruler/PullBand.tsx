import { Show } from 'solid-js';
import { useWords } from '../../parts/useWords';
import { ACROSS_PX, findPoint } from './drawRuler';

/** How far beside its mark a word stands, px, lying and upright, and how much room it needs. */
const BESIDE_PX = 8;
const UPRIGHT_PX = 18;
const LETTER_PX = 16;

/** Where a light pull ends on the ruler: a band from 20 to 30 % with a word at each side, and nothing beyond. */
export function PullBand(props: {
  readonly pull: { readonly fromMm: number; readonly toMm: number };
  readonly along: (mm: number) => number;
  readonly longPx: number;
  readonly isUpright: boolean;
}) {
  const words = useWords();
  const across = () => ACROSS_PX[props.isUpright ? 'upright' : 'lying'];
  const from = () => Math.min(props.along(props.pull.fromMm), props.longPx);
  const to = () => Math.min(props.along(props.pull.toMm), props.longPx);
  const band = () => {
    const size = to() - from();
    return props.isUpright
      ? { x: 0, y: from(), width: across().edge, height: size }
      : { x: from(), y: 0, width: size, height: across().edge };
  };
  const stop = () => (props.isUpright ? `M0 ${to()} H${across().edge}` : `M${to()} 0 V${across().edge}`);
  const off = () => (props.isUpright ? UPRIGHT_PX : BESIDE_PX);
  const say = (told: string, alongPx: number, side: 'start' | 'end') => (
    <Show when={alongPx > 0 && alongPx < props.longPx - LETTER_PX}>
      <text
        class="ruler-said"
        {...findPoint(alongPx, across().said, props.isUpright)}
        text-anchor={props.isUpright ? 'middle' : side}
      >
        {told}
      </text>
    </Show>
  );
  return (
    <>
      <rect class="ruler-pull" {...band()} />
      <Show when={to() < props.longPx}>
        <path class="ruler-stop" d={stop()} />
      </Show>
      {say(words.ruler.markFrom, from() - off(), 'end')}
      {say(words.ruler.markTo, to() + off(), 'start')}
    </>
  );
}
