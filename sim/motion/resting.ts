import { instantOf } from '../balance/build.ts';
import { dress, drumAt, noDrum, workFor } from '../balance/dress.ts';
import type { Instant } from '../balance/instant.ts';
import { acting, actingOn } from '../balance/press.ts';
import type { Rig } from '../balance/rig.ts';
import { solvePose } from '../balance/solve.ts';
import {
  copyBristles,
  fillMemory,
  type MotionRecord,
  makeBristles,
  mustFit,
  sticking,
} from './record.ts';

/**
 * Where a moment of Motion would come to rest: Balance asked from Motion's own pose, supports, bristles and
 * memory, its drum standing where it is. Where dry friction gave way on the way there, the place hangs on the
 * path; so what Motion shows is held against this, and not against one press from rest.
 *
 * Friction that hangs on pressure is that of the moment.
 *
 * @param rig of the same brake as the record, not Motion's own: its buffers are used
 */
export function restingFrom(rig: Rig, record: MotionRecord): Instant {
  mustFit(rig, record);
  const d = dress(rig, record.state);
  const work = workFor(d);
  const { press } = record;
  const laws = record.bristles.map((from, i) => {
    const own = makeBristles(from.deflection.length);
    copyBristles(from, own);
    return {
      ...sticking(own),
      mu: i === 0 ? d.friction.front : d.friction.rear,
    };
  });
  const [front, rear] = laws as [(typeof laws)[number], (typeof laws)[number]];
  const act = actingOn(
    d,
    {
      ...acting(rig.brake, record.state.condition, press),
      drumAngle: record.drumAngle,
    },
    work.memory,
    front,
    rear,
  );
  fillMemory(work.forces, record.memory, act.memory);
  act.hands = press.hands?.length ? press.hands : undefined;
  act.drumOff = press.drumOff === true;
  act.drum = press.drumOff ? noDrum(rig) : drumAt(d, record.drumAngle);
  const pose = record.pose.slice();
  const solution = solvePose(
    rig,
    work,
    pose,
    act,
    { inertia: null, leverStop: d.leverStop, shaken: 'not' },
    record.solution,
  );
  return instantOf(
    { dressed: d, act, work, pose, solution },
    { turning: 0, drumAngle: record.drumAngle },
  );
}
