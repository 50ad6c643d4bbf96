import { html, nothing, type TemplateResult } from 'lit';
import { BAR, roleOf, slidesAt, type Turning } from '../../sim/index.ts';
import { yieldText } from '../../sim/workshop/index.ts';
import { number } from '../format.ts';
import { cell, factorCell, liningCell } from '../pieces/cells.ts';
import { fewReadings } from '../pieces/few.ts';
import { icons } from '../pieces/icons.ts';
import { timeRows } from '../pieces/time-line.ts';
import { dragOf } from '../record/derive.ts';
import type { Session } from '../session.ts';
import { applyHint, lostText } from '../words.ts';
import { handsButton } from './hands-button.ts';
import type { PageView, Station } from './station.ts';

/** Torque of a released brake from which it is said to drag, N·mm. */
const DRAGS = 500;

/** Apply: press, watch both shoes move and the leading one do more work. */

function heading({ find, instant: i, session }: PageView): TemplateResult {
  const push = find('toeForceFront').value;
  if (i.locked) {
    return html`<p>At this friction the drum drags the ${i.locked} shoe tight by itself: it <b class="lead">locks</b>. No force can be told.</p>`;
  }
  if (i.lost) return html`<p>${lostText}</p>`;
  if (i.yields) return html`<p>${yieldText(i.yields)}</p>`;
  if (!(push > 5)) {
    // Told before its drum has turned, too.
    const { torqueOnDrum, yields } = dragOf(session.rig, session.shown);
    const torque = Math.abs(torqueOnDrum);
    if (yields) return html`<p>${yieldText(yields)}</p>`;
    if (torque > slidesAt(session.brake.vehicle))
      return html`<p>Released, and yet it is <b class="lead">seized</b>: the linings stand inside the drum. ${number(torque / 1000, 0)} N·m would turn it, and the wheel slides before.</p>`;
    if (torque > DRAGS)
      return html`<p>Released, and yet it drags: the linings stand inside the drum, and <b class="lead">${number(torque / 1000, 0)} N·m</b> turn it.</p>`;
    return html`<p>Released: the springs hold both shoes on the strut, and the strut sets the gap.</p>`;
  }
  if (i.turning === 0)
    return html`<p>Both toes get the same ${number(push, 0)} N. The drum stands still: it helps neither shoe.</p>`;
  // By all of their normal force: shoes that bend spread it otherwise, so that peaks would tell another story.
  const pressed = [i.shoes.front.normalSum, i.shoes.rear.normalSum];
  const [lead, trail] = roleOf('front', i.turning) === 'leading' ? pressed : pressed.reverse();
  const times = (lead ?? 0) / (trail ?? 1);
  if (!Number.isFinite(times) || !(find('torque').value > 0.05))
    return html`<p>The pistons have taken the shoes off the strut; the gap closes first.</p>`;
  return html`<p>Both toes get the same ${number(push, 0)} N; the turning drum makes the leading lining press <b class="lead">${number(times, 1)} times</b> as hard.</p>`;
}

function side(page: PageView): TemplateResult {
  const { session, find, instant: i, size } = page;
  const roles = {
    front: roleOf('front', i.turning) === 'leading' ? 'lead' : 'trail',
    rear: roleOf('rear', i.turning) === 'leading' ? 'lead' : 'trail',
  } as const;
  const hint =
    session.pedal === 0
      ? applyHint.released
      : session.turning > 0
        ? applyHint.forward
        : session.turning < 0
          ? applyHint.backward
          : applyHint.stopped;
  if (!page.full)
    return html`<section class="blk h"><h1>Apply</h1>${heading(page)}</section>
      ${fewReadings(find, ['brakeFactor', 'torque', 'clearanceMean'])}`;
  return html`<section class="blk h"><h1>Apply</h1>${heading(page)}</section>
    <section class="blk rd" aria-label="Readings">
      ${factorCell(find, i.locked !== null)}
      ${cell(find('pistonForce'))}${cell(find('toeForceFront'))}
      ${cell(find('linePressure'))}${cell(find('torque'))}
      ${cell(find('pistonTravelFront'), { label: 'Piston travel, front' })}${cell(find('clearanceMean'))}
      ${liningCell(find, session.brake, 'front', roles.front)}
      ${liningCell(find, session.brake, 'rear', roles.rear)}
      ${cell(find('strutForce'))}${cell(find('tooth'))}
    </section>
    <section class="blk try"><b>Try</b> ${hint}</section>
    ${size === 'narrow' ? html`<section class="blk steps">${timeRows(session)}</section>` : nothing}`;
}

const turns: readonly [Turning, string][] = [
  [1, 'Forward'],
  [0, 'Stopped'],
  [-1, 'Backward'],
];

/** Forward is counter-clockwise on a left-hand wheel seen from outside, clockwise on a right-hand one. */
function seenTurn({ wheel }: Session, name: string): string {
  if (wheel === 'left' || name === 'Stopped') return name;
  return name === 'Forward' ? 'Backward' : 'Forward';
}

function controls({ session, size, full }: PageView): TemplateResult {
  const bar = session.pressure / BAR;
  return html`<section class="blk ctl" aria-label="Controls">
    ${
      session.back.look
        ? nothing
        : html`<div><div class="lab" id="drum">Drum</div>
      <div class="row withhands"><div class="seg" role="group" aria-labelledby="drum">${turns.map(([t, name]) => html`<button aria-pressed=${session.turning === t} class=${session.turning === t ? 'on' : ''} @click=${() => session.turn(t)}>${icons[seenTurn(session, name)]}${name}</button>`)}</div>${handsButton(session)}</div></div>`
    }
    ${size === 'narrow' || !(full || session.back.look) ? nothing : timeRows(session)}
    <takeup-pedal .session=${session} .bar=${bar}></takeup-pedal>
  </section>`;
}

export const apply: Station = {
  id: 'apply',
  few: 'All readings, slow motion, layers',
  pedal: true,
  wall: {
    readings: ['brakeFactor', 'torque', 'linePressure'],
    says: heading,
  },
  side,
  controls,
};
