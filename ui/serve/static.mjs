// @ts-check
// A small static server for the built page: localhost only, no dependencies.
import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';

/** @type {Record<string, string>} */
const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/**
 * The path that is asked for, or null where the address cannot be read.
 *
 * @param {string | undefined} url
 */
function pathOf(url) {
  try {
    const path = decodeURIComponent(new URL(url ?? '/', 'http://localhost').pathname);
    return path.includes('\0') ? null : path;
  } catch (error) {
    if (error instanceof URIError || error instanceof TypeError) return null;
    throw error;
  }
}

/**
 * Serves a folder on this machine alone. Takes the next free port when the wished one is taken, and
 * any free one when that does not help.
 *
 * @param {string} folder
 * @param {number} port 0 for any free one
 * @param {number} [tries]
 * @returns {Promise<{ server: import('node:http').Server, address: string }>}
 */
export function serve(folder, port, tries = 20) {
  const server = createServer((request, response) => {
    const path = pathOf(request.url);
    if (path === null) {
      response.writeHead(400).end();
      return;
    }
    let file = normalize(join(folder, path));
    if (file !== folder && !file.startsWith(folder + sep)) {
      response.writeHead(403).end();
      return;
    }
    if (statSync(file, { throwIfNoEntry: false })?.isDirectory()) file = join(file, 'index.html');
    const sent = createReadStream(file);
    sent.on('open', () => {
      response.writeHead(200, {
        'content-type': types[extname(file)] ?? 'application/octet-stream',
        'cache-control': 'no-cache',
        'content-security-policy': policy,
        'x-content-type-options': 'nosniff',
      });
      sent.pipe(response);
    });
    // Not there, or not to be read: a build may be replacing it.
    sent.on('error', () => {
      if (response.headersSent) response.destroy();
      else response.writeHead(404, { 'content-type': 'text/plain' }).end('Not found');
    });
  });
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
