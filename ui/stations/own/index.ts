import { html, nothing } from 'lit';
import { deskOf, type Station } from '../station.ts';
import './page.ts';
import { PhotoDesk } from './photo/desk.ts';
import './photo/picture.ts';
import './photo/side.ts';
import { ownPageStyles } from './styles.ts';

/** My brake: a brake of one's own, from the nearest teaching brake, what was measured at home, and a picture. */
export const own: Station = {
  id: 'own',
  styles: ownPageStyles,
  side: ({ session, size }) =>
    deskOf(PhotoDesk, session).point
      ? html`<takeup-photo-side .session=${session}></takeup-photo-side>`
      : html`<takeup-own .session=${session} .size=${size}></takeup-own>`,
  over: ({ session }) =>
    deskOf(PhotoDesk, session).point
      ? html`<takeup-photo .session=${session}></takeup-photo>`
      : html`${nothing}`,
  controls: () => html``,
};
