import { html, svg, type TemplateResult } from 'lit';
import { parkStops as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { caution } from '../../pieces/icons.ts';
import type { ParkDesk } from './desk.ts';

/** Where the stop's tab sits on the lever: this share of the way from pivot to hook. */
const TAB = 0.66;
/** px per mm in the two loupes. */
const SCALE = 5;

/** Lever with its tab and the web's edge, the gap between them at the loupe's scale. */
function loupe(gap: number, warn: boolean): TemplateResult {
  const x = 58 - gap * SCALE;
  return svg`<clipPath id=${`park-clip-${warn}`}><circle cx="60" cy="60" r="57" /></clipPath>
    <g clip-path=${`url(#park-clip-${warn})`}><rect width="120" height="120" fill="var(--plate)" />
      <path d="M78 0Q66 60 80 120H120V0Z" fill="var(--web)" stroke="var(--ink)" stroke-width="1.6" />
      <path d=${`M${x - 34} 0Q${x - 22} 60 ${x - 34} 120H${x - 4}Q${x + 6} 90 ${x + 6} 76L${x + 14} 72V46L${x + 6} 40Q${x + 4} 20 ${x} 0Z`} fill="var(--parking-lever)" stroke="var(--ink)" stroke-width="1.6" />
    </g><circle cx="60" cy="60" r="57" fill="none" stroke="var(--ink)" stroke-width="2.4" />`;
}

/** The released lever at its stop, and held off it by a cable that is too tight. */
export function stopsPanel(desk: ParkDesk): TemplateResult {
  const { home, off } = desk.stops;
  const mm = desk.offShown;
  const now = desk.session.state.leverOffStop > 0;
  return html`<h2>${words.letGoTheLeverAt}</h2>
    <div class="park-stops">
      <figure class=${now ? '' : 'now'}><div class="park-loupe"><svg viewBox="0 0 120 120" aria-hidden="true">${loupe(0, false)}</svg></div>
        <figcaption>${words.clearance(html`<b>${words.onItsStop}</b>`, number(home, 2))}</figcaption></figure>
      <figure class=${now ? 'now' : ''}><div class="park-loupe"><svg viewBox="0 0 120 120" aria-hidden="true">${loupe(mm * TAB, true)}</svg>${caution}</div>
        <figcaption>${words.mmOffLost(html`<b>${words.cableTooTight}</b>`, number(mm, 0), number(off, 2), number(home - off, 2))}</figcaption></figure>
    </div>`;
}
