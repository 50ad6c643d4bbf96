import { html, type TemplateResult } from 'lit';
import { type LockedHand, onHill } from '../../../sim/index.ts';
import { parkHot as words } from '../../../sim/words/en.ts';
import { down, number } from '../../format.ts';
import { caution } from '../../pieces/icons.ts';
import type { ParkDesk } from './desk.ts';
import { markOf } from './marks.ts';

/** Hot parked, cooled, and parked hot by the usual notch, all with the hand lever locked. */
export function hotPanel(desk: ParkDesk): TemplateResult {
  const { hot, nose, rule } = desk;
  const { rig } = desk.session;
  const perNotch = desk.session.brake.parkingLever.perNotch;
  const line = (name: string, what: LockedHand, temperature: number, key: string) => {
    const wheel = {
      forward: what.forward.torque,
      backward: what.backward.torque,
      locked: what.locked ? ('front' as const) : null,
    };
    const h = onHill(rig, [wheel], rule, nose);
    const torque = nose === 'down' ? what.forward.torque : what.backward.torque;
    return html`<tr data-hot=${key}><th scope="row">${name}<small>${words.cNotches(number(temperature, 0), number(what.taken / perNotch, 1))}</small></th>
      <td>${number(what.standing, 0)}</td><td>${what.locked ? words.locks : number(torque / 1000, 0)}</td>
      <td>${markOf(h.holds ? 'tick' : 'cross')}<span>${h.holds ? words.holds : words.rolls}</span></td></tr>`;
  };
  const warm = 20 + desk.rise;
  const { locked } = desk;
  const slip = nose === 'down' ? locked.forward : locked.backward;
  const drop =
    desk.cable > 0 && !locked.locked
      ? html`<p>${words.withTheHandLeverLocked(html`<b data-key="locked">${number(down(slip.torque / 1000, 0), 0)} N·m</b>`, number(slip.cable, 0), number(down((nose === 'down' ? desk.wheel.forward : desk.wheel.backward) / 1000, 0), 0))}</p>`
      : '';
  return html`<h2>${words.hotDrumHandLeverLocked}</h2>
    <div class="park-stepper"><span>${words.drumHotterBy}</span><button class="btn" aria-label=${words.drumCooler} @click=${() => desk.heat(-20)}>−</button><b>${desk.rise} K</b><button class="btn" aria-label=${words.drumHotter} @click=${() => desk.heat(20)}>+</button></div>
    <table class="park-hot"><thead><tr><th scope="col">${words.parked}</th><th scope="col">${words.cableN}</th><th scope="col">N·m</th><th scope="col">${words.nose(nose)}</th></tr></thead><tbody>
      ${line(words.coldAsUsual, hot.cold, 20, 'cold')}
      ${line(words.hotSamePull, hot.hot, warm, 'hot')}
      ${line(words.cooledDown, hot.cooled, 20, 'cooled')}
      ${line(words.hotUsualNotch, hot.usualNotch, warm, 'notch')}
    </tbody></table>
    <p>${words.aDrumThatCoolsShrinks}</p>
    ${drop}
    <div class="park-care">${caution}<span>${words.onAHotDrumGo}</span></div>`;
}
