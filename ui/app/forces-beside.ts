import { css, html, nothing, type TemplateResult } from 'lit';
import { bodyGap, freeBody, type Instant, isTold, type Side } from '../../sim/index.ts';
import { appForcesBeside as texts } from '../../sim/words/en.ts';
import { number } from '../format.ts';
import type { Session } from '../session.ts';
import { mirrorDrawing } from '../stage/mirror.ts';
import { polygons } from '../stage/polygons.ts';
import type { StageInput } from '../stage/scene.ts';
import type { Drawing } from '../stage/shapes.ts';
import { words } from '../working/body-words.ts';
import { polygonBox } from './edge-card.ts';
import { bringBodies, type StageAt } from './stage-drawing.ts';

/** The force polygons beside the brake, and what their numbers stand for, shoe by shoe. */

const SIDES = ['front', 'rear'] as const;

/** All forces on each shoe, head to tail, beside the brake; on a narrow stage and a wall in its place. */
function drawBodies(at: StageAt, { instant, view }: StageInput): Drawing[] {
  const { session } = at;
  const { rig, shown: state } = session;
  const of = (side: Side) => freeBody(rig, state, instant, side);
  const bodies = isTold(instant) ? { front: of('front'), rear: of('rear') } : null;
  const right = session.wheel === 'right';
  const box = polygonBox(at, session.wall, view.text);
  const drawn = polygons(bodies, instant, view, box, right ? -1 : 1);
  return [right ? mirrorDrawing(drawn) : drawn];
}
bringBodies(drawBodies);

/** @param instant that of the stage */
export function forcesBeside(session: Session, instant: Instant): TemplateResult | typeof nothing {
  if (!session.layers.polygons || session.wall) return nothing;
  const { rig, shown: state } = session;
  const list = (side: Side): TemplateResult => {
    const forces = freeBody(rig, state, instant, side);
    const gap = Math.hypot(...bodyGap(forces));
    return html`<div data-body=${side} data-gap=${gap.toFixed(3)}><h3>${texts.shoe(side === 'front' ? texts.front : texts.rear)}</h3>
      <ol>${forces.map((f) => html`<li><span>${words(f)}</span><b>${number(Math.hypot(...f.force), 0)}\u00a0N</b></li>`)}</ol>
      <p>${texts.leftOverN(number(gap, 1))}</p></div>`;
  };
  return html`<section class="blk bodies" aria-labelledby="bodies"><h2 id="bodies">${texts.allForcesOnEachShoe}</h2>
    ${isTold(instant) ? html`<div class="two">${SIDES.map(list)}</div><p>${texts.headToTailTheyClose}</p>` : html`<p>${texts.noForceIsToldHere}</p>`}</section>`;
}

export const bodiesStyles = css`
  .bodies { padding: 8px 16px 10px; order: -1; }
  .bodies h2 { margin: 0; font-size: 18px; font-weight: 760; }
  .bodies h3 { margin: 2px 0; font-size: 15.5px; font-weight: 700; }
  .bodies .two { display: grid; grid-template-columns: 1fr 1fr; gap: 0 18px; }
  .bodies ol { margin: 0; padding: 0 0 0 1.5em; font-size: 14.5px; line-height: 1.25; font-variant-numeric: tabular-nums; }
  .bodies li span { display: inline-block; margin-right: 6px; }
  .bodies p { margin: 3px 0 0; font-size: 14.5px; line-height: 1.3; }
`;
