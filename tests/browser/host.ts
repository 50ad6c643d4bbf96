import { existsSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';

/**
 * Somebody else's static host: it serves a folder under a path of its own, knows nothing of this page but the
 * folder's `_headers`, and reads that file as such hosts do (from memory): `/*` for all, a path for one, and two
 * values of one header joined by a comma.
 */

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.mjs': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain',
  '.webmanifest': 'application/manifest+json',
};

type Headers = Readonly<Record<string, string>>;

/** What `_headers` tells for a path of the folder. */
export function headersFor(file: string, path: string): Headers {
  const told: Record<string, string> = {};
  let holds = false;
  for (const line of file.split('\n')) {
    if (!line.startsWith(' ')) {
      holds = line === '/*' || line === path;
      continue;
    }
    const [, name, value] = /^ +([\w-]+): (.*)$/.exec(line) ?? [];
    if (!holds || !name || value === undefined) continue;
    const known = told[name.toLowerCase()];
    told[name.toLowerCase()] = known === undefined ? value : `${known}, ${value}`;
  }
  return told;
}

export interface Host {
  /** Of the folder's page. */
  readonly address: string;
  /** Paths that were asked for, in their order. */
  readonly asked: readonly string[];
  stop(): Promise<void>;
}

/**
 * @param folder asked anew each time, so that a test can put another one in its place
 * @param path under which it is served, with both slashes
 * @param also answers of the host's own, by path from its top, with their headers
 */
export async function hostFolder(
  folder: () => string,
  path = '/',
  {
    port = 0,
    name = 'takeup.localhost',
    also = new Map<string, { text: string; headers: Headers }>(),
  } = {},
): Promise<Host> {
  const asked: string[] = [];
  const server = createServer((request, response) => {
    const wanted = decodeURIComponent((request.url ?? '/').replace(/[?#].*$/s, ''));
    asked.push(wanted);
    const own = also.get(wanted);
    if (own) {
      response.writeHead(200, { ...own.headers });
      response.end(own.text);
      return;
    }
    const inside = wanted.startsWith(path) ? `/${wanted.slice(path.length)}` : null;
    const file = inside && join(folder(), inside.endsWith('/') ? `${inside}index.html` : inside);
    if (!file || !existsSync(file)) {
      response.writeHead(404);
      response.end();
      return;
    }
    const headers = readFileSync(join(folder(), '_headers'), 'utf8');
    response.writeHead(200, {
      'content-type': types[extname(file)] ?? 'application/octet-stream',
      ...headersFor(headers, inside),
    });
    response.end(readFileSync(file));
  });
  await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));
  const { port: at } = server.address() as AddressInfo;
  return {
    address: `http://${name}:${at}${path}`,
    asked,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
