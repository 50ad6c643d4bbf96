import { html, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { number } from '../../format.ts';
import { sheetPage } from '../../pieces/paper-sheet.ts';
import type { Session } from '../../session.ts';
import { smallestTooth } from './materials.ts';
import type { Moves } from './moves.ts';
import type { CutPart, CutSettings } from './part.ts';
import { cutPicture } from './picture.ts';

/** How the parts go together, on one page: the picture with numbers, the list with heights, and what the check found. */

const CAUTION =
  'Blades and lasers cut: work as their makers say, with eye protection. Rubber bands and springs of the model pinch too; the springs of a real brake are far stronger and need the proper tool.';

/** What the check says, in a sentence. */
export function movesText(moves: Moves | null): string {
  if (!moves) return 'No toothed lever here: nothing that would have to click.';
  if (!moves.sound) return `It will not work so: ${moves.faults.join('; ')}.`;
  const last = moves.teeth.length;
  const off = Math.max(...moves.teeth.map((t) => Math.abs(t.off)));
  return `Checked as cut: all ${last} teeth are passed, taken and held, the pin is free in its slot and the finger in its window. Each drop comes within ${number(Math.max(0.01, off), 2)} mm of where the bench has it.`;
}

export function sizeText(session: Session, set: CutSettings): string {
  const tooth = smallestTooth(session.brake);
  const size =
    set.factor === 1 ? 'True size' : `${number(set.factor, set.factor % 1 ? 1 : 0)} times its size`;
  return tooth
    ? `${size}: the smallest tooth is ${number(tooth.wide * set.factor, 2)} mm wide and ${number(tooth.high * set.factor, 2)} mm high.`
    : `${size}.`;
}

export function assemblySheet(
  session: Session,
  parts: readonly CutPart[],
  set: CutSettings,
  moves: Moves | null,
): TemplateResult {
  const under = `${sizeText(session, set)} Kerf ${number(set.kerf, 2)} mm, play ${number(set.play, 2)} mm, pins ${number(set.pin, 1)} mm.`;
  return sheetPage(
    session,
    { title: 'Cut-out model: putting it together', under, kind: 'assembly', caution: CAUTION },
    html`<div class="cutout"><div class="draw">${unsafeSVG(cutPicture(parts, true))}
      <div class="small"><p><b>Heights.</b> 0 is the board; each height is one thickness of the sheet. Build from the board up.</p>
      <p><b>Springs.</b> Rubber bands between the small holes of the two shoes, above and below; one from the lever’s pin down to its block.</p>
      <p><b>A press.</b> Push both toes out with finger and thumb until the linings meet the drum, and let go. Hold the front lining further out, as if it were worn: the lever climbs and clicks, and the strut is longer.</p>
      <p><b>Check.</b> ${movesText(moves)}</p></div></div>
    <table class="small"><thead><tr><th>No.</th><th>Part</th><th>Pieces</th><th>Height</th><th>What to do with it</th></tr></thead><tbody>${parts.map(
      (p, i) =>
        html`<tr><td>${i + 1}</td><th>${p.name}</th><td>${p.count}</td><td>${p.layer}</td><td>${p.does}</td></tr>`,
    )}</tbody></table></div>`,
  );
}
