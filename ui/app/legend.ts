import { css, html, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { labelWords, appLegend as words } from '../../sim/words/en.ts';
import type { Session } from '../session.ts';
import { polyline, trace } from '../stage/path.ts';
import { DASH, hatched, type Shape, type Style, stroked, WEIGHT } from '../stage/shapes.ts';
import { shapesText } from '../stage/svg.ts';
import type { View } from '../stage/view.ts';
import { themes } from '../theme.ts';

/** What lines and hatches mean, each drawn as it is on the brake. */

const WIDE = 72;
const HIGH = 20;

const view: View = {
  width: WIDE,
  height: HIGH,
  scale: 1,
  origin: [0, HIGH],
  k: 1,
  text: 1,
  narrow: false,
};

const line = (style: Style): Style => style;
const box = trace()
  .line([1, 2], [WIDE - 1, 2], [WIDE - 1, HIGH - 2], [1, HIGH - 2])
  .close().path;
const flat = polyline([1, HIGH / 2], [WIDE - 1, HIGH / 2]);
const coil = polyline(
  ...([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10] as const).map((i): readonly [number, number] => [
    4 + (i * (WIDE - 8)) / 10,
    i % 2 === 0 ? 4 : HIGH - 4,
  ]),
);

type Row = readonly [name: string, path: Shape['path'], style: Style];

const rows: readonly Row[] = [
  [words.visibleEdge, flat, line(stroked('ink', WEIGHT.wide))],
  [words.leaderDimensionHatching, flat, line(stroked('ink', WEIGHT.axis))],
  [words.hiddenEdge, flat, line(stroked('ink', WEIGHT.narrow, DASH.hidden))],
  [labelWords.axis, flat, line(stroked('ink2', WEIGHT.axis, DASH.axis))],
  [words.whereAMovingPartRests, flat, line(stroked('ink', WEIGHT.medium, DASH.ghost))],
  [words.drumCut, box, hatched('drum')],
  [words.cylinderBodyCut, box, hatched('cylinder')],
  [words.pistonCut, box, hatched('piston')],
  [words.frictionLining, box, hatched('lining')],
  [words.brakeFluid, box, hatched('fluid')],
  [words.rubberSeen, box, hatched('rubber')],
  [words.rubberCutThin, box, { fill: 'ink' }],
  [words.springWire, coil, line(stroked('ink', WEIGHT.wide))],
  [words.leadingSolid, box, { fill: 'lead', stroke: 'lead', width: 1.2 }],
  [words.trailingOpen, box, { fill: 'sheet', stroke: 'trail', width: WEIGHT.wide }],
];

export function legend(session: Session): TemplateResult {
  const theme = themes[session.theme];
  return html`<ul class="lg">${rows.map(([name, path, style], i) => {
    const shape: Shape = { key: name, path, style, group: 'legend' };
    const drawn = shapesText({ shapes: [shape], labels: [], view }, theme, `lg${i}`);
    return html`<li><svg class="drawn" viewBox=${`0 0 ${WIDE} ${HIGH}`} aria-hidden="true">${unsafeSVG(drawn)}</svg>${name}</li>`;
  })}</ul>`;
}

export const legendStyles = css`
  .nameslist .lg { list-style: none; margin: 0; padding: 0; display: grid; grid-template-columns: 1fr 1fr; gap: 3px 12px; }
  .nameslist .lg li { border: 0; min-height: 0; padding: 0; display: grid; grid-template-columns: 56px minmax(0, 1fr); gap: 8px; align-items: center; font-size: 14px; line-height: 1.15; }
  .nameslist .lg svg { width: 56px; height: 16px; }
`;
