import { expect, it } from 'vitest';
import { liningShape, thinnestLeft } from '../../sim/contact/bed.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

const { brake } = quay();

it('sloped ends run evenly from their full depth to none, and are not gauged', () => {
  const { drum } = brake;
  const lining = {
    ...brake.shoes.front.lining,
    from: 2,
    to: 3,
    thicknessNew: 5,
    groundRadius: drum.radiusNew,
    chamferArc: 0.15,
    chamferDepth: 0.6,
  };
  // Elements of 0.05 rad; their middles 1/6, 3/6 and 5/6 along the slope: 0.5, 0.3 and 0.1 mm are cut.
  const shape = liningShape(lining, drum, 20);
  const cuts = [0.5, 0.3, 0.1, ...Array<number>(14).fill(0), 0.1, 0.3, 0.5];
  cuts.forEach((cut, i) => {
    near(shape.face[i] as number, drum.radiusNew - cut, { abs: 1e-9 }, `face ${i}`);
    near(shape.thickness[i] as number, 5 - cut, { abs: 1e-9 }, `thickness ${i}`);
    expect(shape.sloped[i], `sloped ${i}`).toBe(cut > 0 ? 1 : 0);
  });
  const wear = new Float64Array(20).fill(0.2);
  wear[0] = 3;
  wear[9] = 0.7;
  near(thinnestLeft(shape, wear), 4.3, { abs: 1e-9 }, 'gauged');
  expect(liningShape({ ...lining, chamferDepth: 0 }, drum, 20).sloped).not.toContain(1);
});

it('ground smaller than its drum, a lining touches it at its middle alone', () => {
  const lining = { ...brake.shoes.front.lining, from: 1, to: 2.2, groundRadius: 60, chamferArc: 0 };
  // Its circle's middle is 40 off along 1.6 rad; 0.4 rad beside it a ray meets the circle at
  // 40·cos 0.4 + √(60² − (40·sin 0.4)²) = 36.8424 + 57.9428.
  const { face, angle } = liningShape(lining, brake.drum, 3);
  [94.7852, 100, 94.7852].forEach((radius, i) => {
    near(angle[i] as number, 1.2 + 0.4 * i, { abs: 1e-9 }, `angle ${i}`);
    near(face[i] as number, radius, { abs: 1e-4 }, `face ${i}`);
  });
});
