import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import {
  consultationsSchema,
  writeConsultationSchema,
} from '../../../../shared/records/json/consultationSchema';
import { findSettings } from '../../../machines/consultation/walks/rawTaps';
import { drawnWalks, live } from '../../../machines/consultation/walks/walk';
import { playUntil } from '../../../src/screens/playStory';
import { holds, seed } from '../../seeded';
import { clear } from '../skinTest/makeTest';
import { leave, shipped, write } from './leaving';

/** A validator that knows nothing of this station: it reads the file that is handed over beside the day. */
const ajv = new Ajv2020({ allErrors: false, strict: true });
addFormats.default(ajv);
const takes = ajv.compile(JSON.parse(writeConsultationSchema()));
const verdictOn = (file: unknown) =>
  takes(file) ? 'taken' : takes.errors?.map(({ instancePath, message }) => `${instancePath} ${message}`);

const whole = playUntil('whole').consultation;
const story = write([leave({ record: { ...whole.record, id: 'whole' }, log: whole.log }, () => salon)], {
  skinTests: clear.test === null ? [] : [clear.test],
});

describe('a validator of JSON Schema, draft 2020-12', () => {
  it('takes the day of every log that was shipped, of the story and of nobody', () => {
    expect(verdictOn(JSON.parse(write(shipped)))).toBe('taken');
    expect(verdictOn(JSON.parse(story))).toBe('taken');
    expect(verdictOn(JSON.parse(write([])))).toBe('taken');
  });

  it('takes the day of random walks, as far as each came', () => {
    const walked = fc.sample(drawnWalks, { seed, numRuns: 25 }).map((drawn) => live(drawn).consultation);
    expect(walked.filter(({ record }) => record.bowls.length > 0).length).toBeGreaterThan(3);
    for (const [index, { record, log }] of walked.entries()) {
      const one = leave({ record: { ...record, id: `walk${index}` }, log }, findSettings);
      expect(verdictOn(JSON.parse(write([one])))).toBe('taken');
    }
  });
});

type Json = null | boolean | number | string | Json[] | { [name: string]: Json };
type Place = { readonly within: { [name: string]: Json }; readonly name: string };

/** Every member of every object in this value. */
const listMembers = (value: Json): readonly Place[] => {
  if (value === null || typeof value !== 'object') return [];
  const deeper = Object.values(value).flatMap(listMembers);
  return Array.isArray(value)
    ? deeper
    : [...Object.keys(value).map((name) => ({ within: value, name })), ...deeper];
};

const breaks = {
  /** A member is missing. */
  missing: ({ within, name }: Place) => delete within[name],
  /** It is of a type that no member of the file is: an object in a list. */
  wrongType: ({ within, name }: Place) => {
    within[name] = [{ nobodyWrites: null }];
  },
  /** One stands beside it that nobody writes. */
  extra: ({ within }: Place) => {
    within.nobodyWrites = 1;
  },
} as const;
const kinds = Object.keys(breaks) as (keyof typeof breaks)[];
const count = listMembers(JSON.parse(story)).length;
const parses = (file: unknown): boolean => v.safeParse(consultationsSchema, file).success;

describe('a file in which one thing is broken', () => {
  const refused = { missing: 0, wrongType: 0, extra: 0 };

  it('is refused by the validator wherever the station’s own schemas refuse it, and nowhere else', () => {
    holds(
      fc.property(fc.constantFrom(...kinds), fc.nat(count - 1), (kind, at) => {
        const file: Json = JSON.parse(story);
        const place = listMembers(file)[at];
        if (place === undefined) throw new Error(`no member ${at}`);
        breaks[kind](place);
        const isTaken = takes(file);
        expect(isTaken, `${kind} ${place.name}`).toBe(parses(file));
        if (!isTaken) refused[kind] += 1;
        // What may be left out is one thing; a wrong type, or a member more, is refused everywhere.
        if (kind !== 'missing') expect(isTaken, `${kind} ${place.name}`).toBe(false);
      }),
      300,
    );
    console.log(`${count} members; refused: ${JSON.stringify(refused)}`);
    expect(refused.missing).toBeGreaterThan(50);
  });
});
