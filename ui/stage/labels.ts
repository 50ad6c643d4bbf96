import { fontOf, haloOf } from './layers/label.ts';
import type { Drawing, Label } from './shapes.ts';
import { toPx } from './view.ts';

const SVG = 'http://www.w3.org/2000/svg';

/** Rules for the label layer; colours come from the theme's custom properties. */
export const labelStyles = `
.stage-labels{position:absolute;inset:0;width:100%;height:100%;overflow:hidden;pointer-events:none;
font-family:'Encode Sans Variable','Encode Sans',sans-serif;font-feature-settings:"tnum";
paint-order:stroke;stroke-linejoin:round}
`;

const kebab = (name: string): string => name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`);

/**
 * Labels as SVG text over the canvas: sharp at any zoom, readable by assistive software. An element
 * is touched only when its label changed.
 */
export class LabelLayer {
  readonly #layer: SVGSVGElement;
  readonly #kept = new Map<string, { element: SVGTextElement; now: string }>();

  constructor(host: HTMLElement) {
    this.#layer = document.createElementNS(SVG, 'svg');
    this.#layer.setAttribute('class', 'stage-labels');
    host.append(this.#layer);
  }

  draw(drawings: readonly Drawing[]): void {
    const seen = new Set<string>();
    drawings.forEach((drawing, i) => {
      for (const label of drawing.labels) {
        const key = `${i} ${label.key}`;
        seen.add(key);
        this.#put(key, label, drawing);
      }
    });
    if (seen.size === this.#kept.size) return;
    for (const [key, { element }] of this.#kept) {
      if (seen.has(key)) continue;
      element.remove();
      this.#kept.delete(key);
    }
  }

  #put(key: string, label: Label, { view }: Drawing): void {
    const [x, y] = toPx(view, label.at);
    const px = (x + label.dx).toFixed(1);
    const py = (y + label.dy).toFixed(1);
    const look = `${label.colour} ${label.size.toFixed(1)} ${label.anchor} ${label.style}`;
    const now = `${px} ${py} ${look} ${label.text}`;
    let kept = this.#kept.get(key);
    if (kept?.now === now) return;
    if (!kept) {
      const element = document.createElementNS(SVG, 'text');
      element.setAttribute('dy', '0.35em');
      this.#layer.append(element);
      kept = { element, now: '' };
      this.#kept.set(key, kept);
    }
    const { element } = kept;
    kept.now = now;
    element.setAttribute('x', px);
    element.setAttribute('y', py);
    if (element.textContent !== label.text) element.textContent = label.text;
    if (element.dataset['look'] === look) return;
    element.dataset['look'] = look;
    const font = fontOf(label.style);
    const halo = haloOf(label.style, view);
    element.setAttribute('text-anchor', label.anchor);
    Object.assign(element.style, {
      fontSize: `${label.size.toFixed(1)}px`,
      fontWeight: String(font.weight),
      fontStretch: `${font.stretch}%`,
      fill: `var(--${kebab(label.colour)})`,
      stroke: halo > 0 ? 'var(--sheet)' : 'none',
      strokeWidth: `${halo}px`,
    });
  }

  clear(): void {
    for (const { element } of this.#kept.values()) element.remove();
    this.#kept.clear();
  }

  destroy(): void {
    this.clear();
    this.#layer.remove();
  }
}
