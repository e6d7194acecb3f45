import { request as requestPlain } from 'node:http';
import { request as requestSecure } from 'node:https';
import { strictHeaders } from './headers.mjs';

/** @typedef {import('node:http').IncomingMessage} Request */
/** @typedef {import('node:http').ServerResponse} Response */

const PREFIX = '/replica/';

/** What the station asks of the database, and nothing besides: how, where, and with which parameters. */
const allowed = [
  { method: 'GET', path: '', query: /^$/ },
  { method: 'GET', path: '_changes', query: /^(?:since=[\w%.~-]{1,4000}&)?limit=\d{1,5}$/ },
  { method: 'POST', path: '_all_docs', query: /^(?:include_docs=true)?$/ },
  { method: 'POST', path: '_bulk_docs', query: /^$/ },
];

/**
 * So much may be sent at one go, bytes; the station sends less. Assumed because a record is some 30 kB, and a CouchDB takes
 * no document over 8,000,000 bytes as it comes (published: CouchDB documentation, max_document_size).
 */
const ASSUMED_SENT_MAX_BYTES = 16_000_000;
/** So much may come back at one go, bytes. Assumed because the station asks for a hundred records, of 30 kB each. */
const ASSUMED_ANSWER_MAX_BYTES = 64_000_000;
/** The database is given up on after so long without a byte, ms. Assumed because a salon's own server answers within a second. */
const ASSUMED_SILENCE_MS = 20_000;

/**
 * @param {Response} response
 * @param {number} status
 * @param {string} why one word for the page
 * @param {string} text
 */
function refuse(response, status, why, text) {
  if (response.headersSent) {
    response.destroy();
    return;
  }
  response.writeHead(status, {
    ...strictHeaders,
    'Content-Type': 'application/json; charset=utf-8',
    'Cache-Control': 'no-store',
  });
  response.end(`${JSON.stringify({ error: why, reason: text })}\n`);
}

/**
 * Everything that was sent; null when it is more than may be.
 * @param {Request} request
 */
async function readBody(request) {
  const pieces = [];
  let size = 0;
  for await (const piece of request) {
    size += piece.length;
    if (size > ASSUMED_SENT_MAX_BYTES) return null;
    pieces.push(piece);
  }
  return Buffer.concat(pieces);
}

const loopback = ['localhost', '127.0.0.1', '[::1]'];

/**
 * Was this asked by the station's own page? Another page in the same browser can send here too: a browser then says so, and
 * none can send JSON to another origin without asking first, which is not answered. A name that somebody else's
 * server leads to this machine is refused by `Host`.
 * @param {Request} request
 * @param {readonly string[]} names
 */
function isOwnPage({ headers, method }, names) {
  const host = (headers.host ?? '').replace(/:\d+$/, '');
  if (!names.includes(host)) return false;
  const site = headers['sec-fetch-site'];
  // By a name of its own it may be reached from the whole network: there a browser has to say that its own page asks.
  if (site === undefined ? !loopback.includes(host) : site !== 'same-origin') return false;
  if (headers.origin !== undefined && !headers.origin.endsWith(`//${headers.host}`)) return false;
  return method !== 'POST' || /^application\/json\b/.test(headers['content-type'] ?? '');
}

/** What is said instead of an answer of the database that is none for the page. A 401 would open a dialog of the browser. */
const saidInstead = new Map([
  [401, 'The database does not take the name and password of this server.'],
  [403, 'The database does not let this server in.'],
  [404, 'There is no such database. It is made by: npm run replica:setup'],
]);

/**
 * Hands what the page asks of /replica/ on to one database, so that the page never leaves its origin and never knows a
 * password. Only what the station asks is handed on; nothing of the browser but the question itself; no redirect is
 * followed. Without a place /replica/ is empty, and nothing is under it. Checked by tests/scripts/forward.test.ts.
 * @param {import('./replicaAddress.mjs').ReplicaPlace | null} place
 * @param {{ names?: readonly string[], silenceMs?: number }} [options] names this server is reached by, beside loopback
 */
export function makeForward(place, { names = [], silenceMs = ASSUMED_SILENCE_MS } = {}) {
  const known = [...loopback, ...names];

  /**
   * @param {Request} request
   * @param {Response} response
   * @param {string} path
   * @param {import('./replicaAddress.mjs').ReplicaPlace} to
   */
  async function handOn(request, response, path, { base, authorization }) {
    const body = request.method === 'POST' ? await readBody(request) : Buffer.alloc(0);
    if (body === null) {
      response.setHeader('Connection', 'close');
      return refuse(response, 413, 'tooLarge', 'That is more than may be sent at one go.');
    }
    const send = base.protocol === 'https:' ? requestSecure : requestPlain;
    const asking = send(`${base.href}${path === '' ? '' : `/${path}`}`, {
      method: request.method,
      headers: {
        Accept: 'application/json',
        ...(authorization === null ? {} : { Authorization: authorization }),
        ...(request.method === 'POST'
          ? { 'Content-Type': 'application/json', 'Content-Length': body.length }
          : {}),
      },
    });
    asking.setTimeout(silenceMs, () => asking.destroy(new Error('silent')));
    response.on('close', () => asking.destroy());
    asking.on('error', () => refuse(response, 502, 'gone', 'The database does not answer.'));
    asking.on('response', (answer) => handBack(answer, response));
    asking.end(body);
    return undefined;
  }

  /**
   * Answers whether this address is one of the replica's, which is then answered here.
   * @param {Request} request
   * @param {Response} response
   */
  return function forward(request, response) {
    const url = request.url ?? '';
    if (!url.startsWith(PREFIX)) return false;
    if (place === null && request.method === 'GET' && url === PREFIX) {
      // Every station asks once: an answer of 404 would stand as an error in the browser's own list.
      response.writeHead(204, strictHeaders).end();
    } else if (place === null) {
      refuse(response, 404, 'off', 'This station is set up for itself alone.');
    } else if (!isOwnPage(request, known)) {
      refuse(response, 403, 'notHere', 'This is answered to the page of the station alone.');
    } else {
      const [path = '', query = ''] = url.slice(PREFIX.length).split('?', 2);
      const isAllowed = allowed.some(
        (each) => each.method === request.method && each.path === path && each.query.test(query),
      );
      if (!isAllowed) refuse(response, 400, 'notAllowed', 'The station does not ask that.');
      else {
        handOn(request, response, query === '' ? path : `${path}?${query}`, place).catch(() =>
          response.destroy(),
        );
      }
    }
    return true;
  };
}

/**
 * Of an answer its status and its JSON go back, and nothing else: no cookie, no redirect, no question for a password.
 * @param {Request} answer
 * @param {Response} response
 */
function handBack(answer, response) {
  const status = answer.statusCode ?? 502;
  const instead =
    saidInstead.get(status) ?? (status >= 300 && status < 400 ? 'The database is elsewhere.' : null);
  if (instead !== null) {
    answer.resume();
    return refuse(response, 502, 'refused', instead);
  }
  response.writeHead(status, {
    ...strictHeaders,
    'Content-Type': 'application/json; charset=utf-8',
    'Cache-Control': 'no-store',
  });
  let size = 0;
  answer.on('data', (piece) => {
    size += piece.length;
    if (size > ASSUMED_ANSWER_MAX_BYTES) response.destroy();
    else if (!response.write(piece)) {
      answer.pause();
      response.once('drain', () => answer.resume());
    }
  });
  answer.on('end', () => response.end());
  answer.on('error', () => response.destroy());
  return undefined;
}
