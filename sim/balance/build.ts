import type { Point } from '../brake/types.ts';
import { torqueOnDrum } from '../contact/rub.ts';
import type { Instant, ShoeInstant } from './instant.ts';
import type { Press, Solved } from './press.ts';
import type { ShoeRig } from './rig.ts';
import { balances } from './solve.ts';
import type { Work } from './work.ts';

/**
 * Push left on a toe after the springs, N: the moments about the anchor of the piston, which pushes
 * along x at the toe, and of the springs, over the toe's height above the anchor (lever law).
 */
export function toeForce(w: Work, shoe: ShoeRig, index: 0 | 1): number {
  const piston = -w.toe[index].ry * shoe.outward * (w.piston[index] as number);
  const moment = piston + (w.springMoment[index] as number);
  return (moment * shoe.opening) / (shoe.shoe.toe[1] - shoe.shoe.anchor.at[1]);
}

function shoeInstant(s: Solved, shoe: ShoeRig, index: 0 | 1): ShoeInstant {
  const { work: w, pose, load, solution } = s;
  const { rub, bed } = shoe;
  const drum = load.drum;
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
    pressure[i] = n / bed.area;
  }
  // Compression S pushes the front seat away from the rear one.
  const clamp = solution.strutOn ? solution.clamp : 0;
  const sign = index === 0 ? -1 : 1;
  const sx = sign * clamp * w.seatX;
  const sy = sign * clamp * w.seatY;
  const anchorForce: Point =
    shoe.freedoms === 1
      ? [
          -(nx + tx + sx + (w.outer[2 * index] as number)),
          -(ny + ty + sy + (w.outer[2 * index + 1] as number)),
        ]
      : [w.heel[2 * index] as number, w.heel[2 * index + 1] as number];
  const toe = w.toe[index];
  return {
    side: shoe.side,
    pose: {
      ux: shoe.freedoms === 3 ? (pose[at] as number) : 0,
      uy: shoe.freedoms === 3 ? (pose[at + 1] as number) : 0,
      phi: pose[at + shoe.freedoms - 1] as number,
      modes: Array.from(pose.subarray(at + shoe.freedoms, at + shoe.n)),
    },
    pressure,
    gap: rub.gap.slice(),
    angle: bed.angle.slice(),
    normalForce: [nx, ny],
    frictionForce: [tx, ty],
    normalSum: sum,
    torqueOnDrum: torqueOnDrum(rub, drum),
    anchorForce,
    pistonForce: w.piston[index] as number,
    holdDown: {
      at: [w.hold[index].x, w.hold[index].y],
      force: [w.held[2 * index] as number, w.held[2 * index + 1] as number],
    },
    toeForce: toeForce(w, shoe, index),
    pistonTravel: w.travel[index] as number,
    toe: [toe.x, toe.y],
  };
}

/**
 * Gathers a solved pose into an instant (own copies; nothing points into the solver's buffers).
 *
 * @param press what was asked: the way the drum turns, and where it stands in its turn
 */
export function instantOf(s: Solved, press: Pick<Press, 'turning' | 'drumAngle'>): Instant {
  const { dressed: d, work: w, solution, load } = s;
  const { rig } = d;
  const climbed = w.separation - d.strutLength - rig.brake.adjuster.lostMotion;
  const climb = d.nextTooth > 0 ? Math.min(1, Math.max(0, climbed / d.nextTooth)) : 0;
  const front = shoeInstant(s, rig.front, 0);
  const rear = shoeInstant(s, rig.rear, 1);
  return {
    pressure: load.pressure,
    turning: press.turning,
    drumAngle: press.drumAngle ?? 0,
    drumRadius: d.drum.radius,
    shoes: { front, rear },
    torqueOnDrum: front.torqueOnDrum + rear.torqueOnDrum,
    tooth: d.state.tooth,
    strutLength: d.strutLength,
    separation: w.separation,
    strutForce: solution.strutOn ? Math.max(0, solution.clamp) : 0,
    climb,
    springs: Array.from(w.springForce, (force, i) => ({
      force,
      from: [w.springEnds[4 * i] as number, w.springEnds[4 * i + 1] as number] as const,
      to: [w.springEnds[4 * i + 2] as number, w.springEnds[4 * i + 3] as number] as const,
    })),
    leverAngle: s.pose[rig.leverAt] as number,
    cableForce: load.cable,
    locked: null,
    lost: !balances(solution),
    residual: solution.residual,
  };
}
