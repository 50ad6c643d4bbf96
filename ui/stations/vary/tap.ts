import { html, nothing, type TemplateResult } from 'lit';
import { varyTap as words } from '../../../sim/words/en.ts';
import type { Session } from '../../session.ts';
import { varyAsk } from './part.ts';

type Asked = Parameters<typeof varyAsk.does>[1];

/** One tap from a size or a reading to what follows from it. @param name whose, for who hears the page */
export const whatIf = (session: Session, name: string, asked: Asked): TemplateResult =>
  html`<button class="whatif" @click=${() => session.do(varyAsk, asked)}>${words.whatIf(html`<span class="hidden"> ${words.itWereAnother(name)}</span>`)}</button>`;

/** The same from the name of a size itself, where there is no room beside it. */
export const whatIfName = (session: Session, name: string, asked: Asked): TemplateResult =>
  html`<button class="whatif" title=${words.whatIfItWereAnother} @click=${() => session.do(varyAsk, asked)}>${name}<span class="hidden">${words.whatIfItWereAnother2}</span></button>`;

/** What a line of a sheet is among what can be varied, and what is read then. */
const ofLines: Readonly<Record<string, Asked>> = {
  drumNew: { of: 'drum.diameterNew', read: ['torque'] },
  drumMax: { of: 'drumDiameter', read: ['pedalTravel'] },
  drumA: { of: 'drumDiameter', read: ['pedalTravel'] },
  drumB: { of: 'drumDiameter', read: ['pedalTravel'] },
  drumC: { of: 'drumDiameter', read: ['pedalTravel'] },
  largest: { of: 'drumDiameter', read: ['restClearanceMean'] },
  round: { of: 'oval', read: ['torque'] },
  leadToe: { of: 'wear', read: ['pedalTravel'] },
  leadThin: { of: 'wear', read: ['pedalTravel'] },
  leadHeel: { of: 'wear', read: ['pedalTravel'] },
  trailToe: { of: 'wear', read: ['pedalTravel'] },
  trailThin: { of: 'wear', read: ['pedalTravel'] },
  trailHeel: { of: 'wear', read: ['pedalTravel'] },
  leverOff: { of: 'leverOffStop', read: ['restClearanceMean'] },
  tooth: { of: 'tooth', read: ['restClearanceMean'] },
};

/** The tap of a line; none where a brake has no number for it, as for a score or a look. */
export const whatIfOf = (
  session: Session,
  key: string,
  name: string,
): TemplateResult | typeof nothing => {
  const asked = ofLines[key];
  return asked ? whatIf(session, name, asked) : nothing;
};
