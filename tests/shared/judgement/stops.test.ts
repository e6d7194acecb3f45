import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { type RuleId, ruleIds, rules } from '../../../shared/judgement/rules';
import {
  isIncompatibilityDue,
  isLifting,
  judgeStep,
  listStops,
  listUnsaid,
} from '../../../shared/judgement/stops';
import { type Answers, askForms } from '../../../shared/records/forms/asked';
import { clientForm } from '../../../shared/records/forms/client';
import type { Settings } from '../../../shared/records/settings';
import { askSteps } from '../../../shared/records/steps';
import { tell, until } from '../records/telling';

/** All four steps as the story answers them: nothing is raised. */
const sound = tell(until('STRAND_STARTED')).record.answers;
type Changes = { readonly [S in keyof Answers]?: Readonly<Record<string, unknown>> };
const changed = (changes: Changes): Answers =>
  Object.fromEntries(askSteps.map((step) => [step, { ...sound[step], ...changes[step] }])) as Answers;
const withAgeLine = (ageLine: number | null): Settings => ({
  ...salon,
  profile: { ...salon.profile, ageLine },
});
const stops = (changes: Changes, settings = salon) => listStops(changed(changes), settings);

const relaxedHair = { hotTools: { history: ['relaxer'] } };

/** For each rule that answers raise: answers that raise it, and the nearest ones that do not. */
const edges: readonly (readonly [RuleId, readonly Changes[], readonly Changes[]])[] = [
  [
    'stop.reactionEver',
    ['swelling', 'blisters', 'weeping', 'rash'].map((sign) => ({ client: { reactions: [sign] } })),
    [{ client: { reactions: ['none'] } }, { client: { reactions: ['tingled'] } }],
  ],
  [
    'stop.anyReaction',
    [{ client: { reactions: ['tingledStops'] } }],
    [{ client: { reactions: ['tingled'] } }, { client: { reactions: ['none'] } }],
  ],
  [
    'stop.persulfateReaction',
    [{ client: { reactions: ['hives'] } }, { client: { reactions: ['tightChest'] } }],
    [{ client: { reactions: ['rash'] } }],
  ],
  ['stop.blackTattoo', [{ client: { reactions: ['blackTattoo'] } }], [{ client: { reactions: ['rash'] } }]],
  [
    'stop.scalpBroken',
    [{ client: { scalp: 'broken' } }, { client: { scalp: 'irritated' } }],
    [{ client: { scalp: 'tight' } }, {}],
  ],
  ['stop.faceRash', [{ client: { scalp: 'faceRash' } }], [{ client: { scalp: 'broken' } }]],
  ['stop.underAge', [{ client: { ageBand: 'under' } }], [{ client: { ageBand: 'over' } }]],
  ['judgement.tingled', [{ client: { reactions: ['tingled'] } }], [{ client: { reactions: ['none'] } }]],
  ['judgement.scalpTight', [{ client: { scalp: 'tight' } }], [{ client: { scalp: 'sound' } }]],
  [
    'judgement.relaxedRecently',
    [{ hotTools: { relaxedWithinTwoWeeks: 'yes' } }, { hotTools: { relaxedWithinTwoWeeks: 'unknown' } }],
    [{ hotTools: { relaxedWithinTwoWeeks: 'no' } }, relaxedHair],
  ],
  [
    'judgement.relaxerThenLightener',
    ['lighten', 'liftAndDeposit'].map((service) => ({ ...relaxedHair, client: { service } })),
    [
      ...['depositOnly', 'gloss', 'tone'].map((service) => ({ ...relaxedHair, client: { service } })),
      { hotTools: { history: ['perm'] } },
    ],
  ],
  [
    'judgement.relaxerAndPerm',
    [{ hotTools: { history: ['perm', 'relaxer'] } }],
    [relaxedHair, { hotTools: { history: ['perm'] } }, { hotTools: { history: ['perm', 'keratin'] } }],
  ],
  [
    'judgement.snapsWhenWet',
    [{ feelHair: { wetStretch: 'snaps' } }],
    ['staysLong', 'springsBack', 'unknown'].map((wetStretch) => ({ feelHair: { wetStretch } })),
  ],
];

describe('the rules that answers raise', () => {
  it('are all tried here', () => {
    const tried = edges.map(([rule]) => rule);
    expect(tried).toEqual(ruleIds.filter((rule) => rules[rule].step !== null));
  });

  it.each(edges)('%s fires, and does not beside its edge', (rule, firing, beside) => {
    for (const changes of firing) expect(stops(changes), JSON.stringify(changes)).toContain(rule);
    for (const changes of beside) expect(stops(changes), JSON.stringify(changes)).not.toContain(rule);
  });

  it('are none for the story, and each once for all at once, in a settled order', () => {
    expect(stops({})).toEqual([]);
    const all = clientForm.reactions.options.filter((option) => option !== 'none');
    const raised = stops({ client: { reactions: all, scalp: 'broken' }, feelHair: { wetStretch: 'snaps' } });
    expect(raised).toEqual([...new Set(raised)].sort());
    expect(raised).toHaveLength(7);
  });

  it('match the answers a form calls absolute: those and no others stop for good', () => {
    for (const [name, question] of Object.entries(clientForm)) {
      if (!('options' in question)) continue;
      const absolute: readonly string[] = 'absolute' in question ? question.absolute : [];
      for (const option of question.options) {
        const answer = question.kind === 'choices' ? [option] : option;
        const said = judgeStep('client', changed({ client: { [name]: answer } }), salon);
        expect(said === 'absolute', `${name} ${option}`).toBe(absolute.includes(option));
      }
    }
  });

  it('draw no age line where the local profile draws none', () => {
    expect(stops({ client: { ageBand: 'under' } }, withAgeLine(null))).toEqual([]);
    expect(stops({ client: { ageBand: 'under' } }, withAgeLine(16))).toEqual(['stop.underAge']);
  });
});

describe('a relaxer and a lightening service', () => {
  const { client, hotTools } = changed(relaxedHair);
  it('raise the rule in whichever order they are answered, and only together', () => {
    expect(listStops({ hotTools } as Answers, salon)).toEqual([]);
    expect(listStops({ client } as Answers, salon)).toEqual([]);
    expect(listStops({ hotTools, client } as Answers, salon)).toEqual(['judgement.relaxerThenLightener']);
    expect(listStops({ client, hotTools } as Answers, salon)).toEqual(['judgement.relaxerThenLightener']);
  });

  it('raise it when a gloss becomes a lightening afterwards', () => {
    const gloss = changed({ ...relaxedHair, client: { service: 'gloss' } });
    expect(listStops(gloss, salon)).toEqual([]);
    expect(listStops({ ...gloss, client } as Answers, salon)).toEqual(['judgement.relaxerThenLightener']);
  });

  it('are a matter for the step that was asked about chemistry', () =>
    expect(
      judgeStep(
        'hotTools',
        changed({ hotTools: { history: ['relaxer'], relaxedWithinTwoWeeks: 'no' } }),
        salon,
      ),
    ).toBe('judgement'));
});

describe('a step', () => {
  it('is unsaid until each of its questions has an answer, and then clean', () => {
    for (const step of askSteps) {
      expect(judgeStep(step, {}, salon)).toBe('unsaid');
      expect(judgeStep(step, sound, salon), step).toBe('clean');
      for (const name of Object.keys(sound[step] ?? {})) {
        const { [name as never]: _left, ...rest } = sound[step] as object;
        expect(judgeStep(step, { ...sound, [step]: rest }, salon), `${step}.${name}`).toBe('unsaid');
      }
    }
    expect(listUnsaid({}, salon)).toEqual(askSteps);
    expect(listUnsaid(sound, salon)).toEqual([]);
  });

  it('stays unsaid while hair is damp anywhere: dry it and feel it again', () => {
    for (const place of ['nape', 'mid', 'ends']) {
      expect(judgeStep('feelHair', changed({ feelHair: { [place]: 'damp' } }), salon)).toBe('unsaid');
    }
  });

  it('takes “don’t know” for an answer everywhere the form offers it', () => {
    for (const step of askSteps) {
      for (const [name, question] of Object.entries(askForms[step])) {
        const isOffered =
          ('unknown' in question && question.unknown) ||
          ('options' in question && (question.options as readonly string[]).includes('unknown'));
        if (!isOffered) continue;
        const answer = question.kind === 'choices' ? ['unknown'] : 'unknown';
        // What follows from a history that nobody knows is not known either.
        const ofBleach = { bleaches: 'unknown', lastBleachMonthsAgo: 'unknown', bleachReach: 'unknown' };
        const follows = name === 'history' ? { ...ofBleach, relaxedWithinTwoWeeks: 'unknown' } : {};
        const said = changed({ [step]: { [name]: answer, ...follows } });
        expect(judgeStep(step, said, salon), name).not.toBe('unsaid');
      }
    }
  });

  it('stops at once, before the rest of it is said', () =>
    expect(judgeStep('client', { client: { scalp: 'broken' } }, salon)).toBe('absolute'));

  it('has the age band to say only where there is an age line', () => {
    const { ageBand: _left, ...rest } = sound.client ?? {};
    expect(judgeStep('client', { client: rest }, withAgeLine(16))).toBe('unsaid');
    expect(judgeStep('client', { client: rest }, withAgeLine(null))).toBe('clean');
  });
});

describe('an incompatibility test', () => {
  it('is due for metal, henna, and colour nobody knows (training texts), and for nothing else', () => {
    const due = ['unknown', 'unknownBoxColour', 'henna', 'compoundHenna', 'metallicColour'];
    for (const item of askForms.hotTools.history.options) {
      const isDue = isIncompatibilityDue(changed({ hotTools: { history: [item] } }));
      expect(isDue, item).toBe(due.includes(item));
    }
    expect(isIncompatibilityDue(changed({ hotTools: { history: ['gloss', 'metallicColour'] } }))).toBe(true);
    expect(isIncompatibilityDue({})).toBe(false);
  });
});

it('lightening and lift go lighter; deposit, gloss and tone do not', () =>
  expect(clientForm.service.options.map(isLifting)).toEqual([true, true, false, false, false]));
