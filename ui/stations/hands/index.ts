import { html } from 'lit';
import type { Instant } from '../../../sim/index.ts';
import { hands as texts } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import type { Session } from '../../session.ts';
import { deskOf, type Station } from '../station.ts';
import { HandsDesk } from './desk.ts';
import { holdable, LARGE, largened } from './places.ts';
import { handsControls, handsSide } from './side.ts';
import { handStage } from './stage.ts';
import { handsStyles } from './styles.ts';
import { rows, tells } from './words.ts';

/** What needs the drum, or the gaps to it. */
const OF_DRUM = ['drum', 'fan', 'comb', 'ghost', 'turning'];

/** The moment as it is drawn: the toothed lever off its teeth by as much as a hand has it. */
function drawn(session: Session, now = session.instant()): Instant {
  const desk = deskOf(HandsDesk, session);
  const { lever } = desk;
  const held = lever
    ? { ...now, lever: { phase: now.lever?.phase ?? now.tooth, lift: lever.lift } }
    : now;
  return session.moment.hands.large ? largened(held, desk.home) : held;
}

/** Hands in the brake: in the place of Apply, Park or Drum off while they are open. */
export const hands: Station = {
  id: 'apply',
  styles: handsStyles,
  side: (page) => handsSide(page, deskOf(HandsDesk, page.session)),
  controls: (page) => handsControls(page, deskOf(HandsDesk, page.session)),
  roles: 'none',
  caption: (session) =>
    session.moment.hands.large
      ? texts.shoesMovementsAndGaps(LARGE)
      : session.moment.hands.drumOff
        ? texts.drumOffTrueScalePress
        : texts.trueScalePressAPart,
  // Values of the comb would lie under the hand.
  without: (session) =>
    session.moment.hands.drumOff
      ? OF_DRUM
      : (deskOf(HandsDesk, session).drum?.slid ?? 0) > 0
        ? ['peak', 'drum']
        : ['peak'],
  acts: (session, press) => deskOf(HandsDesk, session).acts(press),
  agreement: (session) => deskOf(HandsDesk, session).agreement(),
  drawn,
  takes: {
    // Two hands.
    fingers: 2,
    down(session, at, pointed, finger) {
      const desk = deskOf(HandsDesk, session);
      const part = pointed && holdable(pointed);
      if (!part || !desk.parts.includes(part)) return false;
      if (finger > 0) return desk.takeSecond(part, drawn(session), at);
      desk.takeAt(part, drawn(session), at);
      return true;
    },
    move(session, at, finger) {
      const desk = deskOf(HandsDesk, session);
      if (finger > 0) desk.followSecond(drawn(session), at);
      else desk.follow(drawn(session), at);
    },
    up: (session, finger) => deskOf(HandsDesk, session).lift(finger),
  },
  extra: (session, input) => handStage(deskOf(HandsDesk, session), input),
  wall: {
    readings: ['strutForce', 'restClearanceMean', 'clearanceMean'],
    says: ({ session, instant }) => {
      const desk = deskOf(HandsDesk, session);
      const { part, hold } = desk.record;
      return hold
        ? html`<b>${rows[part][0]}: ${number(desk.force(instant), 0)} N.</b> ${tells[part]}`
        : tells[part];
    },
  },
};
