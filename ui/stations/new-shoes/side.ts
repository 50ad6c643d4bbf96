import { html, nothing, type TemplateResult } from 'lit';
import { labelWords, newShoesSide as texts } from '../../../sim/words/en.ts';
import { cautions } from '../../cautions.ts';
import { caution } from '../../pieces/icons.ts';
import { markOf } from '../park/marks.ts';
import type { PageView } from '../station.ts';
import { whatIf } from '../vary/tap.ts';
import { ownRow } from './controls.ts';
import type { ShoeDesk } from './desk.ts';
import type { ShoeStep } from './part.ts';
import { beddingPicture, cablePicture, fitPicture, halfAcross, teethTable } from './pictures.ts';
import { hindrance, mm2, shortHindrance, stepNames, task, thought, wornAtFirst } from './words.ts';

export const STEPS: readonly ShoeStep[] = [1, 2, 3, 4, 5, 6];

/** The picture that belongs to the open step. */
export function picture(desk: ShoeDesk): TemplateResult {
  const why = hindrance(desk, desk.step);
  if (why)
    return html`<h2>${markOf('cross')} ${stepNames[desk.step]}</h2><p data-hindered>${why}</p>`;
  if (desk.step === 1) return fitPicture(desk);
  if (desk.step === 6) return desk.contact ? beddingPicture(desk) : cablePicture(desk);
  if (desk.step === 5 && desk.drumOn) return beddingPicture(desk);
  return halfAcross(desk);
}

function cautionOf(desk: ShoeDesk): string {
  if (desk.step === 1) return cautions.wear;
  if (desk.step === 2) return `${cautions.springs} ${cautions.strut.split('. ')[0]}.`;
  if (desk.step === 5 && !desk.drumOn) return cautions.piston;
  if (desk.step === 6 && !desk.contact) return cautions.park;
  return cautions.fitting;
}

const cell = (session: ShoeDesk['session'], key: string, name: string, value: number, of: string) =>
  html`<div class="c" data-key=${key}>${whatIf(session, name, { of, read: ['restClearanceMean'] })}<b>${name}</b><div class="v">${mm2(value)}<small>mm</small></div></div>`;

/** Said at the first step: that the brake here is a worn one. */
const wornOf = (desk: ShoeDesk): string => (desk.step === 1 ? wornAtFirst(desk) : '');

export function shoesSide({ size }: PageView, desk: ShoeDesk): TemplateResult {
  const { row } = desk;
  const narrow = size === 'narrow';
  const worn = wornOf(desk);
  return html`${narrow ? html`${worn ? html`<p class="ns-worn" data-worn>${worn}</p>` : nothing}${ownRow(desk)}` : nothing}<section class="blk h"><h1>${texts.newShoes}</h1>${worn && !narrow ? html`<p class="ns-worn" data-worn>${worn}</p>` : html`<p>${thought[desk.step]}</p>`}</section>
    <section class="blk rd" aria-label=${texts.readings}>
      ${cell(desk.session, 'bore', texts.boreLargestOf3, desk.bore, 'drumDiameter')}${cell(desk.session, 'across', texts.acrossTheLinings, row.across, 'shoes.lining.thicknessNew')}
      ${cell(desk.session, 'difference', labelWords.difference, row.difference, 'tooth')}${cell(desk.session, 'clearance', texts.clearanceEach, row.centre, 'tooth')}
    </section>
    ${desk.hindered(desk.step) ? nothing : teethTable(desk, size === 'wide' ? 5 : 4)}
    ${narrow ? html`<section class="blk ns-card">${picture(desk)}</section>` : nothing}
    <button class="btn ns-parts" data-to="order" @click=${() => desk.partByPart()}>${texts.partByPartApartTogether}</button>
    <section class="note">${caution}<div>${cautionOf(desk)}</div></section>`;
}

/** Six cards along the stage's foot: the open one in ink, done ones with their result. */
export function strip({ size }: PageView, desk: ShoeDesk): TemplateResult {
  const card = (step: ShoeStep) => {
    const why = hindrance(desk, step);
    const done = why ? { text: why, good: false } : desk.done[step];
    const open = desk.step === step;
    if (size === 'narrow')
      return html`<button class=${open ? 'on' : ''} aria-current=${open ? 'step' : nothing} aria-label=${`${step} ${stepNames[step]}${done ? `: ${done.text}` : ''}`} @click=${() => desk.go(step)}><strong>${step}</strong>${done ? markOf(done.good ? 'tick' : 'cross') : nothing}</button>`;
    return html`<button class=${open ? 'on' : ''} aria-current=${open ? 'step' : nothing} data-step=${step} @click=${() => desk.go(step)}>
      <span class="ns-n"><strong>${step}</strong>${done ? markOf(done.good ? 'tick' : 'cross') : nothing}</span>
      <span class="ns-t"><b>${stepNames[step]}</b><span data-done=${step}>${open ? task(desk, step) : why ? shortHindrance(desk, step) : (done?.text ?? '')}</span>${open && done && !why ? html`<em>${done.text}</em>` : nothing}</span></button>`;
  };
  return html`<div class="ns-strip" role="group" aria-label=${texts.sixStepsInAnyOrder}>${STEPS.map(card)}</div>
    ${size === 'narrow' ? html`<div class="ns-say"><b>${stepNames[desk.step]}.</b> ${task(desk, desk.step)}${desk.done[desk.step] && !hindrance(desk, desk.step) ? html` <em>${desk.done[desk.step]?.text}</em>` : nothing}</div>` : nothing}`;
}
