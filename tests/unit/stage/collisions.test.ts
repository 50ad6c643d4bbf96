import { afterAll, expect, it, vi } from 'vitest';
import type { LayerName } from '../../../ui/session.ts';
import { samples } from '../../samples.ts';
import { type Made, madeIn, sceneOf, seenWith, stageAt, stages } from '../../stages.ts';
import { type Box, collisions } from './collide.ts';

/**
 * No text lies on another, on what carries a value, or under the zoom's buttons: at every station, with
 * every set of layers, on every stage, brake, wheel and at every moment, in both languages; and at every
 * step of the lessons as they were told. All of the first on the long run, of npm test a part that is drawn
 * by a fixed seed.
 */

vi.mock('uplot', () => ({ default: class {} }));
afterAll(() => vi.resetModules());

const layers: readonly LayerName[] = [
  'fan',
  'comb',
  'forces',
  'names',
  'ghost',
  'heat',
  'loupe',
  'edge',
  'polygons',
];
const SETS = 2 ** layers.length;
const scenes = ['quay-van', 'farm-trailer', 'ferry-runabout', 'bench-brake'] as const;
const languages = ['en', 'de'] as const;

/** Released, pressed with 40 bar while the drum turns either way, and on a standing drum. */
const moments = [
  { moment: 'released', turning: 1, bar: 0 },
  { moment: 'forward', turning: 1, bar: 40 },
  { moment: 'backward', turning: -1, bar: 40 },
  { moment: 'standing', turning: 0, bar: 40 },
] as const;

type At = Parameters<Made['isKey']>[0];

/** What the zoom's buttons take of a stage; stage-view.ts gives them their place. */
function zoomBox(made: Made, at: At): { name: string; box: Box }[] {
  if (at.session.wall || made.isKey(at)) return [];
  const [left, top, width, height] =
    at.size === 'narrow'
      ? [0, at.height - at.foot - 44, 168, 44]
      : at.size === 'wide'
        ? [30, 30, 148, 32]
        : [14, 4, 148, 32];
  return [{ name: 'the zoom', box: { left, top, right: left + width, bottom: top + height } }];
}

const collisionsAt = (made: Made, at: At): readonly string[] =>
  collisions(made.settle(made.drawStage(at).drawings, made.takenAt(at)), zoomBox(made, at));

/** Collisions, one of each kind with where it was found first. */
class Found {
  readonly #found = new Map<string, string>();
  add(lines: readonly string[], kind: string, where: string): void {
    for (const line of lines) {
      const same = `${kind} ${line.replace(/"[^"]*"/g, '').replace(/[\d.]+ px/g, '')}`;
      if (!this.#found.has(same)) this.#found.set(same, `${line}: ${where}`);
    }
  }
  get all(): string[] {
    return [...this.#found.values()];
  }
}

it.each(languages)(
  'no text lies on another, on a value’s lines or under the zoom (%s)',
  async (language) => {
    const made = await madeIn(language);
    const found = new Found();
    const many = samples('stages') > 1000;
    let seed = language === 'en' ? 1 : 2;
    const chance = (): number => {
      seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
      return seed / 2 ** 32;
    };
    const total = scenes.length * moments.length * made.stations.length * stages.length * SETS * 2;
    const share = many ? 1 / languages.length : samples('stages') / total;
    for (const name of scenes) {
      for (const { moment, turning, bar } of moments) {
        const session = made.Session.of(sceneOf(name), true);
        session.turn(turning);
        if (bar > 0) session.press(bar);
        for (let i = 0; i < 90; i++) session.frame(1 / 60);
        for (const station of made.stations) {
          session.do(made.show, station.id);
          for (const stage of stages) {
            for (let set = 0; set < SETS * 2; set++) {
              if (chance() >= share) continue;
              const on = Object.fromEntries(layers.map((l, i) => [l, ((set >> i) & 1) === 1]));
              seenWith(session, { layers: on, wheel: set < SETS ? 'left' : 'right' });
              const at = stageAt(made, session, station, stage);
              if (!at) continue;
              found.add(
                collisionsAt(made, at),
                `${station.id} ${stage.name}`,
                `${station.id}, ${stage.name}, ${name}, ${moment}, ${session.wheel}, ${layers.filter((l) => session.layers[l]).join('+') || 'no layer'}`,
              );
            }
          }
        }
      }
    }
    expect(found.all).toEqual([]);
  },
);

it.each(languages)('nor at a step of a lesson once it is told (%s)', async (language) => {
  const made = await madeIn(language);
  const { shipped } = await import('../../../ui/lessons/library.ts');
  const { goToStep, openLesson, tell } = await import('../../../ui/lessons/wants.ts');
  const station = made.stations.find((s) => s.id === 'lessons');
  if (!station) throw new Error('no station for lessons');
  const found = new Found();
  for (const lesson of shipped.filter((_, i) => i % samples('lessonsDrawnInOne') === 0)) {
    const session = made.Session.of(sceneOf('quay-van'), true);
    session.do(openLesson, lesson);
    for (const step of lesson.steps.keys()) {
      session.do(goToStep, lesson, step);
      session.do(tell, lesson);
      // A step that was told stands as its hand left it.
      session.do(goToStep, lesson, lesson.steps.length);
      session.do(goToStep, lesson, step);
      session.frame(1 / 60);
      for (const stage of stages) {
        const at = stageAt(made, session, station, stage);
        if (!at) continue;
        found.add(
          collisionsAt(made, at),
          `${lesson.name} ${step} ${stage.name}`,
          `${lesson.name}, step ${step + 1}, ${stage.name}`,
        );
      }
    }
  }
  expect(found.all).toEqual([]);
});

it('draws the brake on every stage beside what takes its place', async () => {
  const made = await madeIn('en');
  const session = made.Session.of(sceneOf('quay-van'), true);
  for (const station of made.stations) {
    session.do(made.show, station.id);
    for (const stage of stages) {
      for (const on of [
        {},
        { loupe: true },
        { edge: true },
        { loupe: true, edge: true },
        { polygons: true },
      ]) {
        for (const wheel of ['left', 'right']) {
          seenWith(session, { layers: on, wheel });
          const at = stageAt(made, session, station, stage);
          if (!at) continue;
          const { scale } = made.viewAt(at);
          // A key of 74 px across is the least that is drawn of a brake: our own rule.
          const across = 2 * scale * (session.brake.drum.radiusNew + session.brake.drum.rim);
          expect(across, `${station.id} ${stage.name} ${Object.keys(on)} ${wheel}`).toBeGreaterThan(
            73,
          );
        }
      }
    }
  }
});
