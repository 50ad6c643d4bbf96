import type { Brake, BrakeState, Instant } from '../../sim/index.ts';
import { isTold } from '../../sim/index.ts';
import type { Theme } from '../theme.ts';
import {
  cornerLabels,
  fanLabel,
  roleLabels,
  shortRoleLabels,
  turnArrow,
  turnLabel,
} from './layers/captions.ts';
import { comb } from './layers/comb.ts';
import { fan } from './layers/fan.ts';
import { forces } from './layers/forces.ts';
import { ghost } from './layers/ghost.ts';
import { heat } from './layers/heat.ts';
import { label } from './layers/label.ts';
import { type NumberedName, nameSpots, names } from './layers/names.ts';
import type { PartId } from './part-names.ts';
import { drawingOf } from './parts/adjuster.ts';
import { anchors } from './parts/anchors.ts';
import { cylinder } from './parts/cylinder.ts';
import { drum } from './parts/drum.ts';
import { hub, paintStroke } from './parts/hub.ts';
import { parkingLever, parkingLeverOver } from './parts/parking.ts';
import { plate } from './parts/plate.ts';
import { returnSprings } from './parts/return-springs.ts';
import { holdDown, shoe } from './parts/shoe.ts';
import { liftLimit } from './parts/strut.ts';
import { type Places, placesOf } from './place.ts';
import type { Drawing, Label, Shape } from './shapes.ts';
import { toMm, type View } from './view.ts';
import { zoneFrame } from './zone-frame.ts';

export interface Layers {
  /** Magnification of the gap fan; 0 or left out: off. */
  readonly fan?: number;
  readonly comb?: boolean;
  readonly forces?: boolean;
  readonly names?: boolean;
  readonly ghost?: boolean;
  readonly heat?: boolean;
}

export interface StageInput {
  readonly brake: Brake;
  readonly state: BrakeState;
  readonly instant: Instant;
  /** The released brake in the same state. */
  readonly rest: Instant;
  readonly layers: Layers;
  readonly view: View;
  readonly theme: Theme;
  /** Turn of the drum as shown on studs and paint, rad; left out: the instant's. */
  readonly turn?: number;
  /** Strength of the click's flash on the lever, 0 to 1. */
  readonly flash?: number;
  /** Names of the roles: in the corners with what the drum does, short beside the toes, or none. */
  readonly roles?: 'full' | 'short' | 'none';
  /** Line in the upper left corner. */
  readonly caption?: string;
  /** Names asked for one by one: those told so far. Left out: all are told. */
  readonly revealed?: ReadonlySet<PartId>;
  /** The only parts that are named. Left out: all that have a name. */
  readonly only?: ReadonlySet<PartId>;
  /** Zone frame around the stage. */
  readonly frame?: boolean;
}

export interface BrakeDrawing extends Drawing {
  /** The names in the order of their numbers, where numbers stand for them; else empty. */
  readonly names: readonly NumberedName[];
  /** No room for words: all names are numbers, and need their list. */
  readonly numbered: boolean;
}

/** Off, it is neither drawn nor named. */
const STRUT_SPRING: PartId = 'strut spring';

/**
 * The solid parts, back to front, at true scale where they truly stand.
 *
 * @param warm the heat layer, which lies on drum and linings
 */
function solid(input: StageInput, places: Places, warm: readonly Shape[]): Shape[] {
  const { brake, state, instant } = input;
  const turn = input.turn ?? instant.drumAngle;
  const { strutLoose, unheld = [], unhooked = [] } = state.condition;
  const strut = drawingOf(brake).shapes(
    brake,
    instant,
    places,
    state.temperature,
    input.flash ?? 0,
  );
  return [
    ...plate(brake),
    ...hub(brake, turn),
    ...parkingLever(brake, places.parking),
    ...shoe(brake, state, 'front', places.shoes.front),
    ...shoe(brake, state, 'rear', places.shoes.rear),
    ...parkingLeverOver(brake, places.parking),
    ...(unheld.includes('front') ? [] : holdDown(brake, 'front', places.shoes.front)),
    ...(unheld.includes('rear') ? [] : holdDown(brake, 'rear', places.shoes.rear)),
    ...drum(brake, instant.drumRadius, state.drumRadius),
    ...warm,
    paintStroke(brake, turn),
    ...cylinder(brake, places.out, instant.pressure),
    ...anchors(brake),
    ...(strutLoose ? strut.filter((s) => s.part !== STRUT_SPRING) : strut),
    ...returnSprings(brake, instant, unhooked),
  ];
}

/** The whole stage at an instant: parts and layers as shapes in millimetres, and their labels. */
export function drawBrake(input: StageInput): BrakeDrawing {
  const { brake, state, instant, rest, layers, view } = input;
  const places = placesOf(brake, instant, liftLimit(brake, state.temperature));
  const shapes: Shape[] = [];
  const labels: Label[] = [];
  let list: readonly NumberedName[] = [];
  let numbered = false;
  const put = (layer: { shapes: readonly Shape[]; labels: readonly Label[] }) => {
    shapes.push(...layer.shapes);
    labels.push(...layer.labels);
  };

  if (input.frame) put(zoneFrame(view));
  const warm = layers.heat
    ? heat({ ...input, named: layers.names === true }, places.shoes)
    : { shapes: [], labels: [] };
  shapes.push(...solid(input, places, warm.shapes));
  labels.push(...warm.labels);
  if (layers.fan) {
    const gaps = fan(brake, instant, layers.fan, view);
    // On a narrow stage the names' numbers stand where the values would.
    put(layers.names && view.narrow ? { ...gaps, labels: [] } : gaps);
  }
  // Names stand where the peaks would be written.
  if (layers.comb && isTold(instant)) put(comb(brake, instant, view, !layers.names));
  if (layers.ghost) shapes.push(...ghost(brake, state, instant, rest));
  if (layers.forces) put(forces(brake, instant, places.shoes, view, !layers.names));
  shapes.push(...turnArrow(brake, instant, view.tall === true));
  if (layers.names) {
    const { only } = input;
    const gone = state.condition.strutLoose ? STRUT_SPRING : null;
    const spots = nameSpots(brake, instant, places).filter(
      ({ part }) => part !== gone && (!only || only.has(part)),
    );
    const layer = names(spots, brake, view, only ? undefined : input.revealed);
    put(layer);
    list = layer.list;
    numbered = layer.numbered;
  }
  labels.push(...words(input));
  return { shapes, labels, view, names: list, numbered };
}

/** Role names, the way of turning and the caption. */
function words(input: StageInput): Label[] {
  const { brake, instant, layers, view } = input;
  const roles = input.roles ?? (layers.names ? 'none' : 'full');
  const out: Label[] = [];
  if (view.narrow || view.wall) {
    if (roles !== 'none') out.push(...cornerLabels(instant, view, layers.comb === true));
    if (view.wall && roles !== 'none') out.push(turnLabel(brake, instant, view));
    if (view.wall && (layers.fan ?? 0) > 1) out.push(fanLabel(layers.fan ?? 1, view));
  } else {
    if (roles === 'full') out.push(...roleLabels(instant, view, input.frame === true));
    if (roles === 'short') out.push(...shortRoleLabels(brake, instant, view));
    else if (roles === 'full') out.push(turnLabel(brake, instant, view));
  }
  if (input.caption) {
    // Right of the zoom's buttons.
    const corner = input.frame ? [194, 47] : [178, 20];
    out.push(
      label(view, {
        key: 'caption',
        text: input.caption,
        at: toMm(view, [corner[0] as number, corner[1] as number]),
        anchor: 'start',
        style: 'caption',
        colour: 'ink2',
      }),
    );
  }
  return out;
}
