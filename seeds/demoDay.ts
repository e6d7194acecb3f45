import type { RawForm } from '../shared/records/readForm';
import type { Settings } from '../shared/records/settings';
import {
  apply,
  type Beat,
  client,
  clientToRead,
  cream,
  type DemoTap,
  decide,
  feel,
  hour,
  layOut,
  layOutUntil,
  look,
  lookAtHead,
  minute,
  opened,
  outcome,
  park,
  powder,
  rinse,
  sendHome,
  strand,
  takeOff,
  talk,
  tools,
  weigh,
} from './demoTaps';
import { salon } from './salon';

/** A skin test that was put on at this time, with nobody at a chair. */
export interface DemoSkinTest {
  readonly atMs: number;
  readonly by: string;
  readonly answers: RawForm;
}

export interface DemoDay {
  readonly settings: Settings;
  /** In the order of the clock. */
  readonly taps: readonly DemoTap[];
  readonly skinTests: readonly DemoSkinTest[];
}

const glossed = { service: 'gloss', targetLevel: '6', naturalLevel: '6', endsLevel: '6' };
const gentle = { ...powder, developerPercent: '3' };

/** Both zones of a full head, in the mix one after the other, looked at and off again, sound. */
const testBoth = (mix: Readonly<Record<string, unknown>>, level: string): readonly Beat[] => [
  strand(2 * minute, 'lengths', 'crown', mix),
  strand(20_000, 'ends', 'whereIroned', mix),
  look(2 * minute, 'lengths', '6'),
  look(20_000, 'ends', '6'),
  look(10 * minute, 'lengths', level),
  look(20_000, 'ends', level),
  takeOff(12 * minute, 'lengths'),
  takeOff(20_000, 'ends'),
  outcome(minute, 'lengths', { level }),
  outcome(30_000, 'ends', { level }),
];

/** Deposit only on hair that tells nothing new: one strand a zone for the product's own time. */
const testGloss = (): readonly Beat[] => [
  strand(minute, 'lengths', 'crown', cream),
  strand(20_000, 'ends', 'whereIroned', cream),
  look(5 * minute, 'lengths', '6'),
  takeOff(15 * minute, 'lengths'),
  takeOff(20_000, 'ends'),
  outcome(minute, 'lengths', { level: '6' }),
  outcome(30_000, 'ends', { level: '6' }),
];

/** At the bar now, one a chair; chair 7 is free for whoever wants to try. */
function tellBar(nowMs: number): readonly DemoTap[] {
  const ago = (min: number) => nowMs - min * minute;
  return [
    // Her strands are in the mix, looked at so far; the next look comes in a minute.
    ...layOutUntil('running', 'Juno', nowMs - 2 * minute, [
      opened('D.K.', 1),
      ...talk(nowMs),
      strand(2 * minute, 'lengths', 'crown'),
      look(2 * minute, 'lengths', '5.5'),
      look(3 * minute, 'lengths', '6'),
      look(3 * minute, 'lengths', '6.5'),
    ]),
    ...layOutUntil('asking', 'Wren', ago(1), [opened('J.P.', 2), ...client(nowMs, glossed)]),
    // Ironed wet for two years: her ends went gummy, her lengths held. To be decided.
    ...layOutUntil('deciding', 'Opal', ago(2), [
      opened('R.M.', 3),
      ...talk(nowMs, {
        client: { targetLevel: '7', naturalLevel: '5', endsLevel: '5', length: 'braLine' },
        tools: {
          habits: [{ tool: 'flatIron', wetness: 'wet', daysAWeek: '3', forMonths: '24', settingC: '400' }],
        },
      }),
      strand(2 * minute, 'ends', 'whereIroned'),
      strand(20_000, 'lengths', 'crown'),
      look(2 * minute, 'ends', '5.5', 'rough'),
      look(3 * minute, 'lengths', '5.5'),
      [4 * minute, { type: 'STRAND_BROKE', answers: { zone: 'ends' } }],
      takeOff(16 * minute, 'lengths'),
      outcome(minute, 'ends', { fibre: 'gummy', stretch: 'snaps', level: '6' }),
      outcome(minute, 'lengths', { level: '7' }),
    ]),
    // She told of hives: stopped, and nothing lifts that but a named correction.
    ...layOutUntil('stopped', 'Wren', ago(6), [opened('B.L.', 4), ...clientToRead({ reactions: ['hives'] })]),
    // Lightener is on her lengths; her ends stand by, tested and untouched.
    ...layOutUntil('onHead', 'Opal', ago(2), [
      opened('T.A.', 5),
      ...talk(nowMs),
      ...testBoth(powder, '7'),
      decide(minute, 'gentler'),
      weigh(2 * minute, 'lengths', { ...gentle, minutes: '15' }, 'powder'),
      apply(2 * minute, 'lengths'),
      lookAtHead(5 * minute, 'lengths'),
    ]),
    ...layOutUntil('damp', 'Juno', ago(6), [
      opened('C.E.', 6),
      ...client(nowMs, glossed),
      ...tools(),
      ...feel({ ends: 'damp' }),
    ]),
    // Decided, and nothing weighed yet.
    ...layOutUntil('mixing', 'Wren', ago(1), [
      opened('E.V.', 8),
      ...talk(nowMs, { client: glossed }),
      ...testGloss(),
      decide(minute, 'asPlanned'),
    ]),
  ];
}

/** Away between two visits: one is back the day after tomorrow, one should be back by now. */
function tellParked(nowMs: number): readonly DemoTap[] {
  return [
    ...layOut('parked', 'Juno', nowMs, 3 * hour, [
      opened('M.S.', 7),
      ...talk(nowMs),
      park(2 * minute, nowMs + 46 * hour),
    ]),
    ...layOut('late', 'Opal', nowMs, 27 * hour, [
      opened('A.H.', 8),
      ...talk(nowMs - 27 * hour, { client: { targetLevel: '7' } }),
      park(2 * minute, nowMs - 0.5 * hour),
    ]),
  ];
}

/** Closed already today: a gloss, a lightening with her ends left out, a no, one called off, and a reaction. */
function tellClosed(nowMs: number): readonly DemoTap[] {
  return [
    ...layOut('glossed', 'Juno', nowMs, 3.2 * hour, [
      opened('N.W.', 1),
      ...talk(nowMs, { client: { ...glossed, reactions: ['tingled'] } }),
      [
        minute,
        {
          type: 'OVERRIDDEN',
          answers: {
            rule: 'judgement.tingled',
            code: 'knowsHerHair',
            words: 'Only ever with lightener on the scalp',
          },
        },
      ],
      ...testGloss(),
      decide(minute, 'asPlanned'),
      weigh(2 * minute, 'lengths', { ...cream, minutes: '15' }, 'Dune 6'),
      apply(2 * minute, 'lengths'),
      [3 * minute, { type: 'REACTION_SUSPECTED' }],
      [50_000, { type: 'NO_REACTION', answers: { why: 'onlyCool' } }],
      lookAtHead(2 * minute, 'lengths'),
      rinse(9 * minute, 'lengths'),
      ...sendHome(minute),
    ]),
    ...layOut('sheSaidNo', 'Wren', nowMs, 2.5 * hour, [
      opened('F.G.', 2),
      ...client(nowMs),
      [minute, { type: 'CLIENT_SAID_NO', answers: { reason: 'changedHerMind' } }],
    ]),
    ...layOut('weSaidNo', 'Opal', nowMs, 2.4 * hour, [
      opened('H.T.', 4),
      ...talk(nowMs, { feel: { breakage: 'much', wetStretch: 'snaps' } }),
      [2 * minute, { type: 'WE_SAID_NO', answers: { reason: 'hairTooWeak' } }],
    ]),
    // Stinging at the first look on the head: rinsed at once, recorded, closed.
    ...layOut('reacted', 'Opal', nowMs, 3.1 * hour, [
      opened('L.C.', 3),
      ...talk(nowMs),
      ...testBoth(powder, '7'),
      decide(minute, 'gentler'),
      weigh(2 * minute, 'lengths', { ...gentle, minutes: '15' }, 'powder'),
      apply(2 * minute, 'lengths'),
      lookAtHead(4 * minute, 'lengths', 'yes'),
      rinse(40_000, 'lengths'),
      [minute, { type: 'REACTION_RECORDED', answers: { signs: ['stinging'] } }],
      [20 * minute, { type: 'CARE_GIVEN', answers: { care: 'rinsed' } }],
    ]),
  ];
}

const skinTest = (ticket: string, line: string) => ({
  ticket,
  line,
  method: 'makersMethod',
  site: 'behindEar',
  seen: 'notReadYet',
});

/**
 * A day of the invented salon as it stands at `nowMs` (ms since 1970-01-01 UTC): every tap that led to it, in the order
 * of the clock, none of them later. Nobody in it is real. Checked in tests/src/station/demoDay.test.ts.
 */
export function tellDemoDay(nowMs: number): DemoDay {
  const taps = [...tellBar(nowMs), ...tellParked(nowMs), ...tellClosed(nowMs)];
  return {
    settings: salon,
    taps: [...taps].sort((one, other) => one.atMs - other.atMs),
    skinTests: [
      { ...skinTest('P.O.', 'Sandbar cream'), beforeH: 20 },
      { ...skinTest('S.Y.', 'Sandbar cream'), beforeH: 51 },
      { ...skinTest('K.N.', 'Sandbar cream'), beforeH: 29 * 24 },
    ]
      .map(({ beforeH, ...answers }) => ({
        atMs: nowMs - beforeH * hour,
        by: 'Juno',
        answers: { ...answers, putOnAtMs: nowMs - beforeH * hour },
      }))
      .sort((one, other) => one.atMs - other.atMs),
  };
}
