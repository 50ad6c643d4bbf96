// @ts-check
// A small static server for the built page: localhost only, no dependencies.
import { readFile, realpath, stat } from 'node:fs/promises';
import { createServer, STATUS_CODES } from 'node:http';
import { extname, join, sep } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
import { EMBED } from './hosting.mjs';
import { HEADERS, NOT_FRAMED, POLICY } from './policy.mjs';

/** @type {Record<string, string>} */
const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

/** On every answer, whatever was asked. */
const always = {
  'cache-control': 'no-cache',
  'content-security-policy': `${POLICY}; ${NOT_FRAMED}`,
  ...HEADERS,
};

/**
 * The names this machine has for itself. A site that lets its own name point here (DNS rebinding)
 * sends that name, and is refused. Ports are not compared: a forwarded port is another one.
 */
const own = /^(?:localhost|127\.0\.0\.1|\[::1\])(?::\d+)?$/i;

/**
 * What is sent.
 *
 * @typedef {{ status: number, headers?: Record<string, string>, body?: Buffer }} Answer
 */

/**
 * Where the asked path leads inside the folder, or null for what cannot be in it: names that begin
 * with a dot, and what some system takes for more than a name.
 *
 * @param {string} path as in the address, escaped
 */
function namesOf(path) {
  const names = path
    .split('/')
    .map(decodeURIComponent)
    .filter((name) => name !== '');
  return names.some((name) => name.startsWith('.') || /[/\\:\0]/.test(name)) ? null : names;
}

/**
 * The asked file's place, or null where there is none. A link on the way leads elsewhere, so the
 * true place is not the one that was asked for.
 *
 * @param {string} folder
 * @param {readonly string[]} names
 */
async function fileIn(folder, names) {
  const home = await realpath(folder);
  const asked = join(home, ...names);
  const file = (await stat(asked)).isDirectory() ? join(asked, 'index.html') : asked;
  if (!file.startsWith(home + sep) || (await realpath(file)) !== file) return null;
  return (await stat(file)).isFile() ? file : null;
}

const brotli = promisify(brotliCompress);
const zip = promisify(gzip);
/** Quality: 7 of 11 takes a fiftieth of a second for the largest file; 11 takes a second and saves a tenth. */
const packers = {
  br: (/** @type {Buffer} */ body) =>
    brotli(body, { params: { [constants.BROTLI_PARAM_QUALITY]: 7 } }),
  gzip: (/** @type {Buffer} */ body) => zip(body),
};
/** Fonts and pictures are packed as they are. */
const packable = /^(?:text\/|application\/|image\/svg)/;

/**
 * The first packing of ours that the browser takes.
 *
 * @param {string | undefined} accepted the header, such as "gzip;q=0.5, br"
 */
function packingFor(accepted = '') {
  const taken = accepted
    .toLowerCase()
    .split(',')
    .map((entry) => entry.trim().split(/\s*;\s*/))
    .filter(([, q]) => !/^q=0(?:\.0*)?$/.test(q ?? ''))
    .map(([name]) => name);
  return /** @type {const} */ (['br', 'gzip']).find((name) => taken.includes(name));
}

/**
 * What was packed, by packing and place, so that each file is packed once and anew after a build.
 *
 * @typedef {Map<string, { time: number, ready: Promise<Buffer> }>} Packed
 */

/**
 * @param {string} folder
 * @param {import('node:http').IncomingMessage} request
 * @param {Packed} packed
 * @returns {Promise<Answer>}
 */
async function answerTo(folder, request, packed) {
  const { method, headers } = request;
  // A whole address as the target (RFC 9112, 3.2.2) is asked for by its own host, whatever `Host` says.
  const target = request.url ?? '/';
  const whole = /^http:\/\/([^/?#]*)(.*)$/i.exec(target);
  const host = whole ? whole[1] : headers.host;
  if (!host || !own.test(host)) return { status: 421 };
  if (method !== 'GET' && method !== 'HEAD')
    return { status: 405, headers: { allow: 'GET, HEAD' } };
  const path = (whole ? whole[2] : target)?.replace(/[?#].*$/s, '') || '/';
  if (!path.startsWith('/')) return { status: 400 };
  let names;
  try {
    names = namesOf(path);
  } catch {
    // Escapes that are no text.
    return { status: 400 };
  }
  let file;
  let body;
  let time;
  try {
    file = names && (await fileIn(folder, names));
    if (!file) return { status: 404 };
    body = await readFile(file);
    time = (await stat(file)).mtimeMs;
  } catch {
    // Not there, not to be read, a name too long, a path under a file, replaced by a build just now.
    return { status: 404 };
  }
  const type = types[extname(file)] ?? 'application/octet-stream';
  /** @type {Record<string, string>} */
  const told = { 'content-type': type };
  // Made to stand in pages of others; everything else is not.
  if (names?.join('/') === EMBED) told['content-security-policy'] = POLICY;
  if (!packable.test(type)) return { status: 200, headers: told, body };
  told['vary'] = 'accept-encoding';
  const packing = packingFor(String(headers['accept-encoding'] ?? ''));
  if (!packing) return { status: 200, headers: told, body };
  const key = `${packing} ${file}`;
  const kept = packed.get(key);
  const fresh = kept?.time === time ? kept : { time, ready: packers[packing](body) };
  packed.set(key, fresh);
  told['content-encoding'] = packing;
  return { status: 200, headers: told, body: await fresh.ready };
}

/**
 * With the headers of every answer, and the status in words where there is nothing else to send.
 *
 * @param {Answer} answer
 */
function complete({ status, headers = {}, body }) {
  const sent = body ?? Buffer.from(`${STATUS_CODES[status]}\n`);
  const plain = body ? {} : { 'content-type': 'text/plain; charset=utf-8' };
  return {
    status,
    body: sent,
    headers: { ...always, ...plain, ...headers, 'content-length': String(sent.length) },
  };
}

/**
 * An answer of the same form where Node makes none: to what is no request, and to CONNECT.
 *
 * @param {number} status
 * @param {import('node:stream').Duplex} socket
 */
function refuse(status, socket) {
  if (!socket.writable) {
    socket.destroy();
    return;
  }
  const { headers, body } = complete({ status, headers: { connection: 'close' } });
  const lines = Object.entries(headers).map(([name, value]) => `${name}: ${value}\r\n`);
  socket.end(`HTTP/1.1 ${status} ${STATUS_CODES[status]}\r\n${lines.join('')}\r\n${body}`);
}

/** By what Node found wrong; anything else is a request that cannot be read. */
const faults = new Map([
  ['HPE_HEADER_OVERFLOW', 431],
  ['ERR_HTTP_REQUEST_TIMEOUT', 408],
]);

/**
 * Serves a folder on this machine alone, to its own host names alone. Takes the next free port when
 * the wished one is taken, and any free one when that does not help.
 *
 * @param {string} folder
 * @param {number} port 0 for any free one
 * @param {number} [tries]
 * @returns {Promise<{ server: import('node:http').Server, address: string }>}
 */
export function serve(folder, port, tries = 20) {
  /** @type {Packed} */
  const packed = new Map();
  /** @type {import('node:http').RequestListener} */
  const listener = async (request, response) => {
    const answer = await answerTo(folder, request, packed).catch(() => ({ status: 500 }));
    const { status, headers, body } = complete(answer);
    response.writeHead(status, headers);
    response.end(request.method === 'HEAD' ? undefined : body);
  };
  // Node's own refusal of a request without a host would lack the headers.
  const server = createServer({ requireHostHeader: false }, listener);
  // An expectation that is unknown to Node is answered like anything else.
  server.on('checkExpectation', listener);
  server.on('connect', (_, socket) => refuse(405, socket));
  server.on('clientError', (/** @type {NodeJS.ErrnoException} */ error, socket) =>
    refuse(faults.get(error.code ?? '') ?? 400, socket),
  );
  return new Promise((resolve, reject) => {
    server.on('error', (/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code === 'EADDRINUSE' && tries > 0) {
        const next = tries > 1 && port < 65535 ? port + 1 : 0;
        serve(folder, next, tries - 1).then(resolve, reject);
      } else reject(error);
    });
    server.listen(port, '127.0.0.1', () => {
      const at = server.address();
      if (at === null || typeof at === 'string') throw new Error('no port was opened');
      resolve({ server, address: `http://localhost:${at.port}/` });
    });
  });
}
