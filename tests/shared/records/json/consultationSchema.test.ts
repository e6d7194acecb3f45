import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import { ruleIds } from '../../../../shared/judgement/rules';
import type { ClosedRecord } from '../../../../shared/records/closedRecord';
import { listEditions } from '../../../../shared/records/json/carriedSettings';
import {
  consultationsSchema,
  writeConsultationSchema,
} from '../../../../shared/records/json/consultationSchema';
import { entrySchemas } from '../../../../shared/records/parseEvent';
import { playUntil } from '../../../src/screens/playStory';
import { clear } from '../skinTest/makeTest';
import { leave, shipped, write } from './leaving';

const schema = JSON.parse(writeConsultationSchema());

interface Node {
  readonly [name: string]: unknown;
}
const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;

/** Every schema inside this one, itself first. */
const listNodes = (node: unknown): readonly Node[] =>
  isNode(node) ? [node, ...Object.values(node).flatMap(listNodes)] : [];

/** The names of all members of whatever is in this value. */
const listNames = (value: unknown): readonly string[] =>
  isNode(value)
    ? [...(Array.isArray(value) ? [] : Object.keys(value)), ...Object.values(value).flatMap(listNames)]
    : [];

const whole = playUntil('whole').consultation;
const closed: ClosedRecord = {
  ...{ v: 1, id: 'torn', ticketKey: 'QF', endedAtMs: 1, how: 'done', hasStandingStop: false },
  ...{ hasClearedStop: false, log: [{}] },
  broughtIn: { atMs: 2, settings: listEditions([{ settingsId: 0 }], () => salon) },
};
const running = (type: Parameters<typeof playUntil>[0]) => {
  const { record, log } = playUntil(type).consultation;
  return leave({ record: { ...record, id: 'running' }, log }, () => salon);
};
const file = write(
  [
    ...shipped,
    leave({ record: { ...whole.record, id: 'whole' }, log: whole.log }, () => salon),
    running('STRAND_STARTED'),
    running('BOWL_APPLIED'),
  ],
  { skinTests: clear.test === null ? [] : [clear.test], unread: [closed] },
);
const faults = (text: string) =>
  v
    .safeParse(consultationsSchema, JSON.parse(text))
    .issues?.map((issue) => [v.getDotPath(issue), issue.message]);

describe('the JSON Schema beside the file', () => {
  it('is of draft 2020-12, and each reference in it leads to a definition', () => {
    // published: JSON Schema, draft 2020-12, core, 8.1.1 and 8.2.4.
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    const refs = listNodes(schema).flatMap(({ $ref }) => (typeof $ref === 'string' ? [$ref] : []));
    expect(refs.length).toBeGreaterThan(5);
    for (const ref of refs) expect(Object.keys(schema.$defs)).toContain(ref.replace('#/$defs/', ''));
  });

  it('is made of the very schemas that take what the station writes, member by member', () => {
    expect(faults(file)).toBeUndefined();
  });

  it('names every member that the station writes, and lets no other in', () => {
    const named = new Set(
      listNodes(schema).flatMap(({ properties }) => (isNode(properties) ? Object.keys(properties) : [])),
    );
    expect([...new Set(listNames(JSON.parse(file)))].filter((name) => !named.has(name))).toEqual([]);
    const open = listNodes(schema).filter(
      ({ type, properties, additionalProperties }) =>
        type === 'object' && isNode(properties) && additionalProperties !== false,
    );
    expect(open).toEqual([]);
  });

  it('knows each type of event, and each rule', () => {
    const { entry } = schema.properties.consultations.items.properties.log.items.properties;
    expect(entry.oneOf).toHaveLength(entrySchemas.length);
    expect(JSON.stringify(schema)).toContain(ruleIds.map((id) => JSON.stringify(id)).join(','));
  });

  it.each([
    ['a type nobody writes', '"type":"OPENED"', '"type":"SHUT"'],
    ['an option that is none', '"state":"rinsed"', '"state":"dyed"'],
    ['a figure that is none', '"modelVersion":6,"nextSeq"', '"modelVersion":"5","nextSeq"'],
    ['a member nobody writes', '"stylist"', '"hairdresser"'],
    ['a level that is none', '"targetLevel":7', '"targetLevel":70'],
  ])('does not take %s', (_, one, other) => {
    expect(file).toContain(one);
    expect(faults(file.replace(one, other))).not.toBeUndefined();
  });
});
