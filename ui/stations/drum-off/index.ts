import { html, type TemplateResult } from 'lit';
import { drumOff as texts } from '../../../sim/words/en.ts';
import { stepsOf } from '../../adjusters.ts';
import { cornerLabels } from '../../stage/layers/captions.ts';
import { cutAngle, cutMark, roleCorners } from '../../stage/layers/cut-mark.ts';
import { overlapBand, overlapTimes } from '../../stage/layers/overlap.ts';
import { deskOf, type PageView, type Station } from '../station.ts';
import { drumControls } from './controls.ts';
import { DrumDesk } from './desk.ts';
import { fasteningSide } from './fastening.ts';
import { faultsSide } from './faults.ts';
import { mineSide } from './mine.ts';
import { accessHole, caughtFlash, rimPulled } from './pull.ts';
import { cutAt } from './section.ts';
import { brakeSide, forcePath, sectionCard, teethTable } from './side.ts';
import { drumStyles } from './styles.ts';
import { howItStands } from './words.ts';

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
  few: texts.whereAHarderPullGoes,
  styles: drumStyles,
  beside: { wide: 0.35, middle: 0.36 },
  besideIs: texts.sectionBB,
  roles: 'none',
  side,
  controls: (page) => drumControls(page, deskOf(DrumDesk, page.session)),
  caption: (session) => {
    const desk = deskOf(DrumDesk, session);
    return desk.off && !desk.pulling
      ? texts.theDrumIsOff
      : texts.drumDrawnWornLipLine(overlapTimes(desk.fit.greatest));
  },
  over: (page) => {
    if (page.size === 'narrow') return html``;
    const desk = deskOf(DrumDesk, page.session);
    return html`<div class="onstage beside">${sectionCard(desk, false)}${teethTable(desk)}${page.full ? forcePath(desk) : html``}</div>`;
  },
  shown: (session) => session.rest,
  // On its way the rim is drawn by the pull.
  without: (session) => {
    const desk = deskOf(DrumDesk, session);
    return desk.off || desk.slide() > 0 ? ['drum'] : [];
  },
  extra: (session, { brake, state, instant, view, layers }) => {
    const desk = deskOf(DrumDesk, session);
    const roles = view.wall
      ? cornerLabels(session.rest, view, false)
      : view.narrow
        ? []
        : roleCorners(brake, view);
    // Gap fan and comb stand in the same band: who asks for one sees it alone.
    const slide = desk.slide();
    const rim =
      slide > 0 && (desk.pulling || !desk.off)
        ? rimPulled(brake, instant, state.drumRadius, slide, desk.off)
        : [];
    if (desk.off || layers.fan || layers.comb) return { shapes: rim, labels: roles };
    const band = overlapBand(brake, desk.fit, view);
    const cut =
      view.narrow || view.wall
        ? { shapes: [], labels: [] }
        : cutMark(brake, cutAngle(brake, cutAt(desk.fit).word), view);
    const { flash, back } = desk;
    const lit =
      flash > 0 ? caughtFlash(brake, desk.fit, overlapTimes(desk.fit.greatest), flash) : [];
    // Beside names and numbers of names there is no room for one more.
    const hole = layers.names
      ? { shapes: [], labels: [] }
      : accessHole(brake, instant, back > 0, view);
    return {
      shapes: [...rim, ...band.shapes, ...lit, ...cut.shapes, ...hole.shapes],
      labels: [...roles, ...band.labels, ...cut.labels, ...hole.labels],
    };
  },
  wall: {
    readings: ['tooth', 'drumDiameter', 'restClearanceMean'],
    says: ({ session }) => {
      const desk = deskOf(DrumDesk, session);
      return desk.found || howItStands(desk.now);
    },
    actions: ({ session }) => {
      const desk = deskOf(DrumDesk, session);
      const steps = stepsOf(session.brake);
      const pull = desk.off
        ? { name: texts.putItBackOn, does: () => desk.putOn(), off: desk.pulling }
        : { name: texts.pullTheDrum, does: () => desk.attempt('pull') };
      const back = { name: steps.back, does: () => desk.backOff(steps.press) };
      return [pull, { ...back, off: session.state.tooth <= 0 }];
    },
  },
};
