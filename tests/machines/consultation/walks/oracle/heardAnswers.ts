import type { EventOf } from '../../../../../shared/records/event';
import type { LastTime } from '../../../../../shared/records/lastTime';
import type { Settings } from '../../../../../shared/records/settings';
import type { AskStep } from '../../../../../shared/records/steps';
import type { Zone } from '../../../../../shared/records/zones';

/** An incompatibility test takes half an hour (common practice). */
const incompatibilityMs = 30 * 60_000;

export type HeardAnswers = {
  [S in AskStep]?: Extract<EventOf<'ANSWERED'>['payload'], { step: S }>['answers'];
};

const zonesOf = { fullHead: ['lengths', 'ends'], endsOut: ['lengths'], roots: ['roots'] } as const;
const absoluteReactions = [
  'swelling',
  'blisters',
  'weeping',
  'hives',
  'tightChest',
  'rash',
  'blackTattoo',
  'tingledStops',
];
const absoluteScalps = ['irritated', 'broken', 'faceRash'];
const unknownChemistry = ['unknown', 'unknownBoxColour', 'henna', 'compoundHenna', 'metallicColour'];
/** What is asked beside the plan: a strand stands whatever is said here. */
const beside = ['greyPercent', 'lengthCm', 'density', 'reactions', 'scalp', 'ageBand'];

export const asText = (value: unknown): string =>
  JSON.stringify(value, (_name, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort())
      : inner,
  );

/** What was said, the judgements somebody answered for, and the test of the cutting. Hears events, as the oracle does. */
export function makeHeardAnswers(settingsById: readonly Settings[]) {
  const answers: HeardAnswers = {};
  const lifted = new Set<string>();
  let incompatibility: { chemistry: string; atMs: number; isClear: boolean } | null = null;

  const listChemistry = () =>
    [...(answers.hotTools?.history ?? [])].filter((item) => unknownChemistry.includes(item)).sort();
  const isLifting = () => ['lighten', 'liftAndDeposit'].includes(answers.client?.service ?? '');

  const listRules = (): readonly string[] => {
    const { client, hotTools, feelHair } = answers;
    return [
      ...(client?.reactions?.includes('tingled') ? ['judgement.tingled'] : []),
      ...(client?.scalp === 'tight' ? ['judgement.scalpTight'] : []),
      ...((hotTools?.relaxedWithinTwoWeeks ?? 'no') === 'no' ? [] : ['judgement.relaxedRecently']),
      ...(isLifting() && hotTools?.history?.includes('relaxer') ? ['judgement.relaxerThenLightener'] : []),
      ...(['relaxer', 'perm'].every((each) => hotTools?.history?.includes(each as 'perm'))
        ? ['judgement.relaxerAndPerm']
        : []),
      ...(feelHair?.wetStretch === 'snaps' ? ['judgement.snapsWhenWet'] : []),
    ];
  };

  const isSaid = (): boolean => {
    const { client, hotTools, feelHair, heatSpray } = answers;
    const isFelt = [feelHair?.nape, feelHair?.mid, feelHair?.ends].every((touch) => touch === 'dry');
    const said = [client?.service, client?.reach, client?.reactions, client?.scalp, hotTools?.history];
    return isFelt && ![...said, feelHair?.wetStretch, heatSpray?.finish].includes(undefined);
  };

  return {
    isLifting,
    /** Are the answers that bear on the plan those of last time, but for the gloss that was put on then? */
    isAsLastTime: ({ answers: then }: LastTime): boolean => {
      const tools = (told: HeardAnswers['hotTools']) => ({
        ...told,
        history: [...(told?.history ?? [])].filter((item) => item !== 'gloss'),
      });
      const wants = (told: HeardAnswers['client']) =>
        Object.entries(told ?? {}).filter(([name]) => !beside.includes(name));
      const felt = (told: HeardAnswers['feelHair']) => ({ ...told, wetStretch: '' });
      return [
        [Object.fromEntries(wants(answers.client)), Object.fromEntries(wants(then.client))],
        [tools(answers.hotTools), tools(then.hotTools)],
        [felt(answers.feelHair), felt(then.feelHair)],
      ].every(([today, before]) => asText(today) === asText(before));
    },
    hasSprungBack: () => answers.feelHair?.wetStretch === 'springsBack',
    service: () => answers.client?.service,
    planned: (): readonly Zone[] => {
      const reach = answers.client?.reach;
      return reach === undefined ? [] : zonesOf[reach];
    },
    /** Everything a strand stands for, as one text. */
    plan: (): string => {
      const { client = {}, hotTools, feelHair } = answers;
      const bearing = Object.entries(client).filter(([name]) => !beside.includes(name));
      return asText([Object.fromEntries(bearing), hotTools, feelHair]);
    },
    /** What is missing or open before anything may be tested. */
    listFaults: (): readonly string[] => {
      const isCleared =
        incompatibility?.isClear === true && incompatibility.chemistry === asText(listChemistry());
      return [
        ...(isSaid() ? [] : ['a step is unsaid']),
        ...listRules().flatMap((rule) => (lifted.has(rule) ? [] : [`nobody answered for ${rule}`])),
        ...(listChemistry().length > 0 && !isCleared ? ['the incompatibility test is open'] : []),
      ];
    },
    /** Takes an answer; says whether it stops for good. */
    answer: ({ payload, settingsId }: EventOf<'ANSWERED'>): boolean => {
      Object.assign(answers, { [payload.step]: payload.answers });
      for (const rule of lifted) if (!listRules().includes(rule)) lifted.delete(rule);
      if (payload.step !== 'client') return false;
      const { reactions, scalp, ageBand } = payload.answers;
      const isUnder = ageBand === 'under' && settingsById[settingsId]?.profile.ageLine !== null;
      const isReacting = reactions?.some((each) => absoluteReactions.includes(each)) === true;
      return isUnder || isReacting || absoluteScalps.includes(scalp ?? '');
    },
    lift: (rule: string): void => {
      lifted.add(rule);
    },
    /** What stopped is asked anew; of the wrong client everything is. */
    takeBack: (answer: string, code: string): void => {
      if (answer === 'incompatibility') incompatibility = null;
      const { client } = answers;
      if (answer !== 'client' || client === undefined || code === 'wrongClient') {
        delete answers[answer as AskStep];
        return;
      }
      const { reactions, scalp, ageBand, ...rest } = client;
      answers.client = {
        ...rest,
        ...(reactions?.some((each) => absoluteReactions.includes(each)) ? {} : { reactions }),
        ...(absoluteScalps.includes(scalp ?? '') ? {} : { scalp }),
        ...(ageBand === 'under' ? {} : { ageBand }),
      } as typeof client;
    },
    /** Another day: reactions, scalp and face, age. */
    forgetToday: (): void => {
      const { reactions: _reactions, scalp: _scalp, ageBand: _ageBand, ...rest } = answers.client ?? {};
      if (answers.client !== undefined) answers.client = rest;
    },
    startIncompatibility: (atMs: number): void => {
      incompatibility = { chemistry: asText(listChemistry()), atMs, isClear: false };
    },
    readIncompatibility: (seen: string, atMs: number): void => {
      if (incompatibility === null) return;
      const isInTime = atMs - incompatibility.atMs >= incompatibilityMs;
      incompatibility = { ...incompatibility, isClear: seen === 'nothing' && isInTime };
    },
  };
}
