import { defineConfig } from 'vite';
import solid from 'vite-plugin-solid';
import { nameBuild } from './scripts/buildName.mjs';
import { buildServiceWorker } from './scripts/serviceWorker.mjs';
import { speakAlways } from './scripts/speakAlways.mjs';

export default defineConfig({
  plugins: [solid(), speakAlways(process.env.STATION_SPEAKS), nameBuild(), buildServiceWorker()],
  build: {
    target: 'es2022',
    // The policy of scripts/serve.mjs allows no inline script and no data: font, so nothing is inlined.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  worker: { format: 'es' },
});
