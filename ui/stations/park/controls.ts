import { html, nothing, type TemplateResult } from 'lit';
import { number } from '../../format.ts';
import { handsButton } from '../hands-button.ts';
import type { PageView } from '../station.ts';
import type { ParkDesk } from './desk.ts';
import { MOST_PULL } from './part.ts';
import './pad.ts';
import { labelWords, parkControls as words } from '../../../sim/words/en.ts';
import { numberField, withDigits } from '../../pieces/number-field.ts';

/** A value between − and +. */
const stepper = (name: string, value: string, by: (step: 1 | -1) => void, least = false) =>
  html`<div class="park-set"><div class="lab">${name}</div><div class="park-step" role="group" aria-label=${name}>
    <button class="btn" aria-label=${words.less(name)} ?disabled=${least} @click=${() => by(-1)}>−</button><b>${value}</b><button class="btn" aria-label=${words.more(name)} @click=${() => by(1)}>+</button></div></div>`;

/** What the cable is set to, besides the pull. */
export function cableRow(desk: ParkDesk): TemplateResult {
  const { state, brake } = desk.session;
  const slack = brake.parkingLever.slack + desk.moreSlack;
  return html`<div class="row two park-cable">
    ${stepper(words.cableSlack, state.leverOffStop > 0 ? 'none' : `${number(slack, 1)} mm`, (s) => desk.slacken(s), desk.moreSlack === 0)}
    ${stepper(words.cableTooTight, state.leverOffStop > 0 ? words.mmOff(number(state.leverOffStop, 0)) : words.no, (s) => desk.tighten(s), state.leverOffStop === 0)}
  </div>`;
}

/** The slope in steps of a per cent: one's own from here on. */
export const slopeStep = (desk: ParkDesk): TemplateResult =>
  stepper(labelWords.slope, `${desk.rule.percent} %`, (s) => desk.slope(desk.rule.percent + s));

export function parkControls({ size }: PageView, desk: ParkDesk): TemplateResult {
  const { nose } = desk;
  const seg = (['down', 'up'] as const).map(
    (n) =>
      html`<button aria-pressed=${nose === n} class=${nose === n ? 'on' : ''} @click=${() => desk.turn(n)}>${words.nose(n)}</button>`,
  );
  const narrow = size === 'narrow';
  return html`<section class="blk ctl park-ctl" aria-label=${words.controls}>
    <div class="row park-first">
      <div><div class="lab" id="park-nose">${words.vehicleStands}</div><div class="seg" role="group" aria-labelledby="park-nose">${seg}</div></div>
      ${narrow ? nothing : slopeStep(desk)}
      ${handsButton(desk.session)}
    </div>
    <div class="park-hand">
      <button class="btn" aria-label=${words.oneNotchBack} ?disabled=${desk.cable === 0} @click=${() => desk.notch(-1)}>${words.notch}</button>
      <button class="btn" ?disabled=${desk.cable === 0} @click=${() => desk.pull(0)}>${words.letGo}</button>
      ${numberField({ name: words.pullInEachCable, unit: 'N', allowed: [0, MOST_PULL], told: withDigits(0), put: (newton) => desk.pull(newton), say: (text) => desk.session.say(text) }, desk.cable, 5, { look: 'pick' })}
      <button class="btn" aria-label=${words.oneNotchOn} @click=${() => desk.notch(1)}>${words.notch2}</button>
    </div>
    <takeup-park-pad .desk=${desk} .cable=${desk.cable} .notches=${desk.spent.notches}></takeup-park-pad>
  </section>`;
}
