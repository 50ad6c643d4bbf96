import { html, nothing, svg, type TemplateResult } from 'lit';
import { type Fit, KM, type PresetRow } from '../../../sim/index.ts';
import { newShoesPictures as texts } from '../../../sim/words/en.ts';
import { wordsOf } from '../../adjusters.ts';
import { capital, number } from '../../format.ts';
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
    crown: texts.atTheEnds,
    ends: texts.inTheMiddle,
    toe: texts.atTheHeel,
    heel: texts.atTheToe,
  }[fit.where];
  const word = {
    'all along': texts.theyLieAllAlong,
    crown: texts.theyTouchAtTheCrown,
    ends: texts.theyTouchAtBothEnds,
    toe: texts.theyBearAtTheToe,
    heel: texts.theyBearAtTheHeel,
  }[fit.where];
  const then = {
    'all along': '',
    crown: texts.theyBearInTheMiddle,
    ends: texts.groundTooLargeTheEnds,
    toe: texts.theShoeComesToThe,
    heel: texts.theShoeComesToThe2,
  }[fit.where];
  return html`<h2>${texts.howTheLiningLiesIn}</h2>
    <svg class="ns-pic" viewBox="0 0 320 190" role="img" aria-label=${texts.gapAlongTheLiningsArc(fit.where, mm2(fit.gap))}>
      <rect x="20" y="34" width="280" height="26" fill="var(--drum)" stroke="var(--ink)" stroke-width="2" />
      <path d=${`M20 170L20 ${points[0]?.split(' ')[1]}L${points.join('L')}L300 ${points.at(-1)?.split(' ')[1]}L300 170Z`} fill="var(--lining)" stroke="var(--ink)" stroke-width="2" />
      <text x="160" y="24" text-anchor="middle">${texts.drumBore(mm2(desk.bore))}</text>
      <text x="160" y="150" text-anchor="middle" class="on">${texts.liningGroundFor(mm2(desk.ground))}</text>
      ${fit.gap > 0 ? svg`<text x=${widest.toFixed(0)} y="84" text-anchor=${widest > 240 ? 'end' : widest < 80 ? 'start' : 'middle'} class="v">${mm2(fit.gap)}</text>` : nothing}
      <text x="20" y="186" class="s">${texts.heelEnd}</text><text x="300" y="186" text-anchor="end" class="s">${texts.toeEnd}</text>
    </svg>
    <p><b>${word}</b> ${fit.gap > 0 ? texts.mmIsLeftDrawnTo(mm2(fit.gap), at) : ''} ${then}</p>${ofRigid(desk.rigidFit)}`;
}

const lies: Readonly<Record<Fit['where'], string>> = {
  'all along': 'all along',
  crown: texts.atTheCrownFirst,
  ends: texts.atBothEndsFirst,
  toe: texts.atTheToe,
  heel: texts.atTheHeel,
};
/** How the lining would lie on a rigid shoe, under what one that bends does. */
const ofRigid = (fit: Fit | null) =>
  fit === null
    ? nothing
    : html`<p class="ns-rigid" data-rigid>${texts.rigidMmLeft(lies[fit.where], mm2(fit.gap))}</p>`;

const columnOf = (desk: ShoeDesk) => wordsOf(desk.session.brake).column;

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
  return html`<h2>${texts.halfAcrossMm(html`<small>${texts.radiiDrawnAboutCutOff(times)}</small>`)}</h2>
    <svg class="ns-pic" viewBox="0 0 320 276" role="img" aria-label=${texts.halfAcrossTheLiningsAt(desk.named(from), desk.named(to))}>
      <rect x="86" y=${y(bore) - 22}  width="226" height="22" fill="url(#ns-hatch)" stroke="var(--ink)" stroke-width="2" />
      <text x="80" y=${y(bore) + 1} text-anchor="end">${texts.drum}</text><text x="80" y=${y(bore) + 17} text-anchor="end" class="v">${mm2(bore)}</text>
      ${shown.map((r, i) => {
        const x = 100 + i * 54;
        const top = y(tops[i] as number);
        const over = r.lip < 0;
        return svg`<rect x=${x} y=${over ? y(lip) : top} width="40" height=${Math.max(1, 236 - (over ? y(lip) : top))} fill="var(--lining)" stroke="var(--ink)" stroke-width="1.6" />
          ${over ? svg`<rect x=${x} y=${top} width="40" height=${y(lip) - top} fill="url(#ns-over)" stroke="var(--bad)" stroke-width="1.8" /><text x=${x + 20} y=${top - 5} text-anchor="middle" class="bad">${texts.binds}</text>` : nothing}
          ${r.tooth === tooth ? svg`<rect x=${x - 4} y="240" width="48" height="24" fill="none" stroke="var(--adj)" stroke-width="3" />` : nothing}
          <text x=${x + 20} y="258" text-anchor="middle" class="v">${desk.steps.at(r.tooth)}</text>`;
      })}
      <defs><pattern id="ns-hatch" width="8" height="8" patternUnits="userSpaceOnUse"><rect width="8" height="8" fill="var(--drum)" /><path d="M-1 9L9 -1" stroke="var(--ink)" stroke-width="0.9" /></pattern><pattern id="ns-over" width="6" height="6" patternUnits="userSpaceOnUse"><rect width="6" height="6" fill="var(--sheet)" /><path d="M-1 -1L7 7" stroke="var(--bad)" stroke-width="1.6" /></pattern></defs>
      <path d=${`M86 ${y(lip)}H312`} stroke="var(--ink)" stroke-width="2" stroke-dasharray="7 3" /><text x="80" y=${y(lip) + 1} text-anchor="end">${texts.lip}</text><text x="80" y=${y(lip) + 17} text-anchor="end" class="v">${mm2(lip)}</text>
      <path d="M86 236H312" stroke="var(--ink)" stroke-width="2" /><text x="80" y="258" text-anchor="end">${texts.column[columnOf(desk)]}</text>
    </svg>
    <p>${saysRow(desk)}</p>`;
}

function saysRow(desk: ShoeDesk): TemplateResult {
  const { row } = desk;
  const named = capital(desk.named(row.tooth));
  const aside = desk.aside > 0 ? texts.thePairStandsAsideCentre(mm2(desk.aside)) : '';
  if (row.bore < 0)
    return html`<b>${texts.isTooLong(named)}</b> ${texts.theLiningsAreWiderThan(lipSays(row.lip), aside)}`;
  if (row.lip < 0)
    return html`${texts.aSide(html`<b>${texts.doesNotPassTheLip(named)}</b>`, lipSays(row.lip), aside)}`;
  const gaps = [row.toe, row.centre, row.heel].map(mm2);
  const same = gaps.every((g) => g === gaps[0]);
  return html`<b>${texts.passesTheLip(named, lipSays(row.lip))}</b> ${texts.snugAtTheLipIs(same ? texts.atToeCentreAndHeel(gaps[0]) : texts.atToeCentreHeel(gaps.join(' / ')), aside)}`;
}

/** Teeth as a table: across, clearance, lip. */
export function teethTable(desk: ShoeDesk, count: number): TemplateResult {
  const { tooth } = desk;
  const lip = 2 * desk.session.brake.drum.lipRadius;
  return html`<table class="ns-teeth blk"><thead><tr><th scope="col">${capital(texts.column[columnOf(desk)])}</th><th scope="col">${texts.across}</th><th scope="col">${texts.clearance}</th><th scope="col">${texts.lipTightest(mm2(lip))}</th></tr></thead>
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
    return html`<h2>${texts.contactOnTheDrum}</h2><p>${texts.theDrumIsOffNothing}</p>`;
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
  ) => html`<div class="ns-comb"><b>${name}</b><span>${texts.bearsOnOfItsArc(share(from), bedded > 0 ? texts.now(share(to)) : '')}</span>
    <svg viewBox="0 0 320 82" role="img" aria-label=${texts.pressureAlongTheArc(name)}>${comb(a[index], b[index], most, role)}</svg></div>`;
  return html`<h2>${texts.contactAt40Bar(html`<small>${texts.lineFirstStopFilled(bedded > 0 ? texts.afterKm(number(now.km, 0)) : texts.theSame)}</small>`)}</h2>
    ${picture(0, texts.frontLeading, 'lead', first.contactFront, now.contactFront)}
    ${picture(1, texts.rearTrailing, 'trail', first.contactRear, now.contactRear)}
    <small>${texts.oneScaleMostMpaArc(mm2(most))}</small>
    <table class="ns-bed"><thead><tr><th scope="col">km</th><th scope="col">N·m</th>${rigidBeds ? html`<th scope="col">${texts.rigid}</th>` : nothing}<th scope="col">${texts.pedalMm}</th><th scope="col">${texts.column[columnOf(desk)]}</th></tr></thead>
    <tbody>${beds.map((r, i) => html`<tr class=${i === bedded ? 'on' : ''} data-bed=${r.km}><th scope="row"><button @click=${() => desk.drive(i)} aria-pressed=${i === bedded}>${number(r.km, 0)}</button></th><td>${number(r.torque / 1000, 0)}</td>${rigidBeds ? html`<td data-rigid>${number((rigidBeds[i]?.torque ?? Number.NaN) / 1000, 0)}</td>` : nothing}<td>${number(r.pedal, 1)}</td><td>${desk.steps.at(r.tooth)}</td></tr>`)}</tbody></table>
    <p>${first.torque < last.torque * 0.97 ? texts.theFirstStopsAreWeaker(number(100 * (1 - first.torque / last.torque), 0), number(last.km, 0)) : first.torque > last.torque * 1.03 ? texts.theFirstStopsAreStronger(number(100 * (first.torque / last.torque - 1), 0), number(last.km, 0)) : texts.theFirstStopsAreAs}</p>`;
}

/** Lever on its stop against a cable tightened first. */
export function cablePicture(desk: ShoeDesk): TemplateResult {
  const f = desk.cost;
  const plain = desk.rigidCost;
  /** A click with rigid shoes, under that of ones that bend. */
  const beside = (click: number) =>
    html`<small class="ns-rigid" data-rigid>${texts.rigid2(Number.isFinite(click) ? `${km(click)} km` : texts.none)}</small>`;
  const km = (distance: number): string =>
    distance / KM < 100 ? texts.under100 : number(100 * Math.round(distance / KM / 100), 0);
  const row = (name: string, at: 'home' | 'held', kind: 'tick' | 'cross') =>
    html`<tr><th scope="row">${markOf(kind)} ${name}</th><td>${mm2(f[`${at}0`])}</td><td>${Number.isFinite(f[at]) ? `${km(f[at])} km` : texts.none}${plain ? beside(plain[at]) : nothing}</td></tr>`;
  return html`<h2>${texts.shoesFirstOrCableFirst}</h2>
    <table class="ns-cable" data-cable><thead><tr><th scope="col">${texts.lever}</th><th scope="col">${texts.clearance}</th><th scope="col">${texts.nextClickAfter}</th></tr></thead><tbody>
      ${row(texts.onItsStop, 'home', 'tick')}${row(texts.mmOffIt(HELD_OFF), 'held', 'cross')}</tbody></table>
    <p>${texts.tightenedFirstTheCableStands(mm2(f.held0), mm2(f.home0), Number.isFinite(f.late) ? texts.andTheNextClickComes(km(f.late)) : '', mm2(f.home0 - f.held0))}</p>`;
}
