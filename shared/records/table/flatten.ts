import type { UnitSettings } from '../../units/quantity';
import type { ConsultationRecord } from '../record';
import { type Cell, type ColumnName, columnNames, columns, type Row, showFigure } from './columns';
import { listThings, type Said } from './listThings';

/** In which units, and how a moment is written: the clock on the wall of this salon is not known here. */
export interface FlattenContext {
  readonly units: UnitSettings;
  /** RFC 3339 with the offset of that moment, of milliseconds since 1970-01-01 UTC. */
  readonly writeMoment: (atMs: number) => string;
}

function toCell(name: ColumnName, said: Said[ColumnName], { units, writeMoment }: FlattenContext): Cell {
  if (said === undefined || said === null || said === '' || said === 'unknown') return null;
  if (typeof said === 'number') {
    return columns[name].type === 'datetime' ? writeMoment(said) : showFigure(name, said, units);
  }
  if (typeof said === 'string') return said;
  const each = said.map((one) => (typeof one === 'number' ? String(showFigure(name, one, units)) : one));
  return each.length === 0 ? null : each.join('; ');
}

/**
 * One record as rows of one flat table, a row for each thing: the visit, each strand, look and bowl, each stop that was
 * lifted, each correction, each reaction told. In the order of the log; figures in the station's units; what nobody said
 * is an empty cell. Checked in tests/shared/records/table/flatten.test.ts.
 */
export function flatten(record: ConsultationRecord, context: FlattenContext): readonly Row[] {
  const { id: consultation, ticket, chair, stylist, modelVersion } = record;
  return listThings(record).map(({ kind, stamp, said }) => {
    const whole: Said = {
      ...{ consultation, kind, ticket, chair, stylist, modelVersion, at: stamp?.atMs, by: stamp?.by },
      ...said,
    };
    return Object.fromEntries(columnNames.map((name) => [name, toCell(name, whole[name], context)])) as Row;
  });
}
