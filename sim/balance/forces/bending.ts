import type { Force, Rig, ShoeRig, Work } from '../types.ts';

/** The steel of a bending shoe. Its modes are orthonormal: their own stiffness is the identity (see brake/flex.ts). */
export class Bending implements Force {
  readonly name: string;
  readonly remembers = 0;
  slot = 0;
  readonly #rig: Rig;
  readonly shoe: ShoeRig;
  #energy = 0;

  constructor(rig: Rig, shoe: ShoeRig) {
    this.name = `${shoe.side} shoe’s bending`;
    this.#rig = rig;
    this.shoe = shoe;
  }

  prepare(): void {}

  add(w: Work, y: Float64Array): void {
    const { at: first, freedoms, modes } = this.shoe;
    const { n } = this.#rig;
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
