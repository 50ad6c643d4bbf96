import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { serve } from '../../../ui/serve/static.mjs';

const outer = mkdtempSync(join(tmpdir(), 'takeup-serve-'));
const folder = join(outer, 'built');
let served: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  mkdirSync(join(folder, 'folder'), { recursive: true });
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>There</title>');
  writeFileSync(join(outer, 'secret.txt'), 'not for the page');
  served = await serve(folder, 0);
});
afterAll(() => {
  served.server.close();
  served.server.closeAllConnections();
  rmSync(outer, { recursive: true });
});

const ask = (path: string) => fetch(`${served.address}${path}`);

it('gives the page, its type and a content policy without inline or foreign scripts', async () => {
  const answer = await ask('');
  expect(answer.status).toBe(200);
  expect(await answer.text()).toContain('There');
  expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
  const policy = answer.headers.get('content-security-policy');
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("script-src 'self'");
  expect(policy).not.toContain('unsafe');
});

it.each([
  ['none.html', 404],
  ['folder/', 404],
  ['..%2fsecret.txt', 403],
  ['%', 400],
  ['%00', 400],
])('answers %s with %i and goes on', async (path, status) => {
  expect((await ask(path)).status).toBe(status);
  expect((await ask('')).status).toBe(200);
});

it('takes another port when the wished one is taken', async () => {
  const port = Number(new URL(served.address).port);
  const second = await serve(folder, port);
  expect(Number(new URL(second.address).port)).toBeGreaterThan(port);
  second.server.close();
});
