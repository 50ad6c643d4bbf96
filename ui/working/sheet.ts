import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { givens, type Reading, type ShoeSteps, type Step, type Working } from '../../sim/index.ts';
import { workingSheet as words } from '../../sim/words/en.ts';
import { ALIKE_TEXT, fromText, lawText, reasonText, stepText } from '../../sim/workshop/index.ts';
import { number } from '../format.ts';
import { NARROW } from '../pieces/page-sizes.ts';
import { type Body, bodyPolygon } from './body-polygon.ts';
import { symbolMath, workingMath } from './mathml.ts';
import { wholeLatex, wholeText } from './whole.ts';
import { figure, numbersText, resultText, workingText } from './write.ts';

/** How a reading came about: its formula, its numbers put in, where each comes from, whose law it is. */
export class WorkingSheet extends LitElement {
  static override properties = {
    reading: { attribute: false },
    working: { attribute: false },
    steps: { attribute: false },
    bodies: { attribute: false },
    copied: { state: true },
  };
  declare reading: Reading;
  /** Null where there is nothing to read. */
  declare working: Working | null;
  /** From the pressure law to each shoe's factor; of the readings that rest on it. */
  declare steps: readonly ShoeSteps[];
  declare bodies: readonly Body[];
  declare copied: string;

  constructor() {
    super();
    this.steps = [];
    this.bodies = [];
    this.copied = '';
  }

  static override styles = css`
    * { box-sizing: border-box; }
    :host { display: block; padding: 10px 18px 16px; background: var(--sheet); }
    math { font-size: 20px; text-align: left; font-family: inherit; }
    mi { font-style: italic; }
    mfrac > :first-child { padding-bottom: 3px; }
    mfrac > :last-child { padding-top: 4px; }
    math * { font-size: inherit; }
    msub > :last-child, msup > :last-child { font-size: 0.72em; }
    mtext.result { font-weight: 760; font-family: inherit; padding-left: 0.3em; }
    .line { display: flex; flex-wrap: wrap; gap: 4px 0.35em; align-items: center; overflow-x: auto; padding: 6px 0; }
    .line:focus-visible { outline: 4px solid var(--trail); }
    table { border-collapse: collapse; font-size: 15px; }
    th { font-weight: 560; color: var(--ink2); font-size: 14px; }
    th, td { text-align: left; padding: 3px 18px 3px 0; vertical-align: baseline; }
    td.n { text-align: right; white-space: nowrap; font-weight: 680; }
    td math { font-size: 17px; }
    p { margin: 8px 0; max-width: 70em; }
    h4 { margin: 18px 0 4px; font-size: 17px; font-weight: 740; }
    h5 { margin: 12px 0 0; font-size: 15.5px; font-weight: 700; }
    ol { margin: 0; padding: 0; list-style: none; }
    li { margin: 6px 0; }
    li span { color: var(--ink2); font-size: 15px; }
    .shoes { display: grid; grid-template-columns: 1fr 1fr; gap: 0 28px; }
    .shoes > section { min-width: 0; }
    button { font: inherit; color: inherit; background: var(--sheet); border: 2px solid var(--ink); border-radius: 0; min-height: 44px; padding: 0 14px; font-weight: 600; cursor: pointer; margin: 4px 8px 4px 0; }
    button.to { border: 0; min-height: 0; padding: 2px 0; margin: 0; text-decoration: underline; text-underline-offset: 3px; font-weight: 560; text-align: left; }
    button:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
    svg { display: block; width: 100%; max-width: 560px; height: auto; font-size: 14px; }
    svg text { fill: var(--ink); paint-order: stroke; stroke: var(--sheet); stroke-width: 4px; }
    .told { color: var(--ink2); font-size: 15px; }
    @media ${NARROW} {
      :host { padding: 8px 0 14px; }
      .shoes { grid-template-columns: 1fr; }
      table, tbody, tr { display: block; }
      thead { display: none; }
      tr { padding: 6px 0; border-top: 1px solid var(--rule); }
      td { display: inline-block; padding-right: 10px; }
      svg { font-size: 23px; }
      button { min-height: 56px; }
      button.to { min-height: 44px; }
    }
  `;

  #copy = async (text: string, what: string): Promise<void> => {
    try {
      await navigator.clipboard.writeText(text);
      this.copied = words.copiedAs(what);
    } catch {
      this.copied = words.thisBrowserLetsNothingBe(text);
    }
  };

  #to(key: string): void {
    this.dispatchEvent(new CustomEvent('reading', { detail: key, bubbles: true, composed: true }));
  }

  #givens(w: Working): TemplateResult | typeof nothing {
    const all = givens(w.formula);
    if (all.length === 0) return nothing;
    return html`<table aria-label=${words.numbersPutIn}><thead><tr><th scope="col">${words.symbol}</th><th scope="col">${words.number}</th><th scope="col">${words.whatItIs}</th><th scope="col">${words.whereFrom}</th></tr></thead>
      <tbody>${all.map((g) => {
        const { key } = g;
        const name = key
          ? html`<button class="to" @click=${() => this.#to(key)}>${g.name}</button>`
          : g.name;
        return html`<tr><td><math>${symbolMath(g.symbol)}</math></td><td class="n">${figure(g.value, w.figures)}${g.unit ? ` ${g.unit}` : ''}</td><td>${name}</td><td>${fromText(g.from)}</td></tr>`;
      })}</tbody></table>`;
  }

  /** A brake that still moves is not where the balance has it: then the numbers miss the reading. */
  #moving(w: Working): boolean {
    const { reading: r } = this;
    return Math.abs(w.value - r.value) > 10 ** -r.digits;
  }

  #line(w: Working | Step): readonly TemplateResult[] {
    return workingMath(w).map((part) => html`<math display="block">${part}</math>`);
  }

  #step(s: Step): TemplateResult {
    return html`<li data-step=${s.code}><span>${stepText(s.code)}</span><div class="line">${this.#line(s)}</div></li>`;
  }

  #shoe(s: ShoeSteps): TemplateResult {
    const [closed, elements, read] = s.factors;
    const told = (x: number): string => number(x, 3);
    return html`<section aria-label=${words.wayToTheFactorShoe(s.side)}><h4>${words.shoe(s.side === 'front' ? words.front : words.rear, s.role)}</h4>
      ${s.closed ? html`<h5>${words.byTheClosedForm}</h5><ol>${s.closed.map((x) => this.#step(x))}</ol>` : nothing}
      <h5>${words.byTheSumOverThe}</h5><ol>${s.elements.map((x) => this.#step(x))}</ol>
      <p data-factors=${s.side}>${words.read(s.closed ? words.closedFormElements(told(closed)) : words.elements, told(elements), told(read))}</p>
      ${s.reasons.length > 0 ? html`<h5>${words.whyTheyDiffer}</h5><ul>${s.reasons.map((r) => html`<li>${reasonText(r)}</li>`)}</ul>` : html`<p>${ALIKE_TEXT}</p>`}
    </section>`;
  }

  override render() {
    const { working: w, reading, steps, bodies } = this;
    if (!w) return html`<p>${words.nothingToTellOfThe(reading.name)}</p>`;
    return html`<div class="line" tabindex="0" role="group" aria-label=${words.workingOf(reading.name)} data-text=${workingText(w)} data-numbers=${numbersText(w.formula, w.figures)} data-result=${resultText(w)}>${this.#line(w)}</div>
      ${this.#moving(w) ? html`<p>${words.theBrakeIsStillMoving}</p>` : nothing}
      ${this.#givens(w)}
      <p>${lawText(w.law)}${w.key.startsWith('lining') ? words.itIsToldRoundedDown : nothing}</p>
      <button @click=${() => this.#copy(wholeText(reading, w, steps), 'text')}>${words.copyAsText}</button><button @click=${() => this.#copy(wholeLatex(w, steps), 'LaTeX')}>${words.copyAsLaTeX}</button><span class="told" role="status">${this.copied}</span>
      ${steps.length > 0 ? html`<h4>${words.fromPressureToFactor}</h4><div class="shoes">${steps.map((s) => this.#shoe(s))}</div>` : nothing}
      ${bodies.length > 0 ? html`<h4>${words.allForcesOnEachShoe}</h4><p>${words.theyComeBackToWhere}</p><div class="shoes">${bodies.map((b) => html`<section>${bodyPolygon(b)}</section>`)}</div>` : nothing}`;
  }
}
customElements.define('takeup-working', WorkingSheet);
