import { css, html } from 'lit';
import { language, apart as words } from '../../../sim/words/en.ts';
import { nameOf } from '../../stage/part-names.ts';
import { deskOf, type Station } from '../station.ts';
import { ApartDesk } from './desk.ts';
import { drawApart } from './draw.ts';
import { MOST_PARTS } from './part.ts';
import { apartControls, apartSide, fitPart, nextPart, table } from './side.ts';
import { fitTo } from './wants.ts';

/** The adjuster on the bench: taken out of the brake and apart, seen from both sides, put together in order. */

const styles = css`
  .ap-o, .ap-w { padding: 10px 16px 12px; }
  .ap-o h2, .ap-w h2 { margin: 0 0 4px; font-size: 18px; font-weight: 760; }
  .ap-l { list-style: none; margin: 0; padding: 0; }
  .ap-l li { border-top: 1px solid var(--rule); }
  .ap-l button { display: grid; grid-template-columns: 26px minmax(0, 1fr) auto; gap: 8px; align-items: center; width: 100%; min-height: 34px; font-size: 15px; line-height: 1.2; }
  .ap-l i { font-style: normal; font-weight: 700; width: 24px; height: 24px; line-height: 21px; border: 2px solid var(--ink); border-radius: 50%; text-align: center; font-size: 13.5px; }
  .ap-l .on i { background: var(--ink); color: var(--sheet); }
  .ap-l span { color: var(--ink2); }
  .ap-l b { color: var(--ink); font-weight: 680; }
  .ap-l em { font-style: normal; font-weight: 640; }
  .ap-l [aria-current] { background: color-mix(in srgb, var(--ink) 8%, var(--sheet)); }
  .ap-s { display: grid; grid-template-columns: 1fr 1fr; gap: 8px; }
  .ap-s .btn, .ap-w > .btn { min-height: 40px; font-size: 15px; padding: 2px 6px; text-align: center; line-height: 1.1; }
  .ap-w > .btn { width: 100%; }
  .ap-t { width: 100%; border-collapse: collapse; font-size: 15.5px; margin-top: 8px; }
  .ap-t th, .ap-t td { text-align: right; padding: 2px 0 2px 10px; border-top: 1px solid var(--rule); font-weight: 720; white-space: nowrap; }
  .ap-t tr > :first-child { text-align: left; padding-left: 0; font-weight: 540; white-space: normal; line-height: 1.2; }
  .ap-t thead th { font-size: 14px; font-weight: 560; color: var(--ink2); border: 0; vertical-align: bottom; }
  .ap-w p { margin: 6px 0; font-size: 16px; font-weight: 620; line-height: 1.3; }
  .ap-k button { font-size: 14px; line-height: 1.1; padding: 2px 4px; min-height: 48px; }
  .wall .ap-t, .wall .ap-t thead th { font-size: calc(34 * var(--u)); line-height: 1.1; }
  @media (max-width: 900px) { .ap-l button, .ap-s .btn, .ap-w > .btn, .ap-k button { min-height: 56px; } }
`;

export const apart: Station = {
  id: 'apart',
  styles,
  layers: [],
  unnamed: words.noNamesOfTheBrake,
  draws: (session, stage) => drawApart(session, deskOf(ApartDesk, session), stage),
  takes: {
    fingers: 1,
    down: (session, _at, pointed) => {
      if (pointed) fitPart(deskOf(ApartDesk, session), pointed.part);
      return pointed !== null;
    },
    move: () => undefined,
    up: () => undefined,
  },
  side: (page) => apartSide(page, deskOf(ApartDesk, page.session)),
  controls: (page) => apartControls(page, deskOf(ApartDesk, page.session)),
  wall: {
    readings: [],
    says: ({ session }) => {
      const desk = deskOf(ApartDesk, session);
      const next = nextPart(desk);
      if (desk.part.without !== 'nothing') return table(desk, true);
      return html`<b>${next ? words.next(desk.fitted + 1, language.inside(nameOf(next))) : words.theAdjusterTogether}</b><p>${desk.order.map((p, i) => `${i + 1} ${language.inside(nameOf(p))}`).join(' · ')}</p>`;
    },
    actions: ({ session }) => {
      const desk = deskOf(ApartDesk, session);
      const end = desk.fitted >= desk.order.length;
      return [
        {
          name: end ? words.takeItApart : words.nextStep,
          does: () => session.do(fitTo, end ? 0 : desk.fitted + 1),
        },
        { name: words.togetherName, does: () => session.do(fitTo, MOST_PARTS) },
      ];
    },
  },
};
