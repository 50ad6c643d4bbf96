import { type StopKind, stopStiffness, webEdge } from '../../brake/stop-contacts.ts';
import { cos, sin } from '../../math/trig.ts';
import type { Arrow } from '../instant.ts';
import { makePlaced, place } from '../place.ts';
import type { Acting, Force, Placed, Rig, ShoeRig, Spot, Work } from '../types.ts';
import { addForce, book, indexOf } from './sums.ts';

/** A folded boot between toe and cylinder, mm: from memory. */
const BOOT = 2;
/** How far a hold-down's pin lets its shoe go from where it rests, mm: a pin of some 30 mm tilts by 15°; from memory. */
const PIN_PLAY = 8;
/** Places along a web's inner edge, and along the parking lever, that are held against the hub. */
const EDGE = 9;
const ALONG = 4;

interface Stop {
  readonly shoe: ShoeRig;
  readonly spot: Spot;
  readonly at: Placed;
  readonly kind: StopKind;
  /** Of its contact, N/mm. */
  readonly stiff: number;
  /** Half of what lies between the place and the edge that bears, mm. */
  readonly half: number;
  /** N, and its direction. */
  force: number;
  ex: number;
  ey: number;
  depth: number;
}

function stopsOf(rig: Rig, shoe: ShoeRig): Stop[] {
  const make = (spot: Spot, kind: StopKind): Stop => stopAt(rig, shoe, spot, kind);
  const [from, to] = shoe.shoe.steel.tableArc;
  const r = webEdge(rig.brake, shoe.side);
  const edge = Array.from({ length: EDGE }, (_, i) => {
    const angle = from + ((to - from) * i) / (EDGE - 1);
    return make(rig.spotOn(shoe.side, [r * cos(angle), r * sin(angle)]), 'hub');
  });
  return [make(shoe.toe, 'cylinder'), make(shoe.hold, 'pads'), ...edge];
}

const stopAt = (rig: Rig, shoe: ShoeRig, spot: Spot, kind: StopKind, half = 0): Stop => ({
  ...{ shoe, spot, kind, half, at: makePlaced(rig.n) },
  stiff: stopStiffness(rig.brake, shoe.side, kind),
  ...{ force: 0, ex: 0, ey: 0, depth: 0 },
});

/** The parking lever as a bar from its pivot to its hook. */
function leverStops(rig: Rig): Stop[] {
  const { parkingLever: lever, strutPath } = rig.brake;
  const half = (strutPath?.parkingLever.depth ?? 0) / 2;
  return Array.from({ length: ALONG }, (_, i) => {
    const t = (i + 1) / ALONG;
    const on = (k: 0 | 1) => lever.pivot[k] + t * (lever.hook[k] - lever.pivot[k]);
    return stopAt(rig, rig.rear, rig.spotOn('lever', [on(0), on(1)]), 'lever', half);
  });
}

/**
 * What stops the shoes when no drum does, as one-sided springs as stiff as their contacts (stop-contacts.ts):
 * - the toe's shoulder runs up against the wheel cylinder's end, its boot folded between;
 * - the web's inner edge, or the parking lever's, comes to lie on the hub;
 * - the hold-down's pin tilts until its cup binds: the shoe cannot leave its plate pads sideways.
 * With the drum on, the linings meet it long before, and the stops are not asked.
 */
export class Stops implements Force {
  readonly name = 'stop';
  readonly remembers = 4;
  slot = 0;
  readonly #rig: Rig;
  readonly #stops: readonly Stop[];
  #on = false;

  constructor(rig: Rig) {
    this.#rig = rig;
    this.#stops = [...stopsOf(rig, rig.front), ...stopsOf(rig, rig.rear), ...leverStops(rig)];
  }

  prepare(): void {}

  /** Where toes and hold-downs rest: no stop is nearer than that. Toe's distance and hold-down's place, front, rear. */
  rest(w: Work, y: Float64Array, memory: Float64Array): void {
    for (const stop of this.#stops) {
      if (stop.kind === 'hub' || stop.kind === 'lever') continue;
      const p = place(this.#rig, y, w.turns, stop.spot, stop.at);
      const i = this.slot + (indexOf(stop.shoe) === 0 ? 0 : 2);
      if (stop.kind === 'pads') {
        memory[i] = p.x;
        memory[i + 1] = p.y;
      }
    }
  }

  add(w: Work, y: Float64Array, act: Acting): void {
    for (let i = 0; i < 4; i++) w.after[this.slot + i] = act.home[this.slot + i] as number;
    this.#on = act.drumOff === true;
    if (!this.#on) return;
    for (let i = 0; i < this.#stops.length; i++) this.#bear(w, y, act, this.#stops[i] as Stop);
  }

  #bear(w: Work, y: Float64Array, act: Acting, stop: Stop): void {
    const rig = this.#rig;
    const { shoe, at } = stop;
    const p = place(rig, y, w.turns, stop.spot, at);
    stop.force = 0;
    stop.depth = 0;
    /** Curvature of what bears, 1/mm: the direction turns with the place. */
    let round = 0;
    if (stop.kind === 'cylinder') {
      const { cylinder } = rig.brake;
      const room = Math.min(
        cylinder.halfLength + BOOT,
        Math.abs(shoe.shoe.toe[0] - cylinder.at[0]),
      );
      stop.depth = room - shoe.outward * (p.x - cylinder.at[0]);
      stop.ex = shoe.outward;
      stop.ey = 0;
    } else {
      const i = this.slot + (indexOf(shoe) === 0 ? 0 : 2);
      const pads = stop.kind === 'pads';
      const x = p.x - (pads ? (act.home[i] as number) : 0);
      const yy = p.y - (pads ? (act.home[i + 1] as number) : 0);
      const d = Math.sqrt(x * x + yy * yy);
      const sign = pads ? -1 : 1;
      stop.depth = pads ? d - PIN_PLAY : rig.brake.look.hubRadius + stop.half - d;
      if (d > 0) {
        stop.ex = (sign * x) / d;
        stop.ey = (sign * yy) / d;
        round = sign / d;
      }
    }
    if (!(stop.depth > 0)) return;
    stop.force = stop.stiff * stop.depth;
    const { ex, ey, force } = stop;
    addForce(rig, w, p, force * ex, force * ey);
    book(w, indexOf(shoe), force * ex, force * ey);
    if (!w.slopes) return;
    const { n } = rig;
    for (let j = 0; j < n; j++) {
      const along = ex * (p.dx[j] as number) + ey * (p.dy[j] as number);
      const across = -ey * (p.dx[j] as number) + ex * (p.dy[j] as number);
      for (let l = 0; l < n; l++) {
        const alongL = ex * (p.dx[l] as number) + ey * (p.dy[l] as number);
        const acrossL = -ey * (p.dx[l] as number) + ex * (p.dy[l] as number);
        w.k[j * n + l] =
          (w.k[j * n + l] as number) -
          stop.stiff * along * alongL +
          force * round * across * acrossL;
      }
    }
  }

  arrows(): readonly Arrow[] {
    if (!this.#on) return [];
    return this.#stops.flatMap(({ shoe, at, force, ex, ey, kind }) =>
      force > 0
        ? [
            {
              name: `${this.name}: ${kind}`,
              on: shoe.side,
              at: [at.x, at.y] as const,
              force: [force * ex, force * ey] as const,
            },
          ]
        : [],
    );
  }

  energy(): number {
    return this.#on
      ? this.#stops.reduce((sum, { depth, force }) => sum + (force * Math.max(0, depth)) / 2, 0)
      : 0;
  }
}
