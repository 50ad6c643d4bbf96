import { html, svg, type TemplateResult } from 'lit';
import type { Wheel } from '../../../sim/index.ts';
import { faultsVanPicture as texts } from '../../../sim/words/en.ts';
import { foundText, type Observed } from '../../../sim/workshop/index.ts';

/** The van from above, driving to the right: warm wheels filled, once their heat is known. */
export function vanPicture(heat: readonly Observed[] | null): TemplateResult {
  const of = (side: Wheel): Observed | undefined =>
    heat?.find((f) => f.name.startsWith(side) || f.name.startsWith('both'));
  const front = heat?.find((f) => f.name === 'front wheels');
  const warmFront = front?.kind === 'words' && front.says === 'warm too';
  const warm = (f: Observed | undefined): boolean =>
    f !== undefined && (f.kind === 'number' || f.says !== 'cool');
  const wheel = (x: number, y: number, on: boolean) =>
    svg`<rect x=${x} y=${y} width="52" height="16" fill=${on ? 'var(--warn)' : 'var(--emboss)'} stroke="var(--ink)" stroke-width="2" />`;
  const text = (f: Observed | undefined): string =>
    !f ? '' : f.kind === 'number' ? `+${f.value.toFixed(0)} K` : foundText(f.says);
  return html`<svg viewBox="0 0 420 150" role="img" aria-label=${heat ? texts.vanFromAboveLeftRear(text(of('left')), text(of('right'))) : texts.vanFromAbove}>
    ${wheel(92, 22, warm(of('left')))}${wheel(232, 22, warmFront)}${wheel(92, 112, warm(of('right')))}${wheel(232, 112, warmFront)}
    <rect x="68" y="38" width="232" height="74" rx="8" fill="var(--sheet)" stroke="var(--ink)" stroke-width="2.5" />
    <path d="M212 50Q236 44 248 75Q236 106 212 100Z" fill="var(--panel)" stroke="var(--ink)" stroke-width="1.6" />
    <path d="M322 75H352M346 69L356 75L346 81Z" stroke="var(--ink)" stroke-width="2" fill="var(--ink)" />
    <g fill="var(--ink)" font-size="16" font-weight="600"><text x="364" y="80">${texts.front}</text>
    <text x="86" y="36" text-anchor="end">${texts.left}</text><text x="86" y="126" text-anchor="end">${texts.right}</text>
    <text x="118" y="16" text-anchor="middle">${text(of('left'))}</text><text x="118" y="146" text-anchor="middle">${text(of('right'))}</text></g>
  </svg>`;
}
