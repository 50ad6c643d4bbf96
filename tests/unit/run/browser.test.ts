import { afterEach, expect, it, vi } from 'vitest';
import { findBrowser } from '../../run/browser.mjs';

afterEach(() => {
  vi.unstubAllEnvs();
});

it('takes the browser it is told', async () => {
  // Any executable will do: it is not started here.
  vi.stubEnv('CHROME_PATH', process.execPath);
  expect(await findBrowser()).toBe(process.execPath);
});

it('does not look further when the one it is told cannot be run', async () => {
  vi.stubEnv('CHROME_PATH', '/no/such/browser');
  await expect(findBrowser()).rejects.toThrow('CHROME_PATH is /no/such/browser');
});
