import { html, nothing, type TemplateResult } from 'lit';
import { labelWords, language, newShoesControls as texts } from '../../../sim/words/en.ts';
import { numberField, withDigits } from '../../pieces/number-field.ts';
import type { PageView } from '../station.ts';
import { whatIfName } from '../vary/tap.ts';
import type { ShoeDesk } from './desk.ts';
import { BED_AT, HELD_OFF, spansOf } from './fitting.ts';
import { type ShoeStep, WANTED } from './part.ts';
import { stepNames } from './words.ts';

/** A size between − and +, typed in the middle. */
function size(
  name: string,
  value: number,
  step: number,
  allowed: readonly [number, number],
  put: (value: number) => void,
  say: (text: string) => void,
  asked: Parameters<typeof whatIfName>[2] | null = null,
  session: ShoeDesk['session'] | null = null,
) {
  return html`<div class="ns-set"><div class="lab">${asked && session ? whatIfName(session, name, asked) : name}</div><div class="ns-step">
    <button class="btn" aria-label=${texts.less(name)} @click=${() => put(value - step)}>−</button>
    ${numberField({ name, unit: 'mm', allowed, told: withDigits(2), put, say }, value, step)}
    <button class="btn" aria-label=${texts.more(name)} @click=${() => put(value + step)}>+</button></div></div>`;
}

function tooth(desk: ShoeDesk): TemplateResult {
  const most = desk.session.brake.adjuster.teeth;
  const { steps } = desk;
  return html`<div class="ns-set"><div class="lab">${whatIfName(desk.session, steps.now, { of: 'tooth', read: ['restClearanceMean'] })}</div><div class="ns-step">
    <button class="btn" aria-label=${steps.back} ?disabled=${desk.tooth === 0} @click=${() => desk.setTooth(desk.tooth - steps.press)}>−</button>
    <b><strong data-tooth-now>${steps.at(desk.tooth)}</strong> ${steps.after}</b>
    <button class="btn" aria-label=${steps.on} ?disabled=${desk.tooth === most} @click=${() => desk.setTooth(desk.tooth + steps.press)}>+</button></div></div>`;
}

const button = (text: string, act: () => void, off = false, strong = false) =>
  html`<button class="btn ${strong ? 'p' : ''}" ?disabled=${off} @click=${act}>${text}</button>`;

/** The way to the step that has to be done before, called by its name. */
export const firstThat = (desk: ShoeDesk, first: ShoeStep): TemplateResult =>
  button(texts.toStep(first, language.inside(stepNames[first])), () => desk.go(first), false, true);

function own(desk: ShoeDesk): TemplateResult {
  const say = (text: string): void => desk.session.say(text);
  const spans = spansOf(desk.session.brake);
  const hindered = desk.hindered(desk.step);
  if (hindered) return firstThat(desk, hindered.first);
  switch (desk.step) {
    case 1:
      return html`<div class="row ns-three">
        ${size(texts.drumBore, desk.bore, 0.1, spans.bore, (bore) => desk.parts({ bore }), say, { of: 'drumDiameter', read: ['pedalTravel'] }, desk.session)}
        ${size(texts.liningThick, desk.thickness, 0.1, spans.thickness, (thickness) => desk.parts({ thickness }), say, { of: 'shoes.lining.thicknessNew', read: ['restClearanceMean'] }, desk.session)}
        ${size(texts.groundForDiameter, desk.ground, 0.1, spans.ground, (ground) => desk.parts({ ground }), say, { of: 'shoes.lining.groundRadius', read: ['torque'] }, desk.session)}</div>
        ${button(texts.theseAreTheParts, () => desk.takeParts())}`;
    case 2:
      return html`${tooth(desk)}${button(texts.backOffAsFarAs, () => desk.setTooth(0), desk.tooth === 0)}`;
    case 3:
      return html`<div class="row two">${button(texts.evenBothSides, () => desk.centre())}${button(texts.pushItAside, () => desk.push(0.25))}</div>`;
    case 4:
      return html`<div class="row two">${tooth(desk)}${size(texts.wantedSmallerBy, desk.wanted, 0.05, WANTED, (mm) => desk.want(mm), say)}</div>
        <div class="row two">${button(texts.setByTheGauge, () => desk.preset())}${button(texts.leaveItHere, () => desk.takeTooth())}</div>`;
    case 5:
      return desk.drumOn
        ? html`<div class="row two">${button(texts.pressOnce, () => desk.press('once'))}${button(texts.pressUntilSilent, () => desk.press('silent'))}</div>
          <div class="row two">${button(texts.drumOffAgain, () => desk.takeOff())}<div class="ns-count" role="status" data-clicks>${desk.clicks.length === 0 ? texts.notPressedYet : texts.clicksAPress(desk.clicks.length > 8 ? `… ${desk.clicks.slice(-6).join(', ')}` : desk.clicks.join(', '))}</div></div>`
        : html`<div class="row two">${button(texts.slideTheDrumOn, () => desk.tryDrum(), false, true)}${button(texts.pressOnce, () => desk.press('once'))}</div>
          <div class="ns-count" role="status">${desk.done[5]?.text ?? ''}</div>`;
    case 6:
      return html`<div class="row two">${button(texts.leverHomeThenCable, () => desk.setCable('home'))}${button(texts.tightenFirstMmOff(HELD_OFF), () => desk.setCable('tight'))}</div>
        <div><div class="lab" id="ns-drive">${texts.driveOnToBedIn}</div><div class="seg" role="group" aria-labelledby="ns-drive">${BED_AT.map((km, i) => html`<button aria-pressed=${desk.bedded === i} class=${desk.bedded === i ? 'on' : ''} ?disabled=${!desk.drumOn} @click=${() => desk.drive(i)}>${km === 0 ? texts.newWord : `${km} km`}</button>`)}</div></div>`;
  }
}

/** On a phone what a step does stands above, in the page's flow; the way on stays in the thumb's reach. */
export const ownRow = (desk: ShoeDesk): TemplateResult =>
  html`<section class="blk ns-own" aria-label=${texts.thisStep}>${own(desk)}</section>`;

export function shoesControls({ size: page }: PageView, desk: ShoeDesk): TemplateResult {
  const next = desk.step < 6 ? ((desk.step + 1) as ShoeStep) : null;
  return html`<section class="blk ctl ns-ctl" aria-label=${texts.controls}>
    ${page === 'narrow' ? nothing : own(desk)}
    <div class="row ns-nav">
      ${button(labelWords.back, () => desk.go(Math.max(1, desk.step - 1) as ShoeStep), desk.step === 1)}
      ${next ? html`<button class="btn p" ?disabled=${desk.hindered(desk.step) !== null} @click=${() => desk.go(next)}>${texts.next(language.inside(stepNames[next]))}</button>` : button(texts.startAgain, () => desk.restart())}
    </div>
  </section>`;
}
