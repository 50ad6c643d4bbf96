/**
 * Paints groups of shapes with PixiJS. WebGL where a graphics card draws it, the canvas renderer
 * where WebGL is missing or done in software (filling pixels is then 25 to 35 times dearer). Each
 * group is one Graphics, painted anew only when its key or the view changed; arcs are flattened by
 * our own tolerance.
 */
import 'pixi.js/unsafe-eval';
import { autoDetectRenderer, Container, Graphics, type Renderer } from 'pixi.js';
import { dashes, flatten, toleranceAt } from './flatten.ts';
import type { Group, Shape } from './shapes.ts';
import type { Theme } from './theme.ts';

/** Where the drum axis stands (px from the stage's top left), px per mm, line weight; a round window when clipped. */
export interface View {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  readonly k: number;
  readonly clip?: { readonly x: number; readonly y: number; readonly r: number };
}

export interface Picture {
  readonly name: string;
  readonly groups: readonly Group[];
  readonly view: View;
}

/** Is WebGL there, and drawn by hardware? */
function hardwareWebgl(): boolean {
  const canvas = document.createElement('canvas');
  const gl = canvas.getContext('webgl2');
  if (!gl) return false;
  const info = gl.getExtension('WEBGL_debug_renderer_info');
  const name = String(
    info ? gl.getParameter(info.UNMASKED_RENDERER_WEBGL) : gl.getParameter(gl.RENDERER),
  );
  gl.getExtension('WEBGL_lose_context')?.loseContext();
  return !/swiftshader|llvmpipe|software|basic render/i.test(name);
}

interface Kept {
  readonly graphics: Graphics;
  key: string;
}

interface KeptPicture {
  readonly container: Container;
  readonly clip: Graphics;
  readonly groups: Map<string, Kept>;
  view: string;
}

export class PixiStage {
  readonly kind: 'webgl' | 'canvas';
  readonly canvas: HTMLCanvasElement;
  readonly #renderer: Renderer;
  readonly #root = new Container();
  readonly #pictures = new Map<string, KeptPicture>();
  #theme: Theme;
  #dirty = true;

  private constructor(renderer: Renderer, kind: 'webgl' | 'canvas', theme: Theme) {
    this.#renderer = renderer;
    this.kind = kind;
    this.#theme = theme;
    this.canvas = renderer.canvas as HTMLCanvasElement;
    // Pixi uploads everything again by itself; the picture only has to be drawn once more.
    this.canvas.addEventListener('webglcontextrestored', () => {
      this.#dirty = true;
    });
  }

  /** @param software draw on a 2D canvas whatever the machine offers */
  static async create(host: HTMLElement, theme: Theme, software = false): Promise<PixiStage> {
    const kind = !software && hardwareWebgl() ? 'webgl' : 'canvas';
    const renderer = await autoDetectRenderer({
      preference: kind === 'webgl' ? ['webgl', 'canvas'] : ['canvas'],
      antialias: true,
      autoDensity: true,
      backgroundAlpha: 0,
      width: 300,
      height: 150,
      resolution: 1,
    });
    const stage = new PixiStage(renderer, kind, theme);
    host.prepend(stage.canvas);
    return stage;
  }

  /** CSS size and device pixels per CSS pixel. */
  resize(width: number, height: number, resolution: number): void {
    this.#renderer.resize(width, height, resolution);
    this.#dirty = true;
  }

  setTheme(theme: Theme): void {
    this.#theme = theme;
    for (const p of this.#pictures.values()) p.view = '';
  }

  /** Paints the pictures over each other; ones that are gone are taken off. */
  draw(pictures: readonly Picture[]): void {
    for (const [name, kept] of this.#pictures) {
      if (pictures.some((p) => p.name === name)) continue;
      kept.container.destroy({ children: true });
      this.#pictures.delete(name);
      this.#dirty = true;
    }
    for (const picture of pictures) this.#update(picture);
    if (!this.#dirty) return;
    this.#renderer.render(this.#root);
    this.#dirty = false;
  }

  #update(picture: Picture): void {
    let kept = this.#pictures.get(picture.name);
    if (!kept) {
      kept = { container: new Container(), clip: new Graphics(), groups: new Map(), view: '' };
      this.#root.addChild(kept.container);
      this.#pictures.set(picture.name, kept);
    }
    const { view } = picture;
    const viewKey = JSON.stringify(view);
    const moved = kept.view !== viewKey;
    if (moved && view.clip) {
      kept.clip.clear().circle(view.clip.x, view.clip.y, view.clip.r).fill(0xffffff);
      kept.container.addChild(kept.clip);
      kept.container.mask = kept.clip;
    }
    kept.view = viewKey;
    const present = new Set(picture.groups.map((g) => g.name));
    for (const [name, g] of kept.groups) {
      if (present.has(name)) continue;
      g.graphics.destroy();
      kept.groups.delete(name);
      this.#dirty = true;
    }
    picture.groups.forEach((group, order) => {
      let g = kept.groups.get(group.name);
      if (!g) {
        g = { graphics: new Graphics(), key: '' };
        kept.groups.set(group.name, g);
        kept.container.addChild(g.graphics);
      }
      g.graphics.zIndex = order;
      if (!moved && g.key === group.key) return;
      g.key = group.key;
      this.#paint(g.graphics, group.make(), view);
      this.#dirty = true;
    });
    kept.container.sortableChildren = true;
  }

  #paint(g: Graphics, shapes: readonly Shape[], view: View): void {
    g.clear();
    const tolerance = toleranceAt(view.scale);
    for (const s of shapes) {
      const lines = flatten(s.path, tolerance);
      for (const l of lines) {
        const p = l.points;
        for (let i = 0; i < p.length; i += 2) {
          p[i] = view.x + (p[i] as number) * view.scale;
          p[i + 1] = view.y - (p[i + 1] as number) * view.scale;
        }
      }
      if (s.fill) {
        lines.forEach((l, i) => {
          g.poly(l.points, true);
          // The first outline is the body, any further ones its holes.
          if (i === 0) g.fill({ color: this.#theme[s.fill ?? 'ink'], alpha: s.opacity ?? 1 });
          else g.cut();
        });
      }
      const width = s.stroke ? (s.width ?? 1) * (s.mm ? view.scale : view.k) : 0;
      if (!s.stroke || width <= 0) continue;
      const pattern = s.dash?.map((d) => d * view.k);
      for (const l of lines) {
        if (pattern) {
          for (const piece of dashes(l, pattern)) this.#trace(g, piece, false);
        } else this.#trace(g, l.points, l.closed);
      }
      g.stroke({
        color: this.#theme[s.stroke],
        width,
        alpha: s.fill ? 1 : (s.opacity ?? 1),
        join: s.round ? 'round' : 'miter',
        cap: s.round ? 'round' : 'butt',
      });
    }
  }

  #trace(g: Graphics, points: readonly number[], closed: boolean): void {
    g.moveTo(points[0] as number, points[1] as number);
    for (let i = 2; i < points.length; i += 2)
      g.lineTo(points[i] as number, points[i + 1] as number);
    if (closed) g.closePath();
  }

  destroy(): void {
    this.#root.destroy({ children: true });
    this.#renderer.destroy(true);
  }
}
