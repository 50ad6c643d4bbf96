import { readFileSync } from 'node:fs';
import { expect, it, vi } from 'vitest';
import { show } from '../../../ui/record/guest.ts';
import { collisions } from './collide.ts';

/** Dials on every stage: each handle apart from the others, its value told, and no text on another or on a handle. */

vi.mock('uplot', () => ({ default: class {} }));
vi.stubGlobal('matchMedia', () => ({ matches: false, addEventListener: () => undefined }));
vi.stubGlobal('HTMLElement', class {});
vi.stubGlobal('customElements', { get: () => true, define: () => undefined });

const { Session } = await import('../../../ui/session.ts');
const { stations } = await import('../../../ui/stations/index.ts');
const { footOf } = await import('../../../ui/app/layout.ts');
const { drawStage, takenAt } = await import('../../../ui/app/stage-drawing.ts');
const { settle } = await import('../../../ui/stage/settle.ts');
const { dials } = await import('../../../ui/app/dials/index.ts');
const { DialDesk } = await import('../../../ui/app/dials/desk.ts');

const stages = [
  { name: '1920', size: 'wide', width: 1366, height: 988 },
  { name: '1366', size: 'middle', width: 885, height: 690 },
  { name: '1024', size: 'middle', width: 624, height: 690 },
  { name: '390', size: 'narrow', width: 390, height: 410 },
] as const;

const scene = (name: string): object =>
  JSON.parse(readFileSync(new URL(`../../../scenes/${name}.json`, import.meta.url), 'utf8'));

it.each(['quay-van', 'farm-trailer', 'ferry-runabout', 'bench-brake'])('%s', async (name) => {
  const session = Session.of(scene(name), true);
  const found: string[] = [];
  for (const id of ['apply', 'park'] as const) {
    session.do(show, id);
    const station = await (stations.find((s) => s.id === id) ?? stations[0]).load();
    if (!session.layers.dials) session.toggle('dials');
    for (const bar of [0, 40]) {
      if (bar > 0) session.press(bar);
      for (let i = 0; i < 60; i++) session.frame(1 / 60);
      for (const wheel of ['left', 'right'] as const) {
        session.lookAt(wheel);
        for (const { name: stage, size, width, height } of stages) {
          const foot = footOf(station, size, false);
          const zoom = { factor: 1, dx: 0, dy: 0 };
          const strip = size === 'narrow' ? foot : 0;
          const at = { session, station, width, height: height + strip, foot, size, zoom };
          const drawn = drawStage({ ...at, bow: (s, input) => dials.over(s, input, null) });
          const settled = settle(drawn.drawings, takenAt(at));
          const where = `${id}, ${stage}, ${wheel}, ${bar} bar`;
          found.push(...collisions(settled, []).map((line) => `${where}: ${line}`));
          const told = settled.flatMap((d) => d.labels).filter((l) => l.style === 'dial');
          const all = new DialDesk(session).dials;
          // On a phone's stage the one that was chosen alone has its value beside it; on a stage of 624 px one may
          // find no room, and is told beside the stage when it is chosen.
          const least = size === 'narrow' ? 0 : all.length - (width < 700 ? 1 : 0);
          if (told.length < least)
            found.push(`${where}: ${told.length} of ${all.length} dials tell their value`);
          const knobs = drawn.drawings
            .flatMap((d) => d.shapes)
            .filter((s) => s.group === 'dial' && s.key.endsWith('knob'));
          expect(knobs).toHaveLength(all.length);
        }
      }
    }
    session.release();
  }
  expect(found).toEqual([]);
});

it('a pin that was dragged keeps its value beside it, its force an arrow of nearly four kilonewtons', async () => {
  const session = Session.of(scene('quay-van'), true);
  session.toggle('dials');
  session.press(40);
  for (let i = 0; i < 60; i++) session.frame(1 / 60);
  const desk = new DialDesk(session);
  const station = await stations[0].load();
  for (const [x, y] of [
    [-16.5, -73],
    [-22, -76],
    [-18, -60],
  ] as const) {
    const pin = desk.dials.find((d) => d.id === 'front anchor');
    if (pin) desk.turn(pin, [x, y]);
    for (const { size, width, height } of stages.slice(0, 2)) {
      const foot = footOf(station, size, false);
      const zoom = { factor: 1, dx: 0, dy: 0 };
      const at = { session, station, width, height, foot, size, zoom };
      const drawn = drawStage({ ...at, bow: (s, input) => dials.over(s, input, null) });
      const texts = settle(drawn.drawings, takenAt(at)).flatMap((d) => d.labels.map((l) => l.text));
      expect(
        texts.filter((t) => /^Front pin/.test(t)),
        `${x}, ${y} at ${width}`,
      ).toHaveLength(1);
    }
  }
});
