import type { Session } from '../../session.ts';
import type { Box } from '../../stage/settle.ts';
import type { Drawing } from '../../stage/shapes.ts';
import type { Station } from '../../stations/station.ts';
import type { Block, Picture, Sheet, Word } from './picture.ts';

/** How a picture of a film is laid out: the stage, its title over it, and in its foot the speed, figures and words. */

/** px of the sheet. */
const FOOT = 58;
const TOP = 30;
const MARGIN = 22;
/** One more line of words in the picture. */
const LINE = 26;
const SAID = { size: 19, weight: 560 };
/** Mean width of a letter as a share of its size: this face's, from its own tables. */
const LETTER = 0.53;
/** px between two figures, at least. */
const APART = 26;
/** Lines of words that the picture has room for. */
const MOST_LINES = 3;

/** What stands beside the drawing. */
export interface Beside {
  readonly title: string;
  /** How time runs, and how much larger gaps are drawn than they are: never left out. */
  readonly speed: string;
  /** Figures in words, three at most. */
  readonly figures: readonly string[];
  /** What is said, in the picture; null: it has no words in it. */
  readonly said: string | null;
}

/** A text in lines of so many letters at most. */
export function linesOf(text: string, most: number): string[] {
  const out: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = out.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most) {
      out[out.length - 1] = `${last} ${word}`;
    } else out.push(word);
  }
  return out;
}

/** Words of one size that fit a width: what is too long gets smaller letters. */
function fitted(text: string, size: number, width: number, most = MOST_LINES) {
  for (let s = size; ; s -= 1) {
    const lines = linesOf(text, Math.floor(width / (s * LETTER)));
    if (lines.length <= most || s <= 13) return { lines, size: s };
  }
}

/** Foot of a small picture: its speed, and under it what is said. */
const SMALL = { foot: 84, speed: 27, said: 25, line: 36 };

const footOf = (said: string | null, { small }: Sheet): number => {
  if (small) return SMALL.foot;
  return said === null ? FOOT : FOOT + MOST_LINES * LINE + 6;
};

/** Draws for a film as the page does; the page hands it over. */
export interface Drawer {
  /** The stage of a session at a station on a sheet of a size, px; its texts not yet in their places. */
  stage(
    session: Session,
    station: Station,
    sheet: {
      readonly width: number;
      readonly height: number;
      readonly foot: number;
      readonly words: number;
    },
  ): readonly Drawing[];
  /** Puts texts into their places, clear of what is taken, px. */
  settle(drawings: readonly Drawing[], taken: readonly Box[]): readonly Drawing[];
}

/** A film's title stands over the stage. */
const topOf = ({ small }: Sheet): number => (small ? 0 : TOP);

/** A drawing so much lower on the sheet, px. */
const lowered = ({ clip, shapes, view }: Drawing, by: number): Omit<Drawing, 'labels'> => ({
  shapes,
  view: { ...view, origin: [view.origin[0], view.origin[1] + by] },
  ...(clip ? { clip: { ...clip, at: [clip.at[0], clip.at[1] + by] } } : {}),
});

/** Words of a picture that stands small on paper. */
function smallWords({ said, speed }: Beside, { height, width }: Sheet): Word[] {
  const plain = { anchor: 'start', x: MARGIN } as const;
  const first = height - SMALL.foot + 25;
  const { lines, size } = fitted(said ?? '', SMALL.said, width - 2 * MARGIN, 1);
  return [
    { ...plain, text: speed, y: first, size: SMALL.speed, weight: 720, colour: 'adj' },
    ...lines.map((text, i) => {
      const y = first + SMALL.line + i * size;
      return { ...plain, text, y, size, weight: 560, colour: 'ink' } as const;
    }),
  ];
}

/** Figures beside each other between two places, as large as they fit; the last ones left out where none would be read. */
function inRow(texts: readonly string[], from: number, to: number, y: number): Word[] {
  const letters = texts.reduce((sum, t) => sum + t.length, 0);
  const free = to - from - APART * texts.length;
  const size = Math.min(17, Math.floor(free / (letters * LETTER)));
  if (size < 14) return texts.length > 1 ? inRow(texts.slice(0, -1), from, to, y) : [];
  const more = (free - letters * size * LETTER) / texts.length + APART;
  let x = from + more / 2;
  return texts.map((text) => {
    const at = x;
    x += text.length * size * LETTER + more;
    return { text, x: at, y, size, weight: 600, anchor: 'start', colour: 'ink' } as const;
  });
}

/** Where a strip's picture has its number. */
const numberBox = ({ width }: Sheet): Box => ({
  left: width - 64,
  top: 0,
  right: width,
  bottom: 56,
});

export function wordsOf(beside: Beside, sheet: Sheet): Word[] {
  if (sheet.small) return smallWords(beside, sheet);
  const { figures, said, speed, title } = beside;
  const { height, width } = sheet;
  const low = height - FOOT / 2;
  const plain = { anchor: 'start', colour: 'ink', weight: 640 } as const;
  const out: Word[] = [
    { ...plain, text: title, x: MARGIN, y: 25, size: 20, weight: 720 },
    { ...plain, text: speed, x: MARGIN, y: low, size: 19, weight: 720, colour: 'adj' },
  ];
  const beyond = MARGIN + Math.max(230, speed.length * 19 * LETTER + 30);
  out.push(...inRow(figures, beyond, width - MARGIN, low));
  if (said === null) return out;
  const top = height - footOf(said, sheet);
  const { lines, size } = fitted(said, SAID.size, width - 2 * MARGIN);
  const middle = top + (MOST_LINES * LINE + 6) / 2;
  lines.forEach((text, i) => {
    const y = middle + (i - (lines.length - 1) / 2) * LINE;
    out.push({ ...plain, ...SAID, text, size, x: width / 2, y, anchor: 'middle' });
  });
  return out;
}

function blocksOf({ said }: Beside, sheet: Sheet): Block[] {
  const { height, width } = sheet;
  const foot = footOf(said, sheet);
  const low = sheet.small ? foot : FOOT;
  const out: Block[] = [];
  const ground = (top: number, high: number): void => {
    out.push({ x: 0, y: top, width, height: high, colour: 'panel' });
    out.push({ x: 0, y: top, width, height: 1.5, colour: 'ink' });
  };
  if (foot > low) ground(height - foot, foot - low);
  ground(height - low, low);
  return out;
}

/** Lays out picture after picture: the drawing anew in each, its texts ten times a second as on the page. */
export class Layout {
  readonly #draw: Drawer;
  readonly #sheet: Sheet;
  readonly #texts: number;
  #left = 0;
  #settled: readonly Drawing[] = [];

  /** @param rate pictures a second */
  constructor(draw: Drawer, sheet: Sheet, rate: number) {
    this.#sheet = sheet;
    this.#draw = draw;
    // Each of a strip's pictures is looked at for itself.
    this.#texts = sheet.small ? 1 : Math.max(1, Math.round(rate / 10));
  }

  picture(session: Session, station: Station, beside: Beside): Picture {
    const sheet = this.#sheet;
    const { height, width, words } = sheet;
    const foot = footOf(beside.said, sheet);
    const top = topOf(sheet);
    const high = height - top;
    const drawings = this.#draw.stage(session, station, { width, height: high, foot, words });
    const same = drawings.length === this.#settled.length;
    if (this.#left <= 0 || !same) {
      const low = { left: 0, top: high - foot, right: width, bottom: high };
      const taken = sheet.small ? [numberBox(sheet), low] : [low];
      this.#settled = this.#draw.settle(drawings, taken);
      this.#left = this.#texts;
    }
    this.#left -= 1;
    return {
      drawings: drawings.map((d, i) => ({
        ...lowered(d, top),
        labels: this.#settled[i]?.labels ?? [],
      })),
      blocks: blocksOf(beside, sheet),
      words: wordsOf(beside, sheet),
    };
  }
}
