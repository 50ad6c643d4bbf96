import { describe, expect, it } from 'vitest';
import {
  balance,
  drumRadiusNow,
  parked,
  pedalStack,
  rest,
  slideSlope,
  slopeHeld,
  slopeTorque,
} from '../../sim/index.ts';
import { IN, LBF, pinnedPair, quay } from '../brakes.ts';
import { near } from '../near.ts';

/** The plain arithmetic around the brake, each against its published or derived figure. */
describe('hydraulics', () => {
  it('pedal 8:1, 30 mm master, 32 mm wheel piston', () => {
    // Public technician-training example; read. It takes 0.785 for pi/4: right to 0.02 %.
    const b = quay((s) => {
      s.hydraulics.masterBore = 30;
      s.hydraulics.pedalRatio = 8;
      Object.assign(s.cylinder, { bore: 32, outerDiameter: 36 });
    });
    const p = pedalStack(b.brake, balance(b.rig, b.state, { pressure: 4.0764, turning: 1 }));
    near(p.force, 360, { rel: 0.001 }, 'pedal');
    near(4.0764 * b.area, 3277.4, { rel: 0.0005 }, 'wheel piston');
  });
  it('44 N on a 640 mm² master, 180 mm² at the wheel, one shoe without self-help at 340 mm', () => {
    // Serway, College Physics, chapter on fluids; figures from memory, recomputed: 2.1 N·m (printed 2.1).
    // A narrow lining a quarter turn from its pin, pushed at the arm of its normal force: F·c = N·(c ∓ mu·R)
    // leading and trailing, so what is left without self-help is the harmonic mean of both torques.
    const built = pinnedPair({
      mu: 0.5,
      width: 40,
      radius: 340,
      pin: 300,
      arm: 300,
      from: 89.9,
      to: 90.1,
    });
    const force = (44 / 640) * 180;
    for (const turning of [1, -1] as const) {
      const i = balance(built.rig, built.state, { pressure: force / built.area, turning });
      near(i.shoes.front.pistonForce, 12.375, { rel: 1e-9 });
      const [front, rear] = [i.shoes.front.torqueOnDrum, i.shoes.rear.torqueOnDrum].map(Math.abs);
      const torque = 2 / (1 / (front as number) + 1 / (rear as number));
      near(torque, 2100, { rel: 0.005 });
      near(torque, 0.5 * force * 340, { rel: 1e-3 });
    }
  });
  it('fluid of two brakes, 1 mm each piston', () => {
    // Derived: 19.05 mm bores, 20.64 mm master: 570.05 mm³ a wheel, 3.4075 mm of master stroke.
    const { brake, rig, state } = quay();
    const i = balance(rig, state, { pressure: 5, turning: 1 });
    const p = pedalStack(brake, i);
    const each = (i.shoes.front.pistonTravel + i.shoes.rear.pistonTravel) / 2;
    near(p.fluid / each, 570.05, { rel: 1e-4 }, 'mm³ for 1 mm');
    near(
      p.gaps / brake.hydraulics.pedalRatio / each,
      3.4075,
      { rel: 1e-3 },
      'master stroke for 1 mm',
    );
    near(i.shoes.front.pistonForce, 1425.1, { rel: 1e-4 }, 'piston at 5 MPa');
  });
  it('air shrinks by Boyle’s law', () => {
    // Derived: at nine atmospheres over the outer one, nine tenths of the air's volume is gone.
    const { brake, rig, state } = quay();
    const i = balance(rig, state, { pressure: 9 * 0.101325, turning: 1 });
    const master = (Math.PI / 4) * 20.64 ** 2;
    near(pedalStack(brake, i, 1000).air, (4 * 900) / master, { rel: 1e-9 });
  });
});

describe('slopes', () => {
  it('1300 kg on 20 per cent, two brakes, 0.30 m tyres', () => {
    // Derived arithmetic: 11.31°, 2500.2 N, 375.03 N·m a brake.
    const b = quay((s) => {
      s.vehicle.mass = 1300;
      s.vehicle.tyreRadius = 300;
    });
    near(slopeTorque(b.rig, 0.2), 375032.2, { rel: 1e-6 }, 'torque');
    near(slopeHeld(b.rig, slopeTorque(b.rig, 0.2)), 0.2, { rel: 1e-9 }, 'back again');
  });
  it('a 13 348 N car on 16°', () => {
    // Public homework answer; read: 3679 N.
    const b = quay((s) => {
      s.vehicle.mass = 13348 / 9.80665;
    });
    const slope = Math.tan((16 * Math.PI) / 180);
    near((slopeTorque(b.rig, slope) * b.brake.vehicle.brakes) / b.brake.vehicle.tyreRadius, 3679, {
      rel: 5e-4,
    });
  });
  it('steepest hill before the braked axle slides, nose up', () => {
    // Balance equations as in R. N. Jazar, Vehicle Dynamics, section 2.6 (page read); numbers derived:
    // rear-braked 18.892°, front-braked 19.592°. The book's printed result for the front has l − mu·h,
    // its own equations l + mu·h.
    const degrees = (slope: number) => (Math.atan(slope) * 180) / Math.PI;
    near(
      degrees(slideSlope({ fromBraked: 1500, fromOther: 1100, height: 500, grip: 0.7 }, 'lower')),
      18.89208629959137,
      { rel: 1e-9 },
      'rear',
    );
    near(
      degrees(slideSlope({ fromBraked: 1100, fromOther: 1500, height: 500, grip: 0.7 }, 'upper')),
      19.592281891051528,
      { rel: 1e-9 },
      'front',
    );
  });
});

describe('heat', () => {
  it('a 203.2 mm grey-iron drum, 150 K hotter', () => {
    // Coefficient 11.4e-6/K: Callister, Fundamentals of Materials Science and Engineering, table B.6
    // (read); growth derived: 0.34747 mm on diameter, half of it on each gap.
    const b = quay((s) => {
      s.drum = {
        ...s.drum,
        diameterNew: 203.2,
        diameterMax: 204.2,
        lipDiameter: 203.2,
        expansion: 11.4e-6,
      };
      s.shoes.front.lining.groundRadius = 101.6;
      s.shoes.rear.lining.groundRadius = 101.6;
      s.states = [];
    });
    const hot = { ...b.state, temperature: 170 };
    near(
      2 * (drumRadiusNow(b.rig, hot) - drumRadiusNow(b.rig, b.state)),
      0.34747,
      { rel: 1e-4 },
      'diameter',
    );
    const gap = (state: typeof hot) => rest(b.rig, state).shoes.front.gap[24] as number;
    near(gap(hot) - gap(b.state), 0.17374, { rel: 2e-3 }, 'gap');
  });
});

describe('springs and levers', () => {
  it('an extension spring pulls initial tension plus rate times stretch', () => {
    // R. L. Mott, Machine Elements in Mechanical Design, extension-spring example p. 761 (read):
    // 14.0 lbf/in, 16.25 lbf at 3.50 in, 26.75 lbf at 4.25 in.
    const rate = (14 * LBF) / IN;
    const b = quay((s) => {
      s.springs = s.springs.map((spring) => ({ ...spring, rate, fitted: 16.25 * LBF }));
    });
    // The shoes cannot part by the book's 0.75 in: the line through its two points is asked for at
    // every stretch that a press gives.
    const slope = ((26.75 - 16.25) * LBF) / ((4.25 - 3.5) * IN);
    const stretches = [0, 4, 8].map((pressure) => {
      const i = balance(b.rig, b.state, { pressure, turning: 1 });
      const s = i.springs[0];
      if (!s) throw new Error('the brake has springs');
      const stretch = Math.hypot(s.to[0] - s.from[0], s.to[1] - s.from[1]) - 116;
      near(s.force, 16.25 * LBF + slope * stretch, { rel: 1e-9 }, `${stretch} mm, 116 as fitted`);
      return stretch;
    });
    expect(Math.max(...stretches) - Math.min(...stretches)).toBeGreaterThan(0.3);
  });
  it('the parking lever multiplies the cable by its arms', () => {
    // Lever law: arms 109 and 16 mm about the pivot; turned by the play they stand a little closer.
    const { rig, state } = quay();
    near(parked(rig, state, 300).strutForce / 300, 109 / 16, { rel: 0.01 });
  });
});
