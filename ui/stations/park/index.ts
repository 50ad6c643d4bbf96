import { html } from 'lit';
import { park as texts } from '../../../sim/words/en.ts';
import { deskOf, type Station } from '../station.ts';
import { parkControls } from './controls.ts';
import { ParkDesk } from './desk.ts';
import { hillFigure } from './hill.ts';
import { panels } from './panels.ts';
import { parkSide } from './side.ts';
import { parkStage } from './stage.ts';
import { parkStyles } from './styles.ts';
import { verdict } from './words.ts';

/** Park: one cable works both shoes; does it hold on the hill, both ways round? */
export const park: Station = {
  id: 'park',
  few: texts.allReadingsWhatIsAsked,
  styles: parkStyles,
  beside: { wide: 0.3, middle: 0.33 },
  besideIs: texts.forcesAndCable,
  side: (page) => parkSide(page, deskOf(ParkDesk, page.session)),
  controls: (page) => parkControls(page, deskOf(ParkDesk, page.session)),
  acts: (session, press) => deskOf(ParkDesk, session).acts(press),
  caption: (session) =>
    deskOf(ParkDesk, session).loose
      ? texts.chocksAwayTheMovingWheel
      : deskOf(ParkDesk, session).cable > 0
        ? texts.forces125MmPer
        : texts.letGoTheLeverRests,
  over: (page) => {
    if (page.size === 'narrow') return html``;
    const desk = deskOf(ParkDesk, page.session);
    return html`<div class="park-over beside">${panels(desk)}</div>${hillFigure(desk)}`;
  },
  wall: {
    readings: ['torque', 'strutForce', 'restClearanceMean'],
    says: ({ session }) => {
      const desk = deskOf(ParkDesk, session);
      const v = verdict(desk.hill(), desk.rule, desk.nose, desk.jam);
      return html`<b>${v.text}.</b> ${v.margin}.`;
    },
    actions: ({ session }) => {
      const desk = deskOf(ParkDesk, session);
      const { percent } = desk.rule;
      const steeper = percent >= 30 ? 5 : percent + 5;
      return [
        { name: texts.pullOneNotchName, does: () => desk.notch(1) },
        { name: texts.slope(steeper), does: () => desk.slope(steeper) },
      ];
    },
  },
  shown: (session) => deskOf(ParkDesk, session).instant,
  extra: (session, input) => parkStage(deskOf(ParkDesk, session), input),
};
