import type { Theme } from '../theme.ts';
import { type Ground, type Hand, isBaked, type Window } from './hand.ts';
import type { HatchTiles } from './hatch-tiles.ts';
import { changeOf } from './same.ts';
import type { Drawing, Shape } from './shapes.ts';

/**
 * What goes less far than this from where it was painted stays as painted, device px. Smoothed edges
 * would change by a twentieth of their contrast, which nobody sees; the numbers of a moving brake
 * never stand quite still, and without it every frame would paint every part anew.
 */
const UNSEEN = 0.05;

/** The canvas, device px, and how many of them make a CSS pixel. */
export type Screen = Pick<Ground, 'pixels' | 'width' | 'height'>;

/**
 * One drawing as it is painted. A shape is built again only when its outline
 * or style is seen to change; a rigid move alone moves what was built.
 */
export class PaintedDrawing {
  readonly #hand: Hand;
  readonly #shapes = new Map<string, Shape>();
  #ground: Ground | null = null;
  #keys: string[] = [];
  #window: string | undefined;
  /** Drum's centre, device px. */
  #at: readonly [number, number] = [0, 0];

  constructor(hand: Hand) {
    this.#hand = hand;
  }

  /** Brings what is painted up to date; true when anything changed. */
  update(drawing: Drawing, theme: Theme, screen: Screen, tiles: HatchTiles): boolean {
    const { view } = drawing;
    const { pixels } = screen;
    const ground: Ground = { scale: view.scale, k: view.k, theme, tiles, ...screen };
    const old = this.#ground;
    const fresh =
      !old ||
      old.scale !== ground.scale ||
      old.k !== ground.k ||
      old.theme !== theme ||
      old.pixels !== pixels;
    this.#ground = ground;
    let changed = fresh;
    const x = Math.round(view.origin[0] * pixels);
    const y = Math.round(view.origin[1] * pixels);
    if (this.#at[0] !== x || this.#at[1] !== y) {
      this.#at = [x, y];
      changed = true;
    }
    const window = windowOf(drawing, theme, pixels);
    if (window?.key !== this.#window) {
      this.#window = window?.key;
      changed = true;
    }
    this.#hand.begin(x, y, window, ground);
    drawing.shapes.forEach((shape, i) => {
      if (this.#put(shape, ground, fresh) || this.#keys[i] !== shape.key) changed = true;
    });
    this.#hand.end();
    return this.#forget(drawing.shapes) || changed;
  }

  #put(shape: Shape, ground: Ground, fresh: boolean): boolean {
    const was = this.#shapes.get(shape.key);
    const slack = UNSEEN / (ground.scale * ground.pixels);
    const change = was && !fresh ? changeOf(was, shape, slack) : 'built';
    const build = change === 'built' || (change === 'moved' && isBaked(shape));
    // Kept is what was painted, so that small steps add up until they are seen.
    if (build || !was) this.#shapes.set(shape.key, shape);
    else if (change === 'moved' && shape.place) {
      this.#shapes.set(shape.key, { ...was, place: shape.place });
    }
    this.#hand.put(shape, build, change === 'moved', ground);
    return change !== 'none';
  }

  /** Drops what is no longer drawn and keeps the order for the next time. */
  #forget(shapes: readonly Shape[]): boolean {
    const before = this.#keys;
    this.#keys = shapes.map((s) => s.key);
    if (shapes.length === this.#shapes.size && before.length === shapes.length) return false;
    const seen = new Set(this.#keys);
    for (const key of this.#shapes.keys()) {
      if (seen.has(key)) continue;
      this.#hand.drop(key);
      this.#shapes.delete(key);
    }
    return true;
  }

  destroy(): void {
    this.#hand.destroy();
    this.#shapes.clear();
  }
}

/** Where on the screen a loupe's drawing is seen. */
function windowOf({ clip }: Drawing, theme: Theme, pixels: number): Window | null {
  if (!clip) return null;
  const [x, y] = [clip.at[0] * pixels, clip.at[1] * pixels];
  const radius = clip.radius * pixels;
  const fill = theme.colours[clip.fill];
  return { x, y, radius, fill, key: `${x} ${y} ${radius} ${fill}` };
}
