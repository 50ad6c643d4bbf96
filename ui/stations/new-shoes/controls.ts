import { html, nothing, type TemplateResult } from 'lit';
import type { PageView } from '../station.ts';
import { whatIfName } from '../vary/tap.ts';
import type { ShoeDesk } from './desk.ts';
import { BED_AT, HELD_OFF } from './fitting.ts';
import type { ShoeStep } from './part.ts';
import { mm2, stepNames } from './words.ts';

/** A size between − and +, typed in the middle. */
function size(
  name: string,
  value: number,
  step: number,
  put: (value: number) => void,
  asked: Parameters<typeof whatIfName>[2] | null = null,
  session: ShoeDesk['session'] | null = null,
) {
  return html`<div class="ns-set"><div class="lab">${asked && session ? whatIfName(session, name, asked) : name}</div><div class="ns-step">
    <button class="btn" aria-label=${`${name}: less`} @click=${() => put(value - step)}>−</button>
    <input type="number" inputmode="decimal" aria-label=${`${name}, mm`} step=${step} .value=${mm2(value).replace('\u202f', '')} @change=${(
      e: Event,
    ) => {
      const typed = Number((e.target as HTMLInputElement).value);
      if (Number.isFinite(typed)) put(typed);
    }}>
    <button class="btn" aria-label=${`${name}: more`} @click=${() => put(value + step)}>+</button></div></div>`;
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
  button(`To step ${first}: ${stepNames[first].toLowerCase()}`, () => desk.go(first), false, true);

function own(desk: ShoeDesk): TemplateResult {
  const hindered = desk.hindered(desk.step);
  if (hindered) return firstThat(desk, hindered.first);
  switch (desk.step) {
    case 1:
      return html`<div class="row ns-three">
        ${size('Drum bore', desk.bore, 0.1, (bore) => desk.parts({ bore }), { of: 'drumDiameter', read: ['pedalTravel'] }, desk.session)}
        ${size('Lining thick', desk.thickness, 0.1, (thickness) => desk.parts({ thickness }), { of: 'shoes.lining.thicknessNew', read: ['restClearanceMean'] }, desk.session)}
        ${size('Ground for Ø', desk.ground, 0.1, (ground) => desk.parts({ ground }), { of: 'shoes.lining.groundRadius', read: ['torque'] }, desk.session)}</div>
        ${button('These are the parts', () => desk.takeParts())}`;
    case 2:
      return html`${tooth(desk)}${button('Back off as far as it goes', () => desk.setTooth(0), desk.tooth === 0)}`;
    case 3:
      return html`<div class="row two">${button('Even both sides', () => desk.centre())}${button('Push it aside', () => desk.push(0.25))}</div>`;
    case 4:
      return html`<div class="row two">${tooth(desk)}${size('Wanted smaller by', desk.wanted, 0.05, (mm) => desk.want(mm))}</div>
        <div class="row two">${button('Set by the gauge', () => desk.preset())}${button('Leave it here', () => desk.takeTooth())}</div>`;
    case 5:
      return desk.drumOn
        ? html`<div class="row two">${button('Press once', () => desk.press('once'))}${button('Press until silent', () => desk.press('silent'))}</div>
          <div class="row two">${button('Drum off again', () => desk.takeOff())}<div class="ns-count" role="status" data-clicks>${desk.clicks.length === 0 ? 'not pressed yet' : `clicks a press: ${desk.clicks.length > 8 ? `… ${desk.clicks.slice(-6).join(', ')}` : desk.clicks.join(', ')}`}</div></div>`
        : html`<div class="row two">${button('Slide the drum on', () => desk.tryDrum(), false, true)}${button('Press once', () => desk.press('once'))}</div>
          <div class="ns-count" role="status">${desk.done[5]?.text ?? ''}</div>`;
    case 6:
      return html`<div class="row two">${button('Lever home, then cable', () => desk.setCable('home'))}${button(`Tighten first: ${HELD_OFF} mm off`, () => desk.setCable('tight'))}</div>
        <div><div class="lab" id="ns-drive">Drive on, to bed in</div><div class="seg" role="group" aria-labelledby="ns-drive">${BED_AT.map((km, i) => html`<button aria-pressed=${desk.bedded === i} class=${desk.bedded === i ? 'on' : ''} ?disabled=${!desk.drumOn} @click=${() => desk.drive(i)}>${km === 0 ? 'new' : `${km} km`}</button>`)}</div></div>`;
  }
}

/** On a phone what a step does stands above, in the page's flow; the way on stays in the thumb's reach. */
export const ownRow = (desk: ShoeDesk): TemplateResult =>
  html`<section class="blk ns-own" aria-label="This step">${own(desk)}</section>`;

export function shoesControls({ size: page }: PageView, desk: ShoeDesk): TemplateResult {
  const next = desk.step < 6 ? ((desk.step + 1) as ShoeStep) : null;
  return html`<section class="blk ctl ns-ctl" aria-label="Controls">
    ${page === 'narrow' ? nothing : own(desk)}
    <div class="row ns-nav">
      ${button('Back', () => desk.go(Math.max(1, desk.step - 1) as ShoeStep), desk.step === 1)}
      ${next ? html`<button class="btn p" ?disabled=${desk.hindered(desk.step) !== null} @click=${() => desk.go(next)}>Next: ${stepNames[next].toLowerCase()}</button>` : button('Start again', () => desk.restart())}
    </div>
  </section>`;
}
