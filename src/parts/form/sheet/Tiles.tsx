import type { JSX } from 'solid-js';
import { findColumns } from './columns';

/** Tiles side by side: few are large, many still ≥ 118 px; together they fill the room of their question. */
export function Tiles(props: {
  readonly count: number;
  /** What stops everything stands apart from what is harmless. */
  readonly isStops?: boolean;
  readonly columns?: ReturnType<typeof findColumns>;
  readonly children: JSX.Element;
}) {
  const columns = () => props.columns ?? findColumns(props.count);
  return (
    <div
      class="sheet-tiles"
      classList={{ stops: props.isStops === true }}
      data-columns={columns()}
      data-rows={Math.ceil(props.count / columns())}
    >
      {props.children}
    </div>
  );
}
