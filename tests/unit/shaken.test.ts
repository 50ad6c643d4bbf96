import { describe, expect, it } from 'vitest';
import runabout from '../../scenes/ferry-runabout.json';
import { assemble } from '../../sim/balance/assemble.ts';
import { dress, drumAt, workFor } from '../../sim/balance/dress.ts';
import { solveBalance } from '../../sim/balance/press.ts';
import type { Brake } from '../../sim/index.ts';
import { createRig, freshState, readScene } from '../../sim/index.ts';
import { Wearing } from '../../sim/wear/wearing.ts';
import { askedCounter } from '../asked-counter.ts';

/** The runabout with a heel that rubs a little on its flat, and a hold-down that is shaken off in part. */
function rubbing(friction: number, shakenOff: number): Brake {
  const { front, rear } = runabout.shoes;
  const read = readScene({
    ...runabout,
    shoes: {
      front: {
        ...front,
        anchor: { ...front.anchor, friction },
        holdDown: { ...front.holdDown, shakenOff },
      },
      rear,
    },
  });
  if (!read.ok) throw new Error(JSON.stringify(read));
  return read.brake;
}

const { counter, counting } = askedCounter();

/** Times that a press by steps may ask for its forces: 30 to 50 steps of some 20 each, a few that are sought longer. A search around the solver took ten times as many. */
const MOST_ASKED = 8000;

describe.each([
  [0.001, 1],
  [0.2, 1],
  [0.001, 0.96],
  [0, 0.96],
])('a heel that rubs with %s, a hold-down of which %s is shaken off', (friction, shakenOff) => {
  const brake = rubbing(friction, shakenOff);
  const rig = createRig(brake, { more: [counting] });
  const state = freshState(brake);
  const pressures = Array.from({ length: 24 }, (_, i) => 0.1 + 0.2 * i);

  it('lies on the strut without force where the drum has shaken it just so far, or free of it', () => {
    let lying = 0;
    for (const pressure of pressures) {
      const { solution, work, act } = solveBalance(rig, state, { pressure, turning: 1 });
      expect(solution.settled && solution.converged, `${pressure} MPa`).toBe(true);
      const parting = work.strut.length - act.strutLength;
      if (!solution.strutOn) {
        expect(parting).toBeGreaterThan(0);
        continue;
      }
      if (solution.clamp > 0) continue;
      expect(solution.clamp).toBe(0);
      expect(Math.abs(parting)).toBeLessThan(1e-7);
      lying++;
      // Coulomb: a hold-down bears no more than what is left of its friction (and its formal centring pull).
      for (const side of ['front', 'rear'] as const) {
        const { holdDown } = brake.shoes[side];
        const left = holdDown.friction * (1 - act.shaken * holdDown.shakenOff);
        const arrow = work.forces
          .flatMap((f) => f.arrows())
          .find((a) => a.on === side && /hold-down/.test(a.name));
        const [x, y] = arrow?.force ?? [Number.NaN, Number.NaN];
        expect(Math.hypot(x, y)).toBeLessThan(left + 0.05);
      }
    }
    expect(lying).toBeGreaterThan(0);
  });

  it('is found in so many evaluations', () => {
    for (const pressure of pressures) {
      counter.asked = 0;
      solveBalance(rig, state, { pressure, turning: 1 });
      expect(counter.asked, `${pressure} MPa`).toBeLessThan(MOST_ASKED);
    }
  });
});

describe('a press nearly like the one before', () => {
  // Pressed over and over with a lining that wears and a drum that warms, as a brake that drags is driven.
  const brake = rubbing(0.001, 0.2);
  const drive = (again: boolean): { readonly asked: number; readonly at: readonly number[] } => {
    const wearing = new Wearing(createRig(brake, { more: [counting] }), freshState(brake));
    let warm = wearing.makeWarm();
    const at: number[] = [];
    counter.asked = 0;
    for (let n = 0; n < 40; n++) {
      if (!again) warm = wearing.makeWarm();
      wearing.press(warm, 3, 1, null, 20 + 3 * n);
      at.push(wearing.torque, 1e6 * wearing.separation);
      wearing.wearOff(2000);
    }
    return { asked: counter.asked, at };
  };

  it('goes the same way in three fifths of the evaluations at most', () => {
    const anew = drive(false);
    const again = drive(true);
    // To a tenth of a thousandth of a newton metre and of a micrometre.
    for (const [i, v] of again.at.entries()) {
      expect(Math.abs(v - (anew.at[i] as number))).toBeLessThan(0.1);
    }
    expect(again.asked).toBeLessThan(0.6 * anew.asked);
  });
});

it('what the forces change with the part shaken off is their difference quotient', () => {
  const brake = rubbing(0.2, 0.96);
  const rig = createRig(brake);
  const d = dress(rig, freshState(brake));
  const w = workFor(d);
  w.memory.set(d.home);
  const y = d.restPose.map((v, j) => v + (j % 3 === 2 ? 0.002 : 0.2) * (j % 2 ? -1 : 1));
  const law = { kind: 'slide', mu: 0.3, sense: 1 } as const;
  const forcesAt = (shaken: number): Float64Array => {
    assemble(rig, w, y, {
      ...{ pressure: 1, cable: 0, drum: drumAt(d, 0), frontLaw: law, rearLaw: law },
      ...{ memory: w.memory, home: d.home, strutLength: d.strutLength },
      ...{ strutRest: d.strutRest, shaken },
    });
    return w.q.slice();
  };
  const h = 1e-4;
  const quotient = forcesAt(0.5 + h).map(
    (q, j) => (q - (forcesAt(0.5 - h)[j] as number)) / (2 * h),
  );
  forcesAt(0.5);
  const most = Math.max(...quotient.map(Math.abs));
  expect(most).toBeGreaterThan(5);
  for (const [j, q] of quotient.entries()) {
    expect(Math.abs(q - (w.byShaken[j] as number))).toBeLessThan(1e-6 * most);
  }
});
