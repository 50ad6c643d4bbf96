import { html } from 'lit';
import { order as words } from '../../../sim/words/en.ts';
import { deskOf, type Station } from '../station.ts';
import { OrderDesk } from './desk.ts';
import { orderPagesOf } from './on-paper.ts';
import { card, orderControls, orderSide, pageNames } from './side.ts';
import { lacking, orderStage } from './stage.ts';
import { textOf } from './step.ts';
import { orderStyles } from './styles.ts';

/** What needs the drum, or the gaps to it. */
const OF_DRUM = ['drum', 'fan', 'comb', 'ghost', 'turning'];

/** In order: backing off, taking apart, putting together, setting and bedding in, step by step. */
export const orderStation: Station = {
  id: 'order',
  styles: orderStyles,
  beside: { wide: 0.36, middle: 0.38 },
  besideIs: words.thisStep,
  paper: ({ session }) => {
    const { page } = deskOf(OrderDesk, session);
    if (page === 'back') return [];
    return orderPagesOf(session, page === 'apart' ? 'apart' : 'together', 'A4');
  },
  roles: 'none',
  side: (page) => orderSide(page, deskOf(OrderDesk, page.session)),
  controls: ({ session }) => orderControls(deskOf(OrderDesk, session)),
  caption: (session) =>
    deskOf(OrderDesk, session).off.has('drum') ? words.trueScaleWhatIsOff : words.trueScaleDrumOn,
  over: ({ session, size }) =>
    size === 'narrow'
      ? html``
      : html`<div class="or-over beside">${card(deskOf(OrderDesk, session), false)}</div>`,
  shown: (session) => deskOf(OrderDesk, session).instant,
  without: (session) => (deskOf(OrderDesk, session).off.has('drum') ? OF_DRUM : []),
  lacks: (session) => lacking(deskOf(OrderDesk, session).off),
  extra: (session, input) => orderStage(deskOf(OrderDesk, session), input),
  wall: {
    readings: ['tooth', 'strutForce'],
    says: ({ session }) => {
      const desk = deskOf(OrderDesk, session);
      return html`<b>${pageNames[desk.page]}, ${desk.at + 1}: ${desk.step.name}.</b> ${textOf(desk.step.does, desk)}`;
    },
  },
};
