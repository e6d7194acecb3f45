import { cleanupOutdatedCaches, type PrecacheEntry, precacheAndRoute } from 'workbox-precaching';

/**
 * Does the station open when the network is gone? Yes, once this has laid every file of the build into a cache.
 *
 * From then on those files come out of the cache, and everything else goes to the network as if this were not here:
 * no other address of this origin, no other origin, and nothing of any log, which are no files of the build.
 *
 * A new build is laid beside the old one and waits until no window is left. It never takes over by itself, because
 * a station that changes in the middle of a day loses the late parts of its own page. For the same reason it claims
 * the windows that were open before it: an edition without a window would count as left.
 * Checked by tests/browser/offline.test.ts.
 */
declare const self: ServiceWorkerGlobalScope;

/** Written in by scripts/serviceWorker.mjs: each file of the build with its digest. */
declare const BUILT_FILES: PrecacheEntry[];

precacheAndRoute(BUILT_FILES, { cleanURLs: false, ignoreURLParametersMatching: [] });
cleanupOutdatedCaches();

self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
