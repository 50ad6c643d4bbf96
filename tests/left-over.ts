import { type Brake, type Instant, type Point, placePoint, type Side } from '../sim/index.ts';

const outward = { front: -1, rear: 1 } as const;

/**
 * Sum of all forces on a shoe, and of their moments about the drum's axis, from the instant alone:
 * lining, piston, springs, climbing lever, strut, hold-down, anchor. Newton's laws for a body at rest, so both are nothing. A
 * pin's force is whatever closes the sum of forces; the moments are what the solver must balance.
 */
export function leftOver(
  brake: Brake,
  i: Instant,
  side: Side,
): { force: number; moment: number; largest: number } {
  const s = i.shoes[side];
  const shoe = brake.shoes[side];
  let [x, y, moment] = [0, 0, 0];
  const add = (at: Point, force: Point): void => {
    x += force[0];
    y += force[1];
    moment += at[0] * force[1] - at[1] * force[0];
  };
  // The lining's normal forces point at the axis; the drum's torque comes back on the shoe.
  x += s.normalForce[0] + s.frictionForce[0];
  y += s.normalForce[1] + s.frictionForce[1];
  moment -= s.torqueOnDrum;
  add(s.toe, [outward[side] * s.pistonForce, 0]);
  // A round heel bears on its flat one radius from its centre.
  const { anchor } = shoe;
  const reach = anchor.kind === 'pin' ? 0 : anchor.heelRadius;
  const normal = anchor.kind === 'pin' ? 0 : anchor.normal;
  const heel = [
    anchor.at[0] + s.pose.ux - reach * Math.cos(normal),
    anchor.at[1] + s.pose.uy - reach * Math.sin(normal),
  ] as const;
  add(heel, s.anchorForce);
  add(s.holdDown.at, s.holdDown.force);
  const away = (from: Point, to: Point, force: number): Point => {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return [(force * (to[0] - from[0])) / length, (force * (to[1] - from[1])) / length];
  };
  i.springs.forEach((spring, k) => {
    const ends = brake.springs[k]?.ends;
    if (ends?.[0].on === side) add(spring.from, away(spring.from, spring.to, spring.force));
    if (ends?.[1].on === side) add(spring.to, away(spring.to, spring.from, spring.force));
  });
  for (const { name, on, at, force } of i.forces) {
    if (name === 'climbing lever' && on === side) add(at, force);
  }
  // Along the strut, while the parking lever that carries its rear seat lies on its stop.
  const seat = (on: Side): Point =>
    placePoint(brake.shoes[on], i.shoes[on].pose, brake.shoes[on].strutSeat);
  const other = side === 'front' ? 'rear' : 'front';
  if (i.strutForce > 0) add(seat(side), away(seat(other), seat(side), i.strutForce));
  const largest = Math.max(1, Math.hypot(...s.anchorForce), s.pistonForce, s.normalSum);
  return { force: Math.hypot(x, y), moment: Math.abs(moment) / i.drumRadius, largest };
}
