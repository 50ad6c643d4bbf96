import type { Force, Rig, ShoeRig, Work } from '../types.ts';
import { OnShoe } from './on-shoe.ts';

/** The steel of a bending shoe. Its modes are orthonormal: their own stiffness is the identity (see brake/flex.ts). */
export class Bending extends OnShoe implements Force {
  readonly remembers = 0;
  #energy = 0;

  constructor(rig: Rig, shoe: ShoeRig) {
    super(rig, shoe, 'shoe’s bending');
  }

  prepare(): void {}

  add(w: Work, y: Float64Array): void {
    const { at: first, freedoms, modes } = this.shoe;
    const { n } = this.rig;
    let sum = 0;
    for (let m = 0; m < modes; m++) {
      const at = first + freedoms + m;
      const z = y[at] as number;
      w.q[at] = (w.q[at] as number) - z;
      w.k[at * n + at] = (w.k[at * n + at] as number) - 1;
      sum += z * z;
    }
    this.#energy = sum / 2;
  }

  arrows(): readonly [] {
    return [];
  }

  energy(): number {
    return this.#energy;
  }
}
