import { describe, expect, test } from 'vitest';
import { override, say, tap, weighBowl } from './walks/rawTaps';
import {
  answersOf,
  ask,
  confirm,
  decide,
  opened,
  play,
  reopen,
  restart,
  tested,
  tryAfter,
} from './walks/story';
import { apply, lengths, toWeighed, whole } from './walks/wayToBowl';

const notCalm = tap('BOWL_THROWN', { ...lengths, why: 'skinNotCalm' });
const thrown = [...toWeighed, notCalm];
const others = (['hotTools', 'feelHair', 'heatSpray'] as const).map(confirm);
const again = (scalp: string) => [
  ...thrown,
  reopen('client'),
  say('client', { ...answersOf().client, scalp }),
  confirm('client'),
  ...others,
];

describe('a bowl thrown away because her skin was not calm', () => {
  test('says so in the log and in the record, and is taken up', () => {
    expect(play(thrown).record.bowls).toMatchObject([{ state: 'thrown', isSkinNotCalm: true }]);
    expect(restart(thrown)).toBe('taken up');
    const plain = play([...toWeighed, tap('BOWL_THROWN', lengths)]).record;
    expect(plain.bowls).toMatchObject([{ state: 'thrown', isSkinNotCalm: false }]);
    expect(plain.answers.client?.scalp).toBe('sound');
  });

  test('lets no other be weighed until scalp and face are told anew, and leaves the strand as it is', () => {
    const { client } = play(thrown).record.answers;
    expect([client?.scalp, client?.reactions, client?.targetLevel]).toEqual([undefined, undefined, 7]);
    expect(tryAfter(thrown, whole)).toContain('stepUnsaid');
    const sound = [...again('sound'), tap('OUTCOME_KEPT'), decide('asPlanned'), whole, apply];
    expect(play(sound).record.bowls.at(-1)?.state).toBe('on');
    expect(restart(sound)).toBe('taken up');
  });

  test('loses what somebody judged of that skin before', () => {
    const tight = { client: { scalp: 'tight' } };
    const lifted = [...opened, ...ask(tight), override('judgement.scalpTight'), ...tested('lengths')];
    const story = [...lifted, decide('asPlanned'), whole, notCalm];
    expect(play(story).record.overrides).toEqual([]);
    expect(play(story).state.context.facts.overridden).toEqual([]);
  });

  test('puts on nothing else that stands weighed', () => {
    const both = { client: { reach: 'fullHead' } };
    const bowls = [...tested('lengths'), reopen('strandTest'), ...tested('ends')];
    const toBoth = [...opened, ...ask(both), ...bowls, decide('asPlanned'), whole];
    const story = [...toBoth, weighBowl('ends', '9', '25'), notCalm];
    expect(tryAfter(story, tap('BOWL_APPLIED', { zone: 'ends', skinFirst: 'calm' }))).toBe('"notNow"');
    expect(tryAfter(story, tap('BOWL_THROWN', { zone: 'ends' }))).toBe('taken');
  });
});
