import { escapeXml } from '../../stage/svg.ts';
import type { Layout } from './layout.ts';

/** The sheet of cuts as SVG in true millimetres: cuts red, names blue, as cutters' programs tell them apart. */

const n = (v: number): string => String(Number(v.toFixed(4)));

/**
 * @param said lines of what it is of, written as its description
 */
export function cutSvg({ width, height, pieces }: Layout, said: readonly string[]): string {
  const groups = pieces.map(({ part, lines, circles }) => {
    const outline = lines
      .map((p) => `M${p.map(([x, y]) => `${n(x)} ${n(height - y)}`).join('L')}Z`)
      .join('');
    const holes = circles
      .map(
        ({ at: [x, y], radius }) => `<circle cx="${n(x)}" cy="${n(height - y)}" r="${n(radius)}"/>`,
      )
      .join('');
    return `<g><title>${escapeXml(part.name)}</title><path d="${outline}"/>${holes}</g>`;
  });
  const names = pieces.map(
    ({ part, name: { at, size } }) =>
      `<text x="${n(at[0])}" y="${n(height - at[1])}" font-size="${size}">${escapeXml(part.name)}</text>`,
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}mm" height="${n(height)}mm" viewBox="0 0 ${n(width)} ${n(height)}">`,
    `<title>Cut-out model</title><desc>${escapeXml(said.join(' '))}</desc>`,
    `<g id="cuts" fill="none" stroke="#ff0000" stroke-width="0.1">`,
    ...groups,
    `</g><g id="names" fill="#0000ff" font-family="sans-serif">`,
    ...names,
    '</g></svg>',
  ].join('\n');
}
