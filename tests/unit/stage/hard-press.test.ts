import { readFileSync } from 'node:fs';
import { expect, it, vi } from 'vitest';
import { balance } from '../../../sim/index.ts';
import type { Drawing, Label } from '../../../ui/stage/shapes.ts';
import { boxOf, onScreen } from './collide.ts';

/**
 * Combs grow with the pressure until they fill the sheet. What stands beside them gives way, but says
 * the same: lines of one text stay one below the other, both peaks are told, and nothing lies on the frame.
 */

vi.mock('uplot', () => ({ default: class {} }));

/** Stages as the page gives them in windows of 1920 x 1080 and 1366 x 768, px. */
const stages = [
  { name: '1920', size: 'wide', width: 1366, height: 988, frame: 24 },
  { name: '1366', size: 'middle', width: 885, height: 690, frame: 0 },
] as const;
const scenes = ['quay-van', 'farm-trailer', 'ferry-runabout', 'bench-brake'] as const;

/** The page's own modules ask the browser for its window's size while they load. */
async function load() {
  vi.stubGlobal('matchMedia', () => ({
    matches: false,
    addEventListener: () => undefined,
  }));
  const { stations } = await import('../../../ui/stations/index.ts');
  const apply = await stations[0]?.load();
  const { Session } = await import('../../../ui/session.ts');
  const { footOf } = await import('../../../ui/app/layout.ts');
  const { settle } = await import('../../../ui/stage/settle.ts');
  if (!apply) throw new Error('no station');
  return {
    apply,
    Session,
    footOf,
    settle,
    ...(await import('../../../ui/app/stage-drawing.ts')),
  };
}

it.each(scenes)(
  '%s: captions whole and in order, both peaks, nothing on the frame',
  async (name) => {
    const made = await load();
    const file = new URL(`../../../scenes/${name}.json`, import.meta.url);
    const session = made.Session.of(JSON.parse(readFileSync(file, 'utf8')), true);
    const found: string[] = [];
    for (const turning of [1, -1] as const) {
      for (const bar of [40, 60, 70, 80]) {
        const instant = balance(session.rig, session.state, {
          pressure: bar / 10,
          turning,
        });
        for (const stage of stages) {
          const { width, height, size, frame } = stage;
          for (const wheel of ['left', 'right'] as const) {
            Object.defineProperty(session, 'wheel', {
              value: wheel,
              configurable: true,
            });
            const foot = made.footOf(made.apply, size, false);
            const zoom = { factor: 1, dx: 0, dy: 0 };
            const at = {
              session,
              station: made.apply,
              width,
              height,
              foot,
              size,
              zoom,
              instant,
            };
            const [drawing] = made.settle(made.drawStage(at).drawings, made.takenAt(at));
            if (!drawing) throw new Error('nothing drawn');
            const where = `${stage.name}, ${bar} bar, ${turning}, ${wheel}`;
            const of = (key: string): Label | undefined =>
              drawing.labels.find((l) => l.key === key);
            for (const side of ['front', 'rear']) {
              const lines = [0, 1, 2].map((n) => of(`role ${side} ${n}`));
              const boxes = lines.flatMap((l) => (l ? [boxOf(l, drawing)] : []));
              if (boxes.length !== 3) found.push(`${side}: ${boxes.length} lines: ${where}`);
              boxes.slice(1).forEach((b, i) => {
                const above = boxes[i] as (typeof boxes)[0];
                const gap = b.top - above.bottom;
                if (gap < 0 || gap > 16)
                  found.push(`${side}: line ${i + 1} ${gap} px below: ${where}`);
                const flush = Math.min(
                  Math.abs(b.left - above.left),
                  Math.abs(b.right - above.right),
                );
                if (flush > 1) found.push(`${side}: line ${i + 1} aside by ${flush} px: ${where}`);
              });
              if (!of(`peak ${side}`)) found.push(`${side}: no peak: ${where}`);
            }
            for (const l of drawing.labels) {
              if (l.style === 'zone') continue;
              const b = boxOf(l, drawing);
              const out = Math.max(frame - b.left, b.right - (width - frame), frame - b.top);
              if (out > 0) found.push(`"${l.text}" ${out.toFixed(0)} px over the frame: ${where}`);
            }
          }
        }
      }
    }
    expect(found).toEqual([]);
  },
);

it.each(scenes)(
  '%s: on the wall the pedal’s hardest press has all of its comb on the sheet',
  async (name) => {
    const made = await load();
    const file = new URL(`../../../scenes/${name}.json`, import.meta.url);
    const session = made.Session.of(JSON.parse(readFileSync(file, 'utf8')), true);
    Object.defineProperty(session, 'wall', { value: true });
    const zoom = { factor: 1, dx: 0, dy: 0 };
    for (const turning of [1, -1] as const) {
      const instant = balance(session.rig, session.state, { pressure: 8, turning });
      for (const [width, height] of [
        [960, 1080],
        [683, 768],
      ] as const) {
        const at = { session, station: made.apply, width, height, foot: 0, size: 'wide' as const };
        const [drawing] = made.drawStage({ ...at, zoom, instant }).drawings;
        const combs = drawing?.shapes.filter((s) => s.group === 'comb') ?? [];
        expect(combs.length).toBeGreaterThan(0);
        for (const shape of combs) {
          const xs = onScreen(shape, drawing as Drawing).flatMap(({ points }) =>
            points.filter((_, i) => i % 2 === 0),
          );
          expect(Math.min(...xs), shape.key).toBeGreaterThanOrEqual(0);
          expect(Math.max(...xs), shape.key).toBeLessThanOrEqual(width);
        }
      }
    }
  },
);
