import { css, html, LitElement } from 'lit';
import { lessonsKeysCard as words } from '../../../sim/words/en.ts';
import type { Session } from '../../session.ts';
import { keysTold } from './keys.ts';
import { presenterKeys } from './part.ts';

/** The keys of a lesson, told where they are asked for, and switched off. */
export class LessonKeys extends LitElement {
  static override properties = { session: { attribute: false }, rev: { type: Number } };
  declare session: Session;
  declare rev: number;

  static override styles = css`
    :host { display: block; font-size: 15px; line-height: 1.3; }
    summary { cursor: pointer; font-weight: 620; min-height: 32px; }
    summary:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
    dl { margin: 0; }
    dl div { display: grid; grid-template-columns: 8.6em 1fr; gap: 10px; border-top: 1px solid var(--rule); padding: 3px 0; }
    dt { font-weight: 680; }
    dd { margin: 0; color: var(--ink2); }
    label { display: flex; gap: 10px; align-items: center; min-height: 40px; font-weight: 600; border-top: 1px solid var(--rule); }
    input { width: 22px; height: 22px; margin: 0; accent-color: var(--ink); }
  `;

  /** Opens or closes the list. */
  toggle(): void {
    const details = this.renderRoot.querySelector('details');
    if (details) details.open = !details.open;
  }

  override render() {
    const { keys } = this.session.moment.parts.lessons;
    return html`<details><summary>${words.keys}</summary>
      <dl>${keysTold.map(([key, does]) => html`<div><dt>${key}</dt><dd>${does}</dd></div>`)}</dl>
      <label><input type="checkbox" .checked=${keys} @change=${(e: Event) => this.session.do(presenterKeys, (e.target as HTMLInputElement).checked)} />${words.keysOfOneLetterWork}</label></details>`;
  }
}
customElements.define('takeup-lesson-keys', LessonKeys);
