import { html } from 'lit';
import type { Station } from '../station.ts';
import './page.ts';

/** My brake: a brake of one's own, from the nearest teaching brake and what was measured at home. */
export const own: Station = {
  id: 'own',
  side: ({ session, size }) => html`<takeup-own .session=${session} .size=${size}></takeup-own>`,
  controls: () => html``,
};
