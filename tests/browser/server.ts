import { inject } from 'vitest';
import { listen, makeServer } from '../../scripts/server.mjs';

/**
 * Opens the station's own server on a free port, with what this run has built.
 * `address` ends without a slash. A given port keeps the origin, and so the store, across two servers; a given folder
 * is another build; `forward` leads to the records of other stations.
 */
export async function startStation(
  port = 0,
  folder = inject('stationFolder'),
  forward?: Parameters<typeof makeServer>[1],
) {
  const server = makeServer(folder, forward);
  const opened = await listen(server, { host: '127.0.0.1', port });
  return {
    address: `http://127.0.0.1:${opened}`,
    port: opened,
    close: () =>
      new Promise<void>((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
