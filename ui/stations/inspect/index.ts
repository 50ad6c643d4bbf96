import { css, html, nothing, type TemplateResult } from 'lit';
import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import { marks } from '../../pieces/marks.ts';
import { stationNames } from '../../record/moment.ts';
import { deskOf, type PageView, type Station } from '../station.ts';
import { balloons } from './balloons.ts';
import { InspectDesk } from './desk.ts';
import { hows } from './hows.ts';
import { noteStyles, photoNote } from './notes.ts';
import { PastDesk } from './past.ts';
import { measurementPage } from './print.ts';
import { placeOf, readAt } from './read.ts';
import './sheet.ts';
import { inspect as words } from '../../../sim/words/en.ts';
import { pageStyles } from './page-styles.ts';

/** Inspect: the measurement sheet of an axle, judged by margins, and the brake that was measured. */

/** What to measure at the open place, where, with what; and what the text there was read as. */
function place({ session, size }: PageView): TemplateResult {
  const desk = deskOf(InspectDesk, session);
  const line = desk.open;
  const { read, verdict } = desk.judged;
  const r = readAt(read, line, desk.wheel);
  const v = line.verdict ? verdict.wheels[desk.wheel][line.verdict] : null;
  const inch = r?.ok && 'unit' in line && line.unit ? words.inWord(number(r.value / 25.4, 3)) : '';
  return html`<div class="place ${size}" data-place><i>${line.number}</i><div><h2>${placeOf(line, desk.wheel)}</h2><p>${hows[line.key]}</p>
    ${size === 'narrow' ? nothing : html`<p class="echo" role="status">${r ? (r.ok ? `${r.echo}${inch}` : html`${marks.bad} ${words.foundAllowed(r.found, r.allowed)}`) : nothing}${v?.action ? html` <b>${v.action}</b>` : nothing}</p>${photoNote(deskOf(PastDesk, session))}<p class="standing">${cautions.standing}</p>`}</div></div>`;
}

export const inspect: Station = {
  id: 'inspect',
  styles: css`${pageStyles} ${noteStyles}`,
  paper: ({ session }) => [measurementPage(deskOf(InspectDesk, session), false)],
  roles: 'none',
  beside: { narrow: 0.48 },
  side: ({ session, size }) =>
    html`<h1 class="hidden">${stationNames.inspect}</h1><takeup-inspect .session=${session} .size=${size}></takeup-inspect>`,
  controls: () => html``,
  foot: {
    height: { wide: 196, middle: 204, narrow: 0 },
    strip: (page) => (page.size === 'narrow' ? html`` : place(page)),
  },
  over: (page) => (page.size === 'narrow' ? place(page) : html``),
  extra: (session, input) =>
    // A phone has room for one kind of numbers; so have a wall and a stage that is half a loupe.
    input.layers.names && (input.view.narrow || session.wall || session.layers.loupe)
      ? { shapes: [], labels: [] }
      : balloons(input, deskOf(InspectDesk, session).open, input.view.scale < 1),
};
