import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { brand } from '../../../shared/units/brand';
import type { Celsius, Fahrenheit } from '../../../shared/units/temperature';
import { toFahrenheit } from '../../../shared/units/temperature';

const shared = new URL('../../../shared/', import.meta.url);

function listBrands(): readonly string[] {
  const files = readdirSync(shared, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.ts'),
  );
  return files.flatMap((file) => {
    const source = readFileSync(new URL(file, shared), 'utf8');
    return [...source.matchAll(/= Branded<'([^']+)'>/g)].map(([, unit]) => unit ?? '');
  });
}

it('gives no two brands the same string', () => {
  const brands = listBrands();
  expect(brands).toContain('Celsius');
  expect(brands).toContain('PeroxidePercent');
  expect([...brands].sort()).toEqual([...new Set(brands)].sort());
});

it('changes nothing but the type', () => {
  expect(Object.is(brand<Celsius>(-0), -0)).toBe(true);
  expect(brand<Celsius>(204.5)).toBe(204.5);
});

it('does not compile where one unit is handed as another', () => {
  const fahrenheit = brand<Fahrenheit>(400);
  // @ts-expect-error a Fahrenheit setting is no Celsius setting
  expect(toFahrenheit(fahrenheit)).toBe(752);
  // @ts-expect-error a number that has not said its unit is no Celsius setting
  expect(toFahrenheit(100)).toBe(212);
});
