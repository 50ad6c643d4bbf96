import { describe, expect, it } from 'vitest';
import { placePoint } from '../../../sim/index.ts';
import { apply, distance } from '../../../ui/stage/geometry.ts';
import { placesOf } from '../../../ui/stage/place.ts';
import { drawBrake } from '../../../ui/stage/scene.ts';
import { near } from '../../near.ts';
import { inputFor, pointsOf, quayVan, shapeOf } from './bench.ts';

const van = quayVan();
const { brake } = van;
const released = inputFor(van);
const pressed = inputFor(van, { pressure: 4 });
const before = drawBrake(released);
const after = drawBrake(pressed);

describe('what moves', () => {
  it('shoes: every point goes where the simulator places it, at true scale', () => {
    for (const side of ['front', 'rear'] as const) {
      const web = shapeOf(after, `shoe ${side} web 0`);
      const place = placesOf(brake, pressed.instant).shoes[side];
      expect(web.place).toEqual(place);
      for (const p of [brake.shoes[side].toe, brake.shoes[side].holdDown.at]) {
        const told = placePoint(brake.shoes[side], pressed.instant.shoes[side].pose, p);
        near(distance(apply(place, p), told), 0, { abs: 1e-9 });
      }
    }
  });

  it('pistons go out with the toes', () => {
    const x = (d: typeof after, side: string) => shapeOf(d, `cylinder ${side} piston 0`).place?.x;
    const gone = (x(before, 'front') ?? 0) - (x(after, 'front') ?? 0);
    // The simulator's piston rests on the toe's round; the drawn one on one point of it.
    near(
      gone,
      pressed.instant.shoes.front.pistonTravel - released.instant.shoes.front.pistonTravel,
      { abs: 1e-3 },
    );
    expect(gone).toBeGreaterThan(0.1);
  });

  it('return springs stretch in their coils, their ends stay as they are', () => {
    const coil = (d: typeof after) => pointsOf(shapeOf(d, 'springs 0 upper spring 1'));
    const length = (p: ReturnType<typeof coil>) => distance(p[0] ?? [0, 0], p.at(-1) ?? [0, 0]);
    expect(length(coil(after))).toBeGreaterThan(length(coil(before)) + 0.2);
    const lead = (p: ReturnType<typeof coil>) => distance(p[0] ?? [0, 0], p[1] ?? [0, 0]);
    near(lead(coil(after)), lead(coil(before)), { abs: 0.05 });
  });

  it('the strut rides with the rear seat', () => {
    const seat = brake.shoes.rear.strutSeat;
    const { strut } = placesOf(brake, pressed.instant);
    const now = placePoint(brake.shoes.rear, pressed.instant.shoes.rear.pose, seat);
    near(distance(apply(strut, seat), now), 0, { abs: 1e-9 });
  });

  it('the lever lifts off the teeth while it climbs', () => {
    const at = (climb: number) =>
      placesOf(brake, { ...pressed.instant, climb }).lever ?? { angle: 0, x: 0, y: 0 };
    const lever = brake.adjuster.lever;
    near(at(1).angle - at(0).angle, lever?.toothAngle ?? 0, { rel: 1e-9 });
    // Straight up its slot, square to the strut: half a tooth's height at half a tooth.
    near(at(0.5).y - at(0).y, (lever?.toothHeight ?? 0) / 2, { rel: 1e-9 });
    expect(at(0.5).x).toBe(at(0).x);
  });

  it('studs and the stroke of paint turn, the hatched rim does not', () => {
    const turned = drawBrake({ ...pressed, turn: 1 });
    expect(shapeOf(turned, 'hub turning hub 0').place?.angle).toBe(1);
    expect(shapeOf(turned, 'drum paint drum 0').place?.angle).toBe(1);
    expect(shapeOf(turned, 'drum drum 0').place).toBeUndefined();
  });

  it('the fluid darkens with pressure', () => {
    const tint = (pressure: number) =>
      shapeOf(drawBrake(inputFor(van, { pressure })), 'cylinder fluid 1').style.fillAlpha ?? 0;
    expect(tint(2)).toBeLessThan(tint(4));
    expect(tint(4)).toBeLessThan(tint(8));
    expect(before.shapes.some((s) => s.key === 'cylinder fluid 1')).toBe(false);
  });

  it('the parking lever turns about its pivot on the rear web', () => {
    const parked = placesOf(brake, { ...released.instant, leverAngle: 0.05 });
    const free = placesOf(brake, released.instant);
    const { pivot, hook, pull } = brake.parkingLever;
    near(distance(apply(parked.parking, pivot), apply(free.parking, pivot)), 0, { abs: 1e-9 });
    const [a, b] = [apply(free.parking, hook), apply(parked.parking, hook)];
    expect((b[0] - a[0]) * pull[0] + (b[1] - a[1]) * pull[1]).toBeGreaterThan(4);
  });
});

it('the ghost stands eight times as far from the pressed shoe as the rest pose', () => {
  const drawing = drawBrake({ ...pressed, layers: { ghost: true } });
  const ghost = shapeOf(drawing, 'ghost front 0').place?.angle ?? 0;
  const now = pressed.instant.shoes.front.pose.phi;
  const rest = pressed.rest.shoes.front.pose.phi;
  near(now - ghost, 8 * (now - rest), { rel: 1e-9 });
});

it('still parts keep their very shapes, so that painters need not build them again', () => {
  const again = drawBrake(pressed);
  for (const key of ['plate plate 0', 'hub hub 0', 'anchors keeper 0', 'cylinder cylinder 0']) {
    expect(shapeOf(again, key)).toBe(shapeOf(after, key));
  }
  for (const key of ['shoe front web 0', 'strut toothed lever 0', 'parking parking lever 0']) {
    expect(shapeOf(again, key).path).toBe(shapeOf(before, key).path);
  }
});

it('every key is used once', () => {
  const all = drawBrake({
    ...pressed,
    layers: { fan: 20, comb: true, forces: true, names: true, ghost: true, heat: true },
    frame: true,
    flash: 0.5,
  });
  const keys = all.shapes.map((s) => s.key);
  expect(keys.filter((k, i) => keys.indexOf(k) !== i)).toEqual([]);
  const labels = all.labels.map((l) => l.key);
  expect(labels.filter((k, i) => labels.indexOf(k) !== i)).toEqual([]);
});
