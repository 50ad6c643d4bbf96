import { html, nothing, type TemplateResult } from 'lit';
import { BAR, roleOf, slidesAt, type Turning } from '../../sim/index.ts';
import { labelWords, apply as texts } from '../../sim/words/en.ts';
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
    return html`<p>${texts.atThisFrictionTheDrum(i.locked, html`<b class="lead">${texts.locks}</b>`)}</p>`;
  }
  if (i.lost) return html`<p>${lostText}</p>`;
  if (i.yields) return html`<p>${yieldText(i.yields)}</p>`;
  if (!(push > 5)) {
    // Told before its drum has turned, too.
    const { torqueOnDrum, yields } = dragOf(session.rig, session.shown);
    const torque = Math.abs(torqueOnDrum);
    if (yields) return html`<p>${yieldText(yields)}</p>`;
    if (torque > slidesAt(session.brake.vehicle))
      return html`<p>${texts.releasedAndYetItIs(html`<b class="lead">${texts.seized}</b>`, number(torque / 1000, 0))}</p>`;
    if (torque > DRAGS)
      return html`<p>${texts.releasedAndYetItDrags(html`<b class="lead">${number(torque / 1000, 0)} N·m</b>`)}</p>`;
    return html`<p>${texts.releasedTheSpringsHoldBoth}</p>`;
  }
  if (i.turning === 0) return html`<p>${texts.bothToesGetTheSame(number(push, 0))}</p>`;
  // By all of their normal force: shoes that bend spread it otherwise, so that peaks would tell another story.
  const pressed = [i.shoes.front.normalSum, i.shoes.rear.normalSum];
  const [lead, trail] = roleOf('front', i.turning) === 'leading' ? pressed : pressed.reverse();
  const times = (lead ?? 0) / (trail ?? 1);
  if (!Number.isFinite(times) || !(find('torque').value > 0.05))
    return html`<p>${texts.thePistonsHaveTakenThe}</p>`;
  return html`<p>${texts.bothToesGetTheSame2(number(push, 0), html`<b class="lead">${texts.times(number(times, 1))}</b>`)}</p>`;
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
    return html`<section class="blk h"><h1>${texts.apply}</h1>${heading(page)}</section>
      ${fewReadings(find, ['brakeFactor', 'torque', 'clearanceMean'])}`;
  return html`<section class="blk h"><h1>${texts.apply}</h1>${heading(page)}</section>
    <section class="blk rd" aria-label=${texts.readings}>
      ${factorCell(find, i.locked !== null)}
      ${cell(find('pistonForce'))}${cell(find('toeForceFront'))}
      ${cell(find('linePressure'))}${cell(find('torque'))}
      ${cell(find('pistonTravelFront'), { label: texts.pistonTravelFront })}${cell(find('clearanceMean'))}
      ${liningCell(find, session.brake, 'front', roles.front)}
      ${liningCell(find, session.brake, 'rear', roles.rear)}
      ${cell(find('strutForce'))}${cell(find('tooth'))}
    </section>
    <section class="blk try"><b>${texts.tryWord}</b> ${hint}</section>
    ${size === 'narrow' ? html`<section class="blk steps">${timeRows(session)}</section>` : nothing}`;
}

const turns: readonly [Turning, string][] = [
  [1, labelWords.forward],
  [0, labelWords.stopped],
  [-1, labelWords.backward],
];

/** Forward is counter-clockwise on a left-hand wheel seen from outside, clockwise on a right-hand one. */
function seenTurn({ wheel }: Session, name: string): string {
  if (wheel === 'left' || name === labelWords.stopped) return name;
  return name === labelWords.forward ? labelWords.backward : labelWords.forward;
}

function controls({ session, size, full }: PageView): TemplateResult {
  const bar = session.pressure / BAR;
  return html`<section class="blk ctl" aria-label=${texts.controls}>
    ${
      session.back.look
        ? nothing
        : html`<div><div class="lab" id="drum">${texts.drum}</div>
      <div class="row withhands"><div class="seg" role="group" aria-labelledby="drum">${turns.map(([t, name]) => html`<button aria-pressed=${session.turning === t} class=${session.turning === t ? 'on' : ''} @click=${() => session.turn(t)}>${icons[seenTurn(session, name)]}${name}</button>`)}</div>${handsButton(session)}</div></div>`
    }
    ${size === 'narrow' || !(full || session.back.look) ? nothing : timeRows(session)}
    <takeup-pedal .session=${session} .bar=${bar}></takeup-pedal>
  </section>`;
}

export const apply: Station = {
  id: 'apply',
  few: texts.allReadingsSlowMotionLayers,
  pedal: true,
  wall: {
    readings: ['brakeFactor', 'torque', 'linePressure'],
    says: heading,
  },
  side,
  controls,
};
