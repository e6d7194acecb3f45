// npm start: serves the built station and prints its address.
//   node scripts/serve.mjs [--port 4173] [--host 127.0.0.1] [--folder dist] [--replica URL] [--name NAME]
// STRANDPROOF_REPLICA says the same as --replica, and keeps the password out of the list of processes.
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { makeForward } from './forward.mjs';
import { isLoopback, readReplicaAddress } from './replicaAddress.mjs';
import { listen, makeServer } from './server.mjs';

const { values } = parseArgs({
  options: {
    port: { type: 'string', default: '4173' },
    host: { type: 'string', default: '127.0.0.1' },
    folder: { type: 'string', default: join(import.meta.dirname, '..', 'dist') },
    replica: { type: 'string', default: process.env.STRANDPROOF_REPLICA ?? '' },
    name: { type: 'string', multiple: true, default: [] },
  },
});

/**
 * @param {string} reason
 * @returns {never}
 */
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

const isHere = isLoopback(values.host);
const place = values.replica === '' ? null : readReplicaAddress(values.replica);
if (typeof place === 'string') giveUp(place);
if (place !== null && !isHere) {
  giveUp('With a replica this is served to this machine alone: whoever else asks would read every record.');
}

const server = makeServer(folder, makeForward(place, { names: values.name }));
const opened = await listen(server, { host: values.host, port }).catch((error) =>
  giveUp(`The station cannot be served on ${values.host}:${port}: ${error.message}`),
);

for (const signal of ['SIGINT', 'SIGTERM']) {
  process.once(signal, () => {
    server.close();
    server.closeAllConnections();
  });
}

if (place?.isPlain) {
  console.log(
    'The replica is reached over plain http: whoever is in that network can read along. Use https.',
  );
}
if (place !== null && values.name.some((name) => !isLoopback(name) || !isLoopback(place.base.hostname))) {
  console.log(
    `The server that is reached as ${values.name.join(', ')} has to ask who is there: this one answers whoever it lets through with every record.`,
  );
}
if (place !== null) console.log(`Records are exchanged with ${place.base.href}`);
if (port !== 0 && opened !== port) {
  console.log(`Port ${port} is taken, so this is port ${opened}.`);
  console.log('Records belong to the address they were made at: the other port keeps a store of its own.');
}
if (!isHere) {
  console.log(
    'Over plain http, browsers keep records only for 127.0.0.1: other devices need https in front.',
  );
}
const shown = values.host.includes(':') ? `[${values.host}]` : values.host;
console.log(`Strandproof is at http://${shown}:${opened}/  (Ctrl+C ends it)`);
