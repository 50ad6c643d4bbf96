import { awayFigureCompose as said } from '../../../sim/words/en.ts';
import { textWidth } from '../../stage/layers/label.ts';
import { partNames } from '../../stage/part-names.ts';
import { boxOf } from '../../stage/settle.ts';
import type { Drawing } from '../../stage/shapes.ts';
import { escapeXml, shapesText, toSvg } from '../../stage/svg.ts';
import type { View } from '../../stage/view.ts';
import type { Theme, Token } from '../../theme.ts';
import { type Origin, originText } from '../origin.ts';
import type { Fact } from './facts.ts';
import { greyed } from './grey.ts';
import type { Mark } from './legend.ts';

/**
 * A figure as one SVG: the drawing as the stage's own list of shapes gives it, and around it what was chosen.
 * All in px of the drawing; the file says how many millimetres of paper that is. No DOM.
 */
export interface Figure {
  readonly drawings: readonly Drawing[];
  readonly theme: Theme;
  readonly grey: boolean;
  readonly clear: boolean;
  /** mm of the brake in one of the paper. */
  readonly reduction: number;
  /** As it is written: "1:2". */
  readonly scale: string;
  readonly title: string;
  readonly caption: string;
  readonly bar: boolean;
  readonly facts: readonly Fact[];
  readonly marks: readonly Mark[];
  /** Stands under every figure that has words: whose figures these are. */
  readonly foot: string;
  /** @font-face rules with the typeface in them; empty: the reader's own. */
  readonly fonts: string;
  readonly origin: Origin;
}

/** Sizes of text, px at words ×1. */
const TITLE = 24;
const TEXT = 15;
const SMALL = 13.5;
const PAD = 16;

const n = (v: number): string => String(Math.round(v * 1000) / 1000);

/** A text broken into lines of a width, px. */
export function linesOf(text: string, size: number, width: number): string[] {
  const out: string[] = [];
  for (const part of text.split('\n')) {
    let line = '';
    for (const word of part.split(' ')) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (line !== '' && textWidth(longer, size) > width) {
        out.push(line);
        line = word;
      } else line = longer;
    }
    out.push(line);
  }
  return out;
}

/** Lengths of a scale bar, mm: the longest that is no wider than a quarter of the drawing. */
const BARS = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500] as const;
export const barOf = ({ scale, width }: Pick<View, 'scale' | 'width'>): number =>
  [...BARS].reverse().find((mm) => mm * scale <= width / 4) ?? BARS[0];

class Sheet {
  readonly #theme: Theme;
  readonly #out: string[] = [];
  readonly width: number;
  /** Times larger words. */
  readonly u: number;
  y = 0;

  constructor(theme: Theme, width: number, u: number) {
    this.#theme = theme;
    this.width = width;
    this.u = u;
  }

  get text(): string {
    return this.#out.join('\n');
  }
  colour(token: Token): string {
    return this.#theme.colours[token];
  }
  put(text: string): void {
    this.#out.push(text);
  }
  words(
    text: string,
    x: number,
    y: number,
    size: number,
    weight: number,
    token: Token = 'ink',
  ): void {
    this.put(
      `<text x="${n(x)}" y="${n(y)}" font-size="${n(size)}" font-weight="${weight}" fill="${this.colour(token)}">${escapeXml(text)}</text>`,
    );
  }

  title(text: string): void {
    const size = TITLE * this.u;
    for (const line of linesOf(text, size, this.width - 2 * PAD)) {
      this.y += size * 1.3;
      this.words(line, PAD, this.y, size, 760);
    }
    this.y += size * 0.5;
  }

  bar(view: View, scale: string): void {
    const size = TEXT * this.u;
    const mm = barOf(view);
    const px = mm * view.scale;
    const [x, y, high] = [PAD, this.y + size * 0.9, size * 0.5];
    const ink = this.colour('ink');
    const line = 1.6 * this.u;
    this.put(
      `<path d="M${n(x)} ${n(y)}H${n(x + px)}V${n(y + high)}H${n(x)}Z" fill="none" stroke="${ink}" stroke-width="${n(line)}"/><path d="M${n(x)} ${n(y)}H${n(x + px / 2)}V${n(y + high)}H${n(x)}Z" fill="${ink}"/>`,
    );
    this.words(`${mm} mm`, x + px + size * 0.6, y + high, size, 640);
    const told = said.told(scale);
    this.words(
      told,
      x + px + size * 0.6 + textWidth(`${mm} mm  `, size),
      y + high,
      size,
      500,
      'ink2',
    );
    this.y = y + high + size * 0.9;
  }

  facts(all: readonly Fact[]): void {
    const [small, big] = [SMALL * this.u, TEXT * 1.2 * this.u];
    const inside = this.width - 2 * PAD;
    const most = Math.max(
      ...all.map((f) => textWidth(f.name, small)),
      ...all.map((f) => textWidth(f.value, big)),
    );
    const columns = Math.max(1, Math.min(all.length, Math.floor(inside / (most + 24 * this.u))));
    const rows = Math.ceil(all.length / columns);
    const [wide, high] = [inside / columns, (small + big) * 1.5];
    const top = this.y + 6;
    const rule = this.colour('rule');
    for (let c = 1; c < columns; c++)
      this.put(`<path d="M${n(PAD + c * wide)} ${n(top)}v${n(rows * high)}" stroke="${rule}"/>`);
    for (let r = 1; r < rows; r++)
      this.put(`<path d="M${n(PAD)} ${n(top + r * high)}h${n(inside)}" stroke="${rule}"/>`);
    this.put(
      `<rect x="${n(PAD)}" y="${n(top)}" width="${n(inside)}" height="${n(rows * high)}" fill="none" stroke="${this.colour('ink')}" stroke-width="${n(1.6 * this.u)}"/>`,
    );
    all.forEach((f, i) => {
      const x = PAD + (i % columns) * wide + 10 * this.u;
      const y = top + Math.floor(i / columns) * high;
      this.words(f.name, x, y + small * 1.35, small, 540, 'ink2');
      this.words(f.value, x, y + small * 1.35 + big * 1.15, big, 680);
    });
    this.y = top + rows * high + 8;
  }

  marks(all: readonly Mark[], view: View): void {
    const size = TEXT * this.u;
    const [wide, high] = [size * 2.4, size * 1.2];
    let x = PAD;
    let y = this.y + size * 0.5;
    all.forEach((mark, i) => {
      const whole = wide + size * 0.5 + textWidth(mark.name, size) + size * 1.4;
      if (x > PAD && x + whole > this.width - PAD) {
        x = PAD;
        y += high * 1.5;
      }
      this.put(this.#swatch(mark, x, y, wide, high, view, `m${i}`));
      this.words(mark.name, x + wide + size * 0.5, y + high * 0.78, size, 560);
      x += whole;
    });
    this.y = y + high + size * 0.5;
  }

  #swatch(
    mark: Mark,
    x: number,
    y: number,
    wide: number,
    high: number,
    view: View,
    tag: string,
  ): string {
    const line = mark.dash || (!mark.fill && !mark.hatch);
    const mm = (px: number): number => px / view.scale;
    const style = mark.hatch
      ? { hatch: mark.hatch, stroke: 'ink' as const, width: 1.2 }
      : {
          ...(mark.fill ? { fill: mark.fill } : {}),
          stroke: mark.stroke ?? ('ink' as const),
          width: line ? 2 : 1.6,
          ...(mark.dash ? { dash: mark.dash } : {}),
        };
    const path = line
      ? ([
          ['M', 0, -mm(high / 2)],
          ['L', mm(wide), -mm(high / 2)],
        ] as const)
      : ([
          ['M', 0, 0],
          ['L', mm(wide), 0],
          ['L', mm(wide), -mm(high)],
          ['L', 0, -mm(high)],
          ['Z'],
        ] as const);
    const own: View = { ...view, width: wide, height: high, origin: [0, 0] };
    const shape = { key: tag, group: 'legend', path, style };
    return `<g transform="translate(${n(x)} ${n(y)})">${shapesText({ shapes: [shape], labels: [], view: own }, this.#theme, tag)}</g>`;
  }

  paragraph(text: string, size: number, token: Token): void {
    const px = size * this.u;
    for (const line of linesOf(text, px, this.width - 2 * PAD)) {
      this.y += px * 1.36;
      this.words(line, PAD, this.y, px, 500, token);
    }
    this.y += px * 0.5;
  }
}

/** Numbers that stand for names in a drawing, told in words. */
export function namesTold(drawings: readonly Drawing[]): string {
  const all = drawings
    .flatMap((d) => d.labels)
    .filter((l) => l.style === 'number' && l.part !== undefined)
    .map((l) => [Number(l.text), l.part ? partNames[l.part][0] : ''] as const);
  return [...new Map(all)]
    .sort(([a], [b]) => a - b)
    .map(([number, name]) => `${number} ${name}`)
    .join(' · ');
}

/** Smallest text of a figure on paper, points (1/72 inch). */
export function smallestText({
  drawings,
  reduction,
}: Pick<Figure, 'drawings' | 'reduction'>): number {
  const view = drawings[0]?.view;
  const sizes = drawings.flatMap((d) => d.labels.map((l) => l.size));
  if (!view || sizes.length === 0) return Number.POSITIVE_INFINITY;
  return ((Math.min(...sizes) / view.scale / reduction) * 72) / 25.4;
}

/**
 * As the stage paints it: on the screen hatches are sharp since a drawing stands on whole px, while its texts stand
 * where they were settled.
 */
function asPainted(drawing: Drawing): Drawing {
  const { view, labels } = drawing;
  const [x, y] = view.origin;
  const origin = [Math.round(x), Math.round(y)] as const;
  const [dx, dy] = [x - origin[0], y - origin[1]];
  return {
    ...drawing,
    view: { ...view, origin },
    labels: labels.map((l) => ({ ...l, dx: l.dx + dx, dy: l.dy + dy })),
  };
}

export interface Composed {
  readonly svg: string;
  /** px of its height that the drawing has, from where it begins. */
  readonly drawn: number;
  /** px of the drawing. */
  readonly width: number;
  readonly height: number;
  /** mm of paper. */
  readonly paper: readonly [width: number, height: number];
}

export function compose(f: Figure): Composed {
  const view = f.drawings[0]?.view;
  if (!view) return { svg: '', drawn: 0, width: 0, height: 0, paper: [0, 0] };
  const { theme } = f;
  const sheet = new Sheet(theme, view.width, Math.max(1, view.text));
  if (f.title) sheet.title(f.title);
  const drawing = toSvg(f.drawings.map(asPainted), theme, { ground: false }).replace(
    '<svg ',
    `<svg y="${n(sheet.y)}" `,
  );
  sheet.put(drawing);
  // On the page the layers' row lies over the foot; a sheet with a frame of zones ends with the frame.
  const zones = f.drawings[0]?.shapes.some((s) => s.group === 'zones');
  const lowest = Math.max(...f.drawings.flatMap((d) => d.labels.map((l) => boxOf(l, d).bottom)));
  const drawn = zones
    ? view.height
    : Math.min(view.height, Math.max(view.height - (view.foot ?? 0), Math.ceil(lowest + PAD / 2)));
  sheet.y += drawn;
  if (f.bar) sheet.bar(view, f.scale);
  const numbers = namesTold(f.drawings);
  if (numbers) sheet.paragraph(numbers, SMALL, 'ink');
  if (f.facts.length > 0) sheet.facts(f.facts);
  if (f.marks.length > 0) sheet.marks(f.marks, view);
  if (f.caption) sheet.paragraph(f.caption, TEXT, 'ink');
  if (f.facts.length > 0 || f.caption) sheet.paragraph(f.foot, SMALL, 'ink2');
  const [width, height] = [view.width, Math.ceil(sheet.y)];
  const mm = 1 / view.scale / f.reduction;
  const body = [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width * mm)}mm" height="${n(height * mm)}mm" font-family="'Encode Sans Variable','Encode Sans',sans-serif" style="font-feature-settings:'tnum'">`,
    `<title>${escapeXml(f.title || said.brakeDrawing)}</title>`,
    f.caption ? `<desc>${escapeXml(f.caption)}</desc>` : '',
    `<metadata>${escapeXml(originText(f.origin))}</metadata>`,
    f.fonts ? `<style>${f.fonts}</style>` : '',
    f.clear ? '' : `<rect width="100%" height="100%" fill="${theme.colours.sheet}"/>`,
    sheet.text,
    '</svg>',
  ];
  const svg = body.filter((line) => line !== '').join('\n');
  return {
    svg: f.grey ? greyed(svg) : svg,
    drawn,
    width,
    height,
    paper: [width * mm, height * mm],
  };
}
