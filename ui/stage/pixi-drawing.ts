import { Container, Graphics } from 'pixi.js';
import type { Theme } from '../theme.ts';
import { flatten } from './flatten.ts';
import { TURN } from './geometry.ts';
import { CanvasHand } from './pixi-canvas.ts';
import { GraphicsHand } from './pixi-graphics.ts';
import { type Ground, type Hand, isBaked, turnedDown } from './pixi-hand.ts';
import type { HatchTiles } from './pixi-hatch.ts';
import { changeOf } from './same.ts';
import type { Drawing, Shape } from './shapes.ts';

/** Deviation of a loupe's round edge, px. */
const EDGE = 0.1;
/**
 * What goes less far than this from where it was painted stays as painted, device px. Smoothed edges
 * would change by a twentieth of their contrast, which nobody sees; the numbers of a moving brake
 * never stand quite still, and without it every frame would paint every part anew.
 */
const UNSEEN = 0.05;

/**
 * One drawing as a container about the drum's centre. A shape is built again only when its outline
 * or style is seen to change; a rigid move alone moves what was built.
 */
export class PaintedDrawing {
  readonly container = new Container();
  readonly #hand: Hand;
  readonly #shapes = new Map<string, Shape>();
  #window: { ground: Graphics; mask: Graphics; key: string } | null = null;
  #ground: Ground | null = null;
  #keys: string[] = [];

  constructor(kind: 'webgl' | 'canvas') {
    this.#hand = kind === 'webgl' ? new GraphicsHand() : new CanvasHand();
    this.container.addChild(this.#hand.node);
  }

  /** Brings the container up to date; true when anything changed. */
  update(drawing: Drawing, theme: Theme, pixels: number, tiles: HatchTiles): boolean {
    const { view } = drawing;
    const ground: Ground = { scale: view.scale, k: view.k, theme, pixels, tiles };
    const old = this.#ground;
    const fresh =
      !old ||
      old.scale !== ground.scale ||
      old.k !== ground.k ||
      old.theme !== theme ||
      old.pixels !== pixels;
    this.#ground = ground;
    let changed = this.#round(drawing, theme) || fresh;
    const x = Math.round(view.origin[0] * pixels);
    const y = Math.round(view.origin[1] * pixels);
    if (this.container.x !== x || this.container.y !== y || fresh) {
      this.container.position.set(x, y);
      this.container.scale.set(pixels);
      changed = true;
    }
    this.#hand.begin();
    drawing.shapes.forEach((shape, i) => {
      if (this.#put(shape, ground, fresh) || this.#keys[i] !== shape.key) changed = true;
    });
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

  /** Round window of a loupe, with its own ground. */
  #round({ clip, view }: Drawing, theme: Theme): boolean {
    if (!clip) return false;
    const [x, y] = [clip.at[0] - view.origin[0], clip.at[1] - view.origin[1]];
    const key = `${x} ${y} ${clip.radius} ${theme.name}`;
    if (this.#window?.key === key) return false;
    if (!this.#window) {
      this.#window = { ground: new Graphics(), mask: new Graphics(), key };
      this.container.addChildAt(this.#window.ground, 0);
      this.container.addChild(this.#window.mask);
      this.container.mask = this.#window.mask;
    }
    this.#window.key = key;
    const circle = flatten([['A', x, -y, clip.radius, 0, TURN], ['Z']], EDGE);
    const points = turnedDown(circle, 1)[0]?.points ?? [];
    this.#window.mask.clear().poly(points).fill(0xffffff);
    this.#window.ground.clear().poly(points).fill(theme.colours[clip.fill]);
    return true;
  }

  destroy(): void {
    this.container.destroy({ children: true });
    this.#shapes.clear();
  }
}
