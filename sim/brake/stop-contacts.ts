import { lineContact } from './strut-path.ts';
import type { Brake, Side } from './types.ts';

/** What stops a shoe, or the parking lever, when no drum does. */
export type StopKind = 'cylinder' | 'hub' | 'pads' | 'lever';

/** Rounding of an edge that bears, where the scene tells no sizes of its strut: as of the others, mm; from memory. */
const EDGE = 2.25;

/** Radius of the inner edge of a shoe's web about the arc's centre, mm: under lining and table by the web's depth. */
export function webEdge(brake: Brake, side: Side): number {
  const { lining, steel } = brake.shoes[side];
  return lining.groundRadius - lining.thicknessNew - steel.tableThickness - steel.webDepth;
}

/**
 * Stiffness of a stop in its contact, N/mm: steel on steel along a line, 1/(2(1 − ν²)/(πEl)·(2·ln(2d/b) − ν/(1 − ν)))
 * (K. L. Johnson, Contact Mechanics; `lineContact` has derivation and load). l is how thick the part is that bears, r the
 * radius of what meets:
 * - a toe's shoulder on the cylinder's end, and the web's hole on the hold-down's pin: the web's rounded edge;
 * - the web's hollow inner edge on the round hub: 1/r = 1/hub − 1/edge;
 * - the parking lever's straight edge on the hub: r = hub.
 *
 * What bears the contact (cylinder on its plate, pin in its spring) gives besides; none of that is a part in another.
 */
export function stopStiffness(brake: Brake, side: Side, kind: StopKind): number {
  const web = brake.shoes[side].steel.webThickness;
  const hub = brake.look.hubRadius;
  if (kind === 'lever') {
    return 1 / lineContact(hub, brake.strutPath?.parkingLever.thickness ?? web);
  }
  if (kind === 'hub') {
    const edge = webEdge(brake, side);
    return 1 / lineContact((hub * edge) / (edge - hub), web);
  }
  return 1 / lineContact(brake.strutPath?.edgeRadius ?? EDGE, web);
}
