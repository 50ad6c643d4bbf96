import { awayCutPicture as words } from '../../../sim/words/en.ts';
import { escapeXml } from '../../stage/svg.ts';
import type { CutPart } from './part.ts';
import { boxOf } from './polygons.ts';

/** The parts in their places over each other as one picture, the lowest first; for the dialog and the assembly sheet. */

/** By height over the board: light to dark, told apart in grey. */
const GREYS = ['#FFFFFF', '#E4E4E4', '#C4C4C4', '#9E9E9E', '#F6F6F6'] as const;

const n = (v: number): string => String(Number(v.toFixed(2)));

const outline = ({ area, holes }: CutPart): string =>
  [
    ...area.map((p) => `M${p.map(([x, y]) => `${n(x)} ${n(-y)}`).join('L')}Z`),
    ...holes.map(
      ({ at: [x, y], radius: r }) =>
        `M${n(x - r)} ${n(-y)}a${n(r)} ${n(r)} 0 1 0 ${n(2 * r)} 0a${n(r)} ${n(r)} 0 1 0 ${n(-2 * r)} 0Z`,
    ),
  ].join('');

/**
 * @param numbers write each part's number in the list beside it
 */
export function cutPicture(parts: readonly CutPart[], numbers: boolean): string {
  const board = parts.find((p) => p.layer === 0) ?? (parts[0] as CutPart);
  const box = boxOf(board.area);
  // Room for a number on the board's edge.
  const room = numbers ? (box.right - box.left) / 48 : 0;
  const [left, right, low, high] = [
    box.left - room,
    box.right + room,
    box.low - room,
    box.high + room,
  ];
  const [wide, tall] = [right - left, high - low];
  const line = wide / 700;
  const body = parts
    .map((part, i) => ({ part, number: i + 1 }))
    .sort((a, b) => a.part.layer - b.part.layer)
    .map(
      ({ part }) =>
        `<path d="${outline(part)}" fill="${GREYS[part.layer]}" fill-rule="evenodd" stroke="#000000" stroke-width="${n(1.4 * line)}"/>`,
    );
  const marks = numbers ? numbered(parts, wide) : [];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${n(left)} ${n(-high)} ${n(wide)} ${n(tall)}" role="img" aria-label="${escapeXml(words.theFlatPartsInTheir)}">`,
    ...body,
    ...marks,
    '</svg>',
  ].join('');
}

/** A number in a ring on each part, at its leftmost or rightmost place, whichever is farther from the middle. */
function numbered(parts: readonly CutPart[], wide: number): string[] {
  const r = wide / 52;
  const taken: (readonly [number, number])[] = [];
  return parts.map((part, i) => {
    const points = part.area.flat();
    // Of all its corners the one that is farthest from the numbers that stand already.
    const [x, y] = points.reduce(
      (best, p) => (apart(p, taken) > apart(best, taken) + 1e-6 ? p : best),
      points[0] as readonly [number, number],
    );
    taken.push([x, y]);
    return `<circle cx="${n(x)}" cy="${n(-y)}" r="${n(r)}" fill="#FFFFFF" stroke="#000000" stroke-width="${n(r / 10)}"/><text x="${n(x)}" y="${n(-y + 0.36 * r)}" font-size="${n(1.15 * r)}" font-weight="700" text-anchor="middle">${i + 1}</text>`;
  });
}

const apart = (
  p: readonly [number, number],
  taken: readonly (readonly [number, number])[],
): number => Math.min(1e6, ...taken.map((t) => Math.hypot(p[0] - t[0], p[1] - t[1])));
