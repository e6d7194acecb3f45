import type { ConsultationEvent } from '../../../shared/records/event';
import type { AskStep } from '../../../shared/records/steps';
import { askSteps } from '../../../shared/records/steps';
import {
  answer,
  apply,
  confirm,
  decide,
  feel,
  open,
  plain,
  record,
  rinse,
  startStrand,
  takeOff,
  weigh,
  weighToner,
} from './tokenEvents';

type Way = readonly ConsultationEvent[];

/** Each step answered and confirmed; `instead` puts another answer in the place of a clean one. */
export const ask = (instead: { readonly [S in AskStep]?: ConsultationEvent } = {}): Way =>
  askSteps.flatMap((step) => [instead[step] ?? answer(step), confirm(step)]);

/** The straight way, by the state each ends in. Lengths and ends are planned; the lengths go all the way. */
export const toClient: Way = [open()];
export const toStrandTest: Way = [...toClient, ...ask()];
/** A cutting stands in its glass. */
export const toGlass: Way = [
  ...toClient,
  ...ask({
    hotTools: answer('hotTools', { incompatibility: 'due' }),
    feelHair: answer('feelHair', { incompatibility: 'asBefore' }),
    heatSpray: answer('heatSpray', { incompatibility: 'asBefore' }),
  }),
  plain('INCOMPATIBILITY_STARTED'),
];
export const toProcessing: Way = [...toStrandTest, startStrand('lengths')];
export const toBothProcessing: Way = [...toProcessing, startStrand('ends')];
export const toTakenOff: Way = [...toProcessing, takeOff('lengths')];
export const toBothTakenOff: Way = [...toBothProcessing, takeOff('lengths'), takeOff('ends')];
export const toDecision: Way = [...toTakenOff, record('lengths')];
export const toBothDecision: Way = [...toBothTakenOff, record('lengths'), record('ends')];
export const toMix: Way = [...toDecision, decide()];
export const toWeighed: Way = [...toMix, weigh('lengths')];
export const toColourOn: Way = [...toWeighed, apply('lengths')];
/** The lengths rinsed, and what was felt of them then. */
export const toRinsed: Way = [...toColourOn, rinse('lengths')];
export const toFelt: Way = [...toRinsed, feel('lengths')];
export const toToner: Way = [...toFelt, weighToner('lengths')];
export const toBothOn: Way = [
  ...toBothDecision,
  decide(),
  weigh('lengths'),
  weigh('ends'),
  apply('lengths'),
  apply('ends'),
];
export const suspect = plain('REACTION_SUSPECTED');
export const park = plain('PARKED');
