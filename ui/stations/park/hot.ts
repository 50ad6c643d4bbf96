import { html, type TemplateResult } from 'lit';
import { type LockedHand, onHill } from '../../../sim/index.ts';
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
    return html`<tr data-hot=${key}><th scope="row">${name}<small>${number(temperature, 0)} °C, ${number(what.taken / perNotch, 1)} notches</small></th>
      <td>${number(what.standing, 0)}</td><td>${what.locked ? 'locks' : number(torque / 1000, 0)}</td>
      <td>${markOf(h.holds ? 'tick' : 'cross')}<span>${h.holds ? 'holds' : 'rolls'}</span></td></tr>`;
  };
  const warm = 20 + desk.rise;
  const { locked } = desk;
  const slip = nose === 'down' ? locked.forward : locked.backward;
  const drop =
    desk.cable > 0 && !locked.locked
      ? html`<p>With the hand lever locked the drum takes the hook along as it slips: <b data-key="locked">${number(down(slip.torque / 1000, 0), 0)} N·m</b> at ${number(slip.cable, 0)} N. At a constant pull it would be ${number(down((nose === 'down' ? desk.wheel.forward : desk.wheel.backward) / 1000, 0), 0)}.</p>`
      : '';
  return html`<h2>Hot drum, hand lever locked</h2>
    <div class="park-stepper"><span>Drum hotter by</span><button class="btn" aria-label="Drum cooler" @click=${() => desk.heat(-20)}>−</button><b>${desk.rise} K</b><button class="btn" aria-label="Drum hotter" @click=${() => desk.heat(20)}>+</button></div>
    <table class="park-hot"><thead><tr><th scope="col">Parked</th><th scope="col">cable N</th><th scope="col">N·m</th><th scope="col">nose ${nose}</th></tr></thead><tbody>
      ${line('Cold, as usual', hot.cold, 20, 'cold')}
      ${line('Hot, same pull', hot.hot, warm, 'hot')}
      ${line('… cooled down', hot.cooled, 20, 'cooled')}
      ${line('Hot, usual notch', hot.usualNotch, warm, 'notch')}
    </tbody></table>
    <p>A drum that cools shrinks onto the shoes and draws the locked cable tighter. A hot drum stands away: the usual notch gives less pull.</p>
    ${drop}
    <div class="park-care">${caution}<span>On a hot drum go by the pull, not the notch, chock it, and look again. A drum can burn skin long after the stop.</span></div>`;
}
