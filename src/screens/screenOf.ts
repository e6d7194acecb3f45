import type { ConsultationState } from '../../machines/consultation/consultation';
import type { Ending } from '../../shared/records/record';
import type { AskStep, WayStep } from '../../shared/records/steps';

/** The screens of one consultation. */
export type ScreenName =
  | AskStep
  | 'preparing'
  | 'processing'
  | 'outcome'
  | 'decision'
  | 'mix'
  | 'colourOn'
  | 'finish'
  | 'stopped'
  | 'parked'
  | 'reaction'
  | 'ended';

type Value = ConsultationState['value'];
type Open = Extract<Value, { readonly open: unknown }>['open'];
type StrandPlace = Extract<Open['way'], object>['strandTest'];

const byStrandPlace = {
  preparing: 'preparing',
  processing: 'processing',
  takenOff: 'outcome',
} as const satisfies Record<StrandPlace, ScreenName>;

const byWay = {
  unopened: 'client',
  client: 'client',
  hotTools: 'hotTools',
  feelHair: 'feelHair',
  heatSpray: 'heatSpray',
  decision: 'decision',
  mix: 'mix',
  colourOn: 'colourOn',
  finish: 'finish',
  stopped: 'stopped',
} as const satisfies Record<Exclude<Open['way'], object>, ScreenName>;

const isEnding = (value: Value): value is Ending => typeof value === 'string';

const findWayScreen = (way: Open['way']) =>
  typeof way === 'object' ? byStrandPlace[way.strandTest] : byWay[way];

/**
 * Which screen does this state show? A reaction lies over everything, being parked over the way.
 * Exhaustive by the compiler: a state without a screen does not build. Checked in tests/src/screens/screenOf.test.tsx.
 */
export function screenOf({ value }: Pick<ConsultationState, 'value'>): ScreenName {
  if (isEnding(value)) return 'ended';
  if (value.open.care !== 'calm') return 'reaction';
  if (value.open.place === 'parked') return 'parked';
  return findWayScreen(value.open.way);
}

const steps = {
  client: 'client',
  hotTools: 'hotTools',
  feelHair: 'feelHair',
  heatSpray: 'heatSpray',
  preparing: 'strandTest',
  processing: 'strandTest',
  outcome: 'strandTest',
  decision: 'decision',
  mix: 'mix',
  colourOn: 'colourOn',
  finish: 'finish',
  stopped: null,
} as const satisfies Record<ReturnType<typeof findWayScreen>, WayStep | null>;

/** Where on the strand is she, whatever lies over it? null when she is stopped or it is over. */
export const stepOf = ({ value }: Pick<ConsultationState, 'value'>): WayStep | null =>
  isEnding(value) ? null : steps[findWayScreen(value.open.way)];
