import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assemble } from '../../sim/balance/assemble.ts';
import { dress, drumAt, workFor } from '../../sim/balance/dress.ts';
import { Lining } from '../../sim/balance/forces/lining.ts';
import { addForce, addSlope, book, indexOf } from '../../sim/balance/forces/sums.ts';
import type { Arrow } from '../../sim/balance/instant.ts';
import { makePlaced, place } from '../../sim/balance/place.ts';
import { createRig } from '../../sim/balance/rig.ts';
import type { Acting, Force, Rig, ShoeRig, Work } from '../../sim/balance/types.ts';
import { balance, createMotion, rest, startState } from '../../sim/index.ts';
import { built, onAbutments, onPins } from '../any-brake.ts';
import { tablesQuay } from '../brakes.ts';
import { leftOver } from '../left-over.ts';
import { near } from '../near.ts';

/** Runs of each search; a fixed seed, so that it repeats. */
const runs = { numRuns: 4, seed: 7, endOnFailure: true };

/** What acts while a brake is pressed and its drum turns, or rubs nothing. */
function acting(
  rig: Rig,
  w: Work,
  pressure: number,
  cable: number,
  mu: number,
  state = startState(rig.brake),
): Acting {
  const d = dress(rig, state);
  w.memory.set(d.home);
  const law = { kind: 'slide', mu, sense: 1 } as const;
  return {
    ...{ pressure, cable, drum: drumAt(d, 0), frontLaw: law, rearLaw: law },
    ...{ memory: w.memory, home: d.home, strutLength: d.strutLength },
    ...{ strutRest: d.strutRest, shaken: 0.7 },
  };
}

/** One force alone at a pose: its Q, K and energy. */
function alone(rig: Rig, w: Work, force: Force, y: Float64Array, act: Acting) {
  for (const shoe of [rig.front, rig.rear]) shoe.rub.gather.knownTurn = null;
  assemble(rig, { ...w, forces: [force] }, y, act);
  return { q: w.q.slice(), k: w.k.slice(), energy: force.energy() };
}

/** Not nearly nought: a heel that just touches its flat has no one slope. */
const away = (v: number): number => (v < 0 ? -0.3 : 0.3) + 0.7 * v;

/**
 * How far a force's tangent may be off, of its greatest entry. A lining's, on shoes rigid or bending: 1e-6 is what
 * rounding makes of the quotient at most.
 */
const allowed = (force: Force): number => (force instanceof Lining ? 1e-6 : 1e-3);

/** Scale of each freedom: what moves the brake by about a hundredth of a millimetre. */
const stepOf = (rig: Rig, j: number): number => {
  const shoe = j >= rig.rear.at ? rig.rear : rig.front;
  const local = j - shoe.at;
  if (j === rig.leverAt || local === shoe.freedoms - 1) return 1e-4;
  return local < shoe.freedoms ? 0.01 : 0.01 / (shoe.reach[local - shoe.freedoms] as number);
};

describe('every force of the list, at random poses', () => {
  for (const [name, brakes] of [
    ['on pins', onPins],
    ['on abutments', onAbutments],
  ] as const) {
    for (const flexible of [false, true]) {
      it(`its tangent is the slope of its force, and its force that of its energy: ${name}${flexible ? ', bending' : ''}`, () => {
        const seen = new Set<string>();
        fc.assert(
          fc.property(
            brakes,
            fc.infiniteStream(fc.double({ min: -1, max: 1, noNaN: true })),
            fc.boolean(),
            (b, chance, rubs) => {
              const { brake, state } = built(b);
              const rig = createRig(brake, { flexible });
              const d = dress(rig, state);
              const w = workFor(d);
              const act = acting(rig, w, b.pressure, 200, rubs ? b.friction : 0, state);
              // Out to where linings bear, and all freedoms a little off by chance.
              const y = d.restPose.slice();
              for (const shoe of [rig.front, rig.rear]) {
                const turn = shoe.at + shoe.freedoms - 1;
                y[turn] = (y[turn] as number) + (shoe.opening * 0.012 * b.radius) / b.radius;
              }
              y[rig.leverAt] = (y[rig.leverAt] as number) + 0.03;
              for (let j = 0; j < rig.n; j++)
                y[j] = (y[j] as number) + stepOf(rig, j) * away(chance.next().value ?? 0);
              for (const force of w.forces) {
                const here = alone(rig, w, force, y, act);
                for (let l = 0; l < rig.n; l++) {
                  const h = 1e-4 * stepOf(rig, l);
                  const at = (by: number) => {
                    const moved = y.slice();
                    moved[l] = (moved[l] as number) + by;
                    return alone(rig, w, force, moved, act);
                  };
                  const [up, down] = [at(h), at(-h)];
                  for (let j = 0; j < rig.n; j++) {
                    const slope = ((up.q[j] as number) - (down.q[j] as number)) / (2 * h);
                    const [sj, sl] = [stepOf(rig, j), stepOf(rig, l)];
                    const told = here.k[j * rig.n + l] as number;
                    // In work over both steps, N·mm.
                    const size = Math.max(
                      ...here.k.map(
                        (v, i) =>
                          Math.abs(v) * stepOf(rig, Math.floor(i / rig.n)) * stepOf(rig, i % rig.n),
                      ),
                    );
                    near(
                      (slope - told) * sj * sl,
                      0,
                      { abs: allowed(force) * size + (force instanceof Lining ? 1e-9 : 1e-4) },
                      `${force.name} ${j} ${l}`,
                    );
                  }
                  if (here.energy === null || up.energy === null || down.energy === null) continue;
                  const gradient = (up.energy - down.energy) / (2 * h);
                  const size = Math.max(...here.q.map((v, i) => Math.abs(v) * stepOf(rig, i)));
                  near(
                    (gradient + (here.q[l] as number)) * stepOf(rig, l),
                    0,
                    { abs: 1e-3 * size + 1e-4 },
                    `${force.name} energy ${l}`,
                  );
                  if (size > 0) seen.add(force.name);
                }
              }
            },
          ),
          runs,
        );
        for (const part of [
          'parking cable',
          'upper',
          ...(name === 'on pins' ? ['front lining'] : []),
        ])
          expect(seen, part).toContain(part);
      });
    }
  }
});

it('the cable pulls less within its nipple’s reach of the guide, without a jump: tangent, force and energy agree', () => {
  const { brake, state } = tablesQuay();
  const { parkingLever: lever } = brake;
  const pulled = (x: number): Rig =>
    createRig({
      ...brake,
      parkingLever: { ...lever, pullFrom: [lever.hook[0] + x, lever.hook[1]] },
    });
  const at = (x: number, by: number) => {
    const rig = pulled(x);
    const w = workFor(dress(rig, state));
    const cable = w.forces.find(({ name }) => name === 'parking cable') as Force;
    const y = dress(rig, state).restPose.slice();
    y[rig.leverAt] = (y[rig.leverAt] as number) + by;
    const told = alone(rig, w, cable, y, acting(rig, w, 0, 200, 0, state));
    const i = rig.leverAt;
    return { q: told.q[i] as number, k: told.k[i * rig.n + i] as number, e: told.energy as number };
  };
  const h = 1e-5;
  for (const x of [-4, -1, 2, 4.5, 6]) {
    const [here, up, down] = [at(x, 0), at(x, h), at(x, -h)];
    near((up.q - down.q) / (2 * h), here.k, { rel: 1e-5, abs: 1 }, `${x}: slope`);
    near((down.e - up.e) / (2 * h), here.q, { rel: 1e-5, abs: 1e-2 }, `${x}: energy`);
  }
  /** Its pull with the guide so far from the hook as built, and how far the hook stands from it. */
  const force = (x: number): { pull: number; off: number } => {
    const rig = pulled(x);
    const d = dress(rig, state);
    const w = workFor(d);
    const cable = w.forces.find(({ name }) => name === 'parking cable') as Force;
    alone(rig, w, cable, d.restPose, acting(rig, w, 0, 200, 0, state));
    const [{ at: hook, force: told }] = cable.arrows() as [Arrow];
    const off = Math.hypot(hook[0] - lever.hook[0] - x, hook[1] - lever.hook[1]);
    return { pull: Math.hypot(...told), off };
  };
  near(force(40).pull, 200, { rel: 1e-12 }, 'far off');
  for (const x of [2, 4]) {
    const { pull, off } = force(x);
    expect(off).toBeLessThan(5);
    near(pull, (200 * off) / 5, { rel: 1e-12 }, `${off} mm off`);
  }
});

/**
 * A trial force, whole: a spring between the plate and a shoe at its hold-down, with a catch that lets go
 * for good once it was drawn too far. Solvers, Motion, records and drawings take it as they take all.
 */
class TrialForce implements Force {
  readonly name: string;
  readonly remembers = 1;
  slot = 0;
  readonly #rig: Rig;
  readonly #shoe: ShoeRig;
  readonly #at;
  #fx = 0;
  #fy = 0;
  #stretch = 0;
  static readonly RATE = 400;
  static readonly CATCH = 2;

  constructor(rig: Rig, shoe: ShoeRig) {
    this.name = `${shoe.side} trial`;
    this.#rig = rig;
    this.#shoe = shoe;
    this.#at = makePlaced(rig.n);
  }
  prepare(): void {}
  rest(_: Work, __: Float64Array, memory: Float64Array): void {
    memory[this.slot] = 0;
  }
  add(w: Work, y: Float64Array, act: Acting): void {
    const p = place(this.#rig, y, w.turns, this.#shoe.hold, this.#at);
    const { at } = this.#shoe.shoe.holdDown;
    const rate = act.memory[this.slot] === 0 ? TrialForce.RATE : 0;
    const [x, yy] = [p.x - at[0], p.y - at[1]];
    this.#stretch = Math.hypot(x, yy);
    this.#fx = -rate * x;
    this.#fy = -rate * yy;
    w.after[this.slot] = act.memory[this.slot] as number;
    addForce(this.#rig, w, p, this.#fx, this.#fy);
    book(w, indexOf(this.#shoe), this.#fx, this.#fy);
    addSlope(this.#rig, w, p, this.#shoe, -rate);
  }
  gaveWay(w: Work, act: Acting): boolean {
    if (act.memory[this.slot] !== 0 || this.#stretch < TrialForce.CATCH) return false;
    act.memory[this.slot] = 1;
    w.after[this.slot] = 1;
    return true;
  }
  arrows(): readonly Arrow[] {
    const { x, y } = this.#at;
    return [{ name: this.name, on: this.#shoe.side, at: [x, y], force: [this.#fx, this.#fy] }];
  }
  energy(): number {
    return (TrialForce.RATE * this.#stretch * this.#stretch) / 2;
  }
}

describe('a trial force, put into the list from one file', () => {
  const b = fc.sample(onPins, { numRuns: 1, seed: 3 })[0];
  if (!b) throw new Error('a brake');
  const { brake, state } = built(b);
  const plain = createRig(brake);
  const with_ = createRig(brake, {
    more: [(rig) => [new TrialForce(rig, rig.front), new TrialForce(rig, rig.rear)]],
  });
  const light = { pressure: 0.3, turning: 1 } as const;

  it('is balanced by the solver, shown, and leaves nothing over', () => {
    const i = balance(with_, state, light);
    const [front] = i.forces.filter((f) => f.name === 'front trial');
    expect(front).toBeDefined();
    expect(i.residual).toBeLessThan(1e-4);
    const bare = leftOver(brake, i, 'front');
    const arm = front ? front.at[0] * front.force[1] - front.at[1] * front.force[0] : 0;
    // What the known forces leave over is just the trial's.
    near(bare.force, Math.hypot(...(front?.force ?? [0, 0])), { rel: 1e-6 }, 'force');
    near(bare.moment, Math.abs(arm) / i.drumRadius, { abs: 1e-5 * bare.largest }, 'moment');
    expect(bare.force).toBeGreaterThan(1);
    expect(rest(with_, state).strutForce).not.toBe(rest(plain, state).strutForce);
  });

  it('is the same in time, is kept in a record, and goes on bit for bit', () => {
    const motion = createMotion(with_, state);
    const press = (n: number) => ({ pressure: Math.min(0.3, n / 400), turning: 1 }) as const;
    for (let n = 0; n < 60; n++) motion.step(press(n));
    const kept = motion.snapshot();
    expect(Object.keys(kept.memory)).toContain('rear trial');
    for (let n = 60; n < 360; n++) motion.step(press(n));
    const settled = balance(with_, state, light);
    near(motion.instant().torqueOnDrum, settled.torqueOnDrum, { rel: 2e-3, abs: 20 }, 'torque');
    const other = createMotion(with_, state);
    other.restore(kept);
    for (let n = 60; n < 360; n++) other.step(press(n));
    expect(other.snapshot()).toEqual(motion.snapshot());
  });

  it('needed one file: nothing else in the mechanics or the tests names it', () => {
    const root = fileURLToPath(new URL('../..', import.meta.url));
    const naming = ['sim', 'tests'].flatMap((folder) =>
      readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
        .filter((file) => file.endsWith('.ts'))
        .filter((file) => /\bTrialForce\b/.test(readFileSync(join(root, folder, file), 'utf8')))
        .map((file) => `${folder}/${file}`),
    );
    expect(naming).toEqual(['tests/unit/force-list.test.ts']);
  });
});
