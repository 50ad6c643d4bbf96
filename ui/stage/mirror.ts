import { mirrored, type Path } from './path.ts';
import type { Drawing, Label, Shape } from './shapes.ts';

/**
 * A right-hand wheel seen from outside is the mirror image of a left-hand one: forward is clockwise
 * there. The finished drawing is mirrored about the middle of the stage, so every part, layer and
 * magnification is; texts keep their way of reading, and hatches, tied to the screen, theirs.
 */

const paths = new WeakMap<Path, Path>();

/** The mirror image of a path: made once a path, since what rests keeps its path from frame to frame. */
function image(path: Path): Path {
  const known = paths.get(path);
  if (known) return known;
  const made = mirrored(path);
  paths.set(path, made);
  return made;
}

const mirrorShape = (s: Shape): Shape => ({
  ...s,
  path: image(s.path),
  ...(s.place ? { place: { angle: -s.place.angle, x: -s.place.x, y: s.place.y } } : {}),
});

const OTHER = { start: 'end', middle: 'middle', end: 'start' } as const;

/** The zone frame and the caption belong to the sheet, not to the brake. */
const ofSheet = (l: Label): boolean => l.style === 'zone' || l.style === 'caption';

const mirrorLabel = (l: Label): Label => ({
  ...l,
  at: [-l.at[0], l.at[1]],
  dx: -l.dx,
  anchor: OTHER[l.anchor],
});

/** The mirror image of a drawing about the upright line through the middle of its stage. */
export function mirrorDrawing<D extends Drawing>(drawing: D): D {
  const { view } = drawing;
  const [x, y] = view.origin;
  const turned = { ...view, origin: [view.width - x, y] as const };
  // What belongs to the sheet stays where it is on the screen.
  const stay = (l: Label): Label => ({
    ...l,
    at: [l.at[0] + (x - turned.origin[0]) / view.scale, l.at[1]],
  });
  return {
    ...drawing,
    view: turned,
    shapes: drawing.shapes.map(mirrorShape),
    labels: drawing.labels.map((l) => (ofSheet(l) ? stay(l) : mirrorLabel(l))),
    ...(drawing.clip
      ? {
          clip: {
            ...drawing.clip,
            at: [view.width - drawing.clip.at[0], drawing.clip.at[1]] as const,
          },
        }
      : {}),
  };
}
