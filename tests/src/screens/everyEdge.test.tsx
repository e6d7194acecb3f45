import { writeFileSync } from 'node:fs';
import { cleanup } from '@solidjs/testing-library';
import { afterEach, expect, it } from 'vitest';
import {
  listTransitions,
  nameTransition,
  runEdge,
  saysNo,
  type Transition,
} from '../../machines/consultation/graph/explore';
import { askWays } from './everyEdge/askWays';
import { headWays } from './everyEdge/headWays';
import { strandWays } from './everyEdge/strandWays';
import { seatTapped, type Tapped } from './everyEdge/tappedClient';
import { stationWays } from './everyEdge/tappedStation';

afterEach(cleanup);

/** Each edge of the chart that taps led over, by the way with the fewest of them. */
const reached = new Map<Transition, Tapped>();

function note(tapped: readonly Tapped[]): void {
  for (const each of tapped) {
    for (const edge of runEdge(each.from, each.event).taken) {
      const known = reached.get(edge);
      if (known === undefined || each.taps.length < known.taps.length) reached.set(edge, each);
    }
  }
}

it.each([...askWays, ...strandWays, ...headWays])('$name', async ({ start, tap }) => {
  const client = seatTapped(start());
  try {
    await tap(client);
  } finally {
    client.close();
  }
  expect(client.tapped).not.toEqual([]);
  note(client.tapped);
});

it.each(stationWays)('$name', async ({ tap }) => {
  const tapped = await tap();
  expect(tapped).not.toEqual([]);
  note(tapped);
});

it('leads over every edge of the chart by taps, but where no question could stop anybody', () => {
  const edges = listTransitions().filter((edge) => !saysNo(edge));
  const rows = edges.map((edge) => {
    const { screen, taps } = reached.get(edge) ?? { screen: '', taps: [] };
    return `| ${nameTransition(edge)} | ${screen} | ${taps.join(' · ')} |`;
  });
  if (process.env.EDGES !== undefined) writeFileSync(process.env.EDGES, `${rows.join('\n')}\n`);
  console.log(`${edges.length} edges of the chart, ${reached.size} of them by taps`);
  // Neither what fingers find nor today's finish has an absolute answer, so no stop leads back to them.
  expect(edges.filter((edge) => !reached.has(edge)).map(nameTransition)).toEqual([
    'stopped CORRECTED → feelHair',
    'stopped CORRECTED → heatSpray',
  ]);
});
