import { html } from 'lit';
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
  few: 'All readings, what is asked for',
  styles: parkStyles,
  beside: { wide: 0.3, middle: 0.33 },
  besideIs: 'Forces and cable',
  side: (page) => parkSide(page, deskOf(ParkDesk, page.session)),
  controls: (page) => parkControls(page, deskOf(ParkDesk, page.session)),
  acts: (session, press) => deskOf(ParkDesk, session).acts(press),
  caption: (session) =>
    deskOf(ParkDesk, session).loose
      ? 'Chocks away: the moving wheel'
      : deskOf(ParkDesk, session).cable > 0
        ? 'Forces 12.5 mm per kN, about to slip · ghost: lever at rest, ×1'
        : 'Let go: the lever rests on its stop',
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
        { name: 'Pull one notch', does: () => desk.notch(1) },
        { name: `Slope ${steeper} %`, does: () => desk.slope(steeper) },
      ];
    },
  },
  shown: (session) => deskOf(ParkDesk, session).instant,
  extra: (session, input) => parkStage(deskOf(ParkDesk, session), input),
};
