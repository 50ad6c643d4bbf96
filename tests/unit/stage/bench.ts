import { readFileSync } from 'node:fs';
import {
  type Brake,
  type BrakeState,
  balance,
  createRig,
  freshState,
  type Instant,
  type Point,
  type Rig,
  readSceneText,
  rest,
  type Turning,
} from '../../../sim/index.ts';
import { apply } from '../../../ui/stage/geometry.ts';
import type { Layers, StageInput } from '../../../ui/stage/scene.ts';
import type { Drawing, Shape } from '../../../ui/stage/shapes.ts';
import { fitView, type View } from '../../../ui/stage/view.ts';
import { themes } from '../../../ui/theme.ts';

/** The first teaching brake on a bench: what the tests of the drawing start from. */
const file = new URL('../../../scenes/quay-van.json', import.meta.url);

export function quayVan(): { brake: Brake; rig: Rig } {
  const read = readSceneText(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return { brake: read.brake, rig: createRig(read.brake) };
}

export interface Setting {
  readonly pressure?: number;
  readonly turning?: Turning;
  readonly tooth?: number;
  readonly layers?: Layers;
  readonly view?: View;
  readonly state?: BrakeState;
}

/** What the stage is given for a press of the quay van's pedal. */
export function inputFor({ brake, rig }: { brake: Brake; rig: Rig }, s: Setting = {}): StageInput {
  // A drum worn by a quarter millimetre leaves both shoes about 0.3 mm of clearance on tooth 2.
  const worn = freshState(brake, brake.drum.radiusNew + 0.25);
  const state = s.state ?? { ...worn, tooth: s.tooth ?? 2 };
  const released = rest(rig, state);
  const instant: Instant =
    s.pressure === undefined
      ? released
      : balance(rig, state, { pressure: s.pressure, turning: s.turning ?? 1 });
  return {
    brake,
    state,
    instant,
    rest: released,
    layers: s.layers ?? {},
    view: s.view ?? fitView(brake, { width: 1370, height: 992, band: 30 }),
    theme: themes.sheet,
  };
}

export function shapeOf(drawing: Drawing, key: string): Shape {
  const found = drawing.shapes.find((s) => s.key === key);
  if (!found) throw new Error(`no shape "${key}"; there are ${drawing.shapes.map((s) => s.key)}`);
  return found;
}

/** Corner points of a shape where it stands. */
export function pointsOf(shape: Shape): Point[] {
  return shape.path.flatMap((c): Point[] => {
    if (c[0] === 'Z' || c[0] === 'A') return [];
    return [shape.place ? apply(shape.place, [c[1], c[2]]) : [c[1], c[2]]];
  });
}
