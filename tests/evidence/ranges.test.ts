import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ASSUMED_PLATE_WIDTH_CM, DEFAULT_SECONDS_A_SECTION } from '../../shared/heat/habit';
import { ASSUMED_TEST_MAX_G } from '../../shared/judgement/permit';
import { ASSUMED_REST_H, planForm } from '../../shared/records/forms/bowl';
import { hotToolsForm } from '../../shared/records/forms/hotTools';
import { strandForm } from '../../shared/records/forms/test';

const records = new URL('../../shared/records/', import.meta.url);
const sources = [
  'settings.ts',
  ...readdirSync(new URL('forms/', records)).map((file) => `forms/${file}`),
].map((file) => [file, readFileSync(new URL(file, records), 'utf8')] as const);

/** Does it set a limit or a default as a figure, comments aside? */
const hasFigures = (source: string): boolean =>
  /\b(?:min|max|maxLength|step|or): -?[\d.]|(?:min|max)Value\(|maxLength\(/.test(
    source.replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, ''),
  );

/** Does a doc comment say of its ranges whose choice they are? */
const isMarked = (source: string): boolean =>
  (source.match(/\/\*\*[\s\S]*?\*\//g) ?? []).some((comment) => /\branges\b[^:.]*: ASSUMED/i.test(comment));

describe('the ranges of fields', () => {
  it('are marked as our own choice in every file that sets one', () => {
    const unmarked = sources.filter(([, source]) => hasFigures(source) && !isMarked(source));
    expect(unmarked.map(([file]) => file)).toEqual([]);
    expect(sources.filter(([, source]) => hasFigures(source)).length).toBeGreaterThan(6);
  });

  it('are missed when the mark is missing', () => {
    expect(hasFigures("hairs: { kind: 'number', field: { min: 20, max: 50 } }")).toBe(true);
    expect(hasFigures("/** min: 20 */ zone: { kind: 'choice' }")).toBe(false);
    expect(isMarked('/** How many hairs? */')).toBe(false);
    expect(isMarked('/** How many hairs? Ranges: ASSUMED, wide. */')).toBe(true);
  });

  it('take what is said elsewhere from there: seconds and width of an iron, grams of a strand, hours of rest', () => {
    const { secondsASection, plateWidthCm } = hotToolsForm.habits.of;
    expect(secondsASection.or).toBe(DEFAULT_SECONDS_A_SECTION);
    expect(plateWidthCm.or).toBe(ASSUMED_PLATE_WIDTH_CM);
    expect(strandForm.testG.field.max).toBe(ASSUMED_TEST_MAX_G);
    expect([planForm.restH.or, planForm.restH.field.min]).toEqual([ASSUMED_REST_H, ASSUMED_REST_H]);
  });
});
