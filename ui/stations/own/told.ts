import { html, nothing, type TemplateResult } from 'lit';
import { KM, type OwnAnswers } from '../../../sim/index.ts';
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
    ? 'as it was'
    : Number.isFinite(before) && Number.isFinite(after) && before !== 0
      ? share(before, after)
      : '';
  return html`<tr class=${same ? 'same' : ''}><th scope="row">${name}</th><td>${a}</td><td><span class="to" aria-hidden="true"></span><span class="hidden">to</span></td><td><b>${b}</b>${unit ? ` ${unit}` : ''}</td><td class="by">${told}</td></tr>`;
}

const km = (distance: number): number => Math.round(distance / KM / TO_KM) * TO_KM;

/** Before and after, one line a figure. */
const rowsOf = ({ before, after, clicks }: Turned): readonly Row[] => [
  {
    name: 'Clearance at rest',
    unit: 'mm',
    digits: 2,
    before: before.clearance,
    after: after.clearance,
  },
  {
    name: 'Brake factor',
    unit: '',
    digits: 2,
    before: before.factor,
    after: after.factor,
  },
  {
    name: `Torque at ${PRESS_BAR} bar`,
    unit: 'N·m',
    digits: 0,
    before: before.torque / NMM,
    after: after.torque / NMM,
  },
  {
    name: `Pedal at ${PRESS_BAR} bar`,
    unit: 'mm',
    digits: 1,
    before: before.pedal,
    after: after.pedal,
  },
  ...(clicks
    ? [
        {
          name: 'First click after',
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
  `With rigid shoes: ${rowsOf(t)
    .map(
      ({ name, unit, digits, before, after }) =>
        `${name.charAt(0).toLowerCase()}${name.slice(1)} ${figure(before, digits)} to ${figure(after, digits)}${unit ? ` ${unit}` : ''}`,
    )
    .join(', ')}.`;

/** Stands under the size that was typed last; where shoes bend, what rigid ones would do below. */
export function changedRows(c: Changed): TemplateResult {
  const field = ownFields.find((f) => f.key === c.key);
  const { clicks, rigid } = c;
  const unit = field?.unit ? ` ${field.unit}` : '';
  return html`<div class="changed" data-changed=${c.key}><p>What it changes. It was${c.measured ? '' : html` <span class="assumed"><b>assumed</b></span>`} ${number(c.was, field?.digits ?? 2)}${unit}.</p>
    <table><tbody>${rowsOf(c).map(row)}${clicks ? nothing : html`<tr class="same"><th scope="row">First click after</th><td colspan="4">being driven…</td></tr>`}</tbody></table>${rigid ? html`<p class="small" data-rigid-changed>${rigidLine(rigid)}</p>` : nothing}</div>`;
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
  `${low ? number(of(low), digits) : 'locking'} to ${high ? number(of(high), digits) : 'locking'}`;

/** The bar under the friction's field, − and + beside it, and what the band does. */
export function frictionBar(desk: OwnDesk, own: OwnBrake): TemplateResult {
  const f = desk.frictionOf(own);
  const set = (mu: number): void =>
    desk.write(own, 'friction', Math.min(1, Math.max(0.05, mu)).toFixed(2));
  const whose = {
    letters: 'the band of its two letters',
    typed: 'a tenth either way',
    assumed: 'assumed, a tenth either way',
  }[f.from];
  return html`<div class="friction" data-friction><button class="btn" aria-label="Friction, 0.01 less" @click=${() => set(f.value - STEP)}>−</button>
    <div class="bar" role="img" aria-label=${`Friction ${number(f.value, 2)}, ${number(f.least, 2)} to ${number(f.most, 2)}`}><i class="line"></i><i class="band" .style=${`left:${along(f.least)}%;right:${100 - along(f.most)}%`}></i><i class="at" .style=${`left:${along(f.value)}%`}></i>${[0.2, 0.3, 0.4, 0.5, 0.6].map((mu) => html`<span .style=${`left:${along(mu)}%`}>${mu.toFixed(1)}</span>`)}</div>
    <button class="btn" aria-label="Friction, 0.01 more" @click=${() => set(f.value + STEP)}>+</button>
    <p>Cold ${number(f.value, 2)}, ${number(f.least, 2)} to ${number(f.most, 2)}: ${whose}. So the factor lies from <b>${span(f.answers, (a) => a.factor, 2)}</b>, the torque at ${PRESS_BAR} bar from <b>${span(f.answers, (a) => a.torque / NMM, 0)} N·m</b>${f.rigid ? html`; with rigid shoes from ${span(f.rigid, (a) => a.factor, 2)}, and from ${span(f.rigid, (a) => a.torque / NMM, 0)} N·m` : nothing}.</p></div>`;
}

/** What was measured on it as it is now. */
export function foundSection(desk: OwnDesk, own: OwnBrake): TemplateResult {
  const { reads } = desk.foundOf(own);
  return html`<section aria-label="As it is now"><h2>As it is now: worn, and set</h2>
    <p class="small">For what your numbers say, just below. The brake on the bench stays new; Inspect has a whole sheet, and loads it.</p>${foundFields.map(
      (f) => {
        const r = reads[f.key];
        const text = own.found?.[f.key] ?? '';
        const id = `found-${f.key}`;
        return html`<div class="field ${text.trim() === '' ? 'open' : ''}" data-found=${f.key}><label for=${id}>${foundNames[f.key]}${f.unit ? `, ${f.unit}` : ''}<small>${f.how}</small></label>
      <input id=${id} type="text" maxlength=${LONGEST_TEXT} autocomplete="off" spellcheck="false" aria-invalid=${r !== undefined && !r.ok} aria-describedby=${`${id}-said`} .value=${text} @input=${(e: Event) => desk.measure(own, f.key, (e.target as HTMLInputElement).value)} /><div class="told" id=${`${id}-said`}>${r ? (r.ok ? r.echo : html`<span class="bad">${marks.bad} found ${r.found}; allowed: ${r.allowed}</span>`) : nothing}</div></div>`;
      },
    )}</section>`;
}

/** The figures held against each other and the model. */
export function saysSection(desk: OwnDesk): TemplateResult {
  const { told, rigid, working } = desk.says;
  // What rigid shoes say in other words or figures.
  const other = rigid?.filter((r) => !told.some((t) => t.head === r.head && t.why === r.why));
  return html`<section class="says" aria-label="What my numbers say" data-says><h2>What my numbers say</h2>${
    told.length === 0 && !working
      ? html`<p>Nothing yet. Type both linings as they are now, then the tooth, the notches and the pedal: each is held against what this brake does when it is worn so.</p>`
      : html`<ul>${told.map((s) => html`<li>${marks[s.level]}<span><b>${s.head}</b> ${s.why}</span></li>`)}</ul>`
  }${working ? html`<p class="small">Driving it to see how unlike both linings wear…</p>` : nothing}
    ${
      other && told.length > 0
        ? html`<div class="small" data-rigid-says>${other.length === 0 ? 'Rigid shoes say the same.' : html`With rigid shoes: ${other.map((r) => html`<p><b>${r.head}</b> ${r.why}</p>`)}`}</div>`
        : nothing
    }
    ${told.length > 0 ? html`<p class="small">Computed with your sizes and, where none was typed, with assumed ones${rigid ? ', and with shoes that bend' : ''}: hints where to look, no approval.</p>` : nothing}</section>`;
}
