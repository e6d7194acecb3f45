import type { ConsultationEvent } from '../../../../shared/records/event';
import type { Edge, Graph, Place } from './explore';
import { findBreach, type Heard, hear, nothingHeard } from './gateOracle';

interface Spot {
  readonly place: Place;
  readonly heard: Heard;
  readonly cameBy: readonly [Spot, Edge] | null;
}

const tell = (event: ConsultationEvent): string => {
  const { skinTest: _skinTest, lapsed: _lapsed, ...own } = event.tokens;
  return [event.type, ...Object.values(own).map(String)].join(' ').trim();
};

const tellWay = (spot: Spot): readonly string[] =>
  spot.cameBy === null ? [] : [...tellWay(spot.cameBy[0]), tell(spot.cameBy[1].event)];

/**
 * Every path of the graph, as far as the oracle can tell paths apart: states of the chart times what was heard.
 * Returns the shortest path to each breach, and how many pairs and how many weighed bowls were looked at.
 */
export function findBreaches({ start }: Graph) {
  const seen = new Set<string>();
  const queue: Spot[] = [{ place: start, heard: nothingHeard, cameBy: null }];
  const breaches = new Map<string, string>();
  let weighed = 0;
  for (let next = 0; next < queue.length; next += 1) {
    const spot = queue[next] as Spot;
    for (const edge of spot.place.edges) {
      const breach = findBreach(spot.heard, edge.event);
      if (edge.event.type === 'BOWL_WEIGHED') weighed += 1;
      if (breach !== null && !breaches.has(breach)) {
        breaches.set(breach, [...tellWay(spot), tell(edge.event)].join('\n  '));
      }
      const heard = hear(spot.heard, edge.event);
      const key = `${edge.to.name} ${JSON.stringify(heard)}`;
      if (seen.has(key)) continue;
      seen.add(key);
      queue.push({ place: edge.to, heard, cameBy: [spot, edge] });
    }
  }
  const told = [...breaches].map(([breach, way]) => `${breach}\n  ${way}`);
  return { pairs: queue.length, weighed, breaches: told };
}
