import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { serve } from '../../../ui/serve/static.mjs';

const outer = mkdtempSync(join(tmpdir(), 'takeup-serve-'));
const folder = join(outer, 'built');
const page = '<!doctype html><title>There</title>';
const script = `${'export const drum = 100;\n'.repeat(400)}`;
let served: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  mkdirSync(join(folder, 'folder'), { recursive: true });
  mkdirSync(join(folder, '.hidden'));
  writeFileSync(join(folder, 'index.html'), page);
  writeFileSync(join(folder, 'a b.js'), script);
  writeFileSync(join(folder, 'font.woff2'), script);
  writeFileSync(join(folder, '.env'), 'not for the page');
  writeFileSync(join(folder, '.hidden', 'file.txt'), 'not for the page');
  writeFileSync(join(outer, 'secret.txt'), 'not for the page');
  symlinkSync(join(outer, 'secret.txt'), join(folder, 'link.txt'));
  symlinkSync(outer, join(folder, 'out'));
  served = await serve(folder, 0);
});
afterAll(() => {
  served.server.close();
  served.server.closeAllConnections();
  rmSync(outer, { recursive: true });
});

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Buffer;
}

/** What comes back for these very bytes: a browser, or `fetch`, would put the odd ones right. */
function raw(request: string): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const parts: Buffer[] = [];
    const socket = connect(Number(new URL(served.address).port), '127.0.0.1', () => {
      socket.write(request);
    });
    socket.on('data', (part) => parts.push(part));
    socket.on('error', reject);
    socket.on('close', () => {
      const all = Buffer.concat(parts);
      const cut = all.indexOf('\r\n\r\n');
      const [first = '', ...lines] = all.subarray(0, cut).toString().split('\r\n');
      const headers = lines.map((line) => {
        const colon = line.indexOf(':');
        return [line.slice(0, colon).toLowerCase(), line.slice(colon + 1).trim()] as const;
      });
      resolve({
        status: Number(first.split(' ')[1]),
        headers: Object.fromEntries(headers),
        body: all.subarray(cut + 4),
      });
    });
  });
}

const ask = (path: string, method = 'GET', lines = '', host = 'localhost:4747') =>
  raw(`${method} ${path} HTTP/1.1\r\nHost: ${host}\r\nConnection: close\r\n${lines}\r\n`);

const guarded = {
  'content-security-policy': expect.stringMatching(/^default-src 'none'; script-src 'self';/),
  'cross-origin-resource-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
};

/** The answer, guarded like every other; and the page is still served after it. */
async function expectStatus(answer: Promise<Answer>, status: number): Promise<Answer> {
  const got = await answer;
  expect(got.status).toBe(status);
  expect(got.headers).toMatchObject(guarded);
  expect((await ask('/')).body.toString()).toBe(page);
  return got;
}

it('gives the page, its type and a content policy without inline or foreign scripts', async () => {
  const { headers, body } = await expectStatus(ask('/'), 200);
  expect(body.toString()).toBe(page);
  expect(headers['content-type']).toBe('text/html; charset=utf-8');
  expect(headers['content-security-policy']).not.toContain('unsafe');
  expect((await expectStatus(ask('/a%20b.js?v=1#x'), 200)).body.toString()).toBe(script);
});

const long = 'x'.repeat(256);
it.each([
  ['/none.html', 404],
  ['/folder/', 404],
  // A path under a file, and names that no file system takes.
  ['/index.html/x', 404],
  ['/index.html/', 200],
  [`/${long}`, 404],
  [`/${`${long}/`.repeat(40)}`, 404],
  ['/../secret.txt', 404],
  ['/..%2fsecret.txt', 404],
  ['/folder/%2e%2e/%2e%2e/secret.txt', 404],
  ['/..%5csecret.txt', 404],
  ['/c:%5csecret.txt', 404],
  // Dot files and what links lead to.
  ['/.env', 404],
  ['/.hidden/file.txt', 404],
  ['/link.txt', 404],
  ['/out/secret.txt', 404],
  ['/out/built/index.html', 404],
  ['//', 200],
  ['//other.example/', 404],
  ['/%', 400],
  ['/%ff', 400],
  ['/%00', 404],
  ['*', 400],
  ['no-slash', 400],
])('answers %s with %i and goes on', async (path, status) => {
  await expectStatus(ask(path), status);
});

it.each(['POST', 'PUT', 'DELETE', 'OPTIONS', 'TRACE', 'PROPFIND'])('refuses %s', async (method) => {
  const { headers } = await expectStatus(ask('/', method), 405);
  expect(headers['allow']).toBe('GET, HEAD');
});

it('answers HEAD with the headers alone', async () => {
  const { headers, body } = await expectStatus(ask('/', 'HEAD'), 200);
  expect(headers['content-length']).toBe(String(page.length));
  expect(body.length).toBe(0);
});

it.each(['localhost', 'LOCALHOST:80', '127.0.0.1:4747', '[::1]:4747'])(
  'knows itself as %s',
  async (host) => {
    await expectStatus(ask('/', 'GET', '', host), 200);
  },
);

it.each([
  'other.example',
  'localhost.other.example',
  'other.example:4747',
  '127.0.0.1.other.example',
  'localhost@other.example',
  '',
])('is not reached by the name %s, which may only point here', async (host) => {
  await expectStatus(ask('/', 'GET', '', host), 421);
});

it('goes by the host of a whole address', async () => {
  await expectStatus(ask('http://other.example/'), 421);
  await expectStatus(ask('http://localhost:4747/', 'GET', '', 'other.example'), 200);
  await expectStatus(ask('ftp://localhost/'), 400);
});

it.each([
  ['no request at all', 'bring me the page\r\n\r\n', 400],
  ['a header that never ends', `GET / HTTP/1.1\r\nx: ${'x'.repeat(20000)}\r\n\r\n`, 431],
  ['no host', 'GET / HTTP/1.1\r\nConnection: close\r\n\r\n', 421],
  [
    'a way through to another',
    'CONNECT other.example:443 HTTP/1.1\r\nHost: localhost\r\n\r\n',
    405,
  ],
  [
    'an unknown expectation',
    'GET / HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nExpect: x\r\n\r\n',
    200,
  ],
  [
    'two lengths',
    'GET / HTTP/1.1\r\nHost: localhost\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\n',
    400,
  ],
])('answers %s in the same form', async (_, request, status) => {
  await expectStatus(raw(request), status);
});

it('is not ended by one who hangs up', async () => {
  const port = Number(new URL(served.address).port);
  for (const part of ['', 'GET / HT', 'GET /a%20b.js HTTP/1.1\r\nHost: localhost\r\n\r\n']) {
    await new Promise<void>((resolve) => {
      const socket = connect(port, '127.0.0.1', () => {
        socket.write(part);
        socket.resetAndDestroy();
      });
      socket.on('close', () => resolve());
    });
  }
  await expectStatus(ask('/'), 200);
});

it('packs what can be packed, as the browser takes it', async () => {
  const packed = (accepted: string, path = '/a%20b.js') =>
    expectStatus(ask(path, 'GET', `Accept-Encoding: ${accepted}\r\n`), 200);
  const br = await packed('gzip, deflate, br');
  expect(br.headers['content-encoding']).toBe('br');
  expect(br.headers['vary']).toBe('accept-encoding');
  expect(br.body.length).toBeLessThan(script.length / 20);
  expect(brotliDecompressSync(br.body).toString()).toBe(script);
  const gzip = await packed('GZIP;q=0.5, br;q=0');
  expect(gzip.headers['content-encoding']).toBe('gzip');
  expect(gunzipSync(gzip.body).toString()).toBe(script);
  for (const none of ['identity', 'brx', 'br;q=0.0']) {
    const plain = await packed(none);
    expect(plain.headers['content-encoding']).toBeUndefined();
    expect(plain.body.toString()).toBe(script);
  }
  expect((await packed('br', '/font.woff2')).headers['content-encoding']).toBeUndefined();
});

it('packs anew what a build has replaced', async () => {
  const text = async () => {
    const { body } = await ask('/new.js', 'GET', 'Accept-Encoding: br\r\n');
    return brotliDecompressSync(body).toString();
  };
  const file = join(folder, 'new.js');
  writeFileSync(file, 'first');
  expect(await text()).toBe('first');
  writeFileSync(file, 'second');
  expect(await text()).toBe('second');
});

it('takes another port when the wished one is taken', async () => {
  const port = Number(new URL(served.address).port);
  const second = await serve(folder, port);
  expect(Number(new URL(second.address).port)).toBeGreaterThan(port);
  second.server.close();
});
