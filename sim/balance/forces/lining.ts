import type { WornBed } from '../../contact/bed.ts';
import { rub, type ShoeStance } from '../../contact/rub.ts';
import type { Acting, Fitted, Force, Rig, ShoeRig, Work } from '../types.ts';
import { OnShoe } from './on-shoe.ts';

/** The drum on a lining: see contact/rub.ts. Told element by element, so it has no arrow here. */
export class Lining extends OnShoe implements Force {
  readonly remembers = 0;
  readonly #front: boolean;
  readonly #stance: ShoeStance;
  #worn: WornBed | null = null;

  constructor(rig: Rig, shoe: ShoeRig) {
    super(rig, shoe, 'lining');
    this.#front = shoe.side === 'front';
    this.#stance = {
      freedoms: shoe.freedoms,
      at: shoe.at,
      q: new Float64Array(0),
      slopes: true,
      cos: 1,
      sin: 0,
    };
  }

  prepare(now: Fitted): void {
    this.#worn = this.#front ? now.front : now.rear;
  }

  add(w: Work, y: Float64Array, act: Acting): void {
    if (!this.#worn) return;
    const shoe = this.shoe;
    const stance = this.#stance;
    stance.q = y;
    stance.slopes = w.slopes;
    stance.cos = this.#front ? w.turns.frontCos : w.turns.rearCos;
    stance.sin = this.#front ? w.turns.frontSin : w.turns.rearSin;
    rub(this.#worn, stance, act.drum, this.#front ? act.frontLaw : act.rearLaw, shoe.rub);
    const { force, tangent } = shoe.rub;
    const { n } = this.rig;
    const { q, k, slopes } = w;
    const { at, n: own } = shoe;
    for (let j = 0; j < own; j++) {
      q[at + j] = (q[at + j] as number) + (force[j] as number);
      if (!slopes) continue;
      const row = (at + j) * n + at;
      for (let l = 0; l < own; l++) {
        k[row + l] = (k[row + l] as number) + (tangent[j * own + l] as number);
      }
    }
  }

  arrows(): readonly [] {
    return [];
  }

  /** Of the springs of its bed, ½·k·penetration² = ½·N·penetration, where nothing rubs. */
  energy(): number | null {
    const { normal, friction, gap } = this.shoe.rub;
    let sum = 0;
    for (let i = 0; i < normal.length; i++) {
      if (friction[i] !== 0) return null;
      sum -= ((normal[i] as number) * (gap[i] as number)) / 2;
    }
    return sum;
  }
}
