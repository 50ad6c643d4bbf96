import { describe, expect, it } from 'vitest';
import { instantOf } from '../../sim/balance/build.ts';
import { shoeFactorFull, solveBalance } from '../../sim/index.ts';
import { bendingPair, both } from '../bending-pair.ts';
import { near } from '../near.ts';

/**
 * How far a steel shoe gives at its toe and at its strut seat. Source of every figure: plane-stress finite
 * elements made for this test alone, apart from this project: quadrilaterals of eight nodes, 42 000 freedoms, web
 * 5, table and lining 40 thick; pinned by the mean of the web within 5 mm of the pin; lining without
 * cross-contraction, since the bed's modulus is pressure over strain of a lining as it is pressed; the drum
 * rigid, its friction on every node of the face. Half as fine a mesh gives the same within 0.5 %. Displacements
 * are those of the section behind the point as a whole (mean and turn of its nodes): what the piston's or the
 * lever's end sinks into the edge of the web is no part of a beam.
 */
const FORCE = 1257;
const { bending: steelOnly } = both(bendingPair(0.3));

describe('the steel alone, held at the pin’s section, pushed level at the toe or at the lever’s pivot', () => {
  const { toe, seat, modes } = steelOnly.rear;
  // The strut's seat rides on the lever, which goes with the section at its pivot.
  const give = (a: Float64Array | null, b: Float64Array | null): number => {
    let sum = 0;
    for (let m = 0; m < modes; m++) sum += (a?.[2 * m] as number) * (b?.[2 * m] as number);
    return FORCE * sum;
  };
  it.each([
    ['toe', 'toe', 0.628802],
    ['toe', 'pivot', 0.554863],
    ['pivot', 'pivot', 0.494816],
  ] as const)('%s by a push at the %s: %d mm', (at, by, mm) => {
    const of = { toe: toe.modes, pivot: seat.modes };
    // 0.33 to 0.41 % softer
    near(give(of[at], of[by]), mm, { rel: 0.006 }, `${at} by ${by}`);
  });
});

describe('in the drum, both ways of turning', () => {
  it.each([
    { mu: 0.2, trailing: [0.360267, 0.01255, 0.0086], leading: [0.708653, 0.025133, 0.017358] },
    { mu: 0.3, trailing: [0.470299, 0.010943, 0.007503], leading: [1.31206, 0.031361, 0.021748] },
    { mu: 0.4, trailing: [0.550706, 0.009653, 0.006629], leading: [2.210863, 0.040165, 0.027985] },
  ])('friction $mu: toe and strut seat within 2 %', ({ mu, trailing, leading }) => {
    const { bending: rig, state } = both(bendingPair(mu));
    for (const [turning, [factor, toe, seat]] of [
      [1, trailing],
      [-1, leading],
    ] as const) {
      // From 4 to 8 MPa: all of both linings bears, and what it took until then falls out.
      const at = (pressure: number) => {
        const solved = solveBalance(rig, state, { pressure, turning });
        const seatAt = solved.work.strut.b.x;
        const instant = instantOf(solved, { turning });
        return { rear: instant.shoes.rear, seatAt, factor: shoeFactorFull(instant, 'rear') };
      };
      const [a, b] = [at(4), at(8)];
      const each = FORCE / (b.rear.pistonForce - a.rear.pistonForce);
      near(b.factor, factor as number, { rel: 0.005 }, `factor, ${turning}`);
      near(
        each * (b.rear.pistonTravel - a.rear.pistonTravel),
        toe as number,
        { rel: 0.01 },
        `toe, ${turning}`,
      );
      near(each * (b.seatAt - a.seatAt), seat as number, { rel: 0.02 }, `seat, ${turning}`);
      expect(b.rear.pressure.every((p) => p > 0)).toBe(true);
    }
  });
});
