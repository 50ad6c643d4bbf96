import { css, html, LitElement, nothing } from 'lit';
import { faultsFindSide as words } from '../../../sim/words/en.ts';
import { examinations, type Fault } from '../../../sim/workshop/index.ts';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import { FaultsDesk } from './desk.ts';
import { look } from './look.ts';
import { line, ofRigid } from './text.ts';
import { sameNames } from './vans.ts';

const placeOf = (id: string): number => examinations.findIndex((e) => e.id === id) + 1;
const nameOf = (id: string): string => examinations.find((e) => e.id === id)?.name ?? '';

/** Minutes against par, names left and names ruled out with the number of the reading that did it. */
export class FindSide extends LitElement {
  static override properties = { session: { attribute: false }, rev: { type: Number } };
  declare session: Session;
  declare rev: number;

  static override styles = [
    look,
    css`
      section { border: 2px solid var(--ink); background: var(--sheet); padding: 10px 18px; }
      section + section { margin-top: 12px; }
      .time { display: grid; grid-template-columns: auto 1fr; gap: 4px 22px; align-items: center; }
      .time strong { font-size: 52px; line-height: 1; font-weight: 760; }
      .bar { position: relative; height: 26px; border: 2px solid var(--ink); display: flex; margin-bottom: 26px; }
      .bar i { background: var(--ink); border-right: 2px solid var(--sheet); }
      .bar u { position: absolute; top: -8px; bottom: -8px; width: 4px; background: var(--ink); outline: 1px solid var(--sheet); }
      .bar em { position: absolute; top: 100%; margin-top: 7px; transform: translateX(-50%); font-style: normal; font-size: 15px; font-weight: 680; white-space: nowrap; }
      .names { display: grid; gap: 7px; margin: 4px 0 8px; }
      .names label { display: grid; grid-template-columns: 26px 1fr; gap: 2px 10px; align-items: center; border: 2px solid var(--ink); padding: 6px 12px; cursor: pointer; font-size: 18px; font-weight: 720; line-height: 1.2; }
      .names label small { grid-column: 2; font-size: 14.5px; font-weight: 520; }
      .names input { width: 20px; height: 20px; accent-color: var(--ink); margin: 0; }
      .out { border-top: 1px solid var(--rule); padding: 4px 0; font-size: 15px; line-height: 1.3; }
      .out s { font-weight: 660; }
      .out div { display: flex; gap: 8px; align-items: flex-start; color: var(--ink2); font-size: 14px; margin-top: 1px; }
      .answer { border-left: 8px solid var(--ink); }
      .answer h2 { font-size: 22px; line-height: 1.15; }
      .answer p { font-size: 16px; line-height: 1.35; margin-top: 5px; }
      @media ${COMPACT} {
        section { padding: 7px 12px; }
        section + section { margin-top: 8px; }
        .time strong { font-size: 36px; }
        .bar { height: 18px; margin-bottom: 20px; }
        .bar em { font-size: 13px; margin-top: 4px; }
        .names { gap: 5px; margin: 2px 0 5px; }
        .names label { padding: 3px 9px; font-size: 15.5px; }
        .names label small { font-size: 13px; }
        .out { font-size: 13.5px; padding: 2px 0; }
        .out div { font-size: 13px; }
        .answer h2 { font-size: 18px; }
        .answer p { font-size: 14px; }
      }
      @media ${NARROW} {
        section { border-width: 0 0 2px; }
        section + section { margin: 0; }
        .names label { min-height: 56px; font-size: 17px; }
        .names label small, .out div, .bar em { font-size: 14px; }
        .out { font-size: 15px; }
      }
    `,
  ];

  #left(desk: FaultsDesk, f: Fault) {
    return html`<label><input type="radio" name="fault" .checked=${desk.chosen === f.id} @change=${() => desk.pick(f.id)} />${f.name}<small>${f.short}</small></label>`;
  }

  #out(desk: FaultsDesk, f: Fault) {
    const by = desk.ruled.get(f.id);
    if (!by) return nothing;
    const would = desk.van.against(f.id, [by])?.would ?? [];
    const plain = desk.rigid(by, f);
    return html`<div class="out"><s>${f.name}</s><div><span class="no small">${placeOf(by)}</span><span>${words.wouldRead(line(would))}${ofRigid(plain && sameNames(would, plain), would)}</span></div></div>`;
  }

  #answer(desk: FaultsDesk) {
    const { answer, van } = desk;
    if (!answer) return nothing;
    if (!answer.right) {
      const by = desk.ruled.get(answer.name.id);
      const taken = by && desk.taken.includes(by);
      return html`<section class="answer" role="status"><h2>${words.notThatOne}</h2><p><b>${answer.name.name}</b>: ${by ? html`${words.readingRulesItOut(placeOf(by), nameOf(by), taken ? nothing : words.takeItAndSee)}` : words.nothingHereSpeaksForIt}</p></section>`;
    }
    const over = desk.minutes - van.case.par;
    const best = desk.cheapest;
    return html`<section class="answer" role="status"><h2>${answer.name.name}</h2>
      <p>${words.minutes(answer.text, desk.minutes, over > 0 ? words.overPar(over) : over < 0 ? words.underPar(-over) : words.par)}</p>
      <p>${answer.name.mechanism}</p><p><b>${words.remedy}</b> ${answer.name.remedy}</p>
      ${best ? html`<p>${words.minutes2(html`<b>${words.cheapestWay}</b>`, best.minutes, best.taken.map((id) => `${placeOf(id)} ${nameOf(id)}`).join(', '))}</p>` : html`<p><button class="btn" @click=${() => desk.showCheapest()}>${words.showTheCheapestWay}</button></p>`}
    </section>`;
  }

  override render() {
    const desk = deskOf(FaultsDesk, this.session);
    const { van } = desk;
    const most = Math.max(desk.minutes, van.case.par) * 1.3;
    const left = van.names.filter((f) => !desk.ruled.has(f.id));
    const ruled = van.names.filter((f) => desk.ruled.has(f.id));
    return html`<section class="time"><div><div class="lab">${words.workshopMinutes}</div><strong data-minutes>${desk.minutes}</strong></div>
        <div class="bar" role="img" aria-label=${words.minutesPar(desk.minutes, van.case.par)}>${desk.taken.map(
          (id) => {
            const e = examinations.find((x) => x.id === id);
            return html`<i .style=${`width:${e ? ((100 * van.minutes(e)) / most).toFixed(1) : 0}%`}></i>`;
          },
        )}<u .style=${`left:calc(${((100 * van.case.par) / most).toFixed(1)}% - 2px)`}></u><em .style=${`left:${((100 * van.case.par) / most).toFixed(1)}%`}>${words.par2(van.case.par)}</em></div></section>
      ${this.#answer(desk)}
      <section><div class="lab" id="left">${words.stillPossible}</div>
        <div class="names" role="radiogroup" aria-labelledby="left">${left.map((f) => this.#left(desk, f))}</div>
        ${ruled.length > 0 ? html`<div class="lab">${words.ruledOut}</div>${ruled.map((f) => this.#out(desk, f))}` : nothing}</section>
      ${desk.bedding ? html`<section role="status">${words.ofRigidShoesTillThe}</section>` : desk.searching ? html`<section role="status">${words.workedOut}</section>` : nothing}
      ${desk.hint ? html`<section role="status">${words.itPartsMostNamesFor(html`<b>${words.hint}</b>`, placeOf(desk.hint.id), desk.hint.name)}</section>` : nothing}`;
  }
}
customElements.define('takeup-find-side', FindSide);
