import { html, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import { drumOffNut as texts } from '../../../sim/words/en.ts';

/** Thread flanks of nut and axle as zigzags, pitch 8 px. */
const zig = (x0: number, y: number, turns: number, way: 1 | -1): string => {
  const flanks = Array.from({ length: turns }, (_, i) => {
    const x = x0 + 8 * i;
    return `L${x} ${y}L${x + 4} ${y + 5 * way}`;
  });
  return `${flanks.join('')}L${x0 + 8 * turns} ${y}`;
};

/** Half a hub nut in section in one place on the axle: the last threads of the nut are pressed in. */
function half(dx: number, nutAt: number, words: string): SVGTemplateResult {
  const x = dx + nutAt;
  return svg`<path d="M${dx} 82L${dx} 58${zig(dx, 58, 13, -1)}L${dx + 104} 82Z" fill="var(--piston)" stroke="var(--ink)" stroke-width="1.5" />
    <path d="M${x} 20H${x + 48}V${30}H${x + 64}V53${`L${x + 60} 58L${x + 56} 54L${x + 52} 58L${x + 48} 53`}${Array.from({ length: 6 }, (_, i) => `L${x + 44 - 8 * i} 49L${x + 40 - 8 * i} 53`).join('')}Z" fill="var(--strut)" stroke="var(--ink)" stroke-width="2" />
    <path d="M${x + 48} 28L${x + 57} 40" stroke="var(--bad)" stroke-width="2" fill="none" />
    <path d="M${x + 58.5} 42.5L${x + 52} 40L${x + 57} 36Z" fill="var(--bad)" />
    <text x=${dx + 52} y="102" text-anchor="middle" class="w">${words}</text>`;
}

/** A nut with locally deformed threads, gripping and run off the axle's end. */
export const nutDrawing: TemplateResult = html`<svg class="nut" viewBox="0 0 300 110" role="img" aria-label=${texts.hubNutInSectionLeft}>
  ${half(26, 8, texts.pressedThreadsGrip)}${half(166, 68, texts.runOffTheEndFree)}
</svg>`;
