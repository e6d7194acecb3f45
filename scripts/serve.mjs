// npm start: serves the built station and prints its address.
//   node scripts/serve.mjs [--port 4173] [--host 127.0.0.1] [--folder dist]
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { listen, makeServer } from './server.mjs';

const { values } = parseArgs({
  options: {
    port: { type: 'string', default: '4173' },
    host: { type: 'string', default: '127.0.0.1' },
    folder: { type: 'string', default: join(import.meta.dirname, '..', 'dist') },
  },
});

/** @param {string} reason */
function giveUp(reason) {
  console.error(reason);
  process.exit(1);
}

const folder = resolve(values.folder);
const port = Number(values.port);
if (!/^\d{1,5}$/.test(values.port) || port > 65_535) {
  giveUp(`--port takes a whole number from 0 to 65535, not "${values.port}".`);
}
if (!existsSync(join(folder, 'index.html'))) {
  giveUp(`There is no built station in ${folder}. Build it first: npm run build (npm start does both).`);
}

const server = makeServer(folder);
const opened = await listen(server, { host: values.host, port }).catch((error) =>
  giveUp(`The station cannot be served on ${values.host}:${port}: ${error.message}`),
);

for (const signal of ['SIGINT', 'SIGTERM']) {
  process.once(signal, () => {
    server.close();
    server.closeAllConnections();
  });
}

const isLoopback = ['127.0.0.1', 'localhost', '::1'].includes(values.host);
if (port !== 0 && opened !== port) {
  console.log(`Port ${port} is taken, so this is port ${opened}.`);
  console.log('Records belong to the address they were made at: the other port keeps a store of its own.');
}
if (!isLoopback) {
  console.log(
    'Over plain http, browsers keep records only for 127.0.0.1: other devices need https in front.',
  );
}
const shown = values.host.includes(':') ? `[${values.host}]` : values.host;
console.log(`Strandproof is at http://${shown}:${opened}/  (Ctrl+C ends it)`);
