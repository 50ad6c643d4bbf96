import { drumRadiusNow } from '../balance/dress.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import { lipRadiusNow } from './lip.ts';
import { restFaces } from './rest-faces.ts';

/** What a gauge over the linings and a drum slid over them would find at one tooth. */
export interface PresetRow {
  readonly tooth: number;
  /** Across both linings at their middles, mm. */
  readonly across: number;
  /** Bore less across, mm: the diametral clearance that one presets. */
  readonly difference: number;
  /** Gap of each lining behind the lip with the pair central, mm; negative: it drags. */
  readonly toe: number;
  readonly centre: number;
  readonly heel: number;
  /** Room to the lip at the tightest place, mm a side; negative: over it by so much. */
  readonly lip: number;
  /** Room to the bore itself at the tightest place, mm a side. */
  readonly bore: number;
  /** The drum slides on: past the lip and over the linings. */
  readonly slidesOn: boolean;
}

/**
 * Plane geometry on the released brake with its drum off: across = sum of both faces' distances from
 * the axis at their middles; difference = 2 R − across; room = lip or bore radius less the farthest
 * point of either face.
 *
 * @param sideways the pair not centred: front lining's middle stands out by this, mm
 */
export function presetRow(rig: Rig, state: BrakeState, sideways = 0): PresetRow {
  const f = restFaces(rig, state, sideways);
  const radius = drumRadiusNow(rig, state);
  const across = f.front.centre + f.rear.centre;
  const most = Math.max(f.front.most, f.rear.most);
  const lip = lipRadiusNow(rig, state) - most;
  const bore = radius - most;
  const mean = (key: 'toe' | 'centre' | 'heel') => radius - (f.front[key] + f.rear[key]) / 2;
  return {
    tooth: state.tooth,
    across,
    difference: 2 * radius - across,
    toe: mean('toe'),
    centre: mean('centre'),
    heel: mean('heel'),
    lip,
    bore,
    slidesOn: lip >= 0 && bore >= 0,
  };
}

/** Rows for every tooth of the adjuster. */
export function presetRows(rig: Rig, state: BrakeState): PresetRow[] {
  return rig.brake.adjuster.growth.map((_, tooth) => presetRow(rig, { ...state, tooth }));
}

/**
 * Tooth for a wanted diametral clearance: the longest strut on which the drum still slides on and the
 * difference is not under the wanted one; null when even tooth 0 is too long.
 *
 * @param rows of every tooth, in order
 * @param wanted bore less across, mm
 */
export function presetTooth(rows: readonly PresetRow[], wanted: number): PresetRow | null {
  let best: PresetRow | null = null;
  for (const row of rows) if (row.slidesOn && row.difference >= wanted - 1e-9) best = row;
  return best;
}
