import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digest, writeCanonical } from '../../../../shared/records/documents/canonical';
import { holds } from '../../seeded';

/** The same content with the names of every object the other way round. */
const turnRound = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(turnRound);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([name, each]) => [name, turnRound(each)]),
  );
};

describe('the one text of a content', () => {
  // RFC 8785, 3.2.2 and 3.2.3: its own samples.
  it('is that of RFC 8785 for its own samples', () => {
    const sample =
      '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}';
    expect(writeCanonical(JSON.parse(sample))).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    );
    const names = { '\u20ac': 1, '\r': 2, '\ufb33': 3, '1': 4, '\u{1f600}': 5, '\u0080': 6, '\u00f6': 7 };
    expect(Object.values(JSON.parse(writeCanonical(names)))).toHaveLength(7);
    expect([...writeCanonical(names).matchAll(/:(\d)/g)].map(([, at]) => at)).toEqual([
      '2',
      '4',
      '6',
      '7',
      '1',
      '5',
      '3',
    ]);
  });

  it('does not know in which order the names came, and loses nothing', () => {
    holds(
      fc.property(fc.jsonValue(), (value) => {
        expect(writeCanonical(turnRound(value))).toBe(writeCanonical(value));
        expect(JSON.parse(writeCanonical(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
      500,
    );
  });

  it('leaves out what JSON leaves out', () =>
    expect(writeCanonical({ b: undefined, a: [undefined] })).toBe('{"a":[null]}'));

  // FIPS 180-4 as NIST publishes its example: SHA-256 of the three letters, here between the marks JSON puts round a text.
  it('has the digest that SHA-256 gives of its UTF-8', () => {
    expect(digest('abc')).toBe('6cc43f858fbb763301637b5af970e2a46b46f461f27e5a0f41e009c59b827b25');
    expect(digest({})).toBe('44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a');
  });
});
