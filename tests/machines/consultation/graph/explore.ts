import { createActor, type StateNode } from 'xstate';
import { type AdjacencyMap, getAdjacencyMap } from 'xstate/graph';
import type { ConsultationState } from '../../../../machines/consultation/consultation';
import { consultationMachine } from '../../../../machines/consultation/consultationMachine';
import type { ConsultationEvent } from '../../../../shared/records/event';
import type { Alphabet } from './alphabets';

/** A list that guards read as a set is written as one, so that the order of two events makes no second state. */
const asSet = (_name: string, value: unknown): unknown =>
  Array.isArray(value) && value.every((member) => typeof member === 'string') ? [...value].sort() : value;

/** Two states are one when they stand at the same place with the same facts. */
export const nameState = (state: ConsultationState): string =>
  JSON.stringify([state.value, state.context.facts], asSet);

export interface Edge {
  readonly from: Place;
  readonly event: ConsultationEvent;
  readonly to: Place;
  /** The state as this very edge made it; `to.state` may have been made by another. */
  readonly made: ConsultationState;
}

/** A state of the graph, the edges out of it, and the first edge that was found into it. */
export interface Place {
  readonly name: string;
  readonly state: ConsultationState;
  readonly edges: Edge[];
  cameBy: Edge | null;
  /** Events from the start. */
  distance: number;
}

export interface Graph {
  readonly name: string;
  readonly start: Place;
  /** In the order of their distance from the start. */
  readonly places: readonly Place[];
  readonly edges: readonly Edge[];
}

/** Every state this alphabet leads to, and every event that is accepted there. */
export function explore({ name, events }: Alphabet, machine = consultationMachine): Graph {
  const map: AdjacencyMap<ConsultationState, ConsultationEvent> = getAdjacencyMap(machine, {
    events,
    serializeState: nameState,
    filterEvents: (state, event) => state.can(event),
    limit: 1_000_000,
  });
  const places = new Map<string, Place>();
  for (const [key, { state }] of Object.entries(map)) {
    places.set(key, { name: key, state, edges: [], cameBy: null, distance: 0 });
  }
  const [start] = places.values();
  if (start === undefined) throw new Error('the graph is empty');
  for (const from of places.values()) {
    for (const { event, state: made } of Object.values(
      map[from.name as keyof typeof map]?.transitions ?? {},
    )) {
      const to = places.get(nameState(made));
      if (to === undefined) throw new Error('an edge leads out of the graph');
      const edge = { from, event, to, made };
      from.edges.push(edge);
      if (to === start || to.cameBy !== null) continue;
      to.cameBy = edge;
      to.distance = from.distance + 1;
    }
  }
  const inOrder = [...places.values()];
  return { name, start, places: inOrder, edges: inOrder.flatMap(({ edges }) => edges) };
}

/** The events on the shortest way to this place. */
export function findWayTo(place: Place): readonly ConsultationEvent[] {
  const way: ConsultationEvent[] = [];
  for (let edge = place.cameBy; edge !== null; edge = edge.from.cameBy) way.unshift(edge.event);
  return way;
}

/** The places from which no way by these edges leads to where `isThere` holds. */
export function listWithoutWay(
  { places, edges }: Graph,
  isThere: (place: Place) => boolean,
  isUsable: (edge: Edge) => boolean = () => true,
): readonly Place[] {
  const into = new Map<Place, Place[]>();
  for (const edge of edges) if (isUsable(edge)) into.set(edge.to, [...(into.get(edge.to) ?? []), edge.from]);
  const reached = new Set(places.filter(isThere));
  for (const place of reached) for (const from of into.get(place) ?? []) reached.add(from);
  return places.filter((place) => !reached.has(place));
}

type Node = StateNode<never, never>;
/** One transition of the definition: a guarded alternative is one of its own. */
export type Transition = Node['transitions'] extends Map<string, (infer T)[]> ? T : never;

export const listNodes = (node: Node = consultationMachine.root as unknown as Node): readonly Node[] => [
  node,
  ...Object.values(node.states).flatMap((child) => listNodes(child as unknown as Node)),
];

export const listTransitions = (): readonly Transition[] =>
  listNodes().flatMap((node) => [...node.transitions.values()].flat());

/** An edge that neither moves nor notes says no: it keeps an event from reaching the states around it. */
export const saysNo = ({ target, actions }: Transition): boolean =>
  (target === undefined || target.length === 0) && actions.length === 0;

export const nameTransition = ({ source, eventType, target }: Transition): string =>
  `${source.id} ${eventType} → ${target?.map(({ id }) => id).join(', ') ?? 'stays'}`;

/** Which transitions does a running actor take for this event, and where does it end? */
export function runEdge(
  from: ConsultationState,
  event: ConsultationEvent,
): { readonly taken: readonly Transition[]; readonly ended: ConsultationState } {
  const taken: Transition[] = [];
  const actor = createActor(consultationMachine, {
    snapshot: from,
    inspect: (inspected) => {
      if (inspected.type === '@xstate.microstep') {
        taken.push(...(inspected._transitions as unknown as readonly Transition[]));
      }
    },
  });
  actor.start();
  actor.send(event);
  const ended = actor.getSnapshot();
  actor.stop();
  return { taken, ended };
}
