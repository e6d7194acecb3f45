import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, relative, resolve, sep } from 'node:path';
import { makeForward } from './forward.mjs';
import { strictHeaders } from './headers.mjs';

/** @typedef {import('node:http').IncomingMessage} Request */
/** @typedef {import('node:http').ServerResponse} Response */

/** @type {Record<string, string>} */
const mediaTypes = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.woff2': 'font/woff2',
};

/** vite names what lies in assets by its content, so that it never changes under its name. */
const foreverPath = /^assets\/[^/]+-[\w-]{8}\.\w+$/;

/**
 * Which file does this address mean? The path inside the folder, or undefined when the address is no honest
 * path: badly encoded, with a NUL, a backslash, or a step upwards, however written.
 * @param {string | undefined} address as the request line gives it
 */
export function readPath(address) {
  const raw = (address ?? '/').split(/[?#]/, 1)[0] ?? '/';
  let path;
  try {
    path = decodeURIComponent(raw);
  } catch {
    return undefined;
  }
  if (!path.startsWith('/') || /[\0\\]/.test(path)) return undefined;
  if (path.split('/').includes('..')) return undefined;
  return path;
}

/**
 * @param {Response} response
 * @param {number} status
 * @param {string} text
 */
function say(response, status, text) {
  response.writeHead(status, { ...strictHeaders, 'Content-Type': 'text/plain; charset=utf-8' });
  response.end(`${text}\n`);
}

/** @param {string} file */
async function measureFile(file) {
  try {
    const found = await stat(file);
    return found.isFile() ? found.size : undefined;
  } catch {
    return undefined;
  }
}

/**
 * The station's own server: hands out one folder, and nothing besides. It keeps no state.
 * What lies under /replica/ is asked of the forward first, by whatever method. Checked by tests/scripts/server.test.ts.
 * @param {string} builtFolder the built station
 * @param {ReturnType<typeof makeForward>} [forward] to the records of other stations; to none, unless it is given
 */
export function makeServer(builtFolder, forward = makeForward(null)) {
  const folder = resolve(builtFolder);

  /**
   * @param {Request} request
   * @param {Response} response
   */
  async function answer(request, response) {
    const isHead = request.method === 'HEAD';
    if (request.method !== 'GET' && !isHead) {
      response.setHeader('Allow', 'GET, HEAD');
      return say(response, 405, 'Only GET and HEAD are answered here.');
    }
    const path = readPath(request.url);
    if (path === undefined) return say(response, 400, 'This address cannot be read.');

    let file = join(folder, path.endsWith('/') ? `${path}index.html` : path);
    let size = file.startsWith(folder + sep) ? await measureFile(file) : undefined;
    if (size === undefined && (request.headers.accept ?? '').includes('text/html')) {
      file = join(folder, 'index.html');
      size = await measureFile(file);
    }
    if (size === undefined) return say(response, 404, 'There is no such file here.');

    response.writeHead(200, {
      ...strictHeaders,
      'Content-Type': mediaTypes[extname(file)] ?? 'application/octet-stream',
      'Content-Length': size,
      'Cache-Control': foreverPath.test(relative(folder, file))
        ? 'public, max-age=31536000, immutable'
        : 'no-cache',
    });
    if (isHead) response.end();
    else
      createReadStream(file)
        .on('error', () => response.destroy())
        .pipe(response);
    return undefined;
  }

  const server = createServer((request, response) => {
    if (forward(request, response)) return;
    answer(request, response).catch(() => response.destroy());
  });
  // What is no request of HTTP never comes to be answered above.
  server.on('clientError', (_error, socket) => {
    if (socket.writable) socket.end(notHttp);
    else socket.destroy();
  });
  return server;
}

/** The one answer that is written by hand: to bytes that are no request. */
const notHttp = [
  'HTTP/1.1 400 Bad Request',
  ...Object.entries(strictHeaders).map(([name, value]) => `${name}: ${value}`),
  'Content-Length: 0',
  'Connection: close',
  '',
  '',
].join('\r\n');

/**
 * Opens the server, on the next free port when this one is taken.
 * @param {import('node:http').Server} server
 * @param {{ host: string, port: number }} place port 0 takes any
 * @returns {Promise<number>} the port it listens on
 */
export async function listen(server, { host, port }) {
  const last = Math.min(port + 100, 65_535);
  for (let next = port; ; next++) {
    try {
      return await listenOnce(server, host, next);
    } catch (error) {
      if (port === 0 || next >= last || !isTaken(error)) throw error;
    }
  }
}

/** @param {unknown} error */
const isTaken = (error) => error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';

/**
 * @param {import('node:http').Server} server
 * @param {string} host
 * @param {number} port
 * @returns {Promise<number>}
 */
function listenOnce(server, host, port) {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      server.off('error', reject);
      const address = server.address();
      resolve(typeof address === 'object' && address ? address.port : port);
    });
  });
}
