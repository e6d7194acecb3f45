import type { Page } from 'playwright-core';
import { emptyHouse, fullHouse } from './houses';
import type { Scene } from './scene';
import type { SceneHand } from './sceneHand';

/** Names of records that lie there, and are not what they say. */
const spoilt = Array.from({ length: 12 }, (_, index) =>
  `consultation:wmwmwmwm${index}wmwmwmwmwmwmwmwmwmwmw:${'d0'.repeat(32)}`.replace(/w(?=:)/, ''),
);

/** Stands in for the station's own server with a database behind it: it takes all, and has these records. */
const answerAs = (there: readonly string[]) => (page: Page) =>
  page.route('**/replica/**', async (route) => {
    const [, path = ''] = /\/replica\/(\w*)/.exec(route.request().url()) ?? [];
    const asked = route.request().postDataJSON() as { readonly docs?: readonly { _id: string }[] } | null;
    const answers: Readonly<Record<string, unknown>> = {
      '': { db_name: 'salon', doc_count: there.length },
      _changes: { results: there.map((id) => ({ id, changes: [{ rev: '1-0' }] })), last_seq: 1 },
      _all_docs: { rows: there.map((id) => ({ doc: { _id: id, _rev: '1-0' } })) },
      _bulk_docs: asked?.docs?.map(({ _id }) => ({ id: _id, ok: true, rev: '1-0' })),
    };
    await route.fulfill({ json: answers[path] });
  });

const toOthers = async ({ act, press, page }: SceneHand): Promise<void> => {
  await act('settings');
  await press('[data-act="who-Opal"]');
  await act('section-others');
  await page.locator('[data-panel="others"]').waitFor();
};

const others = (kind: string) => `[data-others="${kind}"]`;

/** How the station stands with others. */
export const scenesOfOthers: Readonly<Record<string, Scene>> = {
  others: { logs: emptyHouse, shows: others('off'), go: toOthers },
  othersInStep: { logs: emptyHouse, shows: others('inStep'), harm: answerAs([]), go: toOthers },
  othersApart: {
    logs: fullHouse,
    shows: others('apart'),
    harm: answerAs([]),
    go: async (hand) => {
      await toOthers(hand);
      await hand.page.locator(others('inStep')).waitFor();
      await hand.page.unroute('**/replica/**');
      await hand.page.route('**/replica/**', (route) => route.abort());
      await hand.act('share-now');
    },
  },
  othersLeftOut: {
    logs: fullHouse,
    shows: '[data-panel="others-refused"]',
    harm: answerAs(spoilt),
    go: toOthers,
  },
};
