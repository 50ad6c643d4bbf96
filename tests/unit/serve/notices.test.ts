import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { noticesOf } from '../../../ui/serve/notices.mjs';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const own = readFileSync(`${root}/LICENSE`, 'utf8').trim();

it('begins with the own licence and gives each package its own, with its notice', () => {
  const text = noticesOf([
    { name: 'mathjs', version: '1.2.3', identifier: 'Apache-2.0', text: 'Words of a licence' },
  ]);
  expect(text.indexOf(own)).toBeLessThan(text.indexOf('mathjs 1.2.3 (Apache-2.0)'));
  expect(text).toContain('Words of a licence');
  const notice = readFileSync(`${root}/node_modules/mathjs/NOTICE`, 'utf8').trim();
  expect(text).toContain(notice);
});

it('gives a package without a licence file the words of the licence that it names', () => {
  const text = noticesOf([{ name: '@pixi/colord', version: '2.9.6', identifier: 'MIT' }]);
  const [, after = ''] = text.split('@pixi/colord 2.9.6 (MIT)');
  expect(after).toContain('Copyright (c) Vlad Shilov');
  expect(after).toContain('Permission is hereby granted, free of charge');
});

it('fails where no licence is to be had', () => {
  expect(() => noticesOf([{ name: '@pixi/colord', version: '2.9.6', identifier: 'ISC' }])).toThrow(
    '@pixi/colord: found no licence text (ISC)',
  );
});
