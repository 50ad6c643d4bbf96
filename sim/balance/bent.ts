import type { Point } from '../brake/types.ts';
import type { ShoeRig } from './types.ts';

/** Where points of a shoe's steel stand once it is bent, reference coordinates, mm; see `bentPoints`. */
export type BentPoints = (modes: readonly number[], times?: number) => Point[];

/**
 * Points of a bending shoe's steel or lining that go with its sections: each moves by the sum of z·G over the
 * modes (brake/flex.ts: displacement G·z, sections stay plane). On a rigid shoe they stay.
 *
 * @param points reference coordinates, mm
 * @returns gives them moved by so many `times` what the mode amplitudes z of a pose do: 1 is as it is, more is for
 * a drawing that says so
 */
export function bentPoints({ flex }: ShoeRig, points: readonly Point[]): BentPoints {
  const rows = points.map((p) => flex?.move(p) ?? new Float64Array(0));
  return (modes, times = 1) =>
    points.map(([x, y], i): Point => {
      const row = rows[i] as Float64Array;
      let dx = 0;
      let dy = 0;
      for (let m = 0; 2 * m < row.length; m++) {
        const z = modes[m] ?? 0;
        dx += (row[2 * m] as number) * z;
        dy += (row[2 * m + 1] as number) * z;
      }
      return [x + times * dx, y + times * dy];
    });
}
