import type { ConsultationEvent, EventOf } from '../../../../../shared/records/event';
import type { LastTime } from '../../../../../shared/records/lastTime';
import type { Settings } from '../../../../../shared/records/settings';
import type { Zone } from '../../../../../shared/records/zones';
import { makeHeardAnswers } from './heardAnswers';
import { makeHeardSkinTest } from './heardSkinTest';
import { carriedDays, countMinutes, isSameName, makeHeardStrands, type Strand } from './heardStrands';

const minuteMs = 60_000;
/** Away for longer, what holds for today is asked anew; a bowl is used within an hour (both ASSUMED). */
const sameDayMs = 12 * 60 * minuteMs;
const useWithinMs = 60 * minuteMs;
const mixing = ['asPlanned', 'gentler', 'smallerLift', 'endsOut'];
/** The strongest developer of a service that does not lift, per cent (common practice). */
const notLiftingPercent = 6;

interface Bowl {
  state: 'weighed' | 'on' | 'rinsed' | 'thrown';
  readonly weighedAtMs: number;
  readonly strand: Strand | undefined;
  setMin: number;
}

/**
 * A small model of what strands, bowls and more time need. It hears accepted events, one after the other, and reads
 * their types, payloads, times and settings; never tokens, facts, state or record. `inheritsStop` is what the station
 * was told of an earlier consultation. Its clock is one that nobody moved.
 */
export function makeBowlOracle(inheritsStop: boolean, settingsById: readonly Settings[]) {
  const answers = makeHeardAnswers(settingsById);
  const skinTest = makeHeardSkinTest(settingsById);
  const strands = makeHeardStrands();
  const absolute = new Set<string>();
  const bowls = new Map<Zone, Bowl>();
  let isOpened = false;
  let awaySinceMs: number | null = null;
  let isReaction = false;
  let isFreer = false;
  let decided: string | null = null;
  let movedMs = 0;
  let lastTime: LastTime | null = null;
  let feltAtMs = Number.NEGATIVE_INFINITY;
  /** When she was last asked for what holds for the day; null when it has to be asked anew. */
  let toldAtMs: number | null = null;

  const undecide = () => {
    decided = null;
    isFreer = false;
  };

  /** A stop leaves nothing standing by. */
  const stop = (answer: string) => {
    absolute.add(answer);
    for (const bowl of bowls.values()) if (bowl.state === 'weighed') bowl.state = 'thrown';
  };

  const listFaultsBefore = (): readonly string[] => [
    ...(isOpened ? [] : ['nobody opened']),
    ...(awaySinceMs === null ? [] : ['the client is away']),
    ...(isReaction ? ['a reaction is looked into'] : []),
    ...(absolute.size > 0 ? [`an absolute answer stands: ${[...absolute].join(', ')}`] : []),
    ...answers.listFaults(),
  ];

  const listFaultsOfStrand = ({ payload, settingsId }: EventOf<'STRAND_STARTED'>): readonly string[] => {
    const isLightener = settingsById[settingsId]?.shelf.some(
      ({ kind, name }) => kind === 'lightener' && isSameName(name, payload.line),
    );
    const isForLift = payload.developerPercent > notLiftingPercent || isLightener === true;
    return [
      ...listFaultsBefore(),
      ...(strands.isClosed(payload.zone, payload) ? ['a mix no stronger failed on this length'] : []),
      ...(isForLift && !answers.isLifting() ? ['lightener under the name of another service'] : []),
      ...(payload.minutes > payload.makersLimitMin ? ['longer than the maker allows'] : []),
    ];
  };

  /** What anything on last time's strand needs at that moment. */
  const listFaultsOfCarried = (atMs: number, settingsId: number): readonly string[] => [
    ...(settingsById[settingsId]?.carried === true ? [] : ['the settings ask for a strand each time']),
    ...(answers.isLifting() ? ['a lift on the strand of last time'] : []),
    ...(atMs - feltAtMs > sameDayMs ? ['nobody felt it today'] : []),
  ];

  const listFaultsOfCarrying = (atMs: number, settingsId: number): readonly string[] => {
    if (lastTime === null) return ['nobody said same client'];
    const ageMs = Math.max(...lastTime.zones.map(({ strandAtMs }) => atMs - strandAtMs));
    const zonesThen: readonly Zone[] = lastTime.zones.map(({ bowl }) => bowl.zone);
    return [
      ...listFaultsBefore(),
      ...listFaultsOfCarried(atMs, settingsId),
      ...(ageMs > carriedDays * 24 * 60 * minuteMs ? ['the strand is too old'] : []),
      ...(answers.isAsLastTime(lastTime) ? [] : ['something is new']),
      ...(answers.hasSprungBack() ? [] : ['it does not spring back']),
      ...(strands.all.some(({ isAside }) => !isAside) ? ['there is a strand of today'] : []),
      ...(answers.planned().every((zone) => zonesThen.includes(zone)) ? [] : ['a zone was not done']),
    ];
  };

  /** What a bowl needs at the scale, and again before it goes on the head. */
  const listFaultsOfZone = (zone: Zone, atMs: number, settingsId: number): readonly string[] => {
    const service = answers.service();
    return [
      ...listFaultsBefore(),
      ...skinTest.listFaults(service, atMs, settingsId),
      ...(answers.planned().includes(zone) ? [] : ['the zone is not planned']),
      ...strands.listFaults(zone, answers.plan(), atMs),
      ...(strands.newest(zone)?.most == null ? [] : listFaultsOfCarried(atMs, settingsId)),
      ...(decided === null || !mixing.includes(decided) ? ['no decision after it allows mixing'] : []),
      ...(decided === 'endsOut' && zone === 'ends' ? ['the ends stay out'] : []),
    ];
  };

  const listFaultsOfBowl = (event: EventOf<'BOWL_WEIGHED'>, atMs: number): readonly string[] => {
    const { zone, ...mix } = event.payload;
    const standing = bowls.get(zone)?.state;
    return [
      ...listFaultsOfZone(zone, atMs, event.settingsId),
      ...strands.listFaultsOfMix(zone, mix, decided ?? '', isFreer),
      ...(standing === 'weighed' || standing === 'on' ? ['a bowl of this zone stands'] : []),
    ];
  };

  const listFaultsOfTime = ({ payload }: EventOf<'CLOCK_EXTENDED'>): readonly string[] => {
    const [kind, zone] = payload.clock.split('-') as [string, Zone];
    if (isReaction) return ['a reaction is looked into'];
    if (kind === 'strand') {
      const strand = strands.newest(zone);
      if (strand === undefined || strand.endedAtMs !== null) return ['no such strand runs'];
      return [
        ...(strand.hasWeakened ? ['it was stretchy'] : []),
        ...(strand.setMin + payload.minutes > strand.makersLimitMin ? ['more than the maker allows'] : []),
      ];
    }
    const bowl = bowls.get(zone);
    if (kind !== 'head' || bowl?.state !== 'on' || bowl.strand === undefined) return ['no such bowl is on'];
    const isTooLong = bowl.setMin + payload.minutes > countMinutes(bowl.strand);
    return [
      ...(absolute.size > 0 ? ['an absolute answer stands'] : []),
      ...(decided === null ? ['the decision fell'] : []),
      ...(isTooLong ? [`longer than the ${countMinutes(bowl.strand)} min that were proven`] : []),
    ];
  };

  const judge = (event: ConsultationEvent, atMs: number): readonly string[] => {
    switch (event.type) {
      case 'STRAND_STARTED':
        return listFaultsOfStrand(event);
      case 'OUTCOME_CARRIED':
        return listFaultsOfCarrying(atMs, event.settingsId);
      case 'OUTCOME_RETRACTED':
        return strands.newest(event.payload.zone)?.most == null ? [] : ['nobody felt that outcome today'];
      case 'BOWL_WEIGHED':
        return listFaultsOfBowl(event, atMs);
      case 'BOWL_APPLIED': {
        const bowl = bowls.get(event.payload.zone);
        const ageMs = atMs - (bowl?.weighedAtMs ?? Number.NEGATIVE_INFINITY);
        return [
          ...listFaultsOfZone(event.payload.zone, atMs, event.settingsId),
          ...(bowl?.state === 'weighed' ? [] : ['nothing was weighed']),
          ...(ageMs > useWithinMs ? [`the bowl was weighed ${Math.round(ageMs / minuteMs)} min ago`] : []),
        ];
      }
      case 'CLOCK_EXTENDED':
        return listFaultsOfTime(event);
      case 'SKIN_TEST_NOTED':
        return skinTest.listFaultsOfNote(event);
      case 'STRAND_TAKEN_OFF': {
        const strand = strands.newest(event.payload.zone);
        const isEarly = strand !== undefined && atMs - strand.startedAtMs < strand.setMin * minuteMs;
        return event.payload.why === 'timeIsUp' && isEarly ? ['its time was not up'] : [];
      }
      case 'STRAND_DISCARDED': {
        const strand = strands.newest(event.payload.zone);
        const isWeak = strand?.hasBroken || strand?.hasWeakened || strand?.wasRecordedWeak;
        return isWeak ? ['something was seen of it that an outcome has to say'] : [];
      }
      case 'FINISHED': {
        const states = [...bowls.values()].map(({ state }) => state);
        const isUsed = states.includes('rinsed');
        return isUsed && !states.includes('weighed') && !states.includes('on')
          ? []
          : ['a bowl stands, or none was'];
      }
      default:
        return [];
    }
  };

  const take = (event: ConsultationEvent, atMs: number): void => {
    switch (event.type) {
      case 'OPENED':
        isOpened = true;
        lastTime = event.payload.lastTime ?? null;
        if (inheritsStop) absolute.add('inherited');
        return;
      case 'ANSWERED': {
        const before = answers.plan();
        if (event.payload.step === 'feelHair') feltAtMs = atMs;
        if (event.payload.step === 'client') toldAtMs = atMs;
        if (answers.answer(event)) stop(event.payload.step);
        if (answers.plan() !== before) undecide();
        return;
      }
      case 'REOPENED':
      case 'PLAN_CHANGED':
        undecide();
        return;
      case 'SKIN_TEST_NOTED':
        skinTest.note(event, movedMs);
        if (event.payload.seen === 'reaction') stop('skinTest');
        return;
      case 'OVERRIDDEN':
        if (event.payload.rule === 'judgement.freerThanSuggested') isFreer = true;
        else answers.lift(event.payload.rule);
        return;
      case 'CORRECTED': {
        const { answer, code } = event.payload;
        if (answer === 'skinTest' && !skinTest.takeBack()) return;
        absolute.delete(answer);
        answers.takeBack(answer, code);
        for (const strand of strands.all) strand.isVoid = true;
        undecide();
        return;
      }
      case 'INCOMPATIBILITY_STARTED':
        answers.startIncompatibility(atMs);
        return;
      case 'INCOMPATIBILITY_READ':
        if (event.payload.seen === 'reacted') stop('incompatibility');
        answers.readIncompatibility(event.payload.seen, atMs);
        return;
      case 'OUTCOME_CARRIED':
        for (const last of lastTime?.zones ?? []) {
          if (answers.planned().includes(last.bowl.zone)) strands.carry(last, answers.plan());
        }
        undecide();
        return;
      case 'DECIDED':
        decided = event.payload.decision;
        return;
      case 'PARKED':
        awaySinceMs = atMs;
        return;
      case 'RESUMED':
        if (atMs - (awaySinceMs ?? atMs) > sameDayMs && !absolute.has('client')) answers.forgetToday();
        awaySinceMs = null;
        return;
      case 'REACTION_SUSPECTED':
      case 'REACTION_RECORDED':
        isReaction = true;
        return;
      case 'NO_REACTION':
        isReaction = false;
        return;
      case 'CLOCK_CORRECTED':
        movedMs += event.payload.shiftMs;
        skinTest.doubt(event.atMs);
        return;
      case 'CLOCK_EXTENDED': {
        const [kind, zone] = event.payload.clock.split('-') as [string, Zone];
        const of = kind === 'strand' ? strands.newest(zone) : bowls.get(zone);
        if (of !== undefined) of.setMin += event.payload.minutes;
        return;
      }
      default:
        takeAtZone(event, atMs);
    }
  };

  const takeAtZone = (event: ConsultationEvent, atMs: number): void => {
    if (!('zone' in event.payload)) return;
    const { zone } = event.payload;
    const bowl = bowls.get(zone);
    const strand = strands.newest(zone);
    switch (event.type) {
      case 'STRAND_STARTED':
        strands.start(event.payload, answers.plan(), atMs);
        undecide();
        return;
      case 'LOOKED':
        if (event.payload.of === 'head' && event.payload.stinging === 'yes') isReaction = true;
        if (event.payload.of === 'strand' && event.payload.feel === 'stretchy' && strand !== undefined) {
          strand.hasWeakened = true;
        }
        return;
      case 'BOWL_WEIGHED':
        bowls.set(zone, { state: 'weighed', weighedAtMs: atMs, strand, setMin: event.payload.minutes });
        return;
      case 'BOWL_APPLIED':
        if (bowl !== undefined) bowl.state = 'on';
        if (bowl?.strand !== undefined) bowl.strand.isUsed = true;
        return;
      case 'BOWL_THROWN':
        if (bowl !== undefined) bowl.state = 'thrown';
        return;
      case 'BOWL_RINSED':
        if (bowl !== undefined) bowl.state = 'rinsed';
        return;
      default:
        if (strand !== undefined) takeAtStrand(strand, event, atMs);
    }
  };

  const takeAtStrand = (strand: Strand, event: ConsultationEvent, atMs: number): void => {
    switch (event.type) {
      case 'STRAND_TAKEN_OFF':
        strand.endedAtMs = atMs;
        if (event.payload.why === 'looksWeak') strand.hasWeakened = true;
        return;
      case 'STRAND_BROKE':
        strand.endedAtMs = atMs;
        strand.hasBroken = true;
        return;
      case 'STRAND_DISCARDED':
        strand.endedAtMs ??= atMs;
        strand.isAside = true;
        strand.grade = null;
        return;
      case 'OUTCOME_RECORDED': {
        const { fibre, stretch, wentPast30 } = event.payload;
        const isGood = (fibre === 'sound' || fibre === 'rough') && stretch !== 'snaps' && wentPast30 === 'no';
        const isRough = fibre === 'rough' || stretch === 'staysLong' || strand.hasWeakened;
        strand.grade = !isGood || strand.hasBroken ? 'bad' : isRough ? 'rough' : 'sound';
        undecide();
        return;
      }
      case 'OUTCOME_RETRACTED':
        if (strand.grade !== 'sound') strand.wasRecordedWeak = true;
        strand.grade = null;
        undecide();
        return;
      default:
    }
  };

  return {
    /** Hears one accepted event; names what speaks against it. */
    hear: (event: ConsultationEvent): readonly string[] => {
      const atMs = event.atMs - movedMs;
      const isLongAgo = toldAtMs !== null && atMs - toldAtMs > sameDayMs;
      if (isLongAgo && awaySinceMs === null && !absolute.has('client')) {
        answers.forgetToday();
        toldAtMs = null;
        undecide();
      }
      const faults = judge(event, atMs);
      take(event, atMs);
      return faults;
    },
  };
}
