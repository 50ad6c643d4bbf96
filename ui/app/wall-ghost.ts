import { css, html, type TemplateResult } from 'lit';
import { language, wallGhost as texts } from '../../sim/words/en.ts';
import { show } from '../record/guest.ts';
import type { Session } from '../session.ts';
import { choices } from '../stations/compare/choices.ts';
import { beside, forget, haunt, keep, pair } from '../stations/compare/wants.ts';

/** On the wall: what is kept as a ghost, and what is set side by side, by large buttons with a figure each as their key. */

export interface GhostChoice {
  readonly name: string;
  does(): void;
}

/** What there is to choose as things stand now. */
export function ghostChoices(session: Session): readonly GhostChoice[] {
  const { kept, ghost } = session.moment.parts.compare;
  const ofKept = kept
    ? [
        {
          name: ghost ? texts.hideTheGhost : texts.drawTheGhost,
          does: () => session.do(haunt, !session.moment.parts.compare.ghost),
        },
        { name: texts.forgetTheGhost, does: () => session.do(forget) },
      ]
    : [];
  const pairs = choices.flatMap((c) => {
    const name = texts.compare(language.inside(c.name));
    const does = (): void => {
      // Of the bench as it stands when it is pressed.
      const made = c.make(session.moment);
      if (!made) return;
      session.do(pair, c.name, ...made);
      session.do(show, 'compare');
    };
    return c.make(session.moment) ? [{ name, does }] : [];
  });
  return [
    {
      name: kept ? texts.keepThisMomentInstead : texts.keepThisMoment,
      does: () => session.do(keep),
    },
    ...ofKept,
    { name: kept ? texts.ghostAndNow : texts.sideBySide, does: () => session.do(beside) },
    ...pairs,
  ];
}

/** A figure chooses, and the card goes. @returns it was taken */
export function ghostKey(session: Session, key: string, close: () => void): boolean {
  const chosen = ghostChoices(session)[Number(key) - 1];
  if (!/^[1-9]$/.test(key)) return false;
  if (!chosen) return true;
  chosen.does();
  close();
  return true;
}

export function ghostCard(session: Session, close: () => void): TemplateResult {
  return html`<section class="keycard ghostcard" role="dialog" aria-label=${texts.ghostAndCompare}>
    ${ghostChoices(session).map(
      ({ name, does }, i) =>
        html`<button @click=${() => {
          does();
          close();
        }}>${name} <kbd>${i + 1}</kbd></button>`,
    )}
    <button @click=${close}>${texts.close} <kbd>M</kbd></button></section>`;
}

export const ghostCardStyles = css`
  .wall .ghostcard button { min-height: calc(84 * var(--u)); font-size: calc(38 * var(--u)); text-align: left; }
`;
