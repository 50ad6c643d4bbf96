import type { Command, Group, Label, Shape } from './shapes.ts';
import type { Theme } from './theme.ts';

/**
 * The list of shapes as true vector SVG: arcs stay arcs. Needs no document, so figures can be made
 * anywhere; the page's picture and this one come from the same list.
 */
export interface SvgView {
  readonly width: number;
  readonly height: number;
  /** px per mm. */
  readonly scale: number;
  /** Where the drum axis stands, px from the top left. */
  readonly x: number;
  readonly y: number;
  /** Line weight factor. */
  readonly k: number;
}

const n = (v: number): string => String(Math.round(v * 100) / 100);

function arcTo(c: Extract<Command, { c: 'A' }>, v: SvgView): string {
  const full = Math.abs(c.b - c.a) > Math.PI * 1.999;
  // A full turn needs two arcs; angles run the other way with y down.
  const stops = full ? [(c.a + c.b) / 2, c.b] : [c.b];
  let from = c.a;
  return stops
    .map((to) => {
      const large = Math.abs(to - from) > Math.PI ? 1 : 0;
      const sweep = to > from ? 0 : 1;
      from = to;
      const r = n(c.r * v.scale);
      return `A${r} ${r} 0 ${large} ${sweep} ${n(v.x + (c.x + c.r * Math.cos(to)) * v.scale)} ${n(v.y - (c.y + c.r * Math.sin(to)) * v.scale)}`;
    })
    .join('');
}

const data = (path: readonly Command[], v: SvgView): string =>
  path
    .map((c) =>
      c.c === 'Z'
        ? 'Z'
        : c.c === 'A'
          ? arcTo(c, v)
          : `${c.c}${n(v.x + c.x * v.scale)} ${n(v.y - c.y * v.scale)}`,
    )
    .join('');

export function svgShape(s: Shape, theme: Theme, v: SvgView): string {
  const fill = s.fill ? theme[s.fill] : 'none';
  const width = s.stroke ? (s.mm ? (s.width ?? 1) * v.scale : (s.width ?? 1) * v.k) : 0;
  const line =
    s.stroke && width > 0 ? ` stroke="${theme[s.stroke]}" stroke-width="${n(width)}"` : '';
  const dash = s.dash ? ` stroke-dasharray="${s.dash.map((d) => n(d * v.k)).join(' ')}"` : '';
  const round = s.round ? ' stroke-linejoin="round" stroke-linecap="round"' : '';
  const opacity = s.opacity === undefined ? '' : ` opacity="${s.opacity}"`;
  return `<path d="${data(s.path, v)}" fill="${fill}" fill-rule="evenodd"${line}${dash}${round}${opacity}/>`;
}

const escaped = (text: string): string => text.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);

export function svgLabel(l: Label, v: SvgView): string {
  const x = n(v.x + l.at[0] * v.scale + (l.dx ?? 0));
  const y = n(v.y - l.at[1] * v.scale + (l.dy ?? 0));
  return `<text class="${l.kind}" x="${x}" y="${y}" text-anchor="${l.anchor}">${escaped(l.text)}</text>`;
}

/** A whole drawing as an SVG document. */
export function svgDrawing(
  groups: readonly Group[],
  labels: readonly Label[],
  theme: Theme,
  v: SvgView,
): string {
  const body = groups
    .map(
      (g) =>
        `<g data-part="${escaped(g.name)}">${g
          .make()
          .map((s) => svgShape(s, theme, v))
          .join('')}</g>`,
    )
    .join('\n');
  const text = `<g font-family="sans-serif" font-size="14" fill="${theme.ink}">${labels.map((l) => svgLabel(l, v)).join('')}</g>`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${v.width} ${v.height}" width="${v.width}" height="${v.height}"><rect width="${v.width}" height="${v.height}" fill="${theme.sheet}"/>\n${body}\n${text}</svg>`;
}
