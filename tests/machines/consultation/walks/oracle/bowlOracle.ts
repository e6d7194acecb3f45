import type { ConsultationEvent, EventOf } from '../../../../shared/records/event';
import type { Settings } from '../../../../shared/records/settings';
import type { AskStep } from '../../../../shared/records/steps';
import type { Zone } from '../../../../shared/records/zones';

const dayMs = 86_400_000;
/** An outcome stands for four weeks (ASSUMED); an incompatibility test takes half an hour (common practice). */
const outcomeDays = 28;
const incompatibilityMs = 30 * 60_000;

type Mix = Pick<
  EventOf<'STRAND_STARTED'>['payload'],
  'line' | 'developerPercent' | 'ratio' | 'heat' | 'minutes'
>;
interface Strand {
  readonly mix: Mix;
  hasBroken: boolean;
  outcome: 'none' | 'good' | 'bad';
  /** When the outcome was first seen, on a clock that nobody moved. */
  seenAtMs: number | null;
  isVoid: boolean;
  isUsed: boolean;
}

const zonesOf = { fullHead: ['lengths', 'ends'], endsOut: ['lengths'], roots: ['roots'] } as const;
const mixing = ['asPlanned', 'gentler', 'smallerLift', 'depositOnly', 'endsOut'];
const heats = ['none', 'foil', 'dryHeat'];
const absoluteReactions = ['swelling', 'blisters', 'weeping', 'hives', 'tightChest', 'rash', 'blackTattoo'];
const unknownChemistry = ['unknown', 'unknownBoxColour', 'compoundHenna', 'metallicColour'];
const sameText = (one: string, other: string) => one.trim().toLowerCase() === other.trim().toLowerCase();
const asText = (value: unknown): string =>
  JSON.stringify(value, (_name, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort())
      : inner,
  );

/**
 * A small model of what a bowl needs. It hears accepted events, one after the other, and reads their types, payloads,
 * times and settings; never tokens, facts, state or record. `inheritsStop` is what the station was told of an earlier
 * consultation.
 */
export function makeBowlOracle(inheritsStop: boolean, settingsById: readonly Settings[]) {
  const answers: { [S in AskStep]?: Extract<EventOf<'ANSWERED'>['payload'], { step: S }>['answers'] } = {};
  const absolute = new Set<string>();
  const lifted = new Set<string>();
  const strands = new Map<Zone, Strand>();
  const bowls = new Map<Zone, 'weighed' | 'on' | 'gone'>();
  const broken: { zone: Zone; mix: Mix }[] = [];
  let isOpened = false;
  let isAway = false;
  let isReaction = false;
  let decided: string | null = null;
  let skinTest: { putOnAtMs: number; isRead: boolean } | null = null;
  let incompatibility: { history: string; atMs: number; isClear: boolean } | null = null;
  let movedMs = 0;

  const history = () => [...(answers.hotTools?.history ?? [])].sort();
  const listRules = (): readonly string[] => {
    const { client, hotTools, feelHair } = answers;
    const lifts = client?.service === 'lighten' || client?.service === 'liftAndDeposit';
    return [
      ...(client?.reactions?.includes('tingled') ? ['judgement.tingled'] : []),
      ...(client?.scalp === 'tight' ? ['judgement.scalpTight'] : []),
      ...(hotTools !== undefined && hotTools.relaxedWithinTwoWeeks !== 'no'
        ? ['judgement.relaxedRecently']
        : []),
      ...(lifts && history().includes('relaxer') ? ['judgement.relaxerThenLightener'] : []),
      ...(feelHair?.wetStretch === 'snaps' ? ['judgement.snapsWhenWet'] : []),
    ];
  };

  /** A stop leaves nothing standing by. */
  const stop = (answer: string) => {
    absolute.add(answer);
    for (const [zone, bowl] of bowls) if (bowl === 'weighed') bowls.set(zone, 'gone');
  };

  const voidAll = () => {
    for (const strand of strands.values()) strand.isVoid = true;
    decided = null;
  };

  const hearAnswer = ({ payload, settingsId }: EventOf<'ANSWERED'>) => {
    if (asText(answers[payload.step]) !== asText(payload.answers)) voidAll();
    Object.assign(answers, { [payload.step]: payload.answers });
    for (const rule of lifted) if (!listRules().includes(rule)) lifted.delete(rule);
    if (payload.step !== 'client') return;
    const { reactions, scalp, ageBand } = payload.answers;
    const isUnder = ageBand === 'under' && settingsById[settingsId]?.profile.ageLine !== null;
    const isAbsolute = scalp === 'broken' || scalp === 'faceRash' || isUnder;
    if (isAbsolute || reactions?.some((each) => absoluteReactions.includes(each))) {
      stop('client');
    }
  };

  const isSaid = (): boolean => {
    const { client, hotTools, feelHair, heatSpray } = answers;
    const isFelt = [feelHair?.nape, feelHair?.mid, feelHair?.ends].every((touch) => touch === 'dry');
    const said = [client?.service, client?.reach, client?.reactions, client?.scalp, hotTools?.history];
    return isFelt && ![...said, feelHair?.wetStretch, heatSpray?.finish].includes(undefined);
  };

  const listFaultsBefore = (): readonly string[] => {
    const faults: string[] = [];
    if (!isOpened) faults.push('nobody opened');
    if (isAway) faults.push('the client is away');
    if (isReaction) faults.push('a reaction is looked into');
    if (absolute.size > 0) faults.push(`an absolute answer stands: ${[...absolute].join(', ')}`);
    if (!isSaid()) faults.push('a step is unsaid');
    for (const rule of listRules()) if (!lifted.has(rule)) faults.push(`nobody answered for ${rule}`);
    const isDue = history().some((item) => unknownChemistry.includes(item));
    const isClear = incompatibility?.isClear === true && incompatibility.history === asText(history());
    if (isDue && !isClear) faults.push('the incompatibility test is open');
    return faults;
  };

  const listFaultsOfStrand = ({ payload }: EventOf<'STRAND_STARTED'>): readonly string[] => {
    const isSame = ({ zone, mix }: (typeof broken)[number]) =>
      zone === payload.zone &&
      sameText(mix.line, payload.line) &&
      mix.developerPercent === payload.developerPercent &&
      mix.heat === payload.heat &&
      mix.minutes === payload.minutes;
    return [...listFaultsBefore(), ...(broken.some(isSame) ? ['this very mix broke this length'] : [])];
  };

  const isSkinTestRight = (atMs: number, { profile }: Settings): boolean => {
    const service = answers.client?.service;
    if (service !== undefined && !profile.skinTestFor.includes(service)) return true;
    if (skinTest === null || !skinTest.isRead) return false;
    const ageMs = atMs - skinTest.putOnAtMs;
    return ageMs >= profile.skinTestWaitH * 3_600_000 && ageMs <= profile.skinTestLapsesDays * dayMs;
  };

  const listFaultsOfMix = (tested: Mix, mix: Mix): readonly string[] => [
    ...(sameText(tested.line, mix.line) ? [] : ['another line']),
    ...(mix.ratio === tested.ratio ? [] : ['another ratio']),
    ...(mix.developerPercent <= tested.developerPercent ? [] : ['a stronger developer']),
    ...(mix.minutes <= tested.minutes ? [] : ['longer']),
    ...(heats.indexOf(mix.heat) <= heats.indexOf(tested.heat) ? [] : ['hotter']),
  ];

  const listFaultsOfBowl = (event: EventOf<'BOWL_WEIGHED'>, atMs: number): readonly string[] => {
    const { zone, ...mix } = event.payload;
    const settings = settingsById[event.settingsId];
    const strand = strands.get(zone);
    const reach = answers.client?.reach;
    const planned: readonly Zone[] = reach === undefined ? [] : zonesOf[reach];
    const faults = [...listFaultsBefore()];
    if (settings === undefined || !isSkinTestRight(atMs, settings))
      faults.push('no skin test was read in time');
    if (!planned.includes(zone)) faults.push('the zone is not planned');
    if (strand?.outcome !== 'good') faults.push('no sound or rough outcome was recorded');
    if (strand?.isVoid) faults.push('the strand stood for another plan');
    if (strand?.isUsed) faults.push('the strand was used');
    const ageMs = atMs - (strand?.seenAtMs ?? Number.NEGATIVE_INFINITY);
    if (ageMs > outcomeDays * dayMs) faults.push(`the outcome is ${(ageMs / dayMs).toFixed(1)} days old`);
    if (decided === null || !mixing.includes(decided)) faults.push('no decision after it allows mixing');
    if (decided === 'endsOut' && zone === 'ends') faults.push('the ends stay out');
    if (bowls.get(zone) === 'weighed' || bowls.get(zone) === 'on') faults.push('a bowl of this zone stands');
    return strand === undefined ? faults : [...faults, ...listFaultsOfMix(strand.mix, mix)];
  };

  const judge = (event: ConsultationEvent, atMs: number): readonly string[] => {
    if (event.type === 'BOWL_WEIGHED') return listFaultsOfBowl(event, atMs);
    return event.type === 'STRAND_STARTED' ? listFaultsOfStrand(event) : [];
  };

  const take = (event: ConsultationEvent, atMs: number): void => {
    switch (event.type) {
      case 'OPENED':
        isOpened = true;
        if (inheritsStop) absolute.add('inherited');
        return;
      case 'ANSWERED':
        hearAnswer(event);
        return;
      case 'REOPENED':
      case 'PLAN_CHANGED':
        decided = null;
        return;
      case 'SKIN_TEST_NOTED': {
        const { putOnAtMs, seen } = event.payload;
        const wait = settingsById[event.settingsId]?.profile.skinTestWaitH ?? Number.POSITIVE_INFINITY;
        const isRead = seen === 'nothing' && event.atMs - putOnAtMs >= wait * 3_600_000;
        skinTest = { putOnAtMs: putOnAtMs - movedMs, isRead };
        if (seen === 'reaction') stop('skinTest');
        return;
      }
      case 'OVERRIDDEN':
        lifted.add(event.payload.rule);
        return;
      case 'CORRECTED':
        absolute.delete(event.payload.answer);
        if (event.payload.answer === 'skinTest' && skinTest !== null)
          skinTest = { ...skinTest, isRead: false };
        if (event.payload.answer === 'incompatibility') incompatibility = null;
        if (event.payload.answer in answers) delete answers[event.payload.answer as AskStep];
        voidAll();
        return;
      case 'INCOMPATIBILITY_STARTED':
        incompatibility = { history: asText(history()), atMs, isClear: false };
        return;
      case 'INCOMPATIBILITY_READ':
        if (event.payload.seen === 'reacted') stop('incompatibility');
        if (incompatibility !== null) {
          const isInTime = atMs - incompatibility.atMs >= incompatibilityMs;
          incompatibility = { ...incompatibility, isClear: event.payload.seen === 'nothing' && isInTime };
        }
        return;
      case 'STRAND_STARTED':
        decided = null;
        strands.set(event.payload.zone, {
          mix: event.payload,
          hasBroken: false,
          outcome: 'none',
          seenAtMs: null,
          isVoid: false,
          isUsed: false,
        });
        return;
      case 'DECIDED':
        decided = event.payload.decision;
        return;
      case 'PARKED':
      case 'RESUMED':
        isAway = event.type === 'PARKED';
        return;
      case 'REACTION_SUSPECTED':
      case 'NO_REACTION':
        isReaction = event.type === 'REACTION_SUSPECTED';
        return;
      case 'CLOCK_CORRECTED':
        movedMs += event.payload.shiftMs;
        return;
      default:
        takeAtZone(event, atMs);
    }
  };

  const takeAtZone = (event: ConsultationEvent, atMs: number): void => {
    if (!('zone' in event.payload)) return;
    const { zone } = event.payload;
    const strand = strands.get(zone);
    if (event.type === 'BOWL_WEIGHED') bowls.set(zone, 'weighed');
    if (event.type === 'BOWL_APPLIED') bowls.set(zone, 'on');
    if (event.type === 'BOWL_THROWN' || event.type === 'BOWL_RINSED') bowls.set(zone, 'gone');
    if (strand === undefined) return;
    if (event.type === 'BOWL_APPLIED') strand.isUsed = true;
    if (event.type === 'STRAND_BROKE') {
      strand.hasBroken = true;
      broken.push({ zone, mix: strand.mix });
    }
    if (event.type === 'OUTCOME_RECORDED') {
      const { fibre, stretch, wentPast30 } = event.payload;
      const isGood = (fibre === 'sound' || fibre === 'rough') && stretch !== 'snaps' && wentPast30 === 'no';
      strand.outcome = isGood && !strand.hasBroken ? 'good' : 'bad';
      strand.seenAtMs ??= atMs;
      decided = null;
    }
    if (event.type === 'OUTCOME_RETRACTED') {
      strand.outcome = 'none';
      decided = null;
    }
  };

  return {
    /** Hears one accepted event; names what speaks against it. */
    hear: (event: ConsultationEvent): readonly string[] => {
      const atMs = event.atMs - movedMs;
      const faults = judge(event, atMs);
      take(event, atMs);
      return faults;
    },
  };
}
