import quayVan from '../../scenes/quay-van.json';
import { createMotion, createRig, rest, standingState } from '../../sim/index.ts';
import { LabelLayer } from '../../ui/stage/labels.ts';
import { type Lens, loupe } from '../../ui/stage/loupe.ts';
import { PaintedStage } from '../../ui/stage/painted-stage.ts';
import { drawBrake, type StageInput } from '../../ui/stage/scene.ts';
import { themes } from '../../ui/theme.ts';
import { mustRead } from '../brakes.ts';

/** JavaScript time of a frame with everything moving and all layers on: motion, shapes, paint. */
export interface FrameTimes {
  /** ms, one entry a frame. */
  readonly motion: readonly number[];
  readonly shapes: readonly number[];
  readonly paint: readonly number[];
  /** Filling of the canvas, which the browser puts off till it shows it; only when asked for. */
  readonly fill: readonly number[];
  /** Time from frame to frame, ms. */
  readonly gap: readonly number[];
  /** Which renderer painted. */
  readonly kind: string;
  readonly count: { readonly shapes: number; readonly labels: number };
}

declare global {
  interface Window {
    bench?: (frames: number, magnified: boolean, filled?: boolean) => Promise<FrameTimes>;
    /** Time from frame to frame where a canvas of the same size is only cleared, ms. */
    empty?: (frames: number) => Promise<number[]>;
  }
}

const brake = mustRead(quayVan);
const rig = createRig(brake);
const state = standingState(rig, 'Before a click');
const free = rest(rig, state);
const motion = createMotion(rig, state);
const host = document.createElement('div');
Object.assign(host.style, { position: 'fixed', inset: '0' });
document.body.append(host);
const theme = themes.sheet;
// The browser's software draws WebGL too: slowly, but the page's own work in a frame is the same.
const prefer = location.hash === '#webgl' ? 'webgl' : 'canvas';
const stage = new PaintedStage(host, theme);
if (prefer === 'webgl') await stage.bringCard(true);
const texts = new LabelLayer(host);
const { innerWidth: width, innerHeight: height } = window;

/** Whole brake in the middle, or to the right of its loupe. */
const viewOf = (magnified: boolean): StageInput['view'] => ({
  width,
  height,
  scale: magnified ? 3.6 : 4,
  origin: [width * (magnified ? 0.7 : 0.5), height / 2],
  k: 1,
  text: 1,
  narrow: false,
});
const lens: Lens = { at: [width * 0.23, height / 2], radius: width * 0.19 };
/** Texts change ten times a second, as on the page. */
const TEXTS = 6;

window.bench = async (frames, magnified, filled = false) => {
  const view = viewOf(magnified);
  const out = {
    motion: [] as number[],
    shapes: [] as number[],
    paint: [] as number[],
    fill: [] as number[],
    gap: [] as number[],
    kind: stage.kind,
    count: { shapes: 0, labels: 0 },
  };
  let before = 0;
  for (let n = 0; n < frames; n++) {
    const now = await new Promise<number>((done) => requestAnimationFrame(done));
    if (before) out.gap.push(now - before);
    before = now;
    const t0 = performance.now();
    motion.advance(1 / 60, { pressure: 2 + 2 * Math.sin(n / 15), turning: 1 });
    const instant = motion.instant();
    const t1 = performance.now();
    const input: StageInput = {
      brake,
      state: motion.state,
      instant,
      rest: free,
      layers: { fan: 20, comb: true, forces: true, names: true, ghost: true, heat: true },
      view,
      theme,
      frame: true,
    };
    const drawings = [drawBrake(input), ...(magnified ? loupe(input, lens) : [])];
    const t2 = performance.now();
    stage.draw(drawings);
    if (n % TEXTS === 0) texts.draw(drawings);
    const t3 = performance.now();
    if (filled) {
      // Reading one pixel back makes the browser fill them all now.
      stage.canvas.getContext('2d')?.getImageData(0, 0, 1, 1);
      out.fill.push(performance.now() - t3);
    }
    out.motion.push(t1 - t0);
    out.shapes.push(t2 - t1);
    out.paint.push(t3 - t2);
    out.count = {
      shapes: drawings.reduce((sum, d) => sum + d.shapes.length, 0),
      labels: drawings.reduce((sum, d) => sum + d.labels.length, 0),
    };
  }
  return out;
};

window.empty = async (frames) => {
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width, height });
  Object.assign(canvas.style, { position: 'fixed', inset: '0' });
  const pen = canvas.getContext('2d');
  if (!pen) throw new Error('This browser gives no 2D canvas.');
  host.hidden = true;
  document.body.append(canvas);
  const gaps: number[] = [];
  let before = 0;
  for (let n = 0; n < frames; n++) {
    const now = await new Promise<number>((done) => requestAnimationFrame(done));
    if (before) gaps.push(now - before);
    before = now;
    pen.clearRect(0, 0, width, height);
    pen.fillRect(n % width, 0, 1, height);
  }
  canvas.remove();
  host.hidden = false;
  return gaps;
};
