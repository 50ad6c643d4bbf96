import { html, nothing, type TemplateResult } from 'lit';
import type { Session } from '../../session.ts';
import { deskOf, type PageView, type Station } from '../station.ts';
import { varyControls } from './controls.ts';
import './curve.ts';
import { language, vary as words } from '../../../sim/words/en.ts';
import { short, VaryDesk } from './desk.ts';
import { seekControls } from './seek-controls.ts';
import { SeekDesk } from './seek-desk.ts';
import { outcome, seekSide } from './seek-side.ts';
import { varySide } from './side.ts';
import { varyStyles } from './styles.ts';

/** What if: one thing of the brake varied over a range, what follows as curves, and the brake of any point on the stage. */

/** What draws maps is loaded when the first is asked for. */
function needMap(session: Session): void {
  if (customElements.get('takeup-map')) return;
  import('./map-view.ts').then(
    () => session.changed(),
    () => session.say(words.whatDrawsMapsCouldNot),
  );
}

function drawn(session: Session, desk: VaryDesk): TemplateResult {
  if (!desk.up)
    return html`<takeup-curve .session=${session} .rev=${session.revision}></takeup-curve>`;
  needMap(session);
  return html`<takeup-map .session=${session} .rev=${session.revision}></takeup-map>`;
}

const turnedRound = (session: Session): boolean => session.moment.parts.vary.seek.on;

function region({ session }: PageView): TemplateResult {
  if (!customElements.get('takeup-region'))
    import('./region-view.ts').then(
      () => session.changed(),
      () => session.say(words.whatDrawsRegionsCouldNot),
    );
  return html`<takeup-region .session=${session} .rev=${session.revision}></takeup-region>`;
}

const picture = (page: PageView): TemplateResult =>
  turnedRound(page.session) ? region(page) : curves(page, deskOf(VaryDesk, page.session));

const curves = ({ session }: PageView, desk: VaryDesk): TemplateResult =>
  html`${drawn(session, desk)}${desk.busy ? html`<button class="btn vary-stop" @click=${() => desk.stop()}>${words.stopWorkingItOut}</button>` : nothing}${desk.trouble ? html`<p role="alert">${words.theCurvesBrokeOff(desk.trouble)}</p>` : nothing}`;

/** The second quantity of a map's point. */
function second(session: Session): string {
  const { pickedUp, up } = deskOf(VaryDesk, session);
  return up && pickedUp !== null
    ? `, ${language.inside(up.name)} ${short(pickedUp)}${up.unit ? ` ${up.unit}` : ''}`
    : '';
}

const seekCaption = (session: Session): string => {
  const { free, picked } = deskOf(SeekDesk, session);
  const { bar, cable } = session.moment.parts.vary;
  const pressed = `${short(bar)} bar${cable > 0 ? words.cableN(short(cable)) : ''}`;
  const put = picked?.map((x, k) => {
    const q = free[k]?.quantity;
    return `${q?.name ?? ''} ${short(x)}${q?.unit ? ` ${q.unit}` : ''}`;
  });
  return `${put ? put.join(', ') : words.asItIs}, ${pressed}`;
};

export const vary: Station = {
  id: 'vary',
  styles: varyStyles,
  beside: { wide: 0.58, middle: 0.42 },
  besideIs: words.curves,
  phoneStage: false,
  side: (page) => {
    const { session } = page;
    const turned = turnedRound(session);
    const pic =
      page.size === 'narrow'
        ? html`<section class="blk vary-pic" aria-label=${turned ? words.region : words.curves}>${picture(page)}</section>`
        : nothing;
    const side = turned
      ? seekSide(page, deskOf(SeekDesk, session))
      : varySide(page, deskOf(VaryDesk, session));
    return html`${pic}${side}`;
  },
  controls: (page) =>
    turnedRound(page.session)
      ? seekControls(page, deskOf(SeekDesk, page.session))
      : varyControls(page, deskOf(VaryDesk, page.session)),
  caption: (session) => {
    if (turnedRound(session)) return seekCaption(session);
    const { of, picked, part } = deskOf(VaryDesk, session);
    const pressed = `${short(part.bar)} bar${part.cable > 0 ? words.cableN(short(part.cable)) : ''}`;
    return picked === null
      ? words.asItIs2(pressed)
      : `${of.name} ${short(picked)}${of.unit ? ` ${of.unit}` : ''}${second(session)}, ${pressed}`;
  },
  over: (page) =>
    page.size === 'narrow' ? html`` : html`<div class="vary-over beside">${picture(page)}</div>`,
  shown: (session) =>
    turnedRound(session) ? deskOf(SeekDesk, session).instant : deskOf(VaryDesk, session).instant,
  // A map and a region have words too small for a wall: there the brake of the point stands.
  wallOver: ({ session }) =>
    turnedRound(session) || deskOf(VaryDesk, session).up
      ? null
      : html`<takeup-curve .session=${session} .rev=${session.revision}></takeup-curve>`,
  wall: {
    readings: ['brakeFactor', 'torque', 'clearanceMean'],
    says: ({ session }) => {
      if (turnedRound(session)) return outcome(deskOf(SeekDesk, session));
      const desk = deskOf(VaryDesk, session);
      const { of } = desk;
      return `${of.name} ${short(desk.at)}${of.unit ? ` ${of.unit}` : ''}${desk.picked === null ? words.asItIs3 : words.asItIs4(short(of.value))}.`;
    },
  },
};
