import { newFit, type Rig } from '../../sim/index.ts';
import { number } from '../format.ts';
import { type Arguments, sizeOf, UsageError } from './args.ts';
import { asJson } from './json.ts';
import type { Say } from './print.ts';

/** `fit`: how new linings lie in a bore before they are bedded in, and what they brake then. */
export async function fit(args: Arguments, rig: Rig, say: Say): Promise<void> {
  const { brake } = rig;
  const own = brake.shoes.front.lining.thicknessNew;
  const wide = brake.drum.radiusNew;
  const thickness = await sizeOf(args, 'thickness', own, 'mm', [0.5, 3 * own]);
  const bore = await sizeOf(args, 'bore', 2 * wide, 'mm', [2 * wide - 1, 2 * wide + 10]);
  const ground = await sizeOf(args, 'ground', wide, 'mm', [0.8 * wide, 1.2 * wide]);
  // A face that no shoe of this brake can have: its circle would not reach round the lining.
  if (Math.abs(wide + thickness - own - ground) > wide / 2)
    throw new UsageError('--ground', `${ground} mm`, 'nearer to the drum’s radius');
  const {
    fit: lies,
    torque,
    right,
    slidesOn,
  } = newFit(rig, { thickness, groundRadius: ground }, bore / 2);
  const share = torque / right;
  if (args.flags.has('json')) {
    const value = (x: number): number | null => (Number.isFinite(x) ? x : null);
    say(
      asJson({
        scene: brake.name,
        command: 'fit',
        thickness: { value: thickness, unit: 'mm' },
        ground: { value: ground, unit: 'mm' },
        bore: { value: bore, unit: 'mm' },
        bears: lies.where,
        gap: { value: lies.gap, unit: 'mm' },
        torque: { value: value(torque / 1000), unit: 'N·m' },
        share: value(share),
        slidesOn,
      }),
    );
    return;
  }
  say(
    `${brake.title}: lining ${number(thickness, 2)} mm, ground to ${number(ground, 2)} mm, in a bore of ${number(bore, 2)} mm`,
  );
  say(
    lies.where === 'all along'
      ? 'Bears all along.'
      : `Bears at the ${lies.where}; greatest gap ${number(lies.gap, 2)} mm.`,
  );
  say(
    `Before it is bedded in, 40 bar give ${number(torque / 1000, 0)} N·m, ${number(100 * share, 0)} % of the brake’s own new linings in its new drum.`,
  );
  say(
    `The drum ${slidesOn ? 'slides on' : 'does not slide on'} with the adjuster at its shortest.`,
  );
}
