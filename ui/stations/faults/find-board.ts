import { css, html, LitElement, nothing } from 'lit';
import { faultsFindBoard as words } from '../../../sim/words/en.ts';
import { type Examination, examinations } from '../../../sim/workshop/index.ts';
import { number } from '../../format.ts';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import { FaultsDesk } from './desk.ts';
import { look } from './look.ts';
import { line, ofRigid } from './text.ts';
import { vanPicture } from './van-picture.ts';

/** The complaint and the list of readings with their minutes: what is taken is tinted and numbered. */
export class FindBoard extends LitElement {
  static override properties = {
    session: { attribute: false },
    rev: { type: Number },
    narrow: { type: Boolean, reflect: true },
  };
  declare session: Session;
  declare rev: number;
  declare narrow: boolean;

  static override styles = [
    look,
    css`
      :host(:not([narrow])) { position: absolute; inset: 0; display: grid; grid-template-rows: auto minmax(0, 1fr); pointer-events: none; z-index: 2; }
      :host(:not([narrow])) > * { pointer-events: auto; }
      :host(:not([narrow])) .list { margin-left: 42%; border-left: 2px solid var(--ink); background: var(--sheet); overflow-y: auto; }
      .van { position: absolute; left: 0; bottom: 0; width: 42%; height: 170px; background: var(--sheet); border-top: 1px solid var(--rule); display: flex; justify-content: center; }
      .van svg { height: 100%; width: 100%; max-width: 470px; }
      .said { padding: 20px 40px 18px; border-bottom: 2px solid var(--ink); background: var(--sheet); }
      .said q { display: block; font-size: 40px; line-height: 1.1; font-weight: 800; font-stretch: 106%; letter-spacing: -0.012em; margin: 4px 0; quotes: auto; }
      .said p { font-size: 17px; color: var(--ink2); }
      table { border-collapse: collapse; width: 100%; background: var(--sheet); }
      th { text-align: left; font-size: 14.5px; font-weight: 560; color: var(--ink2); padding: 6px 12px; border-bottom: 2px solid var(--ink); }
      th.m, td.m { text-align: right; white-space: nowrap; }
      td { padding: 3px 12px; height: 48px; border-bottom: 1px solid var(--rule); font-size: 17px; vertical-align: middle; line-height: 1.2; }
      td:first-child { width: 46px; padding-right: 0; }
      td:nth-child(2) { width: 40%; }
      td.m { font-weight: 640; width: 90px; }
      td.f { font-weight: 680; font-size: 15.5px; }
      tr.done { background: var(--panel); }
      tr.shut, tr.shut td.f { color: var(--ink2); font-weight: 520; }
      tr.hint td { box-shadow: inset 0 3px 0 var(--adj), inset 0 -3px 0 var(--adj); }
      @media ${COMPACT} {
        :host(:not([narrow])) .list { margin-left: 36%; }
        .van { width: 36%; height: 110px; }
        .said { padding: 10px 22px 9px; }
        .said q { font-size: 25px; margin: 1px 0; }
        .said p { font-size: 14px; }
        td { height: 33px; padding: 1px 9px; font-size: 14.5px; }
        td.f { font-size: 13px; }
        th { padding: 3px 9px; font-size: 13px; }
        td.m { width: 62px; }
        td:first-child { width: 36px; }
        .btn { min-height: 28px; }
      }
      @media ${NARROW} {
        .btn { min-height: 56px; }
        .said { padding: 12px 14px; }
        .said q { font-size: 25px; }
        tr { display: grid; grid-template-columns: 46px 1fr auto; border-bottom: 1px solid var(--rule); padding: 8px 0; align-items: center; }
        thead { display: none; }
        td:nth-child(2) { width: auto; }
        td, td.f { border: 0; height: auto; font-size: 16px; padding: 2px 10px; }
        td:first-child { width: auto; padding-right: 0; }
        td.m { width: auto; padding-right: 14px; }
        td.f { grid-column: 1 / -1; padding: 6px 14px 2px; }
        td.f .btn { width: 100%; text-align: center; }
      }
    `,
  ];

  #row(desk: FaultsDesk, e: Examination, at: number) {
    const taken = desk.taken.includes(e.id);
    const open = desk.open(e);
    const kind = taken ? 'done' : open ? '' : 'shut';
    const needs = e.needs === 'off' ? words.withTheDrumOff : words.withTheWheelsUp;
    return html`<tr class="${kind} ${desk.hint?.id === e.id ? 'hint' : ''}" data-reading=${e.id}>
      <td><span class="no ${taken ? 'done' : ''}">${at + 1}</span></td>
      <td title=${e.how}>${e.name}</td>
      <td class="m">${taken ? desk.van.minutes(e) : e.minutes}</td>
      <td class="f">${
        taken
          ? html`${line(desk.van.found(e.id))}${ofRigid(desk.rigid(e.id), desk.van.found(e.id))}`
          : open
            ? html`<button class="btn" aria-label=${words.takeIt(e.name)} @click=${() => desk.take(e.id)}>${words.takeIt2}</button>`
            : needs
      }</td></tr>`;
  }

  override render() {
    const desk = deskOf(FaultsDesk, this.session);
    const { state } = this.session;
    const km = desk.van.axle.left.state.distance || state.distance;
    return html`<div class="said"><div class="lab">${words.theDriverSays}</div><q>${desk.van.case.complaint}</q>
        <p>${words.quayVanKmDrivenIn(number(Math.round(km / 1e9) * 1000, 0))}</p></div>
      <div class="list"><table><caption hidden>${words.readings}</caption><thead><tr><th></th><th>${words.reading}</th><th class="m">${words.minutes}</th><th>${words.found}</th></tr></thead>
      <tbody>${examinations.map((e, i) => this.#row(desk, e, i))}</tbody></table></div>
      ${this.narrow ? nothing : html`<div class="van">${vanPicture(desk.taken.includes('heat') ? desk.van.found('heat') : null)}</div>`}`;
  }
}
customElements.define('takeup-find-board', FindBoard);
