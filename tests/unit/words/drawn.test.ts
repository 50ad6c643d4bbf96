import { readFileSync } from 'node:fs';
import { afterAll, expect, it, vi } from 'vitest';
import { commasIn } from '../../../ui/decimal-comma.ts';
import { show } from '../../../ui/record/guest.ts';
import type { PageSize } from '../../../ui/stations/station.ts';

/**
 * What is drawn is said in the language that is spoken. The browser's tests read the page's own texts; these
 * stand on a canvas. A text that is the same in both languages is one that was never asked for: a code.
 */

vi.mock('uplot', () => ({ default: class {} }));

/** A desk, a phone and a wall, px. */
const stages: readonly { size: PageSize; width: number; height: number; wall: boolean }[] = [
  { size: 'wide', width: 1366, height: 988, wall: false },
  { size: 'middle', width: 885, height: 690, wall: false },
  { size: 'narrow', width: 390, height: 410, wall: false },
  { size: 'wide', width: 960, height: 1080, wall: true },
];
const layers = ['fan', 'comb', 'forces', 'names', 'ghost', 'heat', 'loupe', 'edge', 'polygons'];
/** No layer, each of them alone, all. */
const sets = [[], ...layers.map((l) => [l]), layers];

const scene = (name: string): object =>
  JSON.parse(readFileSync(new URL(`../../../scenes/${name}.json`, import.meta.url), 'utf8'));

/** All texts on all stages, of a page whose modules are loaded anew in that language. */
async function drawnIn(language: 'en' | 'de'): Promise<Set<string>> {
  vi.resetModules();
  vi.stubGlobal('matchMedia', () => ({ matches: false, addEventListener: () => undefined }));
  vi.stubGlobal('customElements', { define: () => undefined, get: () => undefined });
  const { speak } = await import('../../../sim/words/section.ts');
  const { default: german } = await import('../../../sim/words/de.ts');
  speak(language === 'de' ? commasIn(german) : null);
  const entries = await import('../../../ui/stations/index.ts');
  const stations = await Promise.all(entries.stations.map((entry) => entry.load()));
  const { Session } = await import('../../../ui/session.ts');
  const { footOf } = await import('../../../ui/app/layout.ts');
  const { drawStage, takenAt } = await import('../../../ui/app/stage-drawing.ts');
  await import('../../../ui/app/forces-beside.ts');
  const { settle } = await import('../../../ui/stage/settle.ts');
  const texts = new Set<string>();
  for (const name of ['quay-van', 'ferry-runabout']) {
    for (const turning of [1, 0] as const) {
      const session = Session.of(scene(name), true);
      session.turn(turning);
      session.press(40);
      for (let i = 0; i < 20; i++) session.frame(1 / 60);
      for (const station of stations) {
        session.do(show, station.id);
        for (const { size, width, height, wall } of stages) {
          if (size === 'narrow' && station.phoneStage === false) continue;
          for (const set of sets) {
            // Each station with each set on one stage or another, all of them with a few.
            if (set.length === 1 && (stations.indexOf(station) + sets.indexOf(set)) % 8 > 0)
              continue;
            const on = Object.fromEntries(layers.map((l) => [l, set.includes(l)]));
            for (const [key, value] of Object.entries({ layers: on, wall }))
              Object.defineProperty(session, key, { value, configurable: true });
            const foot = footOf(station, size, wall);
            const strip = size === 'narrow' ? foot : 0;
            const at = {
              session,
              station,
              width,
              height: height + strip,
              foot,
              size,
              zoom: { factor: 1, dx: 0, dy: 0 },
            };
            for (const { labels } of settle(drawStage(at).drawings, takenAt(at)))
              for (const { text } of labels) texts.add(text);
          }
        }
      }
    }
  }
  return texts;
}

afterAll(() => vi.resetModules());

/** A scene that is read here by itself keeps the title in its file; the page's own list tells it (ui/scenes.ts). */
const SAME = /^(Quay van|Ferry runabout), 0/;

it('draws no word of English in German', async () => {
  const [english, german] = [await drawnIn('en'), await drawnIn('de')];
  expect(german.size).toBeGreaterThan(100);
  const left = [...german].filter((t) => english.has(t) && /\p{L}{3}/u.test(t) && !SAME.test(t));
  expect(left).toEqual([]);
});
