import { html, nothing, type TemplateResult } from 'lit';
import { labelWords, drumOffFaults as words } from '../../../sim/words/en.ts';
import { stepsOf } from '../../adjusters.ts';
import { number } from '../../format.ts';
import { sceneName } from '../../record/scene-names.ts';
import { complaints } from './complaints.ts';
import type { DrumDesk } from './desk.ts';

/** How far the shoes stand aside a press, and at most, mm. */
const ASIDE = { step: 0.05, most: 0.3 };

function stepper(
  id: string,
  name: string,
  value: string,
  less: (() => void) | null,
  more: (() => void) | null,
): TemplateResult {
  return html`<div class="set" data-set=${id}><b id=${id}>${name}</b>
    <div class="step small" role="group" aria-labelledby=${id}>
      <button class="btn" aria-label=${words.less(name)} ?disabled=${!less} @click=${() => less?.()}>−</button>
      <div class="count" aria-live="polite">${value}</div>
      <button class="btn" aria-label=${words.more(name)} ?disabled=${!more} @click=${() => more?.()}>+</button>
    </div></div>`;
}

const onOff = (id: string, name: string, on: boolean, set: (on: boolean) => void): TemplateResult =>
  html`<div class="set"><button class="btn wide ${on ? 'p' : ''}" data-set=${id} aria-pressed=${on} @click=${() => set(!on)}>${name}<em>${on ? words.yes : words.no}</em></button></div>`;

/** Each cause that can hold a drum, set by itself or together with others. */
export function faultsSide(desk: DrumDesk): TemplateResult {
  const { session, held } = desk;
  const { brake, state } = session;
  const steps = stepsOf(brake);
  const told = complaints.filter((c) => brake.states.some((s) => s.name === c.state));
  const aside = Math.round(held.aside / ASIDE.step) * ASIDE.step;
  const shift = (by: number) => desk.hold({ aside: Math.round((aside + by) * 100) / 100 });
  const where =
    Math.abs(aside) < 0.001
      ? 'centred'
      : words.mmToThe(number(Math.abs(aside), 2), aside > 0 ? words.front : words.rear);
  return html`<section class="blk h"><h1>${words.setAnotherFault}</h1><p>${words.setOneOrMoreThen}</p></section>
    <section class="blk sets" aria-label=${words.faults}>
      <div class="set"><b id="drum-state">${words.brakeAsItStands}</b>
        <select class="pick" aria-labelledby="drum-state" @change=${(e: Event) => {
          const at = e.target as HTMLSelectElement;
          if (at.value) desk.standing(at.value);
          at.value = '';
        }}><option value="">${words.chooseAState}</option>${brake.states.map((s) => html`<option value=${s.name}>${sceneName(s.name)}</option>`)}</select></div>
      ${
        told.length === 0
          ? nothing
          : html`<div class="set"><b id="drum-says">${words.orWhatItsDriverSays}</b>
        <select class="pick" aria-labelledby="drum-says" @change=${(e: Event) => {
          const c = told[Number((e.target as HTMLSelectElement).value)];
          if (c) desk.complain(c);
        }}><option value="-1">${words.chooseAComplaint}</option>${told.map((c, i) => html`<option value=${i}>“${c.says}”</option>`)}</select></div>`
      }
      ${stepper('lever', words.parkingLeverOffItsStop, `${number(state.leverOffStop, 0)}\u00a0mm`, state.leverOffStop > 0 ? () => desk.leverOff(state.leverOffStop - 1) : null, state.leverOffStop < 8 ? () => desk.leverOff(state.leverOffStop + 1) : null)}
      ${stepper('tooth', labelWords.adjuster, `${steps.at(state.tooth)} ${steps.after}`, state.tooth > 0 ? () => desk.backOff(steps.press) : null, state.tooth < brake.adjuster.teeth ? () => desk.backOff(-steps.press) : null)}
      ${stepper('aside', words.shoesStandAside, where, aside > -ASIDE.most ? () => shift(-ASIDE.step) : null, aside < ASIDE.most ? () => shift(ASIDE.step) : null)}
      ${onOff('hub', words.rustAtTheHub, held.hubRust, (hubRust) => desk.hold({ hubRust }))}
      ${onOff('rusted', words.liningsRustedOn, held.liningsRusted, (liningsRusted) => desk.hold({ liningsRusted }))}
      <button class="btn" data-done @click=${() => desk.open('brake')}>${words.done}</button>
    </section>`;
}
