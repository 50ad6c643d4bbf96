import { html } from 'lit';
import type { Station } from '../station.ts';
import './page.ts';
import { ownPageStyles } from './styles.ts';

/** My brake: a brake of one's own, from the nearest teaching brake and what was measured at home. */
export const own: Station = {
  id: 'own',
  name: 'My brake',
  key: '8',
  layers: {
    fan: false,
    comb: false,
    forces: false,
    names: false,
    ghost: false,
    heat: false,
    loupe: false,
  },
  styles: ownPageStyles,
  side: ({ session, size }) => html`<takeup-own .session=${session} .size=${size}></takeup-own>`,
  controls: () => html``,
};
