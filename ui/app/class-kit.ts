import { css, html, type TemplateResult } from 'lit';
import { appClassKit as texts } from '../../sim/words/en.ts';
import type { Session } from '../session.ts';
import type { StageInput } from '../stage/scene.ts';
import type { Drawing } from '../stage/shapes.ts';
import { bodiesStyles, forcesBeside } from './forces-beside.ts';
import { ghostShapes, keepNow, keptBeside, keptReadings } from './kept.ts';
import { namesStyles, revealNext } from './names-bar.ts';
import { answer, namesBeside, quizStyles } from './names-beside.ts';
import { WordsHere, wordsStyles } from './words-here.ts';

/** What a class asks for beside the brake, names and kept moments: loaded when it is first wanted, or soon after the brake moves. */

const keptStyles = css`
  .kept { padding: 8px 16px 10px; order: -1; }
  .side > .h { order: -2; }
  .writing { order: -1; padding: 8px 16px 10px; }
  .writing p { margin: 0 0 6px; font-size: 15.5px; line-height: 1.3; }
  .writing div { display: grid; grid-template-columns: 1.6fr 1fr; gap: 8px; }
  .writing .btn { min-height: 40px; font-size: 15px; padding: 0 6px; }
  .kept h2 { margin: 0; font-size: 18px; font-weight: 760; }
  .kept p { margin: 2px 0 4px; font-size: 15px; line-height: 1.3; }
  .kept table { width: 100%; border-collapse: collapse; font-size: 15.5px; }
  .kept th, .kept td { text-align: right; padding: 1px 0 1px 10px; border-top: 1px solid var(--rule); font-weight: 720; white-space: nowrap; }
  .kept thead th { font-size: 14px; font-weight: 560; color: var(--ink2); border: 0; }
  .kept tbody th { text-align: left; padding-left: 0; font-weight: 540; white-space: normal; line-height: 1.2; }
  .kept tbody td:nth-child(2) { font-weight: 540; color: var(--ink2); }
  .kept > div { display: grid; grid-template-columns: 1.5fr 1fr 1fr; gap: 8px; margin-top: 8px; }
  .kept .btn { min-height: 38px; font-size: 15px; padding: 0 6px; }
  .kept kbd { font: inherit; border: 1px solid currentcolor; padding: 0 6px; }
  @media (max-width: 900px) { .kept .btn { min-height: 56px; } .kept kbd { display: none; } }
`;

type Drawn = Pick<Drawing, 'shapes' | 'labels'>;

export const classKit = {
  styles: [namesStyles, quizStyles, keptStyles, wordsStyles, bodiesStyles],
  names: namesBeside,
  answer,
  revealNext,
  WordsHere,
  keepNow,
  keptBeside,
  keptReadings,
  forcesBeside,
  /** Over what else lies on the brake. */
  over(session: Session, input: StageInput, under: Drawn | null): Drawn | null {
    const ghost = ghostShapes(session, input);
    return ghost.length > 0
      ? { shapes: [...(under?.shapes ?? []), ...ghost], labels: under?.labels ?? [] }
      : under;
  },
  /** In the row of layers. */
  keepButton: (session: Session): TemplateResult =>
    html`<button class="more" title=${texts.keepThisMomentAsA} @click=${() => keepNow(session)}>${texts.keep}</button>`,
};
