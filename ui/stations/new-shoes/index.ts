import { html } from 'lit';
import { newShoes as texts } from '../../../sim/words/en.ts';
import { restOf } from '../../record/derive.ts';
import { deskOf, type Station } from '../station.ts';
import { shoesControls } from './controls.ts';
import { ShoeDesk } from './desk.ts';
import { picture, shoesSide, strip } from './side.ts';
import { shoesStage } from './stage.ts';
import { shoesStyles } from './styles.ts';
import { stepNames, task } from './words.ts';

/** New shoes: six steps to fit them right the first time, in any order. */
export const newShoes: Station = {
  id: 'new-shoes',
  styles: shoesStyles,
  beside: { wide: 0.3, middle: 0.35 },
  besideIs: texts.picture,
  roles: 'none',
  foot: {
    height: { wide: 196, middle: 128, narrow: 148 },
    strip: (page) => strip(page, deskOf(ShoeDesk, page.session)),
  },
  side: (page) => shoesSide(page, deskOf(ShoeDesk, page.session)),
  controls: (page) => shoesControls(page, deskOf(ShoeDesk, page.session)),
  caption: (session) =>
    deskOf(ShoeDesk, session).drumOn ? texts.drumOnTrueScale : texts.drumOffItsOutlineDashed,
  over: (page) =>
    page.size === 'narrow'
      ? html``
      : html`<div class="ns-over ns-card beside">${picture(deskOf(ShoeDesk, page.session))}</div>`,
  wall: {
    readings: ['tooth', 'strutForce'],
    says: ({ session }) => {
      const desk = deskOf(ShoeDesk, session);
      return html`<b>${desk.step} ${stepNames[desk.step]}.</b> ${task(desk, desk.step)}`;
    },
  },
  pairs: (session) => deskOf(ShoeDesk, session).pairs,
  shown: (session) => restOf(session.rig, session.shown),
  without: (session) => (deskOf(ShoeDesk, session).drumOn ? [] : ['drum']),
  extra: (session, input) => shoesStage(deskOf(ShoeDesk, session), input),
};
