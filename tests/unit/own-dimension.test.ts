import { expect, it } from 'vitest';
import { measuredAt } from '../../ui/stations/own/dimension.ts';
import { quay } from '../brakes.ts';

const { brake } = quay().rig;

it('a dimension is as long as the size that it tells', () => {
  const long = (key: Parameters<typeof measuredAt>[1]): number => {
    const at = measuredAt({ brake }, key, 70);
    if (!at) return Number.NaN;
    const [[ax, ay], [bx, by]] = at.ends;
    return Math.hypot(bx - ax, by - ay);
  };
  // The quay van's file (scenes/quay-van.json): pins 32 apart, drum 200.
  expect(long('drumNew')).toBeCloseTo(200, 9);
  expect(long('pinBelow')).toBeCloseTo(-brake.shoes.rear.anchor.at[1], 9);
  expect(long('pinsApart')).toBeCloseTo(32, 9);
  expect(long('toeHeight')).toBeCloseTo(brake.shoes.rear.toe[1], 9);
  expect(long('strutHeight')).toBeCloseTo(brake.shoes.rear.strutSeat[1], 9);
});

it('where it was stands at its old size, both heels of it; a width has no place in this view', () => {
  expect(measuredAt({ brake }, 'pinBelow', 70)?.before.map(([, y]) => y)).toEqual([-70, -70]);
  expect(measuredAt({ brake }, 'pinsApart', 40)?.before.map(([x]) => x)).toEqual([-20, 20]);
  expect(measuredAt({ brake }, 'liningWidth', 30)).toBeNull();
});
