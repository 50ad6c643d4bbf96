import { html, nothing, type TemplateResult } from 'lit';
import { faultsOnPaper as words } from '../../../sim/words/en.ts';
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
      title: filled ? words.findTheFaultVan(van.case.number) : words.findTheFault,
      under: filled
        ? html`${words.theDriverSays} <b>${words.quoted(van.case.complaint)}</b>`
        : html`<span class="fill">${words.theDriverSays}<span class="blank"></span></span>`,
      ...{ kind: words.faultLog, asks: words.asks, caution: cautions.fault },
    },
    html`<table class="rows"><thead><tr><th>${words.no}</th><th>${words.reading}</th><th>${words.minutes}</th><th class="wide">${words.found}</th><th class="wide">${words.soItIsNot}</th></tr></thead><tbody>${examinations.map(
      (e, i) =>
        html`<tr><td>${i + 1}</td><td>${e.name}</td><td>${taken(e.id) ? van.minutes(e) : e.minutes}</td><td>${taken(e.id) ? line(van.found(e.id)) : nothing}</td><td>${out
          .filter((f) => desk.ruled.get(f.id) === e.id)
          .map((f) => f.name)
          .join(', ')}</td></tr>`,
    )}</tbody></table>
    <p class="fill"><b>${words.stillPossible}</b>${
      filled
        ? html` ${van.names
            .filter((f) => !desk.ruled.has(f.id))
            .map((f) => f.name)
            .join(', ')}`
        : html`<span class="blank"></span>`
    }</p>
    <p class="fill"><b>${words.iNameIt}</b>${right ? html` ${right.name.name}: ${right.name.remedy}` : html`<span class="blank"></span>`}</p>
    <p class="fill"><b>${words.becauseReading}</b>${right ? html` ${desk.taken.map(numberOf).join(', ')}` : html`<span class="blank"></span>`}</p>
    <p><b>${words.minutesInAll}</b> ${filled ? desk.minutes : '________'} <b>${words.cheapestWayToBeSure}</b> ${filled && right ? van.case.par : '________'}</p>`,
  );
}
