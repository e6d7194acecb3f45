import { figures } from './figures';

/** Behind a strand that is no card like any other: in what way. */
const stamps = {
  broke: 'Broke',
  discarded: 'Put aside: counts for nothing',
  noOutcome: 'No outcome yet',
} as const;

/** The same in a word, beside its name. */
const briefly = { broke: 'broke', discarded: 'put aside', noOutcome: 'no outcome' } as const;

/** How it left its mix; `why` is the word that was tapped. */
const endedBy = {
  takenOff: (why: string) => why,
  broke: () => 'It broke in the mix',
  discarded: (why: string) => `Put aside: ${why}`,
} as const;

/** Behind a name: what she did. */
const did = {
  started: 'started it',
  takenOff: 'took it off',
  broke: 'saw it break',
  discarded: 'put it aside',
  recorded: (time: string) => `recorded it ${time}`,
  decided: (time: string) => `decided ${time}`,
} as const;

/** The card a tested strand is taped to. */
export const strandCard = {
  open: 'Print a strand card',
  print: 'Print this card',
  whilePrinting: 'One card of A6. While the tablet’s print window is open nothing calls: close it soon.',
  callsAt: (whose: string, time: string) =>
    `Not now: ${whose} calls at ${time}, and while the print window is open nothing does. Print after that.`,
  callsNow: (whose: string, since: string) =>
    `Not now: ${whose} waits since ${since}, and while the print window is open nothing calls. See to it first.`,
  title: (number: string) => `Strand ${number}`,
  kinds: { full: 'full strand', short: 'short strand' },
  stamps,
  briefly,
  from: 'From',
  hairs: (count: string) => `${count} hairs`,
  washedOff: 'build-up washed off',
  mix: 'Mix',
  times: 'In the mix',
  fromTo: (from: string, to: string) => `${from}\u00a0to\u00a0${to}`,
  /** `counts` is null where it counts for nothing. */
  onFor: (on: string, counts: string | null) =>
    counts === null ? `on\u00a0${on}` : `on\u00a0${on}, counts\u00a0as\u00a0${counts}`,
  planned: (planned: string, set: string | null) =>
    set === null ? `planned\u00a0${planned}` : `planned\u00a0${planned}, then\u00a0${set}`,
  why: 'Off because',
  endedBy,
  looks: 'Looks, m:ss',
  feels: { rough: 'rough', stretchy: 'stretchy' },
  lookAt: (at: string, level: string, feel: string | null) =>
    [`${at}\u00a0${level}`, ...(feel === null ? [] : [feel])].join('\u00a0'),
  missedAt: (at: string) => `${at}\u00a0missed`,
  looksLeft: (count: string) => `(${count} not shown)`,
  noLook: 'none made',
  noLevel: 'no level',
  level: 'Level',
  levels: (start: string | null, reached: string | null, wanted: string | null) =>
    [
      start === null ? [] : `from ${start}`,
      reached === null ? [] : `reached ${reached}`,
      wanted === null ? [] : `wanted ${wanted}`,
    ]
      .flat()
      .join(' · '),
  undertone: 'Undertone',
  seenLast: (names: readonly string[]) => `${names.join(' to ')}, as last seen`,
  toExpect: (names: readonly string[]) => names.join(' to '),
  /** Behind what was reckoned and not seen. */
  estimate: 'to expect here: an estimate',
  outcome: 'Outcome',
  notRecorded: (takenBack: string | null) =>
    takenBack === null ? 'not recorded yet' : `not recorded yet; taken back: ${takenBack}`,
  fibre: 'Fibre',
  graded: (grade: string) => `counts as ${grade}`,
  stretch: 'Wet stretch',
  wentPast: `past ${figures.lightPull}`,
  evenness: 'Evenness',
  decision: 'Decided',
  nothingOn: (zone: string) => `nothing on the ${zone}`,
  by: 'By',
  did,
  whoDid: (name: string, acts: readonly string[]) => `${name} ${acts.join(', ')}`,
  none: '–',
  tape: 'Tape the tested hair here',
};
