import { describe, expect, it } from 'vitest';
import { columnNames, nameColumn } from '../../../../shared/records/table/columns';
import { writeTableSchema } from '../../../../shared/records/table/tableSchema';

const units = { temperature: 'F', mass: 'oz', length: 'in' } as const;

describe('the schema beside the CSV', () => {
  // Field types and `missingValues`: published, Frictionless Data, Table Schema, version 1.
  const types = ['string', 'number', 'datetime'];

  it('has a field for each column, under the name in the header, with a type of Table Schema', () => {
    const schema = JSON.parse(writeTableSchema(units));
    expect(schema.fields.map(({ name }: { name: string }) => name)).toEqual(
      columnNames.map((name) => nameColumn(name, units)),
    );
    for (const field of schema.fields) {
      expect(types).toContain(field.type);
      expect(field.description.length).toBeGreaterThan(5);
    }
    expect(schema.missingValues).toEqual(['']);
  });
});
