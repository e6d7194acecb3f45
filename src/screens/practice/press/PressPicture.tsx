import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { createMemo, Index } from 'solid-js';
import {
  ASSUMED_BETWEEN_PRESSES_S,
  findPressTime,
  type PressMoment,
} from '../../../../shared/heat/press/press';
import { ASSUMED_WORKS_ABOVE_C, type Span, sumSpans } from '../../../../shared/heat/press/readPress';
import { brand } from '../../../../shared/units/brand';
import { formatQuantity, formatTemperature } from '../../../../shared/units/format';
import type { UnitSettings } from '../../../../shared/units/quantity';
import { type Celsius, type Fahrenheit, toCelsius } from '../../../../shared/units/temperature';
import { useWords } from '../../../parts/useWords';
import { room, spreadNames } from './pressRoom';
import type { PressView } from './viewPress';

/** The top of the picture, °C: a little above the hottest setting, so that its line and name have room. */
const HIGHEST_C = 245;
/** Where lines across are drawn, in the station's unit. */
const ticks = { C: [50, 100, 150, 200], F: [100, 200, 300, 400] } as const;
/** Every fourth moment is drawn: two to a pixel. */
const EVERY = 4;

/**
 * How hot the outside and the middle get, against the seconds: a thick line that ends in a dot, a dashed one that ends
 * in a square. Below it when it was pressed, when water boiled, and when the outside was too hot.
 */
export function PressPicture(props: {
  readonly view: PressView;
  readonly units: UnitSettings;
  /** The whole picture in words, for whoever does not see it. */
  readonly label: string;
}) {
  const words = useWords();
  const said = () => words.press;
  const write = (celsius: number) => formatTemperature(brand<Celsius>(celsius), props.units, words.locale);
  const writeS = (seconds: number) => formatQuantity(seconds, 'seconds', props.units, words.locale);
  const lastS = () => findPressTime(props.view.choice);
  const x = createMemo(() => scaleLinear([0, lastS()], [room.left, room.right]));
  const y = scaleLinear([0, HIGHEST_C], [room.bottom, room.top]);
  const drawn = createMemo(() =>
    props.view.moments.filter((_, at) => at % EVERY === 0 || at === props.view.moments.length - 1),
  );
  const draw = (of: (moment: PressMoment) => number) =>
    line<PressMoment>()
      .x(({ atS }) => x()(atS))
      .y((moment) => y(of(moment)))([...drawn()]) ?? '';
  const tickC = (shown: number) =>
    props.units.temperature === 'C' ? shown : toCelsius(brand<Fahrenheit>(shown));
  const lines = createMemo(() => {
    const { choice, tooHot, boilingC } = props.view;
    const all = [
      { id: 'plates', atC: choice.plateC, name: said().lines.plates(write(choice.plateC)) },
      { id: 'too-hot', atC: tooHot.fromC, name: said().lines.tooHot(write(tooHot.fromC)) },
      { id: 'works', atC: ASSUMED_WORKS_ABOVE_C, name: said().lines.works(write(ASSUMED_WORKS_ABOVE_C)) },
      { id: 'boils', atC: boilingC, name: said().lines.boils(write(boilingC)) },
    ];
    const names = spreadNames(all.map(({ atC }) => y(atC) + 7));
    return all.map((each, at) => ({ ...each, nameY: names[at] ?? 0 }));
  });
  const pressed = (): readonly Span[] => {
    const { presses, contactS } = props.view.choice;
    return Array.from({ length: presses }, (_, at) => {
      const fromS = at * (contactS + ASSUMED_BETWEEN_PRESSES_S);
      return { fromS, toS: fromS + contactS };
    });
  };
  const bars = createMemo(() => {
    const { read, choice } = props.view;
    const times = formatQuantity(choice.presses, 'count', props.units, words.locale);
    return [
      { id: 'pressed', spans: pressed(), name: said().bars.pressed(times, writeS(choice.contactS)) },
      { id: 'boiling', spans: read.boiling, name: said().bars.boiling(writeS(sumSpans(read.boiling))) },
      { id: 'too-hot', spans: read.tooHot, name: said().bars.tooHot(writeS(sumSpans(read.tooHot))) },
    ];
  });
  const end = () => drawn().at(-1) as PressMoment;
  const height = room.barsFrom + room.bars * room.barHeight;
  return (
    <svg class="press-picture" viewBox={`0 0 ${room.width} ${height}`} role="img" aria-label={props.label}>
      <Index each={ticks[props.units.temperature]}>
        {(shown) => (
          <>
            <line
              class="press-grid"
              x1={room.left}
              x2={room.right}
              y1={y(tickC(shown()))}
              y2={y(tickC(shown()))}
            />
            <text x={room.left - 10} y={y(tickC(shown())) + 7} text-anchor="end">
              {write(tickC(shown()))}
            </text>
          </>
        )}
      </Index>
      <Index each={lines()}>
        {(each) => (
          <g data-line={each().id}>
            <line class="press-level" x1={room.left} x2={room.right} y1={y(each().atC)} y2={y(each().atC)} />
            <text x={room.named} y={each().nameY}>
              {each().name}
            </text>
          </g>
        )}
      </Index>
      <path class="press-axes" d={`M${room.left} ${room.top} V${room.bottom} H${room.right}`} />
      <text x={room.left} y={room.timesY} text-anchor="middle">
        {formatQuantity(0, 'count', props.units, words.locale)}
      </text>
      <text x={room.right} y={room.timesY} text-anchor="end">
        {writeS(lastS())}
      </text>
      <path class="press-outside" d={draw(({ surfaceC }) => surfaceC)} />
      <path class="press-middle" d={draw(({ coreC }) => coreC)} />
      <circle class="press-outside-end" cx={x()(end().atS)} cy={y(end().surfaceC)} r="9" />
      <rect class="press-middle-end" x={x()(end().atS) - 8} y={y(end().coreC) - 8} width="16" height="16" />
      <Index each={bars()}>
        {(bar, row) => {
          const top = room.barsFrom + row * room.barHeight;
          return (
            <g data-bar={bar().id}>
              <line class="press-grid" x1={room.left} x2={room.right} y1={top + 13} y2={top + 13} />
              <Index each={bar().spans}>
                {(span) => (
                  <rect
                    class="press-bar"
                    x={x()(span().fromS)}
                    y={top}
                    width={Math.max(3, x()(span().toS) - x()(span().fromS))}
                    height={room.barHeight - 6}
                    rx="5"
                  />
                )}
              </Index>
              <text x={room.named} y={top + 19}>
                {bar().name}
              </text>
            </g>
          );
        }}
      </Index>
    </svg>
  );
}
