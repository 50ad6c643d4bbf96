import { html, render } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { appPrintPage as words } from '../../sim/words/en.ts';
import { cautions } from '../cautions.ts';
import { number } from '../format.ts';
import { stationNames } from '../record/moment.ts';
import type { Drawing } from '../stage/shapes.ts';
import { toSvg } from '../stage/svg.ts';
import type { PageView, Station } from '../stations/station.ts';
import { printTheme } from '../theme.ts';

/** What the browser's own print puts on paper: the station's own sheet, or the drawing as it stands and the readings. */

const MOMENT = 'print-moment';

/** The page's policy allows no styles written into elements; the paper does without them. */
const onPaper = (drawings: readonly Drawing[]): string =>
  toSvg(drawings, printTheme, { title: words.brakeDrawing }).replaceAll(/ style="[^"]*"/g, '');

/** Takes away what was prepared, a sheet's too: the next print shows what stands then. */
export function printDone(): void {
  for (const at of document.querySelectorAll('#print-moment, #print')) at.remove();
}

/** Prepares what only the printer sees; a sheet that prints itself is left alone. */
export function printMoment(page: PageView, station: Station, drawings: readonly Drawing[]): void {
  if (document.querySelector('#print')) return;
  const at = document.querySelector<HTMLElement>(`#${MOMENT}`) ?? document.createElement('div');
  at.id = MOMENT;
  document.body.append(at);
  const own = station.paper?.(page) ?? [];
  const { session, instant } = page;
  render(
    own.length > 0
      ? own
      : html`<article class="paper moment">
      <header><h1>${stationNames[station.id]}: ${session.guest ?? session.brake.title}</h1></header>
      ${unsafeSVG(onPaper(drawings))}
      <dl>${session.told(instant).map((r) => html`<dt>${r.name}</dt><dd>${number(r.value, r.digits)} ${r.unit}</dd>`)}</dl>
      <footer><p><b>${words.teachingBrakeItsFiguresAre}</b></p><p>${cautions.standing}</p></footer>
    </article>`,
    at,
  );
}
