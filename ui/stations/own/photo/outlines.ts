import type { Brake, BrakeState, Instant, Point } from '../../../../sim/index.ts';
import type { PhotoPoint } from '../../../record/own-photo.ts';
import { flatten } from '../../../stage/flatten.ts';
import { apply } from '../../../stage/geometry.ts';
import { drawBrake } from '../../../stage/scene.ts';
import { fitView } from '../../../stage/view.ts';
import { themes } from '../../../theme.ts';
import { type Camera, toPicture } from './camera.ts';
import type { Depth } from './points.ts';

/** Outline of a part, mm, on the plane it lies in, and the points that it is known by. */
export interface Outline {
  readonly runs: readonly (readonly Point[])[];
  readonly closed: boolean;
  readonly depth: Depth;
  /** Drawn solid when all of these are tapped; null: always assumed. */
  readonly by: readonly PhotoPoint[] | null;
}

type Rule = readonly [RegExp, Depth, readonly PhotoPoint[] | null];
/** By the keys of the stage's shapes. */
const rules: readonly Rule[] = [
  [/^plate plate 0$/, 'rim', ['rim1', 'rim2', 'rim3', 'rim4', 'rim5']],
  [/^hub hub 0$/, 'hub', ['hub']],
  [/^shoe front web 0$/, 'web', ['heelF', 'toeF']],
  [/^shoe rear web 0$/, 'web', ['heelR', 'toeR']],
  [/^shoe front lining 0$/, 'edge', ['edgeF1', 'edgeF2', 'edgeF3']],
  [/^shoe rear lining 0$/, 'edge', ['edgeR1', 'edgeR2', 'edgeR3']],
  [/^shoe front hold-down 0$/, 'web', ['holdF']],
  [/^shoe rear hold-down 0$/, 'web', ['holdR']],
  [/^cylinder cylinder 0$/, 'web', ['toeF', 'toeR']],
  [/^cylinder (front|rear) piston 0$/, 'web', ['toeF', 'toeR']],
  [/^anchors front anchor pin 0$/, 'web', ['heelF']],
  [/^anchors rear anchor pin 0$/, 'web', ['heelR']],
  [/^parking over parking lever 0$/, 'lever', ['pivot', 'hook']],
  [/^parking over lever pivot 0$/, 'web', ['pivot']],
  [/^strut strut 1$/, 'web', ['seatF', 'seatR']],
  [/^strut (toothed lever|star wheel|wedge) 0$/, 'web', null],
  [/^springs \d+ upper spring 1$/, 'web', ['upperF', 'upperR']],
  [/^springs \d+ lower spring 1$/, 'web', ['lowerF', 'lowerR']],
];

/** Chords this near to their arcs, mm: under a tap's own error. */
const SAGITTA = 0.2;

/** The parts that can be seen in a picture, at rest. */
export function outlinesOf(brake: Brake, state: BrakeState, still: Instant): readonly Outline[] {
  const { shapes } = drawBrake({
    brake,
    state,
    instant: still,
    rest: still,
    layers: {},
    view: fitView(brake, { width: 1000, height: 1000, band: 30 }),
    theme: themes.sheet,
  });
  return shapes.flatMap(({ key, path, place }): Outline[] => {
    const rule = rules.find(([keys]) => keys.test(key));
    if (!rule) return [];
    const lines = flatten(path, SAGITTA);
    const runs = lines.map(({ points }) => {
      const run: Point[] = [];
      for (let i = 0; i + 1 < points.length; i += 2) {
        const at: Point = [points[i] as number, points[i + 1] as number];
        run.push(place ? apply(place, at) : at);
      }
      return run;
    });
    return [{ runs, closed: lines.some((l) => l.closed), depth: rule[1], by: rule[2] }];
  });
}

/** An outline through the camera, as an SVG path in the picture's pixels. */
export function throughCamera(
  { runs, closed }: Outline,
  camera: Camera,
  z: number,
  mirrored: number | null,
): string {
  const px = (at: Point): string => {
    const [x, y] = toPicture(camera, [at[0], at[1], z]);
    return `${(mirrored === null ? x : mirrored - x).toFixed(1)} ${y.toFixed(1)}`;
  };
  return runs.map((run) => `M${run.map(px).join('L')}${closed ? 'Z' : ''}`).join('');
}
