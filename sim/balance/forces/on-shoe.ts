import type { Rig, ShoeRig } from '../types.ts';

/** What every force on one shoe has: its name, its place in the memory, and what it acts on. */
export abstract class OnShoe {
  readonly name: string;
  slot = 0;
  readonly shoe: ShoeRig;
  protected readonly rig: Rig;

  /** @param what the force's name, after its shoe's side */
  constructor(rig: Rig, shoe: ShoeRig, what: string) {
    this.name = `${shoe.side} ${what}`;
    this.rig = rig;
    this.shoe = shoe;
  }
}
