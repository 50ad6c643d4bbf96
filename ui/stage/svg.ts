import { colourOf, type Ink, type Theme } from '../theme.ts';
import { apply, type Frame, IDENTITY } from './geometry.ts';
import { hatchKey, type Tile, tileOf } from './hatch.ts';
import { fontOf, haloOf } from './layers/label.ts';
import { arcParts, type Path } from './path.ts';
import { type Drawing, type Hatch, type Label, type Shape, strokePx } from './shapes.ts';
import { toPx, type View } from './view.ts';

/**
 * The list of shapes as SVG text: vectors only, arcs as arcs, hatches as patterns, labels as text.
 * Needs no DOM, so figures and print can be written anywhere.
 */

const n = (v: number): string => {
  const text = v.toFixed(3).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
};
/** Letters stand, and are as large, as on the stage, to the tenth of a px. */
const tenth = (v: number): string => v.toFixed(1);
export const escapeXml = (text: string): string =>
  text.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);

/** Path data in px: y turned down, so a counter-clockwise arc has sweep flag 0. */
export function pathData(path: Path, view: View, place: Frame = IDENTITY): string {
  let out = '';
  let started = false;
  const point = (x: number, y: number): string => {
    const [px, py] = toPx(view, apply(place, [x, y]));
    return `${n(px)} ${n(py)}`;
  };
  for (const c of path) {
    if (c[0] === 'Z') {
      out += 'Z';
      started = false;
    } else if (c[0] === 'A') {
      const [, cx, cy, radius, from, to] = c;
      const on = (a: number) => point(cx + radius * Math.cos(a), cy + radius * Math.sin(a));
      out += `${started ? 'L' : 'M'}${on(from)}`;
      started = true;
      const parts = arcParts(radius * view.scale, to - from);
      const r = n(radius * view.scale);
      for (let i = 1; i <= parts; i++) {
        const end = from + ((to - from) * i) / parts;
        out += `A${r} ${r} 0 0 ${to > from ? 0 : 1} ${on(end)}`;
      }
    } else {
      out += `${c[0]}${point(c[1], c[2])}`;
      started = true;
    }
  }
  return out;
}

function shapeText(shape: Shape, view: View, theme: Theme, hatchId: (h: Hatch) => string): string {
  const { style } = shape;
  const colour = (ink: Ink) => colourOf(theme, ink);
  const marks: string[] = [];
  if (style.hatch) marks.push(`fill="url(#${hatchId(style.hatch)})"`);
  else marks.push(`fill="${style.fill ? colour(style.fill) : 'none'}"`);
  if (style.fillAlpha !== undefined) marks.push(`fill-opacity="${n(style.fillAlpha)}"`);
  if (shape.evenOdd) marks.push('fill-rule="evenodd"');
  if (style.stroke) {
    marks.push(`stroke="${colour(style.stroke)}"`);
    if (style.strokeAlpha !== undefined) marks.push(`stroke-opacity="${n(style.strokeAlpha)}"`);
    marks.push(`stroke-width="${n(strokePx(style.width, view))}" stroke-linejoin="round"`);
    if (style.round) marks.push('stroke-linecap="round"');
    if (style.dash) {
      marks.push(`stroke-dasharray="${style.dash.map((d) => n(d * view.k)).join(' ')}"`);
    }
  }
  return `<path d="${pathData(shape.path, view, shape.place)}" ${marks.join(' ')}/>`;
}

function tileText(id: string, tile: Tile, view: View, theme: Theme): string {
  const [x, y] = view.origin;
  let body = tile.ground
    ? `<rect width="${tile.width}" height="${tile.height}" fill="${colourOf(theme, tile.ground)}" fill-opacity="${n(tile.groundAlpha ?? 1)}"/>`
    : '';
  for (const { from, to, ink, width } of tile.lines) {
    body += `<path d="M${from.map(n).join(' ')}L${to.map(n).join(' ')}" stroke="${colourOf(theme, ink)}" stroke-width="${n(width)}"/>`;
  }
  for (const { at, radius } of tile.dots) {
    body += `<circle cx="${n(at[0])}" cy="${n(at[1])}" r="${n(radius)}" fill="${colourOf(theme, tile.dotInk)}"/>`;
  }
  return `<pattern id="${id}" patternUnits="userSpaceOnUse" x="${n(x)}" y="${n(y)}" width="${tile.width}" height="${tile.height}">${body}</pattern>`;
}

export function labelText(label: Label, view: View, theme: Theme): string {
  const [x, y] = toPx(view, label.at);
  const font = fontOf(label.style);
  const halo = haloOf(label.style, view);
  const ring = halo
    ? ` paint-order="stroke" stroke="${theme.colours.sheet}" stroke-width="${n(halo)}" stroke-linejoin="round"`
    : '';
  return `<text x="${tenth(x + label.dx)}" y="${tenth(y + label.dy)}" dy="0.35em" text-anchor="${label.anchor}" font-size="${tenth(label.size)}" font-weight="${font.weight}" style="font-stretch:${font.stretch}%" fill="${theme.colours[label.colour]}"${ring}>${escapeXml(label.text)}</text>`;
}

/** Its shapes and hatches alone, as what stands inside an svg element of the view's size; `tag` keeps hatches apart. */
export const shapesText = (drawing: Drawing, theme: Theme, tag: string): string =>
  drawingText(drawing, theme, tag, false);

function drawingText(drawing: Drawing, theme: Theme, tag: string, labels: boolean): string {
  const { view, clip } = drawing;
  const tiles = new Map<string, string>();
  const hatchId = (hatch: Hatch): string => {
    const id = `${tag}-${hatchKey(hatch).replace(/[^a-zA-Z0-9-]/g, '_')}`;
    if (!tiles.has(id)) tiles.set(id, tileText(id, tileOf(hatch, view), view, theme));
    return id;
  };
  const shapes = drawing.shapes.map((s) => shapeText(s, view, theme, hatchId)).join('\n');
  const texts = labels ? drawing.labels.map((l) => labelText(l, view, theme)).join('\n') : '';
  const circle = clip ? `cx="${n(clip.at[0])}" cy="${n(clip.at[1])}" r="${n(clip.radius)}"` : '';
  const window = clip ? `<clipPath id="${tag}-clip"><circle ${circle}/></clipPath>` : '';
  const ground = clip ? `<circle ${circle} fill="${theme.colours[clip.fill]}"/>` : '';
  const cut = clip ? ` clip-path="url(#${tag}-clip)"` : '';
  return `<defs>${[...tiles.values()].join('')}${window}</defs><g${cut}>${ground}${shapes}\n${texts}</g>`;
}

export interface SvgOptions {
  readonly title?: string;
  readonly labels?: boolean;
  readonly ground?: boolean;
}

/** Drawings on top of each other as one SVG of the first one's size. */
export function toSvg(
  drawings: readonly Drawing[],
  theme: Theme,
  { title, labels = true, ground = true }: SvgOptions = {},
): string {
  const view = drawings[0]?.view;
  if (!view) return '';
  const { width, height } = view;
  const parts = drawings.map((d, i) => drawingText(d, theme, `d${i}`, labels));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}" height="${n(height)}" font-family="'Encode Sans Variable','Encode Sans',sans-serif" style="font-feature-settings:'tnum'">`,
    title ? `<title>${escapeXml(title)}</title>` : '',
    ground ? `<rect width="100%" height="100%" fill="${theme.colours.sheet}"/>` : '',
    ...parts,
    '</svg>',
  ].join('\n');
}
