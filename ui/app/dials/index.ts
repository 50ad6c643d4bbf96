import { css, html, nothing, type TemplateResult } from 'lit';
import { number } from '../../format.ts';
import { backToMine, makeMine } from '../../record/guest.ts';
import { PRESS_BAR, type Session } from '../../session.ts';
import type { StageInput } from '../../stage/scene.ts';
import type { Drawing } from '../../stage/shapes.ts';
import { deskOf } from '../../stations/station.ts';
import { DialDesk } from './desk.ts';
import type { Dial } from './dials.ts';
import './handles.ts';
import { appDials as words } from '../../../sim/words/en.ts';
import { drawKnobs } from './knobs.ts';

/** Dials on the stage, loaded when they are first switched on: their handles over the brake, and what is told beside it. */

type Drawn = Pick<Drawing, 'shapes' | 'labels'>;

function over(session: Session, input: StageInput, under: Drawn | null): Drawn | null {
  const { brake, view, layers } = input;
  const desk = deskOf(DialDesk, session);
  // On a wall, and where the brake is a small key, there is no room for them.
  const small = view.wall || Object.keys(layers).length === 0;
  if (!desk.on || desk.guest || small) return under;
  const drawn = drawKnobs(desk, brake, view, session.wheel === 'right' ? -1 : 1);
  return {
    shapes: [...(under?.shapes ?? []), ...drawn.shapes],
    labels: [...drawn.labels, ...(under?.labels ?? [])],
  };
}

/** The brake factor of one's own brake and of the turned one. */
function factor(session: Session, desk: DialDesk): TemplateResult {
  const { bar, was, now, locked } = desk.factors;
  const moved = desk.turned.length > 0;
  const by = (100 * (now - was)) / was;
  const told = (x: number): string => (Number.isFinite(x) ? number(x, 2) : words.notTold);
  const after = locked
    ? html`<b>${words.theShoeLocks(locked)}</b>`
    : html`<b data-factor>${told(now)}</b>${moved && Number.isFinite(by) ? ` (${by > 0 ? '+' : ''}${number(by, 0)} %)` : ''}`;
  return html`<p class="fac">${words.brakeFactorAtBar(number(bar, 0))} ${moved ? html`${told(was)} → ${after}` : after}${
    session.pedal === 0 && session.station === 'apply'
      ? html` <button class="btn" @click=${() => session.pressTo(PRESS_BAR)}>${words.pressIt}</button>`
      : nothing
  }</p>`;
}

const row = (desk: DialDesk, dial: Dial): TemplateResult =>
  html`<li><span>${dial.name}: ${desk.told(dial, desk.home(dial))} → <b>${desk.told(dial)}</b></span><button class="btn" aria-label=${words.backTo(dial.name, desk.told(dial, desk.home(dial)))} @click=${() => desk.back(dial)}>${words.back}</button></li>`;

function beside(session: Session): TemplateResult | typeof nothing {
  const desk = deskOf(DialDesk, session);
  if (!desk.on) return nothing;
  if (desk.guest)
    return html`<section class="blk dials" aria-labelledby="dials"><h2 id="dials">${words.dials}</h2><p>${words.theyTurnYourOwnBrake}</p><div><button class="btn" @click=${() => session.do(makeMine)}>${words.makeItMine}</button><button class="btn" @click=${() => session.do(backToMine)}>${words.backToMine}</button></div></section>`;
  const { now, turned, refused } = desk;
  return html`<section class="blk dials" aria-labelledby="dials"><h2 id="dials">${words.dials}</h2>
    ${factor(session, desk)}
    <p aria-live="polite">${now ? html`<b>${now.name}: ${desk.told(now)}.</b> ${words.aDoubleClickOrBackspace(now.place ? words.dragItOrArrowKeys : words.dragItAcrossOrArrow)}` : words.takeAHandleOnThe}</p>
    <p role="alert" class="refused">${refused ? words.noFurtherThereIsNo(refused.replace(/\.$/, '')) : ''}</p>
    ${turned.length > 0 ? html`<ul>${turned.map((d) => row(desk, d))}</ul>` : nothing}
    ${turned.length > 0 ? html`<div><button class="btn" title=${words.esc} @click=${() => desk.allBack()}>${words.allBack}</button><button class="btn" @click=${() => session.do(makeMine)}>${words.makeItMine}</button></div>` : nothing}
  </section>`;
}

export const dials = {
  styles: css`
    .dials { padding: 8px 16px 10px; order: -1; }
    .dials h2 { margin: 0; font-size: 18px; font-weight: 760; }
    .dials p { margin: 2px 0 4px; font-size: 15.5px; line-height: 1.3; }
    .dials p:empty { display: none; }
    .dials .fac { font-size: 17px; font-variant-numeric: tabular-nums; }
    .dials .fac .btn { display: inline-flex; width: auto; min-height: 32px; padding: 0 10px; }
    .dials .refused { border-left: 6px solid var(--bad); padding-left: 8px; }
    .dials ul { list-style: none; margin: 4px 0 0; padding: 0; font-size: 15.5px; }
    .dials li { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 8px; align-items: center; border-top: 1px solid var(--rule); padding: 2px 0; line-height: 1.2; }
    .dials .btn { min-height: 38px; font-size: 15px; padding: 0 10px; }
    .dials > div { display: grid; grid-template-columns: 1fr 1fr; gap: 8px; }
    @media (max-width: 900px) { .dials .btn, .dials .fac .btn { min-height: 56px; } }
  `,
  over,
  beside,
};
