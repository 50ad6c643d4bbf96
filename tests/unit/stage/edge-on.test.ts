import { expect, it } from 'vitest';
import { tiltOf, UPRIGHT } from '../../../sim/index.ts';
import { edgeOn, TILT_DRAWN } from '../../../ui/stage/edge-on.ts';
import { fitView } from '../../../ui/stage/view.ts';
import { near } from '../../near.ts';
import { inputFor, pointsOf, quayVan, shapeOf } from './bench.ts';

const van = quayVan();
const { brake, state, rest } = inputFor(van);
const view = fitView(brake, { width: 900, height: 700 });
const place = { at: [20, 20], width: 300, height: 320 } as const;
const draw = (cause: Parameters<typeof tiltOf>[3]) => {
  const tilt = tiltOf(brake, rest, 'front', cause);
  return {
    tilt,
    drawn: edgeOn({ brake, state, side: 'front', tilt, cause: cause ?? UPRIGHT }, view, place),
  };
};

it('draws the shoe upright at true scale: its width is the lining’s', () => {
  const { drawn, tilt } = draw(UPRIGHT);
  expect(tilt.angle).toBe(0);
  const xs = pointsOf(shapeOf(drawn, 'edge front lining 0')).map(([x]) => x);
  near(Math.max(...xs) - Math.min(...xs), brake.shoes.front.lining.width, { abs: 1e-9 }, 'width');
  expect(drawn.shapes.some((s) => s.key === 'edge upright')).toBe(false);
  expect(drawn.shapes.some((s) => s.part === 'hold-down')).toBe(true);
});

it('leans it by the tilt times what is said, the lining’s outer edge nearer the axle', () => {
  const { drawn, tilt } = draw({ holdDown: 'lost', groove: 0 });
  const lining = pointsOf(shapeOf(drawn, 'edge front lining 0'));
  // Along its lower edge from the plate outwards: falls by the sine of the drawn angle.
  const [inner, outer] = lining as [readonly [number, number], readonly [number, number]];
  const width = brake.shoes.front.lining.width;
  near(outer[1] - inner[1], -width * Math.sin(tilt.angle * TILT_DRAWN), { abs: 1e-9 }, 'fall');
  expect(drawn.shapes.some((s) => s.part === 'hold-down')).toBe(false);
  expect(drawn.shapes.some((s) => s.key === 'edge upright')).toBe(true);
});
