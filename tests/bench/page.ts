import quayVan from '../../scenes/quay-van.json';
import { createMotion, createRig, readScene, rest, standingState } from '../../sim/index.ts';
import { PixiStage } from '../../ui/stage/pixi-stage.ts';
import { drawBrake } from '../../ui/stage/scene.ts';
import { themes } from '../../ui/theme.ts';

/** JavaScript time of a frame with everything moving and all layers on: motion, shapes, paint. */

declare global {
  interface Window {
    bench?: (frames: number) => Promise<{
      motion: number[];
      shapes: number[];
      paint: number[];
      gap: number[];
      kind: string;
    }>;
  }
}

const read = readScene(quayVan);
if (!read.ok) throw new Error('scene not read');
const { brake } = read;
const rig = createRig(brake);
const state = standingState(rig, 'Before a click');
const free = rest(rig, state);
const motion = createMotion(rig, state);
const host = document.createElement('div');
host.setAttribute('class', 'host');
Object.assign(host.style, { position: 'fixed', inset: '0' });
document.body.append(host);
const theme = themes.sheet;
const stage = await PixiStage.create(host, theme, { prefer: 'canvas' });
const view = {
  width: innerWidth,
  height: innerHeight,
  scale: 3.6,
  origin: [innerWidth / 2, innerHeight / 2] as const,
  k: 1,
  text: 1,
  narrow: false,
};

window.bench = async (frames) => {
  const out = {
    motion: [] as number[],
    shapes: [] as number[],
    paint: [] as number[],
    gap: [] as number[],
    kind: stage.kind,
  };
  let before = 0;
  for (let n = 0; n < frames; n++) {
    const now = await new Promise<number>((done) => requestAnimationFrame(done));
    if (before) out.gap.push(now - before);
    before = now;
    const t0 = performance.now();
    const pressure = 2 + 2 * Math.sin(n / 15);
    motion.advance(1 / 60, { pressure, turning: 1 });
    const instant = motion.instant();
    const t1 = performance.now();
    const drawing = drawBrake({
      brake,
      state: motion.state,
      instant,
      rest: free,
      layers: { fan: 20, comb: true, forces: true, names: true, ghost: true, heat: true },
      view,
      theme,
    });
    const t2 = performance.now();
    stage.draw([drawing]);
    const t3 = performance.now();
    out.motion.push(t1 - t0);
    out.shapes.push(t2 - t1);
    out.paint.push(t3 - t2);
  }
  return out;
};
