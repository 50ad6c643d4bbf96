import type { Session } from '../../session.ts';
import type { Box } from '../../stage/settle.ts';
import type { Drawing } from '../../stage/shapes.ts';
import type { Station } from '../../stations/station.ts';
import { type Block, type Picture, SHEET, type Word } from './picture.ts';

/** How a picture of a film is laid out: the stage, its title over it, and in its foot the speed, figures and words. */

/** px of the sheet. */
const FOOT = 58;
const MARGIN = 22;
/** One more line of words in the picture. */
const LINE = 26;
const SAID = { size: 19, weight: 560 };
/** Mean width of a letter as a share of its size: this face's, from its own tables. */
const LETTER = 0.53;
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
function fitted(text: string, size: number, width: number): { lines: string[]; size: number } {
  for (let s = size; ; s -= 1) {
    const lines = linesOf(text, Math.floor(width / (s * LETTER)));
    if (lines.length <= MOST_LINES || s <= 13) return { lines, size: s };
  }
}

const footOf = (said: string | null): number =>
  said === null ? FOOT : FOOT + MOST_LINES * LINE + 6;

/** Draws for a film as the page does; the page hands it over. */
export interface Drawer {
  /** The stage of a session at a station on a sheet of a size, px; its texts not yet in their places. */
  stage(
    session: Session,
    station: Station,
    sheet: { readonly width: number; readonly height: number; readonly foot: number },
  ): readonly Drawing[];
  /** Puts texts into their places, clear of what is taken, px. */
  settle(drawings: readonly Drawing[], taken: readonly Box[]): readonly Drawing[];
}

const titleBox = (title: string): Box => ({
  left: 0,
  top: 0,
  right: MARGIN + title.length * 20 * LETTER + 8,
  bottom: 44,
});

export function wordsOf({ figures, said, speed, title }: Beside): Word[] {
  const { height, width } = SHEET;
  const low = height - FOOT / 2;
  const plain = { anchor: 'start', colour: 'ink', weight: 640 } as const;
  const out: Word[] = [
    { ...plain, text: title, x: MARGIN, y: 25, size: 20, weight: 720 },
    { ...plain, text: speed, x: MARGIN, y: low, size: 19, weight: 720, colour: 'adj' },
  ];
  const beyond = MARGIN + Math.max(230, speed.length * 19 * LETTER + 30);
  figures.forEach((text, i) => {
    const x = beyond + ((width - MARGIN - beyond) * (i + 0.5)) / figures.length;
    out.push({ ...plain, text, x, y: low, size: 17, weight: 600, anchor: 'middle' });
  });
  if (said === null) return out;
  const top = height - footOf(said);
  const { lines, size } = fitted(said, SAID.size, width - 2 * MARGIN);
  const middle = top + (MOST_LINES * LINE + 6) / 2;
  lines.forEach((text, i) => {
    const y = middle + (i - (lines.length - 1) / 2) * LINE;
    out.push({ ...plain, ...SAID, text, size, x: width / 2, y, anchor: 'middle' });
  });
  return out;
}

function blocksOf({ said }: Beside): Block[] {
  const { height, width } = SHEET;
  const out: Block[] = [];
  const ground = (top: number, high: number): void => {
    out.push({ x: 0, y: top, width, height: high, colour: 'panel' });
    out.push({ x: 0, y: top, width, height: 1.5, colour: 'ink' });
  };
  if (said !== null) ground(height - footOf(said), footOf(said) - FOOT);
  ground(height - FOOT, FOOT);
  return out;
}

/** Lays out picture after picture: the drawing anew in each, its texts ten times a second as on the page. */
export class Layout {
  readonly #draw: Drawer;
  readonly #texts: number;
  #left = 0;
  #settled: readonly Drawing[] = [];

  /** @param rate pictures a second */
  constructor(draw: Drawer, rate: number) {
    this.#draw = draw;
    this.#texts = Math.max(1, Math.round(rate / 10));
  }

  picture(session: Session, station: Station, beside: Beside): Picture {
    const drawings = this.#draw.stage(session, station, { ...SHEET, foot: footOf(beside.said) });
    const same = drawings.length === this.#settled.length;
    if (this.#left <= 0 || !same) {
      const foot = SHEET.height - footOf(beside.said);
      const taken = [
        titleBox(beside.title),
        { left: 0, top: foot, right: SHEET.width, bottom: SHEET.height },
      ];
      this.#settled = this.#draw.settle(drawings, taken);
      this.#left = this.#texts;
    }
    this.#left -= 1;
    return {
      drawings: drawings.map((d, i) => ({
        shapes: d.shapes,
        view: d.view,
        labels: this.#settled[i]?.labels ?? [],
        ...(d.clip ? { clip: d.clip } : {}),
      })),
      blocks: blocksOf(beside),
      words: wordsOf(beside),
    };
  }
}
