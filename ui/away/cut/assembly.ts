import { html, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { awayCutAssembly as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { sheetPage } from '../../pieces/paper-sheet.ts';
import type { Session } from '../../session.ts';
import { smallestTooth } from './materials.ts';
import type { Moves } from './moves.ts';
import type { CutPart, CutSettings } from './part.ts';
import { cutPicture } from './picture.ts';

/** How the parts go together, on one page: the picture with numbers, the list with heights, and what the check found. */

const CAUTION = words.caution;

/** What the check says, in a sentence. */
export function movesText(moves: Moves | null): string {
  if (!moves) return words.noToothedLeverHereNothing;
  if (!moves.sound) return words.itWillNotWorkSo(moves.faults.join('; '));
  const last = moves.teeth.length;
  const off = Math.max(...moves.teeth.map((t) => Math.abs(t.off)));
  return words.checkedAsCutAllTeeth(last, number(Math.max(0.01, off), 2));
}

export function sizeText(session: Session, set: CutSettings): string {
  const tooth = smallestTooth(session.brake);
  const size =
    set.factor === 1
      ? words.trueSize
      : words.timesItsSize(number(set.factor, set.factor % 1 ? 1 : 0));
  return tooth
    ? words.theSmallestToothIsMm(
        size,
        number(tooth.wide * set.factor, 2),
        number(tooth.high * set.factor, 2),
      )
    : `${size}.`;
}

export function assemblySheet(
  session: Session,
  parts: readonly CutPart[],
  set: CutSettings,
  moves: Moves | null,
): TemplateResult {
  const under = words.under(
    sizeText(session, set),
    number(set.kerf, 2),
    number(set.play, 2),
    number(set.pin, 1),
  );
  return sheetPage(
    session,
    { title: words.cutOutModelPuttingIt, under, kind: 'assembly', caution: CAUTION },
    html`<div class="cutout"><div class="draw">${unsafeSVG(cutPicture(parts, true))}
      <div class="small"><p><b>${words.heights}</b> ${words.of0IsTheBoardEach}</p>
      <p><b>${words.springs}</b> ${words.rubberBandsBetweenTheSmall}</p>
      <p><b>${words.aPress}</b> ${words.pushBothToesOutWith}</p>
      <p><b>${words.check}</b> ${movesText(moves)}</p></div></div>
    <table class="small"><thead><tr><th>${words.no}</th><th>${words.part}</th><th>${words.pieces}</th><th>${words.height}</th><th>${words.whatToDoWithIt}</th></tr></thead><tbody>${parts.map(
      (p, i) =>
        html`<tr><td>${i + 1}</td><th>${p.name}</th><td>${p.count}</td><td>${p.layer}</td><td>${p.does}</td></tr>`,
    )}</tbody></table></div>`,
  );
}
