import { CanvasHand } from '../../stage/canvas-hand.ts';
import { HatchTiles } from '../../stage/hatch-tiles.ts';
import { penOf } from '../../stage/own-canvas.ts';
import { PaintedDrawing } from '../../stage/painted-drawing.ts';
import { Stains } from '../../stage/stains.ts';
import type { Theme } from '../../theme.ts';
import type { Picture } from './picture.ts';
import { writeLabel, writeWord } from './write-words.ts';

/** Paints a film's pictures one after the other, with the page's own 2D painter, away from the page. */
export class FilmPainter {
  /** The present picture. */
  readonly canvas: OffscreenCanvas;
  /** The stage without its texts: of each picture only what is another is painted. */
  readonly #stage: OffscreenCanvas;
  readonly #theme: Theme;
  readonly #pixels: number;
  readonly #stains = new Stains();
  readonly #tiles: HatchTiles;
  readonly #hands: CanvasHand[] = [];
  readonly #painted: PaintedDrawing[] = [];

  /**
   * @param width device px, as the height
   * @param sheet width of the pictures' sheet, px
   */
  constructor(width: number, height: number, sheet: number, theme: Theme) {
    this.canvas = new OffscreenCanvas(width, height);
    this.#stage = new OffscreenCanvas(width, height);
    this.#theme = theme;
    this.#pixels = width / sheet;
    this.#tiles = new HatchTiles(theme);
    this.#tiles.renew(theme, this.#pixels);
    this.#stains.resize(width, height);
  }

  paint(picture: Picture): void {
    this.#paintStage(picture);
    const theme = this.#theme;
    const pen = penOf(this.canvas, true);
    pen.setTransform(1, 0, 0, 1, 0, 0);
    pen.drawImage(this.#stage, 0, 0);
    pen.setTransform(this.#pixels, 0, 0, this.#pixels, 0, 0);
    for (const pass of ['halo', 'letters'] as const) {
      for (const drawing of picture.drawings) {
        for (const label of drawing.labels) writeLabel(pen, label, drawing, theme, pass);
      }
    }
    for (const { colour, height, width, x, y } of picture.blocks) {
      pen.fillStyle = theme.colours[colour];
      pen.fillRect(x, y, width, height);
    }
    for (const word of picture.words) writeWord(pen, word, theme);
  }

  #paintStage({ drawings }: Picture): void {
    while (this.#painted.length > drawings.length) {
      this.#painted.pop()?.destroy();
      this.#stains.all();
    }
    const { height, width } = this.#stage;
    const screen = { pixels: this.#pixels, width, height };
    drawings.forEach((drawing, i) => {
      let painted = this.#painted[i];
      if (!painted) {
        const hand = new CanvasHand(this.#stains, () =>
          this.#hands.splice(this.#hands.indexOf(hand), 1),
        );
        this.#hands.push(hand);
        painted = new PaintedDrawing(hand);
        this.#painted.push(painted);
      }
      painted.update(drawing, this.#theme, screen, this.#tiles);
    });
    const pen = penOf(this.#stage, true);
    this.#stains.take(this.#hands.reduce((sum, hand) => sum + hand.arrange(), 0));
    pen.setTransform(1, 0, 0, 1, 0, 0);
    pen.globalAlpha = 1;
    pen.fillStyle = this.#theme.colours.sheet;
    for (const { rect } of this.#stains.due) pen.fillRect(rect.x, rect.y, rect.width, rect.height);
    for (const hand of this.#hands) hand.render(pen);
  }
}
