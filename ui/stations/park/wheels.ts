import { html, type TemplateResult } from 'lit';
import type { Parked } from '../../../sim/index.ts';
import { parkWheels as texts } from '../../../sim/words/en.ts';
import { down, number } from '../../format.ts';
import type { ParkDesk } from './desk.ts';
import { markOf } from './marks.ts';
import { asked, faultNames, faultSays, verdict } from './words.ts';

const nm = (torque: number): string => number(torque / 1000, 0);

function wheelRow(name: string, p: Parked, most: number): TemplateResult {
  const bar = (torque: number, way: string) => html`<div class="park-mini"><span>${way}</span>
      <i><s class=${way} .style=${`width:${Math.min(100, (100 * torque) / most).toFixed(1)}%`}></s></i><b>${p.locked ? texts.locks : nm(torque)}</b></div>`;
  return html`<div class="park-wheel"><b>${name}</b>${bar(p.forward, 'down')}${bar(p.backward, 'up')}</div>`;
}

/** Two wheels of one axle side by side: what each holds, and what the vehicle holds with both. */
export function wheelsPanel(desk: ParkDesk): TemplateResult {
  const [left, right] = desk.wheels;
  const most = 1.15 * Math.max(left.forward, left.backward, right.forward, right.backward, 1000);
  const way = (nose: 'down' | 'up') => {
    const h = desk.hill(nose);
    const v = verdict(h, desk.rule, nose, desk.jam);
    const slope = Number.isFinite(h.slope)
      ? `${number(down(100 * h.slope, 1), 1)} %`
      : texts.anySlope;
    return html`<div class="park-way">${markOf(v.mark)}<span>${texts.noseTheVehicleHolds(nose, html`<b>${slope}</b>`)}</span></div>`;
  };
  return html`<h2>${texts.bothWheels}</h2>
    <label class="park-pick">${texts.oneOutOfOrder}
      <select class="pick" aria-label=${texts.oneOutOfOrder} @change=${(e: Event) => desk.choose((e.target as HTMLSelectElement).value as typeof desk.fault)}>${faultNames.map(([id, name]) => html`<option value=${id} ?selected=${desk.fault === id}>${name}</option>`)}</select></label>
    <div class="park-unit">${texts.torqueAWheelCanHold}</div>
    ${wheelRow(texts.leftWheel, left, most)}${wheelRow(texts.rightWheel, right, most)}
    ${way('down')}${way('up')}
    <p>${desk.fault === 'none' && desk.session.moment.bench.across ? texts.eachWheelHoldsByIts : faultSays[desk.fault]}</p>
    <small>${texts.theWheelsStandOnOne(asked(desk.rule))}</small>`;
}
