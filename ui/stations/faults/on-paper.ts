import { html, nothing, type TemplateResult } from 'lit';
import { examinations } from '../../../sim/workshop/index.ts';
import { cautions } from '../../cautions.ts';
import { sheetPage } from '../../pieces/paper-sheet.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import { FaultsDesk } from './desk.ts';
import { line } from './text.ts';

/** Find-the-fault log: the readings with their minutes, what each found and which names it leaves. */

const numberOf = (id: string): number => examinations.findIndex((e) => e.id === id) + 1;

/** @param filled with what was taken at the van that is open; blank to be filled in by hand */
export function faultLog(session: Session, filled: boolean): TemplateResult {
  const desk = deskOf(FaultsDesk, session);
  const { van } = desk;
  const taken = (id: (typeof examinations)[number]['id']): boolean =>
    filled && desk.taken.includes(id);
  const out = filled ? van.names.filter((f) => desk.ruled.has(f.id)) : [];
  const right = filled && desk.answer?.right ? desk.answer : null;
  return sheetPage(
    session,
    {
      title: filled ? `Find the fault: van ${van.case.number}` : 'Find the fault',
      under: filled
        ? html`The driver says: <b>“${van.case.complaint}”</b>`
        : html`<span class="fill">The driver says:<span class="blank"></span></span>`,
      ...{ kind: 'fault log', asks: ['Name', 'Date'], caution: cautions.fault },
    },
    html`<table class="rows"><thead><tr><th>No.</th><th>Reading</th><th>Minutes</th><th class="wide">Found</th><th class="wide">So it is not</th></tr></thead><tbody>${examinations.map(
      (e, i) =>
        html`<tr><td>${i + 1}</td><td>${e.name}</td><td>${taken(e.id) ? van.minutes(e) : e.minutes}</td><td>${taken(e.id) ? line(van.found(e.id)) : nothing}</td><td>${out
          .filter((f) => desk.ruled.get(f.id) === e.id)
          .map((f) => f.name)
          .join(', ')}</td></tr>`,
    )}</tbody></table>
    <p class="fill"><b>Still possible</b>${
      filled
        ? html` ${van.names
            .filter((f) => !desk.ruled.has(f.id))
            .map((f) => f.name)
            .join(', ')}`
        : html`<span class="blank"></span>`
    }</p>
    <p class="fill"><b>I name it</b>${right ? html` ${right.name.name}: ${right.name.remedy}` : html`<span class="blank"></span>`}</p>
    <p class="fill"><b>because reading</b>${right ? html` ${desk.taken.map(numberOf).join(', ')}` : html`<span class="blank"></span>`}</p>
    <p><b>Minutes in all</b> ${filled ? desk.minutes : '________'} <b>Cheapest way to be sure</b> ${filled && right ? van.case.par : '________'}</p>`,
  );
}
