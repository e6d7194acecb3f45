import type { UnitSettings } from '../../units/quantity';
import { columnNames, columns, nameColumn } from './columns';

/**
 * What each column of the CSV means, as a file beside it: a Table Schema (published: Frictionless Data, Table Schema,
 * version 1), which spreadsheets and statistics programs read. Checked in tests/shared/records/table/tableSchema.test.ts.
 */
export const writeTableSchema = (units: UnitSettings): string =>
  `${JSON.stringify(
    {
      fields: columnNames.map((name) => ({
        name: nameColumn(name, units),
        type: columns[name].type,
        ...(columns[name].type === 'datetime' ? { format: 'any' } : {}),
        description: columns[name].means,
      })),
      missingValues: [''],
    },
    null,
    2,
  )}\n`;
