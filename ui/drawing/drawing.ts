import type { BrakeState, Instant, Rig } from '../../sim/index.ts';
import { number } from '../format.ts';
import {
  parkingLever,
  parkingLeverOver,
  plainStrut,
  returnSprings,
  toothedStrut,
  toothMarks,
} from './adjuster-parts.ts';
import { band, forces, gapFan, type Layer, pressureComb, restGhost } from './layers.ts';
import { Pen } from './pen.ts';
import type { Group, Label, Shape, XY } from './shapes.ts';
import { holdDown, pistons, shoe } from './shoe-parts.ts';
import {
  anchors,
  backingPlate,
  cylinderHousing,
  drumSection,
  hub,
  paintStroke,
  turnArrow,
} from './static-parts.ts';

/** What is switched on. */
export interface Layers {
  readonly fan: boolean;
  readonly comb: boolean;
  readonly forces: boolean;
  readonly ghost: boolean;
}

export interface DrawingInput {
  readonly rig: Rig;
  readonly state: BrakeState;
  readonly instant: Instant;
  readonly rest: Instant;
  readonly layers: Layers;
  /** Magnification of the gap fan. */
  readonly magnification: number;
  /** px per mm, for what depends on room. */
  readonly scale: number;
}

export interface Drawing {
  readonly groups: readonly Group[];
  readonly labels: readonly Label[];
}

/** Numbers of a key, to the last micrometre that a pixel could show. */
const key = (...values: number[]): string => values.map((v) => Math.round(v * 1e6)).join();

const poseKey = (i: Instant): string => {
  const { front, rear } = i.shoes;
  return key(
    front.pose.phi,
    front.pose.ux,
    front.pose.uy,
    rear.pose.phi,
    rear.pose.ux,
    rear.pose.uy,
    i.leverAngle,
    i.tooth,
    i.climb,
  );
};

const wearKeys = new WeakMap<BrakeState['wear'], number>();
let wearCount = 0;
/** Wear arrays are never written to, so their identity says whether a lining changed. */
const wearKey = (state: BrakeState): number => {
  const known = wearKeys.get(state.wear);
  if (known !== undefined) return known;
  wearCount++;
  wearKeys.set(state.wear, wearCount);
  return wearCount;
};

/** The whole brake as groups of shapes in painting order, and the texts over it. */
export function drawBrake(input: DrawingInput): Drawing {
  const { rig, state, instant: i, rest, layers } = input;
  const { brake } = rig;
  const pose = poseKey(i);
  const angle = ((i.drumAngle % (2 * Math.PI)) * 180) / Math.PI;
  const groups: Group[] = [
    { name: 'plate', key: brake.name, make: () => backingPlate(brake) },
    { name: 'hub', key: key(angle), make: () => hub(brake, i.drumAngle) },
    { name: 'lever', key: pose, make: () => parkingLever(rig, i) },
    {
      name: 'shoes',
      key: `${pose}/${wearKey(state)}`,
      make: () => [...shoe(rig, state, i, 'front'), ...shoe(rig, state, i, 'rear')],
    },
    {
      name: 'over',
      key: pose,
      make: () => [
        ...parkingLeverOver(rig, i),
        ...holdDown(rig, i, 'front'),
        ...holdDown(rig, i, 'rear'),
      ],
    },
    {
      name: 'drum',
      key: `${brake.name}/${key(i.drumRadius)}`,
      make: () => drumSection(brake, i.drumRadius),
    },
    { name: 'paint', key: key(angle), make: () => paintStroke(brake, i.drumAngle) },
    { name: 'cylinder', key: brake.name, make: () => cylinderHousing(brake) },
    { name: 'pistons', key: `${pose}/${key(i.pressure)}`, make: () => pistons(rig, i) },
    { name: 'anchors', key: brake.name, make: () => anchors(brake) },
    { name: 'lower springs', key: pose, make: () => returnSprings(i, (y) => y <= 0) },
    { name: 'strut', key: pose, make: () => strutShapes(rig, i) },
    { name: 'upper springs', key: pose, make: () => returnSprings(i, (y) => y > 0) },
    { name: 'arrow', key: String(i.turning), make: () => turnArrow(brake, i.turning) },
  ];
  const labels: Label[] = [];
  const add = (name: string, layer: Layer, keyOf: string) => {
    groups.push({ name, key: keyOf, make: () => layer.shapes });
    labels.push(...layer.labels);
  };
  const deep = `${pose}/${key(i.pressure)}/${i.turning}`;
  if (layers.comb) add('comb', pressureComb(rig, i), deep);
  if (layers.fan)
    add(
      'fan',
      gapFan(rig, i, input.magnification, input.scale),
      `${deep}/${input.magnification}/${wearKey(state)}`,
    );
  if (layers.ghost) add('ghost', restGhost(rig, state, i, rest, 8), deep);
  if (layers.forces) add('forces', forces(rig, i), deep);
  return { groups, labels };
}

const strutShapes = (rig: Rig, i: Instant): Shape[] =>
  toothedStrut(rig, i)?.shapes ?? plainStrut(rig, i);

export interface LoupeDrawing extends Drawing {
  /** Middle of what the loupe looks at, mm. */
  readonly look: XY;
}

/** The same parts for the loupe on the teeth: strut, lever, front shoe and plate, with tooth numbers. */
export function drawLoupe(input: DrawingInput): LoupeDrawing {
  const { rig, state, instant: i } = input;
  const lever = rig.brake.adjuster.lever;
  const look: XY = lever
    ? [lever.pin[0] + lever.toothRadius * 0.56, lever.pin[1] + 2]
    : [rig.brake.shoes.front.strutSeat[0] + 14, rig.brake.shoes.front.strutSeat[1]];
  const pose = poseKey(i);
  const marks = toothMarks(rig, i);
  const pen = new Pen();
  if (marks.pointer.length > 0) pen.body(marks.pointer, 'adj', 0.5, 'adj');
  return {
    look,
    groups: [
      { name: 'plate', key: rig.brake.name, make: () => backingPlate(rig.brake) },
      { name: 'shoes', key: `${pose}/${wearKey(state)}`, make: () => shoe(rig, state, i, 'front') },
      { name: 'drum', key: key(i.drumRadius), make: () => drumSection(rig.brake, i.drumRadius) },
      { name: 'strut', key: pose, make: () => strutShapes(rig, i) },
      { name: 'pointer', key: pose, make: () => pen.shapes },
    ],
    labels: marks.numbers.map(({ n, at }) => ({
      at,
      dy: 7,
      anchor: 'middle',
      text: number(n, 0),
      kind: 'tooth',
    })),
  };
}

/** Reach of the drawing from the axis with its layers, mm: what has to fit on the stage. */
export const reach = (rig: Rig): { x: number; y: number } => ({
  x: band(rig) + 30,
  y: band(rig) + 14,
});
