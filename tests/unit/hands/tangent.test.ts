import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assemble } from '../../../sim/balance/assemble.ts';
import { dress, drumAt, noDrum, workFor } from '../../../sim/balance/dress.ts';
import type { Acting, Force, Rig, Work } from '../../../sim/balance/types.ts';
import { createRig, type Hand, type Holdable, type Point } from '../../../sim/index.ts';
import { built, onAbutments, onPins } from '../../any-brake.ts';
import { near } from '../../near.ts';

// Q, K and energy of hands, stops and pistons by hand against central differences, at random poses.

const runs = { numRuns: 4, seed: 11, endOnFailure: true };
const OURS = /^(hand|stop|front piston|rear piston)$/;

/** A hundredth of a millimetre in each freedom, as in force-list.test.ts. */
const stepOf = (rig: Rig, j: number): number => {
  const shoe = j >= rig.rear.at ? rig.rear : rig.front;
  const local = j - shoe.at;
  if (j === rig.leverAt || local === shoe.freedoms - 1) return 1e-4;
  return local < shoe.freedoms ? 0.01 : 0.01 / (shoe.reach[local - shoe.freedoms] as number);
};

function alone(rig: Rig, w: Work, force: Force, y: Float64Array, act: Acting) {
  assemble(rig, { ...w, forces: [force] }, y, act);
  return { q: w.q.slice(), k: w.k.slice(), energy: force.energy() };
}

function checks(rig: Rig, w: Work, force: Force, y: Float64Array, act: Acting): boolean {
  const here = alone(rig, w, force, y, act);
  const scale = (j: number): number => stepOf(rig, j);
  // How the bent section at its pivot turns a lever that is turned itself is left out of the slopes (place.ts).
  const bends = rig.front.modes > 0;
  const most = Math.max(
    ...here.k.map((v, i) => Math.abs(v) * scale(Math.floor(i / rig.n)) * scale(i % rig.n)),
  );
  const force1 = Math.max(...here.q.map((v, j) => Math.abs(v) * scale(j)));
  const known = (j: number): boolean => !bends || j !== rig.leverAt;
  for (let l = 0; l < rig.n; l++) {
    if (!known(l)) continue;
    const h = 1e-4 * scale(l);
    const at = (by: number) => {
      const moved = y.slice();
      moved[l] = (moved[l] as number) + by;
      return alone(rig, w, force, moved, act);
    };
    const [up, down] = [at(h), at(-h)];
    for (let j = 0; j < rig.n; j++) {
      if (!known(j)) continue;
      const slope = ((up.q[j] as number) - (down.q[j] as number)) / (2 * h);
      const told = here.k[j * rig.n + l] as number;
      const allowed = bends ? { abs: 1e-3 * most + 1e-4 } : { abs: 1e-5 * most + 1e-5 };
      near((slope - told) * scale(j) * scale(l), 0, allowed, `${force.name} ${j} ${l}`);
    }
    if (here.energy === null || up.energy === null || down.energy === null) continue;
    const gradient = (up.energy - down.energy) / (2 * h);
    const allowed = bends ? { abs: 1e-3 * force1 + 1e-4 } : { abs: 1e-5 * force1 + 1e-5 };
    near((gradient + (here.q[l] as number)) * scale(l), 0, allowed, `${force.name} energy ${l}`);
  }
  return force1 > 0;
}

/** One hand on each part, within what it can and beyond. */
function handsOn(rig: Rig, chance: () => number): Hand[] {
  const { shoes, parkingLever } = rig.brake;
  const places: readonly [Holdable, Point][] = [
    ['front', shoes.front.holdDown.at],
    ['rear', shoes.rear.toe],
    ['lever', parkingLever.hook],
    ['strut', [0, shoes.front.strutSeat[1]]],
    ['front piston', shoes.front.toe],
    ['rear piston', shoes.rear.toe],
  ];
  return places.map(([on, at]) => {
    const reach = chance() > 0 ? 5 : 60;
    return {
      ...{ on, at, rate: 5 + 200 * Math.abs(chance()), limit: 200 },
      to: [at[0] + reach * chance(), at[1] + reach * chance()],
    };
  });
}

describe('hands and stops at random poses', () => {
  for (const [name, brakes] of [
    ['on pins', onPins],
    ['on abutments', onAbutments],
  ] as const) {
    for (const flexible of [false, true]) {
      it(`tangent and energy are those of the force: ${name}${flexible ? ', bending' : ''}`, () => {
        const seen = new Set<string>();
        fc.assert(
          fc.property(
            brakes,
            fc.infiniteStream(fc.double({ min: -1, max: 1, noNaN: true })),
            (b, stream) => {
              const chance = (): number => stream.next().value ?? 0;
              const { brake, state } = built(b);
              const rig = createRig(brake, { flexible });
              const d = dress(rig, state);
              const w = workFor(d);
              w.memory.set(d.home);
              const law = { kind: 'slide', mu: 0, sense: 0 } as const;
              const common = {
                ...{ pressure: 0.2, cable: 0, frontLaw: law, rearLaw: law, memory: w.memory },
                ...{ home: d.home, strutLength: d.strutLength, strutRest: d.strutRest, shaken: 0 },
                hands: handsOn(rig, chance),
              };
              // Far over, so that toes, pads and hub are passed by turns.
              for (const over of [0, 0.06, -0.12, 0.2]) {
                const y = d.restPose.slice();
                for (const { at, freedoms } of [rig.front, rig.rear]) {
                  y[at + freedoms - 1] = (y[at + freedoms - 1] as number) + over;
                }
                y[rig.leverAt] = 0.03 + Math.abs(over);
                for (let j = 0; j < rig.n; j++) {
                  y[j] = (y[j] as number) + stepOf(rig, j) * (0.3 + 0.7 * chance());
                }
                for (const drumOff of [false, true]) {
                  const act = { ...common, drumOff, drum: drumOff ? noDrum(rig) : drumAt(d, 0) };
                  for (const force of w.forces) {
                    if (!OURS.test(force.name)) continue;
                    if (checks(rig, w, force, y, act)) seen.add(force.name);
                  }
                }
              }
            },
          ),
          runs,
        );
        expect([...seen].sort()).toEqual(['front piston', 'hand', 'rear piston', 'stop']);
      });
    }
  }
});
