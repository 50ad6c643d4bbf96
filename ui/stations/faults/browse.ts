import { css, html, LitElement, nothing } from 'lit';
import { adjusterKinds, canFail } from '../../../sim/index.ts';
import { faultsBrowse as words } from '../../../sim/words/en.ts';
import { faults as all, type FaultGroup, notShown } from '../../../sim/workshop/index.ts';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import { brakes } from '../../scenes.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import { FaultsDesk } from './desk.ts';
import { look } from './look.ts';
import { line, ofRigid } from './text.ts';

/** Those that the van can have with its kind of adjuster. */
const van = adjusterKinds.find((kind) => kind === brakes[0].adjuster.kind);
const faults = all.filter((f) => van !== undefined && canFail(van, f.id));

const groups: readonly FaultGroup[] = [
  'Adjuster',
  'Cable and lever',
  'Springs and pistons',
  'Friction',
  'Drum',
];

/** Readings before and after: only those that the fault changes. */
export class FaultReadings extends LitElement {
  static override properties = { session: { attribute: false }, rev: { type: Number } };
  declare session: Session;
  declare rev: number;

  static override styles = [
    look,
    css`
      :host { background: var(--sheet); overflow: auto; }
      table { border-collapse: collapse; width: 100%; }
      th { text-align: left; font-size: 14.5px; font-weight: 560; color: var(--ink2); padding: 5px 14px; border-bottom: 2px solid var(--ink); position: sticky; top: 0; background: var(--sheet); }
      td { padding: 5px 14px; border-bottom: 1px solid var(--rule); font-size: 15.5px; line-height: 1.25; vertical-align: top; }
      td:first-child { white-space: nowrap; }
      td:last-child { font-weight: 680; }
      p { padding: 10px 14px; font-size: 16px; }
      @media ${COMPACT} { td { font-size: 13.5px; padding: 3px 10px; } th { font-size: 13px; padding: 3px 10px; } p { font-size: 14px; } }
      @media ${NARROW} { td { font-size: 14px; padding: 6px 10px; } th { font-size: 14px; } td:first-child { white-space: normal; width: 30%; } }
    `,
  ];

  override render() {
    const desk = deskOf(FaultsDesk, this.session);
    if (!desk.fault) return html`<p>${words.chooseAFaultHereStands}</p>`;
    return html`<table aria-label=${words.readingsBeforeAndAfter}><thead><tr><th>${words.reading}</th><th>${words.sound}</th><th>${words.withTheFault}</th></tr></thead>
      <tbody>${desk.changed.map((c) => html`<tr><td>${c.by.name}</td><td>${line(c.before)}</td><td>${c.after.length > 0 ? line(c.after) : words.asSound}${ofRigid(c.rigid, c.after)}</td></tr>`)}</tbody></table>
      ${desk.bedding ? html`<p role="status">${words.ofRigidShoesTillThe}</p>` : nothing}
      ${desk.working ? html`<p>${words.takingTheReadings}</p>` : desk.changed.length === 0 ? html`<p>${words.noneOfTheWorkshopsReadings}</p>` : nothing}`;
  }
}
customElements.define('takeup-fault-readings', FaultReadings);

/** One fault: what it is, how it works, what parts it from its look-alikes, what to do. */
export class FaultCard extends LitElement {
  static override properties = { session: { attribute: false }, rev: { type: Number } };
  declare session: Session;
  declare rev: number;

  static override styles = [
    look,
    css`
      section { border: 2px solid var(--ink); background: var(--sheet); padding: 11px 18px 12px; }
      section + section { margin-top: 12px; }
      h2 { font-size: 25px; line-height: 1.1; font-weight: 780; }
      h3 { font-size: 15px; font-weight: 700; margin-top: 8px; }
      p, li { font-size: 16.5px; line-height: 1.36; }
      .ch { font-size: 15px; color: var(--ink2); margin-top: 3px; }
      .tell { font-weight: 640; }
      dl { margin: 4px 0 0; }
      dt { font-weight: 680; font-size: 16px; border-top: 1px solid var(--rule); padding-top: 5px; margin-top: 5px; display: flex; justify-content: space-between; gap: 10px; }
      dt button { text-decoration: underline; text-underline-offset: 3px; min-height: 28px; }
      dt span { font-weight: 540; font-size: 14px; color: var(--ink2); text-align: right; }
      dd { margin: 0; font-size: 15px; line-height: 1.34; }
      dd i { font-style: normal; color: var(--ink2); }
      ul { margin: 4px 0 0; padding-left: 20px; }
      li { font-size: 15px; }
      summary { cursor: pointer; font-weight: 680; font-size: 16px; }
      @media ${COMPACT} {
        section { padding: 8px 14px; } section + section { margin-top: 8px; }
        h2 { font-size: 20px; } p, li { font-size: 14.5px; } .ch, dd, dt { font-size: 14px; } dt span, h3 { font-size: 13.5px; } li { font-size: 13.5px; }
      }
      @media ${NARROW} {
        section { border-width: 0 0 2px; } section + section { margin: 0; }
        p { font-size: 16px; } .ch, dd, dt, dt span, h3, li { font-size: 14.5px; }
        dt { flex-direction: column; gap: 0; } dt span { text-align: left; } dt button { min-height: 56px; } summary { min-height: 56px; }
      }
    `,
  ];

  override render() {
    const desk = deskOf(FaultsDesk, this.session);
    const { fault: f } = desk;
    const hidden = html`<section><details><summary>${words.notShownInThisView}</summary><ul>${notShown.map((n) => html`<li><b>${n.name}</b>: ${n.because}.</li>`)}</ul></details></section>`;
    if (!f) return hidden;
    return html`<section><h2>${f.name}</h2><p class="ch">${f.change}${f.wheels === 'one' ? words.onOneWheelTheRight : words.onBothWheels}</p>
        <h3>${words.howItWorks}</h3><p>${f.mechanism}</p>
        <h3>${words.whatTellsItApart}</h3><p class="tell">${f.tells}</p>
        <h3>${words.remedy}</h3><p>${f.remedy}</p></section>
      <section><div class="lab">${words.lookAlikesEachWithThe}</div>
        <dl>${desk.partings.map(
          (
            p,
          ) => html`<dt><button @click=${() => desk.choose(p.other.id)}>${p.other.name}</button><span>${p.by ? `${p.by.name}, ${p.by.minutes} min` : ''}</span></dt>
          <dd>${p.by ? html`<i>${words.here}</i> ${line(p.here)}${ofRigid(p.rigid?.here, p.here)}${p.rigid ? nothing : html`<br />`}<i>${words.there}</i> ${line(p.there)}${ofRigid(p.rigid?.there, p.there)}` : words.noReadingOfThisList}</dd>`,
        )}</dl>
        ${desk.working ? html`<p>${words.comparing}</p>` : nothing}</section>
      ${hidden}`;
  }
}
customElements.define('takeup-fault-card', FaultCard);

/** The list to choose from, one fault on or back, and the way out. */
export function chooser(desk: FaultsDesk, narrow: boolean) {
  const { fault: chosen } = desk;
  const at = chosen ? faults.indexOf(chosen) : -1;
  // Before the first one is chosen, "Next" begins the list and "Previous" ends it.
  const step = (by: number) => {
    const from = at < 0 && by < 0 ? 0 : at;
    const next = faults[(from + by + faults.length) % faults.length];
    if (next) desk.choose(next.id);
  };
  const out = html`<button class="btn" ?disabled=${!desk.onBench} @click=${() => desk.restore()}>${words.takeItOut}</button>`;
  const list = html`<select class="pick" aria-label=${words.fault} @change=${(e: Event) => desk.choose((e.target as HTMLSelectElement).value)}>${chosen ? nothing : html`<option value="" selected disabled>${words.chooseAFault}</option>`}${groups.map((g) => html`<optgroup label=${words.groups[g]}>${faults.filter((f) => f.group === g).map((f) => html`<option value=${f.id} .selected=${f === chosen}>${f.name}</option>`)}</optgroup>`)}</select>`;
  if (narrow) return html`<div class="row two">${list}${out}</div>`;
  return html`${list}
    <div class="row three"><button class="btn" @click=${() => step(-1)}>${words.previous}</button><button class="btn" @click=${() => step(1)}>${words.next}</button>${out}</div>`;
}
