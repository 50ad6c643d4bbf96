import { html, type TemplateResult } from 'lit';
import { labelWords, compare as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { deskOf, type PageView, type Station } from '../station.ts';
import { CompareDesk } from './desk.ts';
import { drawTwo, LAYERS } from './draw.ts';
import { compareControls, compareSide, compareTable, sentence } from './side.ts';
import { compareStyles } from './styles.ts';
import { swap } from './wants.ts';

/** Compare: two brakes on one stage at one scale, pressed by one pedal. */

const WALL_ROWS = [
  [words.pressureBar, 'linePressure', 1],
  [words.torqueNM, 'torque', 0],
  [words.gapAtRestMm, 'restClearanceMean', 2],
  [labelWords.tooth, 'tooth', 0],
] as const;

/** In large type: what differs, and the figures of both. */
function onWall(desk: CompareDesk): TemplateResult {
  const causes = desk.differs.filter((d) => !d.follows);
  const first = causes[0];
  return html`<b>${causes.length === 1 && first ? words.against(first.name, first.a, first.b) : words.thingsDiffer(causes.length)}</b> ${sentence(desk)}
    <table class="cmp-w"><thead><tr><td></td><th scope="col">A</th><th scope="col">B</th></tr></thead><tbody>${WALL_ROWS.map(
      ([name, key, digits]) => {
        const told = desk.reading(key);
        return html`<tr><th scope="row">${name}</th>${told.map((x) => html`<td>${Number.isFinite(x) ? number(x, digits) : '–'}</td>`)}</tr>`;
      },
    )}</tbody></table>`;
}

const desk = ({ session }: Pick<PageView, 'session'>): CompareDesk => deskOf(CompareDesk, session);

export const compare: Station = {
  id: 'compare',
  styles: compareStyles,
  layers: LAYERS,
  unnamed: words.noNamesHereTwoBrakes,
  foot: {
    height: { wide: 226, middle: 176, narrow: 0 },
    strip: (page) => (page.size === 'narrow' ? html`` : compareTable(desk(page))),
  },
  draws: (session, stage) => drawTwo(session, desk({ session }), stage),
  side: (page) => compareSide(page, desk(page)),
  controls: (page) => compareControls(page, desk(page)),
  key: (session, e, target) => {
    if (e.key !== ' ' || target.closest('button, input, select, summary')) return false;
    if (!e.repeat) desk({ session }).press();
    return true;
  },
  wall: {
    readings: [],
    says: (page) => onWall(desk(page)),
    actions: (page) => [
      {
        name: desk(page).part.at > 0 ? words.letGo : words.pressBoth,
        does: () => desk(page).press(),
      },
      { name: words.aForBName, does: () => page.session.do(swap) },
    ],
  },
};
