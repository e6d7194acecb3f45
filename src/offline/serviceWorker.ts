import { cleanupOutdatedCaches, type PrecacheEntry, precacheAndRoute } from 'workbox-precaching';

/**
 * Does the station open when the network is gone? Yes, once this has laid every file of the build into a cache.
 *
 * From then on those files come out of the cache, and everything else goes to the network as if this were not here:
 * no other address of this origin, no other origin, and nothing of any log, which are no files of the build.
 *
 * A new build is laid whole beside the old one and waits until no window is left, or until somebody takes it. It never
 * takes over by itself, because a station that changes in the middle of a day loses the late parts of its own page. For
 * the same reason it claims the windows that were open before it: an edition without a window would count as left.
 * What it is asked, and by whom: src/tablet/updates.ts. Checked by tests/browser/offline.test.ts and updates.test.ts.
 */
declare const self: ServiceWorkerGlobalScope;

/** Written in by scripts/serviceWorker.mjs: each file of the build with its digest. */
declare const BUILT_FILES: PrecacheEntry[];
/** Which build these files are, as their page says it. */
declare const BUILD_NAME: string;

precacheAndRoute(BUILT_FILES, { cleanURLs: false, ignoreURLParametersMatching: [] });
cleanupOutdatedCaches();

self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

self.addEventListener('message', (event) => {
  if (event.data === 'SAY_BUILD') event.ports[0]?.postMessage(BUILD_NAME);
  if (event.data === 'TAKE_OVER') event.waitUntil(self.skipWaiting());
});
