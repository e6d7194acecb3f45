import { isDeepStrictEqual } from 'node:util';
import { beforeAll, expect, test } from 'vitest';
import { consultationMachine } from '../../../machines/consultation/consultationMachine';
import { nameWay, withFault } from './chartUnderTest';
import { alphabets } from './graph/alphabets';
import { findBreaches } from './graph/breaches';
import {
  type Edge,
  explore,
  findWayTo,
  type Graph,
  listNodes,
  listTransitions,
  listWithoutWay,
  nameState,
  nameTransition,
  type Place,
  runEdge,
  saysNo,
  type Transition,
} from './graph/explore';
import { keepLongest, reloadAfterEach, restartWithAll } from './graph/reload';
import { answer, noteSkinTest, plain, readIncompatibility } from './tokenEvents';

const graphs: Graph[] = [];
/** Each transition that was taken, by the edge that is nearest to the start. */
const taken = new Map<Transition, Edge>();
let disagreements = 0;

beforeAll(() => {
  for (const alphabet of alphabets) {
    const began = performance.now();
    const graph = explore(alphabet);
    const explored = performance.now();
    graphs.push(graph);
    for (const edge of graph.edges) {
      const run = runEdge(edge.from.state, edge.event);
      for (const transition of run.taken) {
        const nearest = taken.get(transition);
        if (nearest === undefined || edge.from.distance < nearest.from.distance) taken.set(transition, edge);
      }
      if (nameState(run.ended) !== nameState(edge.made)) disagreements += 1;
    }
    const seconds = ((explored - began) / 1000).toFixed(1);
    const runSeconds = ((performance.now() - explored) / 1000).toFixed(1);
    console.log(
      `${graph.name}: ${graph.places.length} states, ${graph.edges.length} edges in ${seconds} s, run in ${runSeconds} s`,
    );
  }
}, 300_000);

test('an actor that runs and the pure transition agree on every edge', () => {
  expect(disagreements).toBe(0);
});

test('every state of the definition is reached', () => {
  const reached = new Set<string>();
  for (const { places } of graphs) {
    for (const { state } of places) for (const { id } of state._nodes) reached.add(id);
  }
  const missed = listNodes().filter(({ id }) => !reached.has(id));
  console.log(`${reached.size} states of the definition reached`);
  expect(missed.map(({ id }) => id)).toEqual([]);
});

test('every edge of the definition is taken, each guarded alternative for itself', () => {
  const edges = listTransitions().filter((edge) => !saysNo(edge));
  console.log(`${edges.length} edges of the definition, ${taken.size} taken`);
  expect(edges.filter((edge) => !taken.has(edge)).map(nameTransition)).toEqual([]);
  expect([...taken.keys()].filter(saysNo)).toEqual([]);
});

test('an edge that says no gives the very same state back', () => {
  const noes = listTransitions().filter(saysNo);
  expect(noes.map(nameTransition)).toEqual([
    'consultation.open.way.unopened ANSWERED → stays',
    'consultation.open.way.unopened SKIN_TEST_NOTED → stays',
    'finish FINISHED → stays',
  ]);
  const heard = new Set<Transition>();
  const tried = [answer('client', { said: 'absolute' }), noteSkinTest(true), plain('FINISHED')];
  for (const { places } of graphs) {
    for (const { state } of places) {
      for (const event of tried) {
        const no = noes.find((each) => {
          const type: string = each.eventType;
          return type === event.type && state._nodes.some(({ id }) => id === each.source.id);
        });
        if (no === undefined) continue;
        expect(state.can(event)).toBe(false);
        if (!heard.has(no)) for (const edge of runEdge(state, event).taken) heard.add(edge);
      }
    }
  }
  expect(noes.filter((no) => !heard.has(no)).map(nameTransition)).toEqual([]);
});

test('no path leads to a bowl without an outcome that stands and a decision after it, nor past an absolute answer', () => {
  for (const graph of graphs) {
    const { pairs, weighed, breaches } = findBreaches(graph);
    console.log(`${graph.name}: ${pairs} pairs of state and path, ${weighed} weighings looked at`);
    expect(weighed).toBeGreaterThan(0);
    expect.soft(breaches, graph.name).toEqual([]);
  }
});

test('nothing leaves a stop but a correction, an ending, the plan for a head that was rinsed, or a head that was not', () => {
  const ways = new Set<string>();
  const finished = new Set<string>();
  const backOn = new Set<string>();
  for (const { edges } of graphs) {
    for (const { from, event, to } of edges) {
      if (nameWay(from.state) !== 'stopped' || nameWay(to.state) === 'stopped') continue;
      ways.add(event.type);
      if (event.type === 'NO_REACTION') {
        const isOn = Object.values(to.state.context.facts.bowls).includes('on');
        backOn.add(`${nameWay(to.state)}, on ${isOn}`);
      }
      if (event.type !== 'FINISHED') continue;
      const isRinsed = Object.values(from.state.context.facts.bowls).includes('rinsed');
      finished.add(`${nameWay(to.state)}, rinsed ${isRinsed}`);
    }
  }
  expect([...ways].sort()).toEqual([
    'CALLED_OFF',
    'CARE_GIVEN',
    'CLIENT_SAID_NO',
    'CORRECTED',
    'FINISHED',
    'NO_REACTION',
    'WE_SAID_NO',
  ]);
  expect([...backOn]).toEqual(['colourOn, on true']);
  expect([...finished]).toEqual(['finish, rinsed true']);
});

test('an absolute answer stops from everywhere before the head, reaction or away, is written down over the head, in a stop and at the finish, and leaves nothing there', () => {
  const stays = ['stopped', 'finish'];
  let stopped = 0;
  for (const { places } of graphs) {
    for (const { state } of places) {
      const way = nameWay(state);
      const { bowls } = state.context.facts;
      if (state.status !== 'active') continue;
      if (way === 'unopened') continue;
      const [edge] = runEdge(state, answer('feelHair', { said: 'absolute' })).taken;
      const isOn = Object.values(bowls).includes('on');
      expect(edge === undefined ? 'refused' : (edge.target?.[0]?.key ?? 'stays'), way).toBe(
        isOn || stays.includes(way) ? 'stays' : 'stopped',
      );
      stopped += 1;
    }
  }
  console.log(`${stopped} states tried with an absolute answer`);
});

test('a cutting that reacts is written down wherever it stands in its glass, and before the head it stops', () => {
  const seen = new Map<string, number>();
  for (const { places } of graphs) {
    for (const { state } of places) {
      const { hasGlass, bowls } = state.context.facts;
      if (state.status !== 'active' || !hasGlass) continue;
      const way = nameWay(state);
      const [edge] = runEdge(state, readIncompatibility(true)).taken;
      const isOn = Object.values(bowls).includes('on');
      expect(edge === undefined ? 'refused' : (edge.target?.[0]?.key ?? 'stays'), way).toBe(
        isOn || way === 'finish' ? 'stays' : 'stopped',
      );
      seen.set(way, (seen.get(way) ?? 0) + 1);
    }
  }
  console.log(`a glass stands in ${JSON.stringify(Object.fromEntries(seen))}`);
  expect([...seen.keys()]).toEqual(expect.arrayContaining(['client', 'mix', 'colourOn', 'finish']));
});

test('every state has a way to an ending, and a head that was rinsed one to the finish without taking anything back', () => {
  const endings = ['done', 'reaction'];
  const roundabout = ['CORRECTED', 'OUTCOME_RETRACTED', 'REACTION_RECORDED'];
  let rinsed = 0;
  for (const graph of graphs) {
    if (graph.edges.some(({ event }) => event.type === 'CALLED_OFF')) {
      expect(listWithoutWay(graph, ({ state }) => state.status === 'done')).toEqual([]);
    }
    const isRinsed = ({ state }: Place) => Object.values(state.context.facts.bowls).includes('rinsed');
    const unfinished = listWithoutWay(
      graph,
      ({ state }) => endings.includes(nameWay(state)),
      ({ event }) => !roundabout.includes(event.type),
    ).filter((place) => isRinsed(place) && place.state.status !== 'done');
    rinsed += graph.places.filter(isRinsed).length;
    expect(unfinished.slice(0, 1).map((place) => findWayTo(place).map(({ type }) => type))).toEqual([]);
  }
  console.log(`${rinsed} states in which a head was rinsed`);
});

test('the definition waits for nothing and calls nothing', () => {
  for (const { id, after, invoke, always } of listNodes()) {
    expect([id, after.length, invoke.length, always?.length ?? 0]).toEqual([id, 0, 0, 0]);
  }
  expect(JSON.stringify(consultationMachine.config)).not.toMatch(/"(after|invoke|spawn)"/);
});

test('reactions and visits stand in the facts as they stand in the chart', () => {
  for (const { places } of graphs) {
    const odd = places.filter(({ state: { status, value, context } }) => {
      if (status !== 'active' || typeof value === 'string') return false;
      const { care, place } = value.open as { readonly care: string; readonly place: string };
      return care !== context.facts.care || place !== context.facts.place;
    });
    expect(odd.map(({ name }) => name)).toEqual([]);
  }
});

test('facts stay plain JSON in every state', () => {
  for (const { places } of graphs) {
    const odd = places.filter(
      ({ state: { context } }) => !isDeepStrictEqual(JSON.parse(JSON.stringify(context)), context),
    );
    expect(odd.map(({ name }) => name)).toEqual([]);
  }
});

test('the oracle finds the way round a gate that stands open', () => {
  const [gate] = alphabets;
  if (gate === undefined) throw new Error('an alphabet is missing');
  const { breaches } = findBreaches(explore(gate, withFault('mayMix')));
  expect(breaches.map((breach) => breach.split('\n')[0])).toEqual(
    expect.arrayContaining([
      'a bowl without a sound or rough outcome that stands',
      'a bowl with a skin test that is waiting',
    ]),
  );
});

test('every edge survives a reload after every event, through the bytes of the journal', () => {
  const ways = keepLongest([...taken.values()].map(({ from, event }) => [...findWayTo(from), event]));
  let reloads = 0;
  for (const way of ways) reloads += reloadAfterEach(way);
  console.log(`${taken.size} edges on ${ways.length} ways, ${reloads} reloads`);
  expect(reloads).toBe(ways.reduce((sum, way) => sum + way.length, 0));
  expect(reloads).toBeGreaterThan(taken.size);
});

test('every way comes back from both copies after the tablet was switched off', async () => {
  const ways = keepLongest([...taken.values()].map(({ from, event }) => [...findWayTo(from), event]));
  await restartWithAll(ways);
});
