import { readFileSync } from 'node:fs';
import { expect, it, vi } from 'vitest';
import { show } from '../../../ui/record/guest.ts';
import type { LayerName } from '../../../ui/session.ts';
import type { PageSize } from '../../../ui/stations/station.ts';
import { samples } from '../../samples.ts';
import { type Box, collisions } from './collide.ts';

/**
 * No text lies on another, on what carries a value, or under the zoom's buttons: at every station, with
 * every set of layers, on every stage, brake, wheel and at every moment. All of them on the long run,
 * of npm test a part that is drawn by a fixed seed.
 */

vi.mock('uplot', () => ({ default: class {} }));

/** Stages as the page gives them in windows of 1920 x 1080, 1366 x 768, 1024 x 768, a phone, and on the wall; px. */
const stages: readonly {
  readonly name: string;
  readonly size: PageSize;
  readonly width: number;
  readonly height: number;
  readonly wall?: true;
}[] = [
  { name: '1920', size: 'wide', width: 1366, height: 988 },
  { name: '1366', size: 'middle', width: 885, height: 690 },
  { name: '1024', size: 'middle', width: 624, height: 690 },
  { name: '390', size: 'narrow', width: 390, height: 410 },
  { name: 'wall 1920', size: 'wide', width: 960, height: 1080, wall: true },
  { name: 'wall 1366', size: 'middle', width: 683, height: 768, wall: true },
];
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

type Made = Awaited<ReturnType<typeof load>>;

/** The page's own modules ask the browser for its window's size while they load. */
async function load() {
  vi.stubGlobal('matchMedia', () => ({ matches: false, addEventListener: () => undefined }));
  const entries = await import('../../../ui/stations/index.ts');
  const stations = await Promise.all(entries.stations.map((entry) => entry.load()));
  const { Session } = await import('../../../ui/session.ts');
  const { footOf } = await import('../../../ui/app/layout.ts');
  const drawing = await import('../../../ui/app/stage-drawing.ts');
  // Brings what draws the forces on each shoe.
  await import('../../../ui/app/forces-beside.ts');
  const { settle } = await import('../../../ui/stage/settle.ts');
  return { stations, Session, footOf, settle, ...drawing };
}

const scene = (name: string): object =>
  JSON.parse(readFileSync(new URL(`../../../scenes/${name}.json`, import.meta.url), 'utf8'));

/** Released, pressed with 40 bar while the drum turns either way, and on a standing drum. */
const moments = [
  { moment: 'released', turning: 1, bar: 0 },
  { moment: 'forward', turning: 1, bar: 40 },
  { moment: 'backward', turning: -1, bar: 40 },
  { moment: 'standing', turning: 0, bar: 40 },
] as const;

/** What the zoom's buttons take of a stage; stage-view.ts gives them their place. */
function zoomBox(made: Made, at: Parameters<Made['isKey']>[0]): { name: string; box: Box }[] {
  if (at.session.wall || made.isKey(at)) return [];
  const [left, top, width, height] =
    at.size === 'narrow'
      ? [0, at.height - at.foot - 44, 168, 44]
      : at.size === 'wide'
        ? [30, 30, 148, 32]
        : [14, 4, 148, 32];
  return [{ name: 'the zoom', box: { left, top, right: left + width, bottom: top + height } }];
}

it('no text lies on another, on a value’s lines or under the zoom', async () => {
  const made = await load();
  const found = new Map<string, string>();
  const many = samples('stages') > 1000;
  let seed = 1;
  const chance = (): number => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return seed / 2 ** 32;
  };
  const total = scenes.length * moments.length * made.stations.length * stages.length * SETS * 2;
  const share = many ? 1 : samples('stages') / total;
  for (const name of scenes) {
    for (const { moment, turning, bar } of moments) {
      const session = made.Session.of(scene(name), true);
      session.turn(turning);
      if (bar > 0) session.press(bar);
      for (let i = 0; i < 90; i++) session.frame(1 / 60);
      for (const station of made.stations) {
        session.do(show, station.id);
        for (const stage of stages) {
          for (let set = 0; set < SETS * 2; set++) {
            if (chance() >= share) continue;
            const on = Object.fromEntries(layers.map((l, i) => [l, ((set >> i) & 1) === 1]));
            // The drawing reads these three alone; set here without a step of the record each.
            const seen = {
              layers: on,
              wheel: set < SETS ? 'left' : 'right',
              wall: stage.wall === true,
            };
            for (const [key, value] of Object.entries(seen))
              Object.defineProperty(session, key, { value, configurable: true });
            const { width, height, size } = stage;
            const foot = made.footOf(station, size, session.wall);
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
            if (size === 'narrow' && station.phoneStage === false) continue;
            for (const line of collisions(
              made.settle(made.drawStage(at).drawings, made.takenAt(at)),
              zoomBox(made, at),
            )) {
              const where = `${station.id}, ${stage.name}, ${name}, ${moment}, ${session.wheel}, ${layers.filter((l) => session.layers[l]).join('+') || 'no layer'}`;
              const same = `${station.id} ${stage.name} ${line.replace(/"[^"]*"/g, '').replace(/[\d.]+ px/g, '')}`;
              if (!found.has(same)) found.set(same, `${line}: ${where}`);
            }
          }
        }
      }
    }
  }
  expect([...found.values()]).toEqual([]);
});

it('draws the brake on every stage beside what takes its place', async () => {
  const made = await load();
  const session = made.Session.of(scene('quay-van'), true);
  for (const station of made.stations) {
    session.do(show, station.id);
    for (const { name, size, width, height, wall } of stages) {
      if (size === 'narrow' && station.phoneStage === false) continue;
      for (const on of [
        {},
        { loupe: true },
        { edge: true },
        { loupe: true, edge: true },
        { polygons: true },
      ]) {
        for (const wheel of ['left', 'right']) {
          const seen = { layers: on, wheel, wall: wall === true };
          for (const [key, value] of Object.entries(seen))
            Object.defineProperty(session, key, { value, configurable: true });
          const foot = made.footOf(station, size, session.wall);
          const zoom = { factor: 1, dx: 0, dy: 0 };
          const { scale } = made.viewAt({ session, station, width, height, foot, size, zoom });
          // A key of 74 px across is the least that is drawn of a brake: our own rule.
          const across = 2 * scale * (session.brake.drum.radiusNew + session.brake.drum.rim);
          expect(across, `${station.id} ${name} ${Object.keys(on)} ${wheel}`).toBeGreaterThan(73);
        }
      }
    }
  }
});
