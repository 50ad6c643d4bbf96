import { css, html, type TemplateResult } from 'lit';
import { type Instant, type Tilt, tiltOf } from '../../sim/index.ts';
import { appEdgeCard as texts } from '../../sim/words/en.ts';
import { number } from '../format.ts';
import { NARROW, NARROW_STAGE } from '../pieces/page-sizes.ts';
import type { Session } from '../session.ts';
import { type EdgeBox, TILT_DRAWN } from '../stage/edge-on.ts';

/** Words and switches under the edge-on drawing: what tips the shoe, what stops it. */

/** Depth worn into hollow pads, mm: in the middle of what the trade reports, 0.3 to 1 (from memory). */
export const HOLLOW = 0.5;

/** px that the words take below the drawing. */
const WORDS = 190;

/** Where the drawing stands on the stage, px. */
export function edgeBox(width: number, height: number, foot: number): EdgeBox {
  const free = height - foot;
  if (width < NARROW_STAGE) return { at: [8, 8], width: width - 16, height: free - WORDS - 16 };
  const wide = width > 1000 ? 330 : 270;
  const left = width > 1000 ? 44 : 14;
  const high = Math.min(wide * 1.05, free - WORDS - 70);
  return { at: [left, free - WORDS - high - 16], width: wide, height: high };
}

/** Where the force polygons stand on the stage, px: on a phone and a wall in the brake's place, which is a small key. */
export function polygonBox(
  { width, height, foot }: { width: number; height: number; foot: number },
  wall: boolean,
  text: number,
): EdgeBox {
  const free = height - foot;
  if (wall) return { at: [20, 20], width: width - 40, height: free - 40 - 128 * text };
  if (width < NARROW_STAGE) return { at: [8, 112], width: width - 16, height: free - 120 };
  const large = width > 1000;
  const top = large ? 84 : 48;
  return { at: [large ? 44 : 14, top], width: large ? 380 : 300, height: free - top - 16 };
}

const stops: Record<Tilt['stop'], string> = texts.stops;

export function edgeCard(session: Session, instant: Instant, place: EdgeBox): TemplateResult {
  const cause = session.tiltCause;
  const t = tiltOf(session.brake, instant, 'front', cause);
  const degrees = (t.angle * 180) / Math.PI;
  const lost = cause.holdDown === 'lost';
  const hollow = cause.groove > 0;
  return html`<div class="edge" .style=${`left:${place.at[0]}px;top:${place.at[1] + place.height - 2}px;width:${place.width}px`} data-tilt=${degrees.toFixed(2)}>
      <b>${texts.edgeOnFrontShoeTilt(TILT_DRAWN)}</b>
      <p>${texts.nPullMmBesideThe(number(t.pull, 0), number(t.beside, 1), number(t.moment, 0), number(t.righting, 0), t.angle > 0 ? html`<strong>${texts.mmAcrossTheLining(number(degrees, 2), number(t.acrossLining, 2))}</strong>` : html`<strong>${texts.upright}</strong>`, stops[t.stop])}</p>
      <div>
        <button aria-pressed=${lost} class=${lost ? 'on' : ''} @click=${() => session.tip({ ...cause, holdDown: lost ? 'fitted' : 'lost' })}>${texts.holdDownLost}</button>
        <button aria-pressed=${hollow} class=${hollow ? 'on' : ''} @click=${() => session.tip({ ...cause, groove: hollow ? 0 : HOLLOW })}>${texts.endPadsWornMm(HOLLOW)}</button>
      </div>
    </div>`;
}

export const edgeStyles = css`
  .edge { position: absolute; z-index: 1; border: 2px solid var(--ink); background: var(--sheet); padding: 6px 10px 8px; font-size: 14.5px; line-height: 1.3; }
  .edge b { font-size: 15px; font-weight: 700; }
  .edge p { margin: 3px 0 6px; }
  .edge div { display: grid; grid-template-columns: 1fr 1fr; gap: 6px; }
  .edge button { border: 2px solid var(--ink); min-height: 40px; padding: 0 6px; font-size: 14px; font-weight: 600; text-align: center; line-height: 1.15; }
  .edge .on { background: var(--ink); color: var(--sheet); }
  @media ${NARROW} { .edge button { min-height: 56px; } }
`;
