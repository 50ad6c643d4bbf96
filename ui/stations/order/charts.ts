import { html, svg, type TemplateResult } from 'lit';
import { orderCharts as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { type Bedding, TEN } from './bedding.ts';

/** Bedding in as it is by the model: what ten slow-downs warm, and how much of the linings bears by distance. */

const W = 340;
const H = 152;
const LEFT = 40;
const FOOT = 26;
const TOP = 16;

/** Drum temperature over ten slow-downs: up at once, down by the driving between. */
function warmChart(bed: Bedding): TemplateResult {
  const rows = bed.warm;
  const low = 20;
  const high = Math.max(50, Math.ceil((bed.warmest + 4) / 10) * 10);
  const x = (n: number): number => LEFT + ((W - LEFT - 8) * (n + 0.5)) / TEN;
  const y = (t: number): number => H - FOOT - ((H - FOOT - TOP) * (t - low)) / (high - low);
  const path = rows.map((r, n) => {
    const next = rows[n + 1];
    const fall = next
      ? `Q${(x(n) + 12).toFixed(1)} ${y(next.before).toFixed(1)} ${x(n + 1).toFixed(1)} ${y(next.before).toFixed(1)}`
      : '';
    return `${n === 0 ? 'M' : 'L'}${x(n).toFixed(1)} ${y(r.before).toFixed(1)}V${y(r.after).toFixed(1)}${fall}`;
  });
  const lines: number[] = [];
  for (let t = low; t <= high; t += high - low > 60 ? 20 : 10) lines.push(t);
  return html`<figure><figcaption>${words.drumCTenFrom50}</figcaption>
    <svg class="or-chart" viewBox="0 0 ${W} ${H}" role="img" aria-label=${words.drumAfterEachOfTen(rows.map((r) => number(r.after, 0)).join(', '))}>
      ${lines.map((t) => svg`<path d="M${LEFT} ${y(t)}H${W}" class="g" /><text x=${LEFT - 6} y=${y(t) + 5} text-anchor="end">${t}</text>`)}
      <path d=${path.join('')} class="w" />
      ${rows.map((r, n) => svg`<circle cx=${x(n)} cy=${y(r.after)} r="4" class="d" />${n % 3 === 0 ? svg`<text x=${x(n)} y=${y(r.after) - 8} text-anchor="middle" class="v">${number(r.after, 0)}</text>` : ''}<text x=${x(n)} y=${H - 6} text-anchor="middle">${n + 1}</text>`)}
    </svg></figure>`;
}

/** Share of each arc that bears over the distance: ten stops and two hundred on the one axis. */
function bearChart(bed: Bedding): TemplateResult {
  const { rows, tenKm, hardKm } = bed;
  const most = rows.at(-1)?.km ?? 1;
  const x = (km: number): number => LEFT + ((W - LEFT - 12) * km) / most;
  const y = (share: number): number => H - FOOT - (H - FOOT - TOP) * share;
  const line = (of: 'contactFront' | 'contactRear'): string =>
    rows
      .map((r, i) => `${i === 0 ? 'M' : 'L'}${x(r.km).toFixed(1)} ${y(r[of]).toFixed(1)}`)
      .join('');
  const at = (km: number, text: string) =>
    svg`<path d="M${x(km)} ${TOP}V${H - FOOT}" class="m" /><text x=${x(km) + 4} y=${TOP + 4} class="v">${text}</text>`;
  return html`<figure><figcaption>${words.shareThatBearsOverKm}</figcaption>
    <svg class="or-chart" viewBox="0 0 ${W} ${H}" role="img" aria-label=${words.leadingArcThatBears(rows.map((r) => `${number(r.km, 0)} km ${number(100 * r.contactFront, 0)} %`).join(', '))}>
      ${[0, 0.25, 0.5, 0.75, 1].map((s) => svg`<path d="M${LEFT} ${y(s)}H${W}" class="g" /><text x=${LEFT - 6} y=${y(s) + 5} text-anchor="end">${100 * s}</text>`)}
      ${at(tenKm, words.of10Stops)}${at(hardKm, words.of200HardStops)}
      <path d=${line('contactFront')} class="lead" /><path d=${line('contactRear')} class="trail" />
      ${rows.map((r) => svg`<circle cx=${x(r.km)} cy=${y(r.contactFront)} r="3.4" class="ld" /><rect x=${x(r.km) - 3} y=${y(r.contactRear) - 3} width="6" height="6" class="td" />`)}
      ${[0, ...rows.filter((r) => r.km > most / 5).map((r) => r.km)].map((km) => svg`<text x=${x(km)} y=${H - 6} text-anchor=${km === most ? 'end' : 'middle'}>${number(km, 0)}</text>`)}
    </svg><p class="or-key"><span class="lead">${words.leadingSolid}</span> <span class="trail">${words.trailingDashed}</span></p></figure>`;
}

function table(bed: Bedding): TemplateResult {
  const { rows, tenKm, hardKm } = bed;
  const name = (km: number): string =>
    km === tenKm
      ? words.of10Stops2(number(km, 0))
      : km === hardKm
        ? words.of200Hard(number(km, 0))
        : number(km, 0);
  return html`<table class="or-bed"><thead><tr><th scope="col">km</th><th scope="col">${words.leadingTrailing}</th><th scope="col">${words.nMAt40Bar}</th><th scope="col">${words.pedalMm}</th></tr></thead>
    <tbody>${rows.map((r) => html`<tr data-km=${number(r.km, 0)}><th scope="row">${name(r.km)}</th><td>${number(100 * r.contactFront, 0)} / ${number(100 * r.contactRear, 0)}</td><td>${number(r.torque / 1000, 0)}</td><td>${number(r.pedal, 1)}</td></tr>`)}</tbody></table>`;
}

export const bedCharts = (bed: Bedding): TemplateResult =>
  html`<h2>${words.beddingIn}</h2>${warmChart(bed)}${bearChart(bed)}${table(bed)}`;
