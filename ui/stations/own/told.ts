import { html, nothing, type TemplateResult } from 'lit';
import { KM, type OwnAnswers } from '../../../sim/index.ts';
import { language, ownTold as texts } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { marks } from '../../pieces/marks.ts';
import { PRESS_BAR } from '../../record/bench.ts';
import { LONGEST_TEXT, type OwnBrake } from '../../record/shelf.ts';
import type { Changed, FrictionTold, OwnDesk, Turned } from './desk.ts';
import { foundNames } from './fields.ts';
import { foundFields } from './found-fields.ts';
import { ownFields } from './measures.ts';

/** What My brake tells of what was typed: what a size changed, friction's band, what the numbers say. */

const NMM = 1000;
/** A click's distance is told to 10 km: the duty is an order, no promise. */
const TO_KM = 10;

interface Row {
  readonly name: string;
  readonly unit: string;
  readonly digits: number;
  readonly before: number;
  readonly after: number;
}

const share = (before: number, after: number): string => {
  const by = (100 * (after - before)) / Math.abs(before);
  return `${by > 0 ? '+' : ''}${number(by, 1)}\u202f%`;
};

const figure = (value: number, digits: number): string =>
  Number.isNaN(value) ? 'locks' : Number.isFinite(value) ? number(value, digits) : 'none';

function row({ name, unit, digits, before, after }: Row): TemplateResult {
  const [a, b] = [figure(before, digits), figure(after, digits)];
  const same = a === b;
  const told = same
    ? texts.asItWas
    : Number.isFinite(before) && Number.isFinite(after) && before !== 0
      ? share(before, after)
      : '';
  return html`<tr class=${same ? 'same' : ''}><th scope="row">${name}</th><td>${a}</td><td><span class="to" aria-hidden="true"></span><span class="hidden">${texts.to}</span></td><td><b>${b}</b>${unit ? ` ${unit}` : ''}</td><td class="by">${told}</td></tr>`;
}

const km = (distance: number): number => Math.round(distance / KM / TO_KM) * TO_KM;

/** Before and after, one line a figure. */
const rowsOf = ({ before, after, clicks }: Turned): readonly Row[] => [
  {
    name: texts.clearanceAtRestName,
    unit: 'mm',
    digits: 2,
    before: before.clearance,
    after: after.clearance,
  },
  {
    name: texts.brakeFactorName,
    unit: '',
    digits: 2,
    before: before.factor,
    after: after.factor,
  },
  {
    name: texts.torqueAtBar(PRESS_BAR),
    unit: 'N·m',
    digits: 0,
    before: before.torque / NMM,
    after: after.torque / NMM,
  },
  {
    name: texts.pedalAtBar(PRESS_BAR),
    unit: 'mm',
    digits: 1,
    before: before.pedal,
    after: after.pedal,
  },
  ...(clicks
    ? [
        {
          name: texts.firstClickAfterName,
          unit: 'km',
          digits: 0,
          before: km(clicks[0]),
          after: km(clicks[1]),
        },
      ]
    : []),
];

/** With rigid shoes, in one sentence. */
const rigidLine = (t: Turned): string =>
  texts.withRigidShoes(
    rowsOf(t)
      .map(({ name, unit, digits, before, after }) =>
        texts.to2(
          language.inside(name),
          figure(before, digits),
          figure(after, digits),
          unit ? ` ${unit}` : '',
        ),
      )
      .join(', '),
  );

/** Stands under the size that was typed last; where shoes bend, what rigid ones would do below. */
export function changedRows(c: Changed): TemplateResult {
  const field = ownFields.find((f) => f.key === c.key);
  const { clicks, rigid } = c;
  const unit = field?.unit ? ` ${field.unit}` : '';
  return html`<div class="changed" data-changed=${c.key}><p>${texts.whatItChangesItWas(c.measured ? '' : html` <span class="assumed"><b>${texts.assumed}</b></span>`, number(c.was, field?.digits ?? 2), unit)}</p>
    <table><tbody>${rowsOf(c).map(row)}${clicks ? nothing : html`<tr class="same"><th scope="row">${texts.firstClickAfterName}</th><td colspan="4">${texts.beingDriven}</td></tr>`}</tbody></table>${rigid ? html`<p class="small" data-rigid-changed>${rigidLine(rigid)}</p>` : nothing}</div>`;
}

/** Ends of the bar of friction. */
const BAR = [0.2, 0.6] as const;
const along = (mu: number): number =>
  100 * Math.min(1, Math.max(0, (mu - BAR[0]) / (BAR[1] - BAR[0])));
/** What − and + change. */
const STEP = 0.01;

const span = (
  [low, high]: FrictionTold['answers'],
  of: (a: OwnAnswers) => number,
  digits: number,
): string =>
  texts.to3(
    low ? number(of(low), digits) : texts.locking,
    high ? number(of(high), digits) : texts.locking,
  );

/** The bar under the friction's field, − and + beside it, and what the band does. */
export function frictionBar(desk: OwnDesk, own: OwnBrake): TemplateResult {
  const f = desk.frictionOf(own);
  const set = (mu: number): void =>
    desk.write(own, 'friction', Math.min(1, Math.max(0.05, mu)).toFixed(2));
  const whose = {
    letters: texts.theBandOfItsTwo,
    typed: texts.aTenthEitherWay,
    assumed: texts.assumedATenthEitherWay,
  }[f.from];
  return html`<div class="friction" data-friction><button class="btn" aria-label=${texts.friction001Less} @click=${() => set(f.value - STEP)}>−</button>
    <div class="bar" role="img" aria-label=${texts.frictionTo(number(f.value, 2), number(f.least, 2), number(f.most, 2))}><i class="line"></i><i class="band" .style=${`left:${along(f.least)}%;right:${100 - along(f.most)}%`}></i><i class="at" .style=${`left:${along(f.value)}%`}></i>${[0.2, 0.3, 0.4, 0.5, 0.6].map((mu) => html`<span .style=${`left:${along(mu)}%`}>${number(mu, 1)}</span>`)}</div>
    <button class="btn" aria-label=${texts.friction001More} @click=${() => set(f.value + STEP)}>+</button>
    <p>${texts.coldToSoTheFactor(
      number(f.value, 2),
      number(f.least, 2),
      number(f.most, 2),
      whose,
      html`<b>${span(f.answers, (a) => a.factor, 2)}</b>`,
      PRESS_BAR,
      html`<b>${span(f.answers, (a) => a.torque / NMM, 0)} N·m</b>`,
      f.rigid
        ? html`${texts.withRigidShoesFromAnd(
            span(f.rigid, (a) => a.factor, 2),
            span(f.rigid, (a) => a.torque / NMM, 0),
          )}`
        : nothing,
    )}</p></div>`;
}

/** What was measured on it as it is now. */
export function foundSection(desk: OwnDesk, own: OwnBrake): TemplateResult {
  const { reads } = desk.foundOf(own);
  return html`<section aria-label=${texts.asItIsNow}><h2>${texts.asItIsNowWorn}</h2>
    <p class="small">${texts.forWhatYourNumbersSay}</p>${foundFields.map((f) => {
      const r = reads[f.key];
      const text = own.found?.[f.key] ?? '';
      const id = `found-${f.key}`;
      return html`<div class="field ${text.trim() === '' ? 'open' : ''}" data-found=${f.key}><label for=${id}>${foundNames[f.key]}${f.unit ? `, ${f.unit}` : ''}<small>${f.how}</small></label>
      <input id=${id} type="text" maxlength=${LONGEST_TEXT} autocomplete="off" spellcheck="false" aria-invalid=${r !== undefined && !r.ok} aria-describedby=${`${id}-said`} .value=${text} @input=${(e: Event) => desk.measure(own, f.key, (e.target as HTMLInputElement).value)} /><div class="told" id=${`${id}-said`}>${r ? (r.ok ? r.echo : html`<span class="bad">${marks.bad} ${texts.foundAllowed(r.found, r.allowed)}</span>`) : nothing}</div></div>`;
    })}</section>`;
}

/** The figures held against each other and the model. */
export function saysSection(desk: OwnDesk): TemplateResult {
  const { told, rigid, working } = desk.says;
  // What rigid shoes say in other words or figures.
  const other = rigid?.filter((r) => !told.some((t) => t.head === r.head && t.why === r.why));
  return html`<section class="says" aria-label=${texts.whatMyNumbersSay} data-says><h2>${texts.whatMyNumbersSay}</h2>${
    told.length === 0 && !working
      ? html`<p>${texts.nothingYetTypeBothLinings}</p>`
      : html`<ul>${told.map((s) => html`<li>${marks[s.level]}<span><b>${s.head}</b> ${s.why}</span></li>`)}</ul>`
  }${working ? html`<p class="small">${texts.drivingItToSeeHow}</p>` : nothing}
    ${
      other && told.length > 0
        ? html`<div class="small" data-rigid-says>${other.length === 0 ? texts.rigidShoesSayTheSame : html`${texts.withRigidShoes2} ${other.map((r) => html`<p><b>${r.head}</b> ${r.why}</p>`)}`}</div>`
        : nothing
    }
    ${told.length > 0 ? html`<p class="small">${texts.computedWithYourSizesAnd(rigid ? texts.andWithShoesThatBend : '')}</p>` : nothing}</section>`;
}
