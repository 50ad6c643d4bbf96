import { expect, it, vi } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import { Session } from '../../../ui/session.ts';

/** The page's own modules ask the browser for its window's size while they load. */
async function load() {
  vi.stubGlobal('matchMedia', () => ({ matches: false, addEventListener: () => undefined }));
  return import('../../../ui/app/layout.ts');
}

it.each([
  [480, 40, 'middle'],
  [480, 0, 'wide'],
  [0, 300, 'narrow'],
] as const)(
  'a stage squeezed to %i × %i px still has a brake to draw, and a loupe with a rim',
  async (width, height, size) => {
    const { brakeView, lensFor } = await load();
    const session = Session.of(quayVan, false);
    expect(brakeView(session, width, height, 50, size).scale).toBeGreaterThan(0);
    expect(lensFor(session, width, height, 50).radius).toBeGreaterThan(0);
  },
);
