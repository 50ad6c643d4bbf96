import {
  type Brake,
  bentPoints,
  type Instant,
  type Point,
  type Rig,
  type Side,
} from '../../../sim/index.ts';
import { stageLayersBent as words } from '../../../sim/words/en.ts';
import { flatten } from '../flatten.ts';
import { shoeOutlines } from '../parts/shoe.ts';
import type { Path } from '../path.ts';
import { shoeFrame } from '../place.ts';
import type { StageInput } from '../scene.ts';
import { DASH, type Label, type Shape, stroked, WEIGHT } from '../shapes.ts';
import { toMm, type View } from '../view.ts';
import { lookOf, SIDES } from './band.ts';
import { label } from './label.ts';

/**
 * How many times larger than it is the bow of a shoe is drawn: a hard press bows one by some hundredths of a
 * millimetre, which no eye sees. The solid shoe is never enlarged.
 */
export const BOW_SCALE = 150;

/** Chords of the outlines, mm off their arcs. */
const SAGITTA = 0.1;

/** An outline as runs of points, each with whether it is closed, and where bending moves them. */
interface Outline {
  readonly closed: readonly boolean[];
  readonly lengths: readonly number[];
  readonly points: readonly Point[];
  readonly bent: ReturnType<typeof bentPoints>;
}

/** Kept for the path that they are of: a lining's is another when it is worn. */
const kept = new WeakMap<Path, { readonly rig: Rig; readonly outline: Outline }>();

function outlineOf(rig: Rig, side: Side, path: Path): Outline {
  const seen = kept.get(path);
  if (seen?.rig === rig) return seen.outline;
  const runs = flatten(path, SAGITTA);
  const points: Point[] = [];
  for (const run of runs) {
    for (let i = 0; i < run.points.length; i += 2) {
      points.push([run.points[i] as number, run.points[i + 1] as number]);
    }
  }
  const outline = {
    closed: runs.map((r) => r.closed),
    lengths: runs.map((r) => r.points.length / 2),
    points,
    bent: bentPoints(rig[side], points),
  };
  kept.set(path, { rig, outline });
  return outline;
}

/** Turn about the anchor that a bent shoe's toe has made by bending alone, rad. */
function turned(rig: Rig, brake: Brake, instant: Instant, side: Side): number {
  const { anchor, toe } = brake.shoes[side];
  const [[x, y]] = bentPoints(rig[side], [toe])(instant.shoes[side].pose.modes) as [Point];
  const [ax, ay] = [toe[0] - anchor.at[0], toe[1] - anchor.at[1]];
  return (ax * (y - toe[1]) - ay * (x - toe[0])) / (ax * ax + ay * ay);
}

/** Where the bow's scale is told: the lower right corner, px from it. */
const CORNER = { desk: [44, 34], narrow: [12, 14], wall: [34, 26] } as const;

function scaleLabel(view: View): Label {
  const [right, up] = CORNER[view.wall ? 'wall' : view.narrow ? 'narrow' : 'desk'];
  return label(view, {
    key: 'bow scale',
    text: words.shoesBendBow(BOW_SCALE),
    at: toMm(view, [view.width - right, view.height - (view.foot ?? 0) - up]),
    anchor: 'end',
    style: 'caption',
    colour: 'ink2',
  });
}

/** The bow of both shoes with its scale. */
export const bow = (
  rig: Rig,
  input: StageInput,
): { readonly shapes: readonly Shape[]; readonly labels: readonly Label[] } => ({
  shapes: bent(rig, input),
  labels: [scaleLabel(input.view)],
});

/**
 * The bow of both shoes between anchor and toe, enlarged, as outlines over the solid ones. What only turns the
 * shoe about its anchor is taken off: it goes with the way of the piston.
 */
function bent(rig: Rig, { brake, state, instant }: StageInput): Shape[] {
  return SIDES.flatMap((side) => {
    const { modes } = instant.shoes[side].pose;
    if (modes.length === 0) return [];
    const look = lookOf(side, instant);
    const place = shoeFrame(brake, instant, side);
    const turn = turned(rig, brake, instant, side);
    const [ax, ay] = brake.shoes[side].anchor.at;
    return shoeOutlines(brake, state, side).map((path, n): Shape => {
      const { bent: move, closed, lengths, points } = outlineOf(rig, side, path);
      const moved = move(modes, BOW_SCALE);
      const out: (readonly ['M' | 'L', number, number] | readonly ['Z'])[] = [];
      let at = 0;
      lengths.forEach((length, run) => {
        for (let i = at; i < at + length; i++) {
          const [px, py] = points[i] as Point;
          const [x, y] = moved[i] as Point;
          const by = BOW_SCALE * turn;
          out.push([i === at ? 'M' : 'L', x + by * (py - ay), y - by * (px - ax)]);
        }
        if (closed[run]) out.push(['Z']);
        at += length;
      });
      return {
        key: `bent ${side} ${n}`,
        path: out,
        place,
        style: stroked(look.colour, WEIGHT.heavy, look.solid ? undefined : DASH.trailing),
        group: 'bent',
      };
    });
  });
}
