import type { Point } from '../../sim/index.ts';
import { stageLoupe as texts } from '../../sim/words/en.ts';
import { fixed } from '../format.ts';
import { distance, mix, polar } from './geometry.ts';
import { label, sizeOf } from './layers/label.ts';
import type { PartId } from './part-names.ts';
import { drawingOf } from './parts/adjuster.ts';
import { liftLimit } from './parts/strut.ts';
import { circlePath, polyline } from './path.ts';
import { type Places, placesOf } from './place.ts';
import { drawBrake, type StageInput } from './scene.ts';
import type { Drawing, Label, Shape } from './shapes.ts';
import { toMm, toPx, type View } from './view.ts';

/** A magnifying glass on the adjuster: circle A on the brake, the magnified view beside it. */
export interface Lens {
  /** Middle of the magnified view, px. */
  readonly at: Point;
  /** px */
  readonly radius: number;
  /** px per mm inside; left out: so that the whole row of teeth shows. */
  readonly scale?: number;
}

/** Lines in the loupe are this much heavier; on a wall they carry to the last row. */
const HEAVIER = 1.35;
const ON_WALL = 2.3;

interface Sight {
  /** What the loupe looks at, mm. */
  readonly look: Point;
  /** Radius of the circle on the brake, mm. */
  readonly radius: number;
  readonly view: View;
}

/** A tooth is at least so wide, px: a smaller loupe looks closer, at fewer of them. */
const TOOTH = 14;
/** A loupe whose teeth are this wide shows the whole row, px. */
const WHOLE = 12;
/** Half a number of a tooth, and a little, px. */
const NUMBER = 16;
/** So far from its middle the tooth that counts may stand, share of the radius. */
const OFF = 0.5;

/** Magnification and middle: all that the adjuster asks for, or closer at the tooth that counts. */
function closer(
  { look, radius, tooth }: ReturnType<ReturnType<typeof drawingOf>['sight']>,
  px: number,
): { readonly scale: number; readonly look: Point } {
  const whole = px / radius;
  if (!tooth || whole * tooth.pitch >= WHOLE) return { scale: whole, look };
  const scale = TOOTH / tooth.pitch;
  const most = (OFF * px) / scale;
  const far = distance(look, tooth.at);
  return { scale, look: far > most ? mix(look, tooth.at, 1 - most / far) : look };
}

function sightOf({ brake, instant, view }: StageInput, places: Places, lens: Lens): Sight {
  const sight = drawingOf(brake).sight(brake, instant, places);
  const { scale, look } = lens.scale
    ? { scale: lens.scale, look: sight.look }
    : closer(sight, lens.radius);
  const inside: View = {
    ...view,
    scale,
    origin: [lens.at[0] - look[0] * scale, lens.at[1] + look[1] * scale],
    k: view.wall ? ON_WALL : view.k * HEAVIER,
  };
  return { look, radius: lens.radius / scale, view: inside };
}

/** What of the brake is seen through the loupe: the adjuster and what lies behind it. */
function seenInside(shape: Shape, springs: readonly PartId[]): boolean {
  if (shape.group === 'plate' || shape.group === 'strut' || shape.group === 'drum') return true;
  if (shape.group === 'springs') return springs.some((part) => part === shape.part);
  return shape.group === 'shoe' && shape.part !== 'hold-down' && !shape.key.includes(' rear ');
}

/** Lines that touch both circles on the outside: from the circle on the brake to the loupe. */
function tangents(from: Point, r: number, to: Point, R: number): [Point, Point][] {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const d = Math.hypot(dx, dy);
  if (d <= Math.abs(R - r)) return [];
  // The touching radius of both circles leans by this much over the line of centres.
  const lean = Math.acos((r - R) / d);
  const base = Math.atan2(dy, dx);
  return [lean, -lean].map((a) => [polar(r, base + a, from), polar(R, base + a, to)]);
}

/**
 * Three drawings to lay over the brake's: the mark on the brake with its tangents, the magnified
 * view inside its circle, and the rim with letter and magnification.
 */
export function loupe(input: StageInput, lens: Lens): Drawing[] {
  const { brake, view } = input;
  const places = placesOf(brake, input.instant, liftLimit(brake, input.state.temperature));
  const sight = sightOf(input, places, lens);
  const onBrake = toPx(view, sight.look);
  const small = sight.radius * view.scale;
  const shape = (key: string, path: Shape['path'], style: Shape['style']): Shape => ({
    key,
    path,
    style,
    group: 'loupe',
  });
  const lines = tangents(onBrake, small, lens.at, lens.radius).flatMap(([a, b]) =>
    polyline(toMm(view, a), toMm(view, b)),
  );
  const marks: Drawing = {
    view,
    shapes: [
      ...(view.wall ? [] : [shape(texts.loupeTangents, lines, { stroke: 'rule', width: 1.2 })]),
      shape(
        'loupe mark',
        circlePath(sight.look, sight.radius),
        view.wall ? { stroke: 'adj', width: 6 } : { stroke: 'ink', width: 2 },
      ),
    ],
    // On a wall the brake is a small key beside the loupe: a letter would cover it.
    labels: view.wall
      ? []
      : [
          label(view, {
            key: 'loupe letter',
            text: 'A',
            at: toMm(view, [onBrake[0] + small + 6, onBrake[1] + small + 4]),
            anchor: 'middle',
            style: 'lens',
            colour: 'ink',
          }),
        ],
  };
  const whole = drawBrake({ ...input, layers: {}, roles: 'none', frame: false, caption: '' });
  const drawing = drawingOf(brake);
  const steps = drawing.marks(brake, input.instant, places);
  // Those of teeth that are not seen whole are left out.
  const clear = sight.radius - NUMBER / sight.view.scale;
  const seen = steps.numbers.filter((n) => distance(n.at, sight.look) < clear);
  const numbers = seen.map((n) =>
    label(
      { ...sight.view, text: view.text },
      {
        ...n,
        anchor: 'middle',
        style: 'tooth',
        colour: 'ink',
      },
    ),
  );
  const inside: Drawing = {
    view: sight.view,
    shapes: [...whole.shapes.filter((s) => seenInside(s, drawing.springs)), ...steps.shapes],
    labels: numbers,
    clip: { at: lens.at, radius: lens.radius, fill: 'sheet' },
  };
  return [marks, inside, rim(view, lens, sight)];
}

function rim(view: View, lens: Lens, sight: Sight): Drawing {
  const [x, y] = lens.at;
  const size = sizeOf(view, 'lens');
  const low = y + lens.radius - size * 0.4;
  const text = (key: string, words: string, px: number, more: Partial<Label>): Label =>
    label(view, {
      key,
      text: words,
      at: toMm(view, [px, low]),
      anchor: 'start',
      style: 'lens',
      colour: 'ink',
      ...more,
    });
  const left = x - lens.radius * 0.96;
  const scale = `×${fixed(magnification(view, sight), 1)}`;
  return {
    view,
    shapes: [
      {
        key: 'loupe rim',
        path: circlePath(toMm(view, lens.at), lens.radius / view.scale),
        style: { stroke: 'ink', width: view.wall ? 4.6 / view.k : 2.4 * HEAVIER },
        group: 'loupe',
      },
    ],
    labels: [
      ...(view.wall ? [] : [text(texts.loupeName, 'A', left, {})]),
      text(texts.loupeScale, scale, view.wall ? left : left + size * 0.85, {
        style: 'lens scale',
        colour: 'ink2',
      }),
    ],
  };
}

const magnification = (view: View, sight: Sight): number => sight.view.scale / view.scale;

export interface LoupeData {
  readonly tooth: number;
  readonly teeth: number;
  readonly climb: number;
  readonly magnification: number;
  /** Lower right of the rim, px: where the counter's card sits. */
  readonly rim: Point;
}

/** Numbers for the counter's card. */
export function loupeData(input: StageInput, lens: Lens): LoupeData {
  const { brake, instant, view } = input;
  const sight = sightOf(input, placesOf(brake, instant), lens);
  const corner = lens.radius * Math.SQRT1_2;
  return {
    tooth: instant.tooth,
    teeth: brake.adjuster.teeth,
    climb: instant.climb,
    magnification: magnification(view, sight),
    rim: [lens.at[0] + corner, lens.at[1] + corner],
  };
}
