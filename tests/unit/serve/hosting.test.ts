import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { PNG } from 'pngjs';
import { expect, it } from 'vitest';
import { headersFile, hostingText } from '../../../ui/serve/hosting.mjs';
import { HEADERS, NOT_FRAMED, POLICY } from '../../../ui/serve/policy.mjs';
import { headersFor } from '../../browser/host.ts';

/** What hosts of others are told, and what says that the page is an app. */

const root = fileURLToPath(new URL('../../..', import.meta.url));
const ui = (file: string): string => readFileSync(join(root, 'ui', file), 'utf8');

/** Policies that a browser keeps to, each on its own: a comma parts them (CSP level 3, 2.2). */
const policiesFor = (path: string): string[] =>
  (headersFor(headersFile(), path)['content-security-policy'] ?? '').split(', ');

it('tells a host the headers of our own server; only the bench itself may not be framed', () => {
  for (const page of ['/', '/index.html']) expect(policiesFor(page)).toEqual([POLICY, NOT_FRAMED]);
  expect(policiesFor('/embed.html')).toEqual([POLICY]);
  expect(policiesFor('/assets/any.js')).toEqual([POLICY]);
  expect(headersFor(headersFile(), '/')).toMatchObject(HEADERS);
  for (const [name, value] of Object.entries(HEADERS)) {
    // Each once for each of the two servers, whatever the case of its name.
    expect(hostingText().toLowerCase().split(name).length, name).toBe(3);
    expect(hostingText().split(`"${value}"`).length, name).toBeGreaterThanOrEqual(3);
  }
  expect(hostingText().split(POLICY).length).toBe(3);
  expect(hostingText().split(NOT_FRAMED).length).toBe(3);
});

it('lets no script in but the page’s own files, and none that is made of text', () => {
  expect(POLICY).toMatch(/^default-src 'none'; script-src 'self';/);
  expect(POLICY).not.toMatch(/unsafe|\*|https?:/);
  expect(ui('index.html')).toContain('content="%POLICY%"');
});

it('the app’s manifest leads nowhere else, and its pictures are as large as it says', () => {
  const manifest = JSON.parse(ui('public/takeup.webmanifest')) as {
    start_url: string;
    scope: string;
    id: string;
    icons: { src: string; type: string; sizes: string }[];
  };
  expect([manifest.start_url, manifest.scope, manifest.id]).toEqual(['./', './', './']);
  const pictures = manifest.icons.filter((i) => i.type === 'image/png');
  expect(pictures.map((i) => i.sizes).sort()).toEqual(['192x192', '512x512', '512x512']);
  for (const { src, sizes } of pictures) {
    const { width, height } = PNG.sync.read(readFileSync(join(root, 'ui/public', src)));
    expect(`${width}x${height}`, src).toBe(sizes);
  }
  expect(ui('public/icon.svg')).toMatch(/^<svg xmlns=/);
});
