import { firstToYield } from '../brake/strut-path.ts';
import type { Point } from '../brake/types.ts';
import { torqueOnDrum } from '../contact/rub.ts';
import { Heel } from './forces/heel.ts';
import { HoldDown } from './forces/hold-down.ts';
import { ofKind } from './forces/list.ts';
import { Piston } from './forces/piston.ts';
import { Spring } from './forces/spring.ts';
import { indexOf } from './forces/sums.ts';
import type { Instant, ShoeInstant } from './instant.ts';
import type { Press, Solved } from './press.ts';
import { climbedBy, strutTaken } from './ratchet.ts';
import type { ShoeRig } from './rig.ts';
import { balances } from './solve.ts';
import type { Work } from './work.ts';

/**
 * Push left on a toe after the springs, N: the moments about the anchor of the piston, which pushes
 * along x at the toe, and of the springs, over the toe's height above the anchor (lever law).
 */
export function toeForce(w: Work, { shoe, toe, push }: Piston): number {
  const piston = -toe.ry * shoe.outward * push;
  const moment = piston + (w.springMoment[indexOf(shoe)] as number);
  return (moment * shoe.opening) / (shoe.shoe.toe[1] - shoe.shoe.anchor.at[1]);
}

function shoeInstant(s: Solved, shoe: ShoeRig, index: 0 | 1): ShoeInstant {
  const { dressed, work: w, pose, act, solution } = s;
  const { rub, bed } = shoe;
  const { area } = dressed[shoe.side];
  const { drum } = act;
  const piston = ofKind(w.forces, Piston)[index] as Piston;
  const hold = ofKind(w.forces, HoldDown)[index] as HoldDown;
  const heel = ofKind(w.forces, Heel).find((h) => h.shoe === shoe);
  const at = shoe.at;
  let nx = 0;
  let ny = 0;
  let tx = 0;
  let ty = 0;
  let sum = 0;
  const pressure = new Float64Array(bed.count);
  for (let i = 0; i < bed.count; i++) {
    const px = (rub.faceX[i] as number) - drum.x;
    const py = (rub.faceY[i] as number) - drum.y;
    const rho = Math.sqrt(px * px + py * py);
    const n = rub.normal[i] as number;
    const t = rub.friction[i] as number;
    nx -= (n * px) / rho;
    ny -= (n * py) / rho;
    tx -= (t * py) / rho;
    ty += (t * px) / rho;
    sum += n;
    pressure[i] = n / (area[i] as number);
  }
  // Compression S pushes the front seat away from the rear one.
  const clamp = solution.strutOn ? solution.clamp : 0;
  const sign = index === 0 ? -1 : 1;
  const sx = sign * clamp * w.strut.ex;
  const sy = sign * clamp * w.strut.ey;
  // A pin gives whatever is left.
  const anchorForce: Point = heel
    ? [heel.on.x, heel.on.y]
    : [
        -(nx + tx + sx + (w.outer[2 * index] as number)),
        -(ny + ty + sy + (w.outer[2 * index + 1] as number)),
      ];
  return {
    side: shoe.side,
    pose: {
      ux: shoe.freedoms === 3 ? (pose[at] as number) : 0,
      uy: shoe.freedoms === 3 ? (pose[at + 1] as number) : 0,
      phi: pose[at + shoe.freedoms - 1] as number,
      modes: Array.from(pose.subarray(at + shoe.freedoms, at + shoe.n)),
    },
    pressure,
    // Of a drum that is off the gap is that to where it would be.
    gap: act.drumOff ? rub.gap.map((g) => g - drum.radius + dressed.drum.radius) : rub.gap.slice(),
    angle: bed.angle.slice(),
    normalForce: [nx, ny],
    frictionForce: [tx, ty],
    normalSum: sum,
    torqueOnDrum: torqueOnDrum(rub, drum),
    anchorForce,
    pistonForce: piston.push,
    holdDown: {
      at: [hold.at.x, hold.at.y],
      force: [hold.fx, hold.fy],
    },
    toeForce: toeForce(w, piston),
    pistonTravel: piston.travel,
    ...(piston.behind > 0 ? { pistonBehind: piston.behind } : {}),
    ...(piston.hand !== 0 ? { pistonHand: piston.hand } : {}),
    toe: [piston.toe.x, piston.toe.y],
  };
}

/**
 * Gathers a solved pose into an instant (own copies; nothing points into the solver's buffers).
 *
 * @param press what was asked: the way the drum turns, and where it stands in its turn
 */
export function instantOf(s: Solved, press: Pick<Press, 'turning' | 'drumAngle'>): Instant {
  const { dressed: d, work: w, solution, act } = s;
  const { rig } = d;
  const climbed = climbedBy(rig.brake, d.condition, d.strutLength, w.strut.length);
  const climb = d.nextTooth > 0 ? Math.min(1, Math.max(0, climbed / d.nextTooth)) : 0;
  const clamp = solution.strutOn ? Math.max(0, solution.clamp) : 0;
  const weakest = firstToYield(rig.brake);
  const front = shoeInstant(s, rig.front, 0);
  const rear = shoeInstant(s, rig.rear, 1);
  return {
    pressure: act.pressure,
    turning: press.turning,
    drumAngle: press.drumAngle ?? 0,
    drumRadius: d.drum.radius,
    shoes: { front, rear },
    torqueOnDrum: front.torqueOnDrum + rear.torqueOnDrum,
    restGap: d.restGap,
    tooth: d.state.tooth,
    strutLength: d.strutLength,
    separation: w.strut.length,
    strutForce: clamp,
    climb,
    ...(d.condition.strutLoose
      ? { strutOff: strutTaken(rig.brake, d.strutLength, w.strut.length) }
      : {}),
    springs: ofKind(w.forces, Spring).map(({ tension, link: { a, b } }) => ({
      force: tension,
      from: [a.x, a.y] as const,
      to: [b.x, b.y] as const,
    })),
    forces: w.forces.flatMap((force) => force.arrows()),
    leverAngle: s.pose[rig.leverAt] as number,
    cableForce: act.cable,
    locked: null,
    lost: !balances(solution),
    yields: weakest && clamp > weakest.force ? weakest : null,
    residual: solution.residual,
  };
}
