import { html, nothing } from 'lit';
import { sizeAt } from '../../../sim/index.ts';
import { sceneOfOwn } from '../../record/derive.ts';
import { deskOf, type Station } from '../station.ts';
import { OwnDesk } from './desk.ts';
import { dimension } from './dimension.ts';
import { ownGroups } from './measures.ts';
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
  extra: (session, input) => {
    const { changed, own } = deskOf(OwnDesk, session);
    const field = ownGroups.flatMap((g) => g.fields).find((f) => f.key === changed?.key);
    if (!changed || !own || !field) return { shapes: [], labels: [] };
    return dimension(input, changed, sizeAt(sceneOfOwn(own), field.key), field.digits);
  },
};
