import { fontOf, haloOf } from '../../stage/layers/label.ts';
import type { Pen } from '../../stage/own-canvas.ts';
import type { Drawing, Label } from '../../stage/shapes.ts';
import { toPx } from '../../stage/view.ts';
import type { Theme } from '../../theme.ts';
import type { Word } from './picture.ts';

/** Text on a canvas as the page writes it: its face, halos in the sheet's colour, figures of one width. */

export const FACE = 'Encode Sans Variable';

interface Run {
  readonly text: string;
  readonly x: number;
}

/** A text in runs; each figure stands in the middle of the widest one's room, so that a changing number does not move. */
function runsOf(pen: Pen, text: string): { readonly runs: readonly Run[]; readonly width: number } {
  const room = Math.max(...Array.from('0123456789', (d) => pen.measureText(d).width));
  const runs: Run[] = [];
  let x = 0;
  for (const piece of text.split(/(\d)/)) {
    if (piece === '') continue;
    const { width } = pen.measureText(piece);
    const figure = /^\d$/.test(piece);
    runs.push({ text: piece, x: figure ? x + (room - width) / 2 : x });
    x += figure ? room : width;
  }
  return { runs, width: x };
}

interface Look {
  readonly size: number;
  readonly weight: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly colour: string;
  /** px, both sides of a letter's edge together; 0: none. */
  readonly halo: number;
  readonly sheet: string;
}

/** Halos of all labels come first: none may cover another's letters. */
export type Pass = 'halo' | 'letters';

/** @param middle height of its letters' middle, px */
function write(pen: Pen, text: string, x: number, middle: number, look: Look, pass: Pass): void {
  pen.font = `${look.weight} ${look.size}px "${FACE}", sans-serif`;
  pen.textBaseline = 'alphabetic';
  const { runs, width } = runsOf(pen, text);
  const left = look.anchor === 'start' ? x : look.anchor === 'end' ? x - width : x - width / 2;
  // As the page: dy of 0.35 em.
  const y = middle + 0.35 * look.size;
  if (pass === 'halo') {
    pen.lineJoin = 'round';
    pen.lineWidth = look.halo;
    pen.strokeStyle = look.sheet;
    for (const run of runs) pen.strokeText(run.text, left + run.x, y);
    return;
  }
  pen.fillStyle = look.colour;
  for (const run of runs) pen.fillText(run.text, left + run.x, y);
}

/** A label of a drawing. */
export function writeLabel(
  pen: Pen,
  label: Label,
  { view }: Drawing,
  { colours }: Theme,
  pass: Pass,
): void {
  const halo = haloOf(label.style, view);
  if (label.text === '' || (pass === 'halo' && halo === 0)) return;
  const [x, y] = toPx(view, label.at);
  write(
    pen,
    label.text,
    x + label.dx,
    y + label.dy,
    {
      size: label.size,
      weight: fontOf(label.style).weight,
      anchor: label.anchor,
      colour: colours[label.colour],
      halo,
      sheet: colours.sheet,
    },
    pass,
  );
}

export function writeWord(pen: Pen, word: Word, { colours }: Theme): void {
  const { anchor, size, weight } = word;
  const look = {
    anchor,
    size,
    weight,
    colour: colours[word.colour],
    halo: 0,
    sheet: colours.sheet,
  };
  write(pen, word.text, word.x, word.y, look, 'letters');
}
