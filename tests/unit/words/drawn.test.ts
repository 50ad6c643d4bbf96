import { afterAll, expect, it, vi } from 'vitest';
import { type Language, madeIn, sceneOf, seenWith, stageAt, stages } from '../../stages.ts';

/**
 * What is drawn is said in the language that is spoken. The browser's tests read the page's own texts; these
 * stand on a canvas. A text that is the same in both languages is one that was never asked for: a code.
 */

vi.mock('uplot', () => ({ default: class {} }));

const layers = ['fan', 'comb', 'forces', 'names', 'ghost', 'heat', 'loupe', 'edge', 'polygons'];
/** No layer, each of them alone, all. */
const sets = [[], ...layers.map((l) => [l]), layers];
/** A desk of each size and a wall. */
const some = stages.filter(({ name }) => ['1920', '1366', '390', 'wall 1920'].includes(name));

/** All texts on all stages. */
async function drawnIn(language: Language): Promise<Set<string>> {
  const made = await madeIn(language);
  const texts = new Set<string>();
  for (const name of ['quay-van', 'ferry-runabout']) {
    for (const turning of [1, 0] as const) {
      const session = made.Session.of(sceneOf(name), true);
      session.turn(turning);
      session.press(40);
      for (let i = 0; i < 20; i++) session.frame(1 / 60);
      for (const station of made.stations) {
        session.do(made.show, station.id);
        for (const stage of some) {
          for (const set of sets) {
            // Each station with each set on one stage or another, all of them with a few.
            if (set.length === 1 && (made.stations.indexOf(station) + sets.indexOf(set)) % 8 > 0)
              continue;
            seenWith(session, {
              layers: Object.fromEntries(layers.map((l) => [l, set.includes(l)])),
            });
            const at = stageAt(made, session, station, stage);
            if (!at) continue;
            for (const { labels } of made.settle(made.drawStage(at).drawings, made.takenAt(at)))
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
