import type { Brake, Instant, Point } from '../../../sim/index.ts';
import { after, apply, degrees, type Frame, nearAngle, turnAbout } from '../geometry.ts';
import type { PartId } from '../part-names.ts';
import { circlePath, type Path, polygon, polyline, trace } from '../path.ts';
import type { Places } from '../place.ts';
import { DASH, outlined, type Shape, stroked, WEIGHT } from '../shapes.ts';
import { coil } from './coil.ts';
import { hasHotLock, hotStrip, reachAt, STRIP_LENGTH } from './hot-lock.ts';
import { maker, perBrake } from './make.ts';
import { webRadius } from './web.ts';

/**
 * Screw strut with a star wheel. Drawn in a frame whose x axis is the strut's and whose 0 is the
 * front seat, the bottom of the fork's slit. The fork, the screw's journal and the wheel stay at
 * the front; the sleeve, the screw's nut, is pushed away from them as the screw turns.
 *
 * A lever turns on a pin in the front web. Its nose stands in a notch of the fork, 8 mm from the
 * pin, its tip on the wheel, 29 mm from the pin. When the web moves outward the fork holds the nose
 * back, so the tip passes along the wheel 29/8 times as far; one tooth on, it drops behind the next
 * edge, and on the way back it takes that edge along.
 */
const NOSE_ARM = 8;
const TIP_ARM = 29;
/** Pin of the lever below the strut's axis. */
const PIN_Y = -16;
const WHEEL = { radius: 11, half: 3, teeth: 20 };
const TOOTH = degrees(360 / WHEEL.teeth);
/** Half heights: fork, screw, sleeve. */
const FORK = 5.5;
const SCREW = 4.5;
const SLEEVE = 7.4;
/** Thread left between wheel and sleeve at tooth 0, and the thread's pitch as drawn. */
const BARE = 3;
const PITCH = 1;
/** The tip rests half a tooth below the axis. */
const REST = -TOOTH / 2;
/** Tongue of the sleeve through the notch of the parking lever. */
const TONGUE = { half: 2, length: 8.5 };

interface Form {
  /** Lever's pin, and the wheel's middle. */
  readonly pin: Point;
  readonly wheel: number;
  readonly fork: Path;
  readonly slit: Path;
  readonly lever: Path;
  readonly ear: Point;
  /** Hole of the lever's spring in the web. */
  readonly hole: Point;
}

const formOf = perBrake((brake: Brake): Form => {
  const { front } = brake.shoes;
  const [sx, sy] = front.strutSeat;
  // The pin stands 6 mm outside the web's inner edge.
  const radius = webRadius(front) - front.steel.webDepth + 6;
  const height = sy + PIN_Y;
  const px = -Math.sqrt(Math.max(1, radius * radius - height * height)) - sx;
  const notch = PIN_Y + NOSE_ARM;
  const wheel = px + TIP_ARM;
  const at = (x: number, y: number): Point => [px + x, PIN_Y + y];
  return {
    pin: [px, PIN_Y],
    wheel,
    fork: trace()
      .line([px - 7, FORK], [6, FORK], [9, 4], [wheel - 5, 4], [wheel - 5, 6.6], [wheel - 3, 6.6])
      .line([wheel - 3, -6.6], [wheel - 5, -6.6], [wheel - 5, -4], [9, -4], [6, -FORK])
      .line([px + 4.8, -FORK], [px + 4.8, notch - 1.6], [px + 2.2, notch - 1.6])
      .arc([px, notch + 0.2], 2.2, 0, Math.PI)
      .line([px - 2.2, notch - 1.6], [px - 4.8, notch - 1.6], [px - 4.8, -FORK], [px - 7, -FORK])
      .close().path,
    slit: polyline([px - 7, 1.6], [0, 1.6], [0, -1.6], [px - 7, -1.6]),
    lever: leverPath(at),
    ear: at(-9, -1.4),
    hole: at(-6.5, -24),
  };
});

/** The lever in reference: nose above its pin, arm to the right, tip on the wheel's edge at REST. */
function leverPath(at: (x: number, y: number) => Point): Path {
  const tip = WHEEL.radius * Math.sin(REST) - PIN_Y;
  return trace()
    .arc(at(0, 0), 4, degrees(-70), degrees(-160))
    .line(at(-6, -3.2))
    .arc(at(-9, -1.4), 2.6, degrees(-60), degrees(-290))
    .line(at(-4, 2.6), at(-2, 4.5))
    .arc(at(0, NOSE_ARM), 2, Math.PI, 0)
    .line(at(2, 4.2))
    .bend(at(11, 5.6), at(20, 7.8))
    .line(at(24.2, 11.4), at(24.2, tip), at(30.2, tip), at(30.2, tip - 2))
    .line(at(27.8, tip - 3), at(25, 5.6))
    .bend(at(13, -3), at(3, -4))
    .close().path;
}

const box = (x0: number, x1: number, half: number): Path =>
  polygon([
    [x0, -half],
    [x1, -half],
    [x1, half],
    [x0, half],
  ]);

/** Sleeve from its chamfered mouth to the tongue in the parking lever's notch. */
const sleevePath = (x0: number, x1: number): Path =>
  polygon([
    [x0, -SLEEVE + 1.2],
    [x0 + 1.2, -SLEEVE],
    [x1 - 14, -SLEEVE],
    [x1 - 10, -3.8],
    [x1, -3.8],
    [x1, -TONGUE.half],
    [x1 + TONGUE.length, -TONGUE.half],
    [x1 + TONGUE.length, TONGUE.half],
    [x1, TONGUE.half],
    [x1, 3.8],
    [x1 - 10, 3.8],
    [x1 - 14, SLEEVE],
    [x0 + 1.2, SLEEVE],
    [x0, SLEEVE - 1.2],
  ]);

function threadPath(x0: number, x1: number): Path {
  const lines: Path[] = [];
  for (let x = x1 - PITCH / 2; x > x0; x -= PITCH) {
    lines.push(polyline([x - PITCH / 2, -SCREW], [x, SCREW]));
  }
  return lines.flat();
}

/**
 * How far the web has gone out over the fork, mm, and how far the wheel has turned, teeth. Where a
 * step is shown by itself (the shoes at rest, part of a tooth climbed), the lever comes back from a
 * whole tooth and takes the wheel along.
 */
export function screwStep(brake: Brake, instant: Instant): { over: number; turned: number } {
  const over = Math.max(0, instant.separation - instant.strutLength);
  const { growth, lostMotion } = brake.adjuster;
  const shown = over < lostMotion / 2 && instant.climb > 0;
  if (!shown) return { over, turned: instant.tooth };
  const here = growth[instant.tooth] ?? 0;
  const next = growth[instant.tooth + 1] ?? here;
  return {
    over: (lostMotion + next - here) * (1 - instant.climb),
    turned: instant.tooth + instant.climb,
  };
}

/** Wheel on its edge: the edge of tooth k stands at R·sin of its angle; every fifth has a mark. */
function starWheel(x: number, turned: number, flash: number, place: Frame): Shape[] {
  const { radius, half, teeth } = WHEEL;
  const make = maker('strut', 'star wheel');
  const edges: Path[] = [];
  const marks: Path[] = [];
  for (let k = 0; k < teeth; k++) {
    const angle = nearAngle(REST + TOOTH * (k + turned), 0);
    if (Math.cos(angle) <= 0.05) continue;
    const y = radius * Math.sin(angle);
    edges.push(polyline([x - half, y], [x + half, y]));
    if (k % 5 > 0) continue;
    const far = radius * Math.sin(Math.min(Math.PI / 2, angle + TOOTH * 0.45));
    marks.push(
      polygon([
        [x - 1, y],
        [x + 1, y],
        [x + 1, far],
        [x - 1, far],
      ]),
    );
  }
  const body: Path = polygon([
    [x - half + 0.4, radius],
    [x + half - 0.4, radius],
    [x + half, radius - 0.6],
    [x + half, -radius + 0.6],
    [x + half - 0.4, -radius],
    [x - half + 0.4, -radius],
    [x - half, -radius + 0.6],
    [x - half, radius - 0.6],
  ]);
  return [
    // Lit round its rim, under it: nothing lies over its teeth.
    ...(flash > 0 ? [make(body, { stroke: 'adj', strokeAlpha: flash, width: 9 }, { place })] : []),
    make(body, outlined('adjFill', WEIGHT.adjuster, 'adj'), { place }),
    make(edges.flat(), stroked('adj', 1.5), { place }),
    make(marks.flat(), { fill: 'adj' }, { place }),
  ];
}

/** Frames of the strut (0 at its front end) and of the lever. */
function framesOf(brake: Brake, instant: Instant, places: Places): { strut: Frame; lever: Frame } {
  const [nx, ny] = brake.shoes.rear.strutSeat;
  const [fx, fy] = brake.shoes.front.strutSeat;
  const [x, y] = apply(places.strut, [nx, ny]);
  const form = formOf(brake);
  const { over } = screwStep(brake, instant);
  const turn = turnAbout(form.pin, -Math.asin(Math.min(0.9, over / NOSE_ARM)));
  return {
    strut: { angle: places.strut.angle, x: x - instant.strutLength, y },
    lever: after(after(places.shoes.front, { angle: 0, x: fx, y: fy }), turn),
  };
}

/**
 * Fork, screw with wheel, sleeve, and the lever that turns the wheel.
 *
 * @param temperature °C, for the hot lock
 * @param flash strength of the click's flash, 0 to 1
 */
export function screwStrut(
  brake: Brake,
  instant: Instant,
  places: Places,
  temperature: number,
  flash: number,
): Shape[] {
  const form = formOf(brake);
  const { strut: place, lever: leverAt } = framesOf(brake, instant, places);
  const length = instant.strutLength;
  const grown = length - brake.adjuster.lengthAtZero;
  const mouth = form.wheel + WHEEL.half + BARE + grown;
  const { turned } = screwStep(brake, instant);
  const fork = maker('strut', 'strut fork');
  const screw = maker('strut', 'screw');
  const sleeve = maker('strut', 'sleeve');
  const lever = maker('strut', 'wheel lever');
  const pin = maker('strut', 'wheel lever pin');
  const spring = maker('strut', 'lever spring');
  const [fx, fy] = brake.shoes.front.strutSeat;
  const web = after(places.shoes.front, { angle: 0, x: fx, y: fy });
  const from = apply(leverAt, form.ear);
  const to = apply(web, form.hole);
  return [
    screw(box(form.wheel, mouth + 2, SCREW), outlined('bolt', 1.3), { place }),
    screw(threadPath(form.wheel + WHEEL.half, mouth), stroked('ink', 1), { place }),
    sleeve(sleevePath(mouth, length), outlined('strut'), { place }),
    fork(form.fork, outlined('strut'), { place }),
    fork(form.slit, stroked('ink', 1, DASH.hidden), { place }),
    ...starWheel(form.wheel, turned, flash, place),
    ...lock(brake, form, temperature, place),
    lever(form.lever, outlined('adjFill', WEIGHT.adjuster, 'adj'), { place: leverAt }),
    pin(circlePath(form.pin, 2), outlined('bolt', 1.3), { place: web }),
    spring(circlePath(form.ear, 1.1), outlined('hole', 1), { place: leverAt }),
    spring(circlePath(form.hole, 1.3), outlined('hole', 1), { place: web }),
    ...coil('lever', 'lever spring', from, to, {
      lead: [4.8, 4.2],
      turns: 8,
      radius: 1.9,
      wire: 0.66,
    }),
  ];
}

/** The strip stands on a post of the fork; its nib drops between two teeth of the wheel. */
function lock(brake: Brake, form: Form, temperature: number, strut: Frame): Shape[] {
  if (!hasHotLock(brake.adjuster)) return [];
  const reach = reachAt(brake.adjuster);
  const nib = 2.2;
  const height = WHEEL.radius + nib + reach;
  const x = form.wheel - STRIP_LENGTH;
  const post = polygon([
    [x - 1, FORK],
    [x - 1, height - 0.4],
    [x + 2.6, height - 0.4],
    [x + 2.6, FORK],
  ]);
  const make = maker('strut', 'strut fork', ' post');
  return [
    make(post, outlined('strut'), { place: strut }),
    ...hotStrip(temperature, {
      at: after(strut, { angle: 0, x, y: height }),
      nib,
      most: reach + 0.9,
    }),
  ];
}

/** Points for the names layer. */
export function screwSpots(
  brake: Brake,
  instant: Instant,
  places: Places,
): { part: PartId; at: Point }[] {
  const form = formOf(brake);
  const { strut, lever } = framesOf(brake, instant, places);
  const grown = instant.strutLength - brake.adjuster.lengthAtZero;
  const mouth = form.wheel + WHEEL.half + BARE + grown;
  const on = (x: number, y: number): Point => apply(strut, [x, y]);
  const spots: { part: PartId; at: Point }[] = [
    { part: 'strut fork', at: on(4, 2) },
    { part: 'star wheel', at: on(form.wheel, 5) },
    { part: 'screw', at: on(form.wheel + WHEEL.half + BARE * 0.6, 1) },
    { part: 'sleeve', at: on((mouth + instant.strutLength) / 2, 0) },
    { part: 'wheel lever', at: apply(lever, [form.pin[0] + 19, PIN_Y + 3.5]) },
    { part: 'wheel lever pin', at: apply(lever, form.pin) },
    { part: 'lever spring', at: apply(lever, [form.pin[0] - 8, PIN_Y - 12]) },
  ];
  if (hasHotLock(brake.adjuster)) {
    const y = WHEEL.radius + 2.2 + reachAt(brake.adjuster);
    spots.push({ part: 'hot lock', at: on(form.wheel - STRIP_LENGTH + 6, y) });
  }
  return spots;
}

/** Where the loupe looks, in the world, and how much it sees, mm. */
export function screwSight(brake: Brake, instant: Instant, places: Places) {
  const { strut } = framesOf(brake, instant, places);
  return { look: apply(strut, [7, -3]), radius: 25 };
}
