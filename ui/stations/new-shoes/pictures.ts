import { html, nothing, svg, type TemplateResult } from 'lit';
import { type Fit, KM, type PresetRow } from '../../../sim/index.ts';
import { wordsOf } from '../../adjusters.ts';
import { number } from '../../format.ts';
import { markOf } from '../park/marks.ts';
import type { ShoeDesk } from './desk.ts';
import { HELD_OFF } from './fitting.ts';
import { lipSays, mm2 } from './words.ts';

/** How a lining of one radius lies in the bore: the gap along its arc. */
export function fitPicture(desk: ShoeDesk): TemplateResult {
  const { fit } = desk;
  const peak = Math.max(0.05, fit.gap);
  // The heel on the left, as the picture says.
  const across = Array.from(fit.along).reverse();
  const x = (i: number): number => 20 + (280 * (i + 0.5)) / across.length;
  const points = across.map(
    (gap, i) => `${x(i).toFixed(1)} ${(60 + (gap * 90) / peak).toFixed(1)}`,
  );
  const widest = x(across.indexOf(Math.max(...across)));
  const at = {
    'all along': '',
    crown: 'at the ends',
    ends: 'in the middle',
    toe: 'at the heel',
    heel: 'at the toe',
  }[fit.where];
  const word = {
    'all along': 'They lie all along.',
    crown: 'They touch at the crown first.',
    ends: 'They touch at both ends first.',
    toe: 'They bear at the toe.',
    heel: 'They bear at the heel.',
  }[fit.where];
  const then = {
    'all along': '',
    crown: 'They bear in the middle until bedded in: weaker for a time, then right.',
    ends: 'Ground too large: the ends bear hard, it may grab. Ask for linings to suit the bore.',
    toe: 'The shoe comes to the bore toe first, and pressed there it grabs until bedded in. Ask for linings as thick as the bore is larger.',
    heel: 'The shoe comes to the bore heel first: weaker until bedded in. Ask for linings to suit the bore.',
  }[fit.where];
  return html`<h2>How the lining lies in the bore</h2>
    <svg class="ns-pic" viewBox="0 0 320 190" role="img" aria-label="Gap along the lining's arc: ${fit.where}, ${mm2(fit.gap)} mm">
      <rect x="20" y="34" width="280" height="26" fill="var(--drum)" stroke="var(--ink)" stroke-width="2" />
      <path d=${`M20 170L20 ${points[0]?.split(' ')[1]}L${points.join('L')}L300 ${points.at(-1)?.split(' ')[1]}L300 170Z`} fill="var(--lining)" stroke="var(--ink)" stroke-width="2" />
      <text x="160" y="24" text-anchor="middle">drum, bore ${mm2(desk.bore)}</text>
      <text x="160" y="150" text-anchor="middle" class="on">lining, ground for ${mm2(desk.ground)}</text>
      ${fit.gap > 0 ? svg`<text x=${widest.toFixed(0)} y="84" text-anchor=${widest > 240 ? 'end' : widest < 80 ? 'start' : 'middle'} class="v">${mm2(fit.gap)}</text>` : nothing}
      <text x="20" y="186" class="s">heel end</text><text x="300" y="186" text-anchor="end" class="s">toe end</text>
    </svg>
    <p><b>${word}</b> ${fit.gap > 0 ? `${mm2(fit.gap)} mm is left ${at}, drawn to its own scale.` : ''} ${then}</p>${ofRigid(desk.rigidFit)}`;
}

const lies: Readonly<Record<Fit['where'], string>> = {
  'all along': 'all along',
  crown: 'at the crown first',
  ends: 'at both ends first',
  toe: 'at the toe',
  heel: 'at the heel',
};
/** How the lining would lie on a rigid shoe, under what one that bends does. */
const ofRigid = (fit: Fit | null) =>
  fit === null
    ? nothing
    : html`<p class="ns-rigid" data-rigid>Rigid: ${lies[fit.where]}, ${mm2(fit.gap)} mm left.</p>`;

const columnOf = (desk: ShoeDesk): string => wordsOf(desk.session.brake).column;
const capital = (word: string): string => `${word[0]?.toUpperCase()}${word.slice(1)}`;

/** Rows about where the adjuster stands, as far apart as one press of a hand sets it. */
function around(desk: ShoeDesk, count: number): readonly PresetRow[] {
  const { rows, tooth } = desk;
  const stride = desk.steps.press;
  const offset = tooth % stride;
  const all = rows.filter((r) => r.tooth % stride === offset);
  const at = all.findIndex((r) => r.tooth === tooth);
  const from = Math.max(0, Math.min(all.length - count, at - Math.floor(count / 2)));
  return all.slice(from, from + count);
}

/** Half across the linings against lip and bore, tooth by tooth. */
export function halfAcross(desk: ShoeDesk): TemplateResult {
  const { tooth } = desk;
  const shown = around(desk, 4);
  const [from, to] = [shown[0]?.tooth ?? 0, shown.at(-1)?.tooth ?? 0];
  const lip = desk.session.brake.drum.lipRadius;
  const bore = desk.bore / 2;
  const tops = shown.map((r) => lip - r.lip);
  const low = Math.min(...tops, lip) - 0.12;
  const high = Math.max(...tops, bore) + 0.02;
  const scale = 190 / Math.max(0.2, high - low);
  const y = (radius: number): number => 236 - (radius - low) * scale;
  const steps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
  // Height of a millimetre here against a millimetre across, told to one figure.
  const times = steps.reduce((a, b) =>
    Math.abs(b - scale / 3.8) < Math.abs(a - scale / 3.8) ? b : a,
  );
  return html`<h2>Half across, mm <small>radii drawn about ×${times}, cut off below</small></h2>
    <svg class="ns-pic" viewBox="0 0 320 276" role="img" aria-label="Half across the linings at ${desk.named(from)} to ${desk.named(to)}, against lip and bore">
      <rect x="86" y=${y(bore) - 22}  width="226" height="22" fill="url(#ns-hatch)" stroke="var(--ink)" stroke-width="2" />
      <text x="80" y=${y(bore) + 1} text-anchor="end">drum</text><text x="80" y=${y(bore) + 17} text-anchor="end" class="v">${mm2(bore)}</text>
      ${shown.map((r, i) => {
        const x = 100 + i * 54;
        const top = y(tops[i] as number);
        const over = r.lip < 0;
        return svg`<rect x=${x} y=${over ? y(lip) : top} width="40" height=${Math.max(1, 236 - (over ? y(lip) : top))} fill="var(--lining)" stroke="var(--ink)" stroke-width="1.6" />
          ${over ? svg`<rect x=${x} y=${top} width="40" height=${y(lip) - top} fill="url(#ns-over)" stroke="var(--bad)" stroke-width="1.8" /><text x=${x + 20} y=${top - 5} text-anchor="middle" class="bad">binds</text>` : nothing}
          ${r.tooth === tooth ? svg`<rect x=${x - 4} y="240" width="48" height="24" fill="none" stroke="var(--adj)" stroke-width="3" />` : nothing}
          <text x=${x + 20} y="258" text-anchor="middle" class="v">${desk.steps.at(r.tooth)}</text>`;
      })}
      <defs><pattern id="ns-hatch" width="8" height="8" patternUnits="userSpaceOnUse"><rect width="8" height="8" fill="var(--drum)" /><path d="M-1 9L9 -1" stroke="var(--ink)" stroke-width="0.9" /></pattern><pattern id="ns-over" width="6" height="6" patternUnits="userSpaceOnUse"><rect width="6" height="6" fill="var(--sheet)" /><path d="M-1 -1L7 7" stroke="var(--bad)" stroke-width="1.6" /></pattern></defs>
      <path d=${`M86 ${y(lip)}H312`} stroke="var(--ink)" stroke-width="2" stroke-dasharray="7 3" /><text x="80" y=${y(lip) + 1} text-anchor="end">lip</text><text x="80" y=${y(lip) + 17} text-anchor="end" class="v">${mm2(lip)}</text>
      <path d="M86 236H312" stroke="var(--ink)" stroke-width="2" /><text x="80" y="258" text-anchor="end">${columnOf(desk)}</text>
    </svg>
    <p>${saysRow(desk)}</p>`;
}

function saysRow(desk: ShoeDesk): TemplateResult {
  const { row } = desk;
  const named = capital(desk.named(row.tooth));
  const aside = desk.aside > 0 ? ` The pair stands ${mm2(desk.aside)} aside: centre it.` : '';
  if (row.bore < 0)
    return html`<b>${named} is too long:</b> the linings are wider than the bore, ${lipSays(row.lip)} a side at the lip.${aside}`;
  if (row.lip < 0)
    return html`<b>${named} does not pass the lip,</b> ${lipSays(row.lip)} a side.${aside}`;
  const gaps = [row.toe, row.centre, row.heel].map(mm2);
  const same = gaps.every((g) => g === gaps[0]);
  return html`<b>${named} passes the lip, ${lipSays(row.lip)}.</b> Snug at the lip is not the gap: behind it the lining has ${same ? `${gaps[0]} at toe, centre and heel` : `${gaps.join(' / ')} at toe / centre / heel`}.${aside}`;
}

/** Teeth as a table: across, clearance, lip. */
export function teethTable(desk: ShoeDesk, count: number): TemplateResult {
  const { tooth } = desk;
  const lip = 2 * desk.session.brake.drum.lipRadius;
  return html`<table class="ns-teeth blk"><thead><tr><th scope="col">${capital(columnOf(desk))}</th><th scope="col">across</th><th scope="col">clearance</th><th scope="col">lip ${mm2(lip)}, tightest</th></tr></thead>
    <tbody>${around(desk, count).map((r) => html`<tr class=${r.tooth === tooth ? 'on' : ''} data-row=${r.tooth}><th scope="row">${desk.steps.at(r.tooth)}</th><td>${mm2(r.across)}</td><td>${mm2(r.centre)}</td><td>${markOf(r.slidesOn ? 'tick' : 'cross')}<span>${lipSays(Math.min(r.lip, r.bore))}</span></td></tr>`)}</tbody></table>`;
}

/** Pressure along an arc before and after, on one scale. */
function comb(
  before: Float64Array,
  after: Float64Array,
  most: number,
  role: string,
): TemplateResult {
  const n = before.length;
  const x = (i: number): number => 10 + (i * 300) / n;
  const y = (p: number): number => 74 - (64 * p) / most;
  const line = Array.from(
    before,
    (p, i) => `${x(i).toFixed(1)} ${y(p).toFixed(1)}L${x(i + 1).toFixed(1)} ${y(p).toFixed(1)}`,
  ).join('L');
  return svg`${Array.from(after, (p, i) => (p > 0 ? svg`<rect x=${x(i) + 0.6} y=${y(p)} width=${300 / n - 1.2} height=${74 - y(p)} fill=${`var(--${role})`} />` : nothing))}
    <path d=${`M${line}`} fill="none" stroke="var(--ink)" stroke-width="1.8" /><path d="M10 74H310" stroke="var(--ink)" stroke-width="1.6" />`;
}

/** Contact before and after bedding in, with what it does to torque and pedal. */
export function beddingPicture(desk: ShoeDesk): TemplateResult {
  const { beds, bedded, rigidBeds } = desk;
  const first = beds[0];
  const now = beds[bedded];
  const last = beds.at(-1);
  if (!first || !now || !last) {
    return html`<h2>Contact on the drum</h2><p>The drum is off: nothing touches. Slide it on first.</p>`;
  }
  const share = (value: number): string => `${number(100 * value, 0)} %`;
  const a = [first.pressureFront, first.pressureRear] as const;
  const b = [now.pressureFront, now.pressureRear] as const;
  const most = Math.max(...a[0], ...a[1], 0.1);
  const picture = (
    index: 0 | 1,
    name: string,
    role: string,
    from: number,
    to: number,
  ) => html`<div class="ns-comb"><b>${name}</b><span>bears on ${share(from)} of its arc${bedded > 0 ? `, now ${share(to)}` : ''}</span>
    <svg viewBox="0 0 320 82" role="img" aria-label="${name}: pressure along the arc">${comb(a[index], b[index], most, role)}</svg></div>`;
  return html`<h2>Contact at 40 bar <small>line: first stop · filled: ${bedded > 0 ? `after ${number(now.km, 0)} km` : 'the same'}</small></h2>
    ${picture(0, 'Front, leading', 'lead', first.contactFront, now.contactFront)}
    ${picture(1, 'Rear, trailing', 'trail', first.contactRear, now.contactRear)}
    <small>One scale, most ${mm2(most)} MPa; arc from one end to the other.</small>
    <table class="ns-bed"><thead><tr><th scope="col">km</th><th scope="col">N·m</th>${rigidBeds ? html`<th scope="col">rigid</th>` : nothing}<th scope="col">pedal mm</th><th scope="col">${columnOf(desk)}</th></tr></thead>
    <tbody>${beds.map((r, i) => html`<tr class=${i === bedded ? 'on' : ''} data-bed=${r.km}><th scope="row"><button @click=${() => desk.drive(i)} aria-pressed=${i === bedded}>${number(r.km, 0)}</button></th><td>${number(r.torque / 1000, 0)}</td>${rigidBeds ? html`<td data-rigid>${number((rigidBeds[i]?.torque ?? Number.NaN) / 1000, 0)}</td>` : nothing}<td>${number(r.pedal, 1)}</td><td>${desk.steps.at(r.tooth)}</td></tr>`)}</tbody></table>
    <p>${first.torque < last.torque * 0.97 ? `The first stops are ${number(100 * (1 - first.torque / last.torque), 0)} % weaker than after ${number(last.km, 0)} km.` : first.torque > last.torque * 1.03 ? `The first stops are ${number(100 * (first.torque / last.torque - 1), 0)} % stronger than after ${number(last.km, 0)} km: it grabs.` : 'The first stops are as strong as later ones.'}</p>`;
}

/** Lever on its stop against a cable tightened first. */
export function cablePicture(desk: ShoeDesk): TemplateResult {
  const f = desk.cost;
  const plain = desk.rigidCost;
  /** A click with rigid shoes, under that of ones that bend. */
  const beside = (click: number) =>
    html`<small class="ns-rigid" data-rigid>rigid: ${Number.isFinite(click) ? `${km(click)} km` : 'none'}</small>`;
  const km = (distance: number): string =>
    distance / KM < 100 ? 'under 100' : number(100 * Math.round(distance / KM / 100), 0);
  const row = (name: string, at: 'home' | 'held', kind: 'tick' | 'cross') =>
    html`<tr><th scope="row">${markOf(kind)} ${name}</th><td>${mm2(f[`${at}0`])}</td><td>${Number.isFinite(f[at]) ? `${km(f[at])} km` : 'none'}${plain ? beside(plain[at]) : nothing}</td></tr>`;
  return html`<h2>Shoes first, or cable first</h2>
    <table class="ns-cable" data-cable><thead><tr><th scope="col">Lever</th><th scope="col">clearance</th><th scope="col">next click after</th></tr></thead><tbody>
      ${row('on its stop', 'home', 'tick')}${row(`${HELD_OFF} mm off it`, 'held', 'cross')}</tbody></table>
    <p>Tightened first, the cable stands in for the adjuster: ${mm2(f.held0)} instead of ${mm2(f.home0)}${Number.isFinite(f.late) ? `, and the next click comes ${km(f.late)} km late` : ''}. Slacken it later and the gap jumps by ${mm2(f.home0 - f.held0)}.</p>`;
}
