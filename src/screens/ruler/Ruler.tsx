import { createMemo, Index, Show } from 'solid-js';
import { pullField } from '../../../shared/hair/pull';
import { useWords } from '../../parts/useWords';
import { createRoom } from './createRoom';
import { ACROSS_PX, drawTicks, END_PX, findMostMm, findPoint, listTens, START_PX } from './drawRuler';
import { PullBand } from './PullBand';
import './ruler.css';

/** So far from zero the words of the pull leave room for the unit, px: its own half, and "20 %". */
const UNIT_ROOM_PX = 110;

/** A reading on the ruler; the one in hand is moved by a tap. */
export interface Mark {
  readonly mm: number;
  readonly isHere: boolean;
}

const keySteps: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
};

/**
 * A ruler in true millimetres along the long edge of the glass, zero where the strand is held. A tap or the arrow keys
 * read it; between its two marks a light pull ends.
 */
export function Ruler(props: {
  readonly pxPerMm: number;
  readonly isUpright: boolean;
  readonly marks: readonly Mark[];
  /** Where the light pull ends, mm: from and to; null before the rest is read. */
  readonly pull: { readonly fromMm: number; readonly toMm: number } | null;
  readonly label: string;
  readonly write: (mm: number) => string;
  /** Without its unit, which stands on the ruler once. */
  readonly writeFigure: (mm: number) => string;
  readonly onTap: (mm: number) => void;
}) {
  const words = useWords();
  let place!: HTMLDivElement;
  const room = createRoom(() => place);
  const longPx = () => (props.isUpright ? room().high : room().wide);
  const mostMm = createMemo(() => findMostMm(longPx(), props.pxPerMm));
  const along = (mm: number) => START_PX + mm * props.pxPerMm;
  const point = (mm: number, acrossPx: number) => findPoint(along(mm), acrossPx, props.isUpright);
  const lineAt = (mm: number, fromPx: number, toPx: number) => {
    const [from, to] = [point(mm, fromPx), point(mm, toPx)];
    return `M${from.x} ${from.y} L${to.x} ${to.y}`;
  };
  /** Through the ticks, and beyond the figures where it is the one in hand. */
  const drawMark = ({ mm, isHere }: Mark) =>
    [lineAt(mm, 0, across().freeFrom), isHere ? lineAt(mm, across().freeTo, across().edge) : ''].join(' ');
  const across = () => ACROSS_PX[props.isUpright ? 'upright' : 'lying'];
  /** null: not read yet. */
  const here = () => props.marks.find(({ isHere }) => isHere)?.mm ?? null;
  const leastMm = pullField.min;
  /** What was typed may lie off this glass; keys go no further than it. */
  const sayNow = () => Math.min(Math.max(here() ?? leastMm, leastMm), Math.max(mostMm(), leastMm));
  const sayHere = () => {
    const mm = here();
    return mm === null ? words.ruler.notRead : props.write(mm);
  };
  const isShort = () => props.pull !== null && along(props.pull.toMm) > longPx() - END_PX && longPx() > 0;

  /** The unit stands below zero, where the words of the pull leave it free. */
  const hasRoomForUnit = () => props.pull === null || along(props.pull.fromMm) > START_PX + UNIT_ROOM_PX;

  const readTap = (event: MouseEvent) => {
    const { left, top, width, height } = place.getBoundingClientRect();
    const share = props.isUpright ? (event.clientY - top) / height : (event.clientX - left) / width;
    const mm = (share * longPx() - START_PX) / props.pxPerMm;
    if (Number.isFinite(mm)) props.onTap(mm);
  };
  const readKey = (event: KeyboardEvent) => {
    const by = keySteps[event.key];
    if (by === undefined) return;
    event.preventDefault();
    const from = here() ?? 0;
    props.onTap(by > 0 ? Math.max(Math.min(from + by, mostMm()), from) : from + by);
  };

  return (
    <div class="ruler" data-upright={props.isUpright}>
      <div
        ref={place}
        class="ruler-room"
        role="slider"
        tabIndex={0}
        aria-label={props.label}
        aria-orientation={props.isUpright ? 'vertical' : 'horizontal'}
        aria-valuemin={leastMm}
        aria-valuemax={Math.max(mostMm(), leastMm)}
        aria-valuenow={sayNow()}
        aria-valuetext={sayHere()}
        onClick={readTap}
        onKeyDown={readKey}
      >
        <svg
          viewBox={props.isUpright ? `0 0 ${across().edge} ${longPx()}` : `0 0 ${longPx()} ${across().edge}`}
          aria-hidden="true"
        >
          <Show when={props.pull}>
            {(pull) => <PullBand pull={pull()} along={along} longPx={longPx()} isUpright={props.isUpright} />}
          </Show>
          <path class="ruler-ticks" d={drawTicks(mostMm(), props.pxPerMm, props.isUpright)} />
          <Index each={listTens(mostMm())}>
            {(mm) => (
              <text class="ruler-figure" {...point(mm(), across().figures)} text-anchor="middle">
                {props.writeFigure(mm())}
              </text>
            )}
          </Index>
          <Show when={hasRoomForUnit()}>
            <text class="ruler-said" {...point(0, across().said)} text-anchor="middle">
              {words.ruler.unit}
            </text>
          </Show>
          <Index each={props.marks.filter(({ mm }) => along(mm) <= longPx())}>
            {(mark) => <path class="ruler-mark" data-here={mark().isHere} d={drawMark(mark())} />}
          </Index>
        </svg>
      </div>
      {/* There before its words are: what comes with them is often not read out. */}
      <p class="ruler-short" role="status">
        {isShort() ? words.ruler.offGlass : ''}
      </p>
    </div>
  );
}
