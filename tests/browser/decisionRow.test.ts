import { expect, it } from 'vitest';
import { scenesOfClient } from './scenes/ofClient';
import { settle, showScene } from './scenes/showScene';
import { useStation } from './station';

const station = useStation();

/** So much air stays between words and the edge of a button beside them: an edge is no letter. */
const AIR_PX = 8;

it.each([
  [1280, 800],
  [800, 1280],
])('“Wrong outcome?” keeps clear of the words beside it at %d × %d', async (width, height) => {
  const scene = scenesOfClient.decision.also?.sound;
  if (scene === undefined) throw new Error('no scene');
  const shown = await showScene(station.browser, station.address, scene);
  expect(shown.problem).toBeNull();
  await shown.page.setViewportSize({ width, height });
  await settle(shown.page);
  const gaps = await shown.page.locator('.found-row[data-zone]').evaluateAll((rows) =>
    rows.map((row) => {
      const words = row.querySelector('.found-small');
      const button = row.querySelector('[data-act^="retract-"]');
      if (words === null || button === null) return null;
      const range = document.createRange();
      range.selectNodeContents(words);
      const last = [...range.getClientRects()].at(-1);
      const box = button.getBoundingClientRect();
      if (last === undefined) return null;
      const isBeside = last.bottom > box.top && last.top < box.bottom;
      return isBeside ? box.left - last.right : box.top - last.bottom + 8;
    }),
  );
  expect(gaps).toHaveLength(2);
  for (const gap of gaps) expect(gap).toBeGreaterThanOrEqual(AIR_PX);
  await shown.close();
});
