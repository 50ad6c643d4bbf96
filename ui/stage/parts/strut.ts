import type { Brake, Point, ToothedLever } from '../../../sim/index.ts';
import { after, apply, degrees, type Frame, mix, polar } from '../geometry.ts';
import { drawnLever, slide } from '../lever.ts';
import type { PartId } from '../part-names.ts';
import { circlePath, type Path, polygon, slotPath, trace } from '../path.ts';
import type { Places } from '../place.ts';
import { outlined, type Shape, WEIGHT } from '../shapes.ts';
import { coil } from './coil.ts';
import { hasHotLock, hotStrip, STRIP_LENGTH, tipTravel } from './hot-lock.ts';
import { maker, perBrake } from './make.ts';
import { windowBox } from './shoe.ts';
import type { StepMarks } from './step-marks.ts';
import { LEVER_TEETH, leverTeeth, SPARE, strutTeeth } from './teeth.ts';

/** Half the height of the strut's bar, mm; its tongue reaches through the notch. Drawn only. */
const BAR = 3.8;
const TONGUE = { half: 2, length: 8.5 };

/** Sizes scale with the radius of the teeth: u = 1 at 27 mm. */
const unit = (lever: ToothedLever): number => lever.toothRadius / 27;

interface StrutPaths {
  readonly plate: Path;
  readonly block: Path;
  readonly pin: Path;
  readonly lever: Path;
  readonly sector: Path;
  readonly slot: Path;
  readonly ear: Point;
  readonly tab: Point;
  /** Ends of the strut spring: on the strut, and on the rear web. */
  readonly spring: readonly [Point, Point];
}
const strutPaths = perBrake((brake: Brake): StrutPaths | null => {
  const lever = drawnLever(brake);
  if (!lever) return null;
  const u = unit(lever);
  const [px, py] = lever.pin;
  const from = ([x, y]: Point): Point => [px + x * u, py + y * u];
  const [nx, ny] = brake.shoes.rear.strutSeat;
  const start = px + 38.1 * u;
  return {
    plate: trace()
      .arc(lever.pin, 5.6 * u, degrees(110), degrees(262))
      .line(polar(29 * u, lever.firstTooth - degrees(4), lever.pin))
      .line(polar(29 * u, degrees(12), lever.pin), from([8.1, 6.2]))
      .close().path,
    block: [
      ...blockPath(brake, lever, start),
      ...slotPath(mix([start, ny], [nx, ny], 0.18), mix([start, ny], [nx, ny], 0.63), 1.7),
      ...circlePath(mix([start, ny], [nx, ny], 0.9), 1.5),
    ],
    pin: circlePath(lever.pin, PIN),
    lever: leverPath(lever),
    sector: trace()
      .line(...leverTeeth(lever))
      .line(polar(lever.toothRadius - lever.toothHeight, LEVER_TEETH * lever.toothAngle))
      .line([20 * u, 2 * u], [20 * u, -2 * u])
      .close().path,
    slot: slotPath([-0.4, 0], [lever.toothHeight + 1.4, 0], 1.75),
    ear: polar(8.6 * u, degrees(-62)),
    tab: from([29.5, -18.4]),
    spring: [
      [mix([start, ny], [nx, ny], 0.537)[0], ny - 2.1],
      [nx + 16, ny - 8],
    ],
  };
});

/** Bar with the tooth block at its front and the tab for the lever's spring below. */
function blockPath(brake: Brake, lever: ToothedLever, start: number): Path {
  const u = unit(lever);
  const { adjuster } = brake;
  const [nx, ny] = brake.shoes.rear.strutSeat;
  const [px, py] = lever.pin;
  const at = (x: number, y: number): Point => [px + x * u, py + y * u];
  const top = lever.firstTooth + (adjuster.teeth + SPARE) * lever.toothAngle;
  return trace()
    .line([nx + TONGUE.length, ny + TONGUE.half], [nx, ny + TONGUE.half])
    .line([nx, ny + BAR], [start, ny + BAR], at(36.1, 16))
    .bend(at(30.1, 19.4), polar(31.2 * u, top + degrees(0.4), lever.pin))
    .line(...strutTeeth(lever, adjuster))
    .line(at(25.9, -17.6))
    .arc(at(29.5, -18.4), 2.6 * u, degrees(200), degrees(340))
    .line(at(32.5, -13))
    .arc(lever.pin, 33.5 * u, degrees(-19), degrees(4))
    .line(at(35.5, 7), [start, ny - BAR], [nx, ny - BAR])
    .line([nx, ny - TONGUE.half], [nx + TONGUE.length, ny - TONGUE.half])
    .close().path;
}

/** The toothed lever in its own frame: pin at 0, arm along +x, finger where the scene says. */
function leverPath(lever: ToothedLever): Path {
  const u = unit(lever);
  const tip = lever.window.x / 2;
  const root = lever.toothRadius - lever.toothHeight;
  const half = LEVER_TEETH * lever.toothAngle;
  const neck = half + degrees(2.3);
  // Points of the finger are told for a finger straight up and 12 mm long.
  const finger = lever.startAngle - lever.firstTooth - Math.PI / 2;
  const grow = lever.noseRadius / 12;
  const f = (x: number, y: number): Point => apply({ angle: finger, x: 0, y: 0 }, [x, y * grow]);
  // The finger's round stands at the nose radius: its side is where the growth is reckoned from.
  const nose = f(0, 12);
  return trace()
    .line(polar(root, -half), ...leverTeeth(lever), polar(root, half), polar(22.5 * u, neck))
    .bend([13 * u, 2.6 * u], [5.6 * u, 4.6 * u])
    .bend(f(2.9, 6.6), f(tip, 11))
    .arc(nose, tip, finger, finger + Math.PI)
    .bend(f(-2.7, 6.4), polar(5.2 * u, degrees(150)))
    .arc([0, 0], 5.2 * u, degrees(154), degrees(258))
    .arc(polar(8.6 * u, degrees(-62)), 2.5 * u, degrees(205), degrees(355))
    .bend([13 * u, -3.2 * u], polar(22.5 * u, -neck))
    .close().path;
}

/** The pin's radius, and the slot's; the nib's near face along the arm. */
const PIN = 1.6;
const NIB_AT = 1.7;
const NIB = 1.15;

/** Length of the strip on the lever: from the nib to behind the teeth. */
const stripLength = (lever: ToothedLever): number =>
  Math.min(STRIP_LENGTH, lever.toothRadius - lever.toothHeight - NIB_AT - 2.4);

/** Height of the nib's end over the slot's middle: at the lock's temperature a lift of one tooth just passes. */
function nibHeight(brake: Brake, lever: ToothedLever, temperature: number): number {
  const length = stripLength(lever);
  const free = NIB_AT - Math.min(slide(lever), NIB_AT);
  const passes = Math.sqrt(PIN * PIN - Math.min(free, PIN) ** 2);
  return passes + tipTravel(brake.adjuster.hotLock, length) - tipTravel(temperature, length);
}

/**
 * Share of a tooth that the lever can climb: the whole, but above the hot lock's temperature only
 * until the pin meets the nib.
 *
 * @param temperature °C
 */
export function liftLimit(brake: Brake, temperature: number): number {
  const lever = drawnLever(brake);
  if (!lever || temperature <= brake.adjuster.hotLock) return 1;
  const height = Math.max(0, nibHeight(brake, lever, temperature));
  const reach = height < PIN ? Math.sqrt(PIN * PIN - height * height) : 0;
  return Math.max(0, Math.min(1, (NIB_AT - reach) / slide(lever)));
}

function lock(brake: Brake, lever: ToothedLever, temperature: number, leverAt: Frame): Shape[] {
  if (!hasHotLock(brake.adjuster)) return [];
  const length = stripLength(lever);
  const cold = nibHeight(brake, lever, 20);
  // Clamped behind the teeth, it lies along the arm towards the pin.
  const at = after(leverAt, { angle: Math.PI, x: NIB_AT + 0.7 + length, y: cold + NIB });
  return hotStrip(temperature, { at, nib: NIB, most: cold, length, towards: 1 });
}

/**
 * Strut, toothed lever in its slot, and the springs that hold them.
 *
 * @param temperature °C, for the hot lock
 * @param flash strength of the click's flash, 0 to 1
 */
export function toothedStrut(
  brake: Brake,
  { shoes, strut, lever: leverAt }: Places,
  temperature: number,
  flash: number,
): Shape[] {
  const p = strutPaths(brake);
  const form = drawnLever(brake);
  if (!p || !form || !leverAt) return [];
  const body = maker('strut', 'strut');
  const tooth = maker('strut', 'toothed lever');
  const pin = maker('strut', 'lever pin');
  const ear = apply(leverAt, p.ear);
  const tab = apply(strut, p.tab);
  const [onStrut, onWeb] = [apply(strut, p.spring[0]), apply(shoes.rear, p.spring[1])];
  const hole = maker('strut', 'lever spring');
  return [
    body(p.plate, outlined('strutPlate', 1.1), { place: strut }),
    tooth(p.lever, outlined('adjFill', WEIGHT.adjuster, 'adj'), { place: leverAt }),
    ...(flash > 0 ? [tooth(p.sector, { fill: 'adj', fillAlpha: flash }, { place: leverAt })] : []),
    pin(p.slot, outlined('hole', 1), { place: leverAt }),
    pin(p.pin, outlined('bolt', 1.3), { place: strut }),
    ...lock(brake, form, temperature, leverAt),
    body(p.block, outlined('strut'), { place: strut, evenOdd: true }),
    hole(circlePath(ear, 1.25), outlined('hole', 1)),
    hole(circlePath(tab, 1.25), outlined('hole', 1)),
    ...coil('lever', 'lever spring', ear, tab, {
      lead: [6.8, 7.3],
      turns: 9,
      radius: 1.8,
      wire: 0.62,
    }),
    hole(circlePath(onStrut, 1.1), outlined('hole', 1)),
    hole(circlePath(onWeb, 1.5), outlined('hole', 1)),
    ...coil('strut', 'strut spring', onStrut, onWeb, {
      lead: [16, 13.2],
      turns: 11,
      radius: 2.3,
      wire: 0.66,
    }),
  ];
}

/** Points for the names layer. */
export function strutSpots(
  brake: Brake,
  { strut, shoes, lever }: Places,
): { part: PartId; at: Point }[] {
  const p = strutPaths(brake);
  const [nx, ny] = brake.shoes.rear.strutSeat;
  const box = windowBox(brake);
  const form = drawnLever(brake);
  if (!p || !form || !box || !lever) return [];
  const ear = apply(lever, p.ear);
  const spots: { part: PartId; at: Point }[] = [
    { part: 'strut', at: apply(strut, [nx - 15, ny]) },
    {
      part: 'strut spring',
      at: mix(apply(strut, p.spring[0]), apply(shoes.rear, p.spring[1]), 0.62),
    },
    {
      part: 'lever window',
      at: apply(shoes.front, [(box.left + box.right) / 2, box.y + form.window.y * 0.44]),
    },
    { part: 'toothed lever', at: apply(lever, [-1, form.noseRadius * 0.62]) },
    { part: 'lever pin', at: apply(strut, form.pin) },
    { part: 'lever spring', at: mix(ear, apply(strut, p.tab), 0.6) },
  ];
  if (hasHotLock(brake.adjuster)) {
    const height = nibHeight(brake, form, 20) + NIB;
    spots.push({ part: 'hot lock', at: apply(lever, [NIB_AT + stripLength(form) * 0.5, height]) });
  }
  return spots;
}

/** Radius of what the loupe sees, mm, on teeth of 27 mm radius: the whole row with the lever's pin. */
const SEEN = 23.1;

/** Where the loupe looks, in the world, and how much it sees, mm. */
export function toothedSight(brake: Brake, places: Places): { look: Point; radius: number } {
  const lever = drawnLever(brake);
  if (!lever) return { look: [0, 0], radius: SEEN };
  const u = unit(lever);
  const middle = lever.firstTooth + (brake.adjuster.teeth / 2) * lever.toothAngle;
  return {
    look: apply(places.strut, polar(13.7 * u, middle, lever.pin)),
    radius: SEEN * u,
  };
}

/** Pointer on the lever at its tooth, and the numbers of the teeth on the strut. */
export function toothedMarks(brake: Brake, places: Places): StepMarks {
  const lever = drawnLever(brake);
  if (!lever || !places.lever) return { shapes: [], numbers: [] };
  const radius = lever.toothRadius;
  const pointer: Shape = {
    key: 'pointer',
    path: polygon([
      [radius - 2.6, 0],
      [radius - 6, 1.05],
      [radius - 6, -1.05],
    ]),
    place: places.lever,
    style: { fill: 'adj' },
    group: 'teeth',
  };
  const numbers: StepMarks['numbers'] = [];
  for (let tooth = 0; tooth <= brake.adjuster.teeth; tooth += 5) {
    const at = polar(radius + 2.4, lever.firstTooth + tooth * lever.toothAngle, lever.pin);
    numbers.push({ key: `tooth ${tooth}`, text: String(tooth), at: apply(places.strut, at) });
  }
  return { shapes: [pointer], numbers };
}
