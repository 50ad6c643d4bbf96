import { html, type TemplateResult } from 'lit';
import { cornerLabels } from '../../stage/layers/captions.ts';
import { cutAngle, cutMark, roleCorners } from '../../stage/layers/cut-mark.ts';
import { overlapBand, overlapTimes } from '../../stage/layers/overlap.ts';
import { deskOf, type PageView, type Station } from '../station.ts';
import { drumControls } from './controls.ts';
import { DrumDesk } from './desk.ts';
import { fasteningSide } from './fastening.ts';
import { faultsSide } from './faults.ts';
import { mineSide } from './mine.ts';
import { cutAt } from './section.ts';
import { brakeSide, forcePath, sectionCard, teethTable } from './side.ts';
import { drumStyles } from './styles.ts';
import { foundBy, howItStands } from './words.ts';

/** Drum off: which of the locks holds the drum, what each lets it do, and what releases it. */

function side(page: PageView): TemplateResult {
  const desk = deskOf(DrumDesk, page.session);
  switch (desk.page) {
    case 'faults':
      return faultsSide(desk);
    case 'mine':
      return mineSide(desk);
    case 'fastening':
      return fasteningSide(desk);
    case 'brake':
      return brakeSide(page, desk);
  }
}

export const drumOff: Station = {
  id: 'drum-off',
  styles: drumStyles,
  beside: { wide: 0.36, middle: 0.36 },
  besideIs: 'Section B–B',
  roles: 'none',
  side,
  controls: (page) => drumControls(page, deskOf(DrumDesk, page.session)),
  caption: (session) => {
    const desk = deskOf(DrumDesk, session);
    return desk.off
      ? 'The drum is off'
      : `Drum drawn worn, lip line dashed · overlap ×${overlapTimes(desk.fit.greatest)}, values in mm`;
  },
  over: (page) => {
    if (page.size === 'narrow') return html``;
    const desk = deskOf(DrumDesk, page.session);
    return html`<div class="onstage beside">${sectionCard(desk, false)}${teethTable(desk)}${forcePath(desk)}</div>`;
  },
  shown: (session) => session.rest,
  without: (session) => (deskOf(DrumDesk, session).off ? ['drum'] : []),
  extra: (session, { brake, view, layers }) => {
    const desk = deskOf(DrumDesk, session);
    const roles = view.wall
      ? cornerLabels(session.rest, view, false)
      : view.narrow
        ? []
        : roleCorners(brake, view);
    // Gap fan and comb stand in the same band: who asks for one sees it alone.
    if (desk.off || layers.fan || layers.comb) return { shapes: [], labels: roles };
    const band = overlapBand(brake, desk.fit, view);
    const cut =
      view.narrow || view.wall
        ? { shapes: [], labels: [] }
        : cutMark(brake, cutAngle(brake, cutAt(desk.fit).word), view);
    return {
      shapes: [...band.shapes, ...cut.shapes],
      labels: [...roles, ...band.labels, ...cut.labels],
    };
  },
  wall: {
    readings: ['tooth', 'drumDiameter', 'restClearanceMean'],
    says: ({ session }) => {
      const desk = deskOf(DrumDesk, session);
      return desk.tried ? foundBy(desk.tried.what, desk.tried.found) : howItStands(desk.now);
    },
  },
};
