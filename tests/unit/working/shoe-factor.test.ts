import { expect, it } from 'vitest';
import { balance, bodyGap, freeBody, rest, type ShoeSteps, shoeSteps } from '../../../sim/index.ts';
import { reasonText, stepText } from '../../../sim/workshop/index.ts';
import { pinnedPair, quay } from '../../brakes.ts';
import { closedFactor } from '../../closed-factor.ts';
import { near } from '../../near.ts';
import { bendingQuay, slidingRunabout } from '../../working-brakes.ts';

const steps = (
  built: ReturnType<typeof quay>,
  pressure = 4,
): Record<'front' | 'rear', ShoeSteps> => {
  const { rig, state } = built;
  const instant = balance(rig, state, { pressure, turning: 1 });
  const now = { rig, state, instant, rest: rest(rig, state) };
  const of = (side: 'front' | 'rear'): ShoeSteps => {
    const made = shoeSteps(now, side);
    if (!made) throw new Error('it bears');
    return made;
  };
  return { front: of('front'), rear: of('rear') };
};
const value = ({ closed, elements }: ShoeSteps, code: string): number =>
  [...(closed ?? []), ...elements].find((s) => s.code === code)?.value ?? Number.NaN;

it('goes the closed way to what another writing of it gives, for other shapes and frictions', () => {
  for (const s of [
    { pin: 0.8, arm: 1.6, from: 35, to: 145 },
    { pin: 0.75, arm: 1.4, from: 10, to: 100 },
  ]) {
    for (const mu of [0.2, 0.5]) {
      const radius = 110;
      const built = pinnedPair({
        mu,
        width: 40,
        radius,
        pin: s.pin * radius,
        arm: s.arm * radius,
        from: s.from,
        to: s.to,
      });
      const { front, rear } = steps(built, 1);
      near(
        front.factors[0],
        closedFactor(mu, s.pin, s.arm, s.from, s.to, 1),
        { rel: 1e-6 },
        'leading',
      );
      near(
        rear.factors[0],
        closedFactor(mu, s.pin, s.arm, s.from, s.to, -1),
        { rel: 1e-6 },
        'trailing',
      );
      // 48 elements miss it by less than 0.1 %, as that test allows.
      for (const x of [front, rear]) near(x.factors[1], x.factors[0], { rel: 1e-3 }, x.side);
      expect(front.reasons).toEqual([]);
    }
  }
});

it('has the quay van’s figures of a textbook sum, and the friction at which it locks', () => {
  const { front, rear } = steps(quay());
  // Lining 23.4° to 133.4° from the pin 79.62 mm off, drum 200 mm: s = cos 23.4° − cos 133.4° = 1.6049;
  // n = 79.62·(1.9199/2 − (sin 266.8° − sin 46.8°)/4) = 110.8; f = 100·1.6049 − 79.62·(0.5279 − 0.1577)/2.
  near(value(front, 'sine sum'), 1.605, { abs: 1e-3 }, 's');
  near(value(front, 'pressure arm'), 110.8, { abs: 0.1 }, 'n');
  near(value(front, 'friction arm'), 145.8, { abs: 0.1 }, 'f');
  near(value(front, 'closed factor'), 1.72, { abs: 0.005 }, 'leading');
  near(value(rear, 'closed factor'), 0.57, { abs: 0.005 }, 'trailing');
  near(value(front, 'closed lock'), 0.76, { abs: 0.001 }, 'locks');
  expect(rear.closed?.some((s) => s.code === 'closed lock')).toBe(false);
  // Moments: what closes, less what opens, is the toe's push on its arm.
  near(
    value(front, 'closed normal moment') - value(front, 'closed friction moment'),
    962.2 * 156,
    { rel: 1e-3 },
    'moments',
  );
  for (const s of [...(front.closed ?? []), ...front.elements])
    expect(stepText(s.code).length).toBeGreaterThan(10);
});

it('says why they differ: a shoe that bends, one that slides, a face not worn to its place', () => {
  const codes = (x: ShoeSteps) => x.reasons.map((r) => r.code);
  const bent = steps(bendingQuay());
  expect(codes(bent.front)).toEqual(['bends', 'not the sine']);
  expect(Math.abs(bent.front.factors[1] / bent.front.factors[0] - 1)).toBeGreaterThan(0.05);
  const slides = steps(slidingRunabout());
  expect(slides.front.closed).toBeNull();
  expect(codes(slides.rear)).toContain('no pin');
  expect(codes(slides.rear)).toContain('ends free');
  const ground = steps(
    quay((s) => {
      s.shoes.front.lining.groundRadius = 99.8;
    }),
  );
  expect(codes(ground.front)).toContain('not the sine');
  expect(codes(ground.rear)).toEqual([]);
  for (const r of [...bent.front.reasons, ...slides.rear.reasons])
    expect(reasonText(r)).toMatch(/[.]$/);
});

it('every shoe’s forces close, whichever way it stands', () => {
  for (const built of [quay(), bendingQuay(), slidingRunabout()]) {
    for (const press of [
      { pressure: 0, turning: 0 },
      { pressure: 4, turning: 1 },
      { pressure: 4, turning: -1 },
      { pressure: 3, turning: 0 },
      { pressure: 0, turning: 1, cable: 400 },
    ] as const) {
      const i = balance(built.rig, built.state, press);
      for (const side of ['front', 'rear'] as const) {
        const forces = freeBody(built.rig, built.state, i, side);
        expect(forces.length).toBeGreaterThan(3);
        // Newton's first law: what is left of hundreds of newtons is rounding.
        near(Math.hypot(...bodyGap(forces)), 0, { abs: 1e-3 }, `${side} ${press.pressure}`);
      }
    }
  }
});

it('nothing where nothing bears or a shoe locks', () => {
  const { rig, state } = quay();
  const instant = balance(rig, state, { pressure: 0, turning: 1 });
  expect(shoeSteps({ rig, state, instant, rest: instant }, 'front')).toBeNull();
});
