import type { Anchor } from '../../brake/types.ts';
import { type StickForce, stickForce } from '../../contact/stick.ts';
import { cos, sin } from '../../math/trig.ts';
import type { Arrow } from '../instant.ts';
import { turnIn } from '../place.ts';
import type { Acting, Force, Rig, ShoeRig, Work } from '../types.ts';
import { OnShoe } from './on-shoe.ts';

/**
 * Sticking stiffness of a heel along its flat over that square to it. Two like bodies in contact would have
 * 0.7 to 0.8 (R. D. Mindlin 1949, (1 − ν)/(1 − ν/2)); the bracket bends along the flat more easily than
 * square to it. From memory; where a heel slides, it is not felt.
 */
const STICKS = 0.2;

/** Force of the flat on the heel, its moment about the heel's centre, and the tangent over (x, y, turn). */
interface HeelForce {
  x: number;
  y: number;
  moment: number;
  /** Where the friction's bristle holds after it, mm. */
  held: number;
  /** N·mm; null while it slides. */
  energy: number | null;
  readonly tangent: Float64Array;
}

const makeHeelForce = (): HeelForce => ({
  x: 0,
  y: 0,
  moment: 0,
  held: 0,
  energy: 0,
  tangent: new Float64Array(9),
});

const stick: StickForce = { force: 0, slope: 0, anchor: 0 };
const normalMotion = new Float64Array(3);
const slipMotion = new Float64Array(3);

/**
 * Round heel on its flat: pushes only, N = k·max(0, −u·n), with friction against the slip of its
 * lowest point, u·t − r·turn: an elastic bristle clamped at mu·N (the same law as in contact/).
 *
 * @param held where the bristle holds before, mm of slip
 */
function heelForce(
  anchor: Extract<Anchor, { kind: 'abutment' }>,
  ux: number,
  uy: number,
  turn: number,
  held: number,
  out: HeelForce,
): void {
  const nx = cos(anchor.normal);
  const ny = sin(anchor.normal);
  const tx = -ny;
  const ty = nx;
  const depth = -(ux * nx + uy * ny);
  const { stiffness } = anchor;
  const sticking = STICKS * stiffness;
  const push = stiffness * Math.max(0, depth);
  const slip = ux * tx + uy * ty - anchor.heelRadius * turn;
  stickForce(slip, held, sticking, anchor.friction * push, stick);
  const f = stick.force;
  out.held = stick.anchor;
  out.x = push * nx + f * tx;
  out.y = push * ny + f * ty;
  out.moment = -f * anchor.heelRadius;
  const slides = stick.slope === 0 && f !== 0;
  out.energy = slides ? null : (push * Math.max(0, depth) + (f * f) / sticking) / 2;
  const kn = depth > 0 ? stiffness : 0;
  // Slipping friction follows the normal force: df = sign(f)·mu·dN.
  const coupled = slides ? (f > 0 ? 1 : -1) * anchor.friction * kn : 0;
  normalMotion[0] = nx;
  normalMotion[1] = ny;
  normalMotion[2] = 0;
  slipMotion[0] = tx;
  slipMotion[1] = ty;
  slipMotion[2] = -anchor.heelRadius;
  for (let j = 0; j < 3; j++) {
    const nj = normalMotion[j] as number;
    const tj = slipMotion[j] as number;
    for (let l = 0; l < 3; l++) {
      const nl = normalMotion[l] as number;
      out.tangent[3 * j + l] =
        -kn * nj * nl + stick.slope * tj * (slipMotion[l] as number) - coupled * tj * nl;
    }
  }
}

/** The abutment's flat on a round heel. */
export class Heel extends OnShoe implements Force {
  /** Slip at which the bristle holds, mm. */
  readonly remembers = 1;
  /** Of the flat on the heel. */
  readonly on = makeHeelForce();
  readonly #anchor: Extract<Anchor, { kind: 'abutment' }>;
  readonly #at = [0, 0] as [number, number];

  constructor(rig: Rig, shoe: ShoeRig, anchor: Extract<Anchor, { kind: 'abutment' }>) {
    super(rig, shoe, 'heel');
    this.#anchor = anchor;
  }

  prepare(): void {}

  /** A heel that holds still slips by rolling: −r·turn. */
  rest(_: Work, y: Float64Array, memory: Float64Array): void {
    memory[this.slot] = -this.#anchor.heelRadius * turnIn(this.shoe, y);
  }

  add(w: Work, y: Float64Array, act: Acting): void {
    const { slot, on } = this;
    const { at } = this.shoe;
    const { n } = this.rig;
    const anchor = this.#anchor;
    const ux = y[at] as number;
    const uy = y[at + 1] as number;
    const turn = y[at + 2] as number;
    heelForce(anchor, ux, uy, turn, act.memory[slot] as number, on);
    this.#at[0] = anchor.at[0] + ux;
    this.#at[1] = anchor.at[1] + uy;
    w.after[slot] = on.held;
    w.q[at] = (w.q[at] as number) + on.x;
    w.q[at + 1] = (w.q[at + 1] as number) + on.y;
    w.q[at + 2] = (w.q[at + 2] as number) + on.moment;
    for (let j = 0; j < 3; j++) {
      for (let l = 0; l < 3; l++) {
        const i = (at + j) * n + at + l;
        w.k[i] = (w.k[i] as number) + (on.tangent[3 * j + l] as number);
      }
    }
  }

  /** Where the round heel touches its flat. */
  arrows(): readonly Arrow[] {
    const { normal, heelRadius: r } = this.#anchor;
    const at = [this.#at[0] - r * cos(normal), this.#at[1] - r * sin(normal)] as const;
    return [{ name: this.name, on: this.shoe.side, at, force: [this.on.x, this.on.y] }];
  }

  energy(): number | null {
    return this.on.energy;
  }
}
