import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { labelWords, lessonsWallList as words } from '../../../sim/words/en.ts';
import type { Lesson } from '../../lessons/format.ts';
import { keptLessons, shipped } from '../../lessons/library.ts';
import { progressOf } from '../../lessons/wants.ts';
import { WALL_PX } from '../../pieces/page-sizes.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import { LessonDesk } from './desk.ts';

/** The lessons on the wall: one of them is marked; a remote marks the next and begins the marked one. */
export class WallLessons extends LitElement {
  static override properties = {
    session: { attribute: false },
    turnKeys: { attribute: false },
    rev: { type: Number },
  };
  declare session: Session;
  /** Opens and closes the card of the wall's keys. */
  declare turnKeys: (() => void) | undefined;
  declare rev: number;

  static override styles = css`
    :host { --u: ${WALL_PX}; position: absolute; inset: 0; z-index: 2; display: flex; flex-direction: column; gap: calc(16 * var(--u)); box-sizing: border-box; padding: calc(26 * var(--u)) calc(34 * var(--u)); background: var(--sheet); font-size: calc(38 * var(--u)); line-height: 1.15; }
    h1 { margin: 0; font-size: calc(56 * var(--u)); font-weight: 800; line-height: 1.05; }
    ol { flex: 1; min-height: 0; overflow-y: auto; list-style: none; margin: 0; padding: calc(4 * var(--u)); columns: 2; column-gap: calc(40 * var(--u)); }
    li { break-inside: avoid; border-top: calc(2 * var(--u)) solid var(--rule); }
    button { font: inherit; color: inherit; background: none; border: 0; border-radius: 0; cursor: pointer; text-align: left; }
    li button { width: 100%; display: grid; grid-template-columns: 1.8em 1fr auto; gap: calc(14 * var(--u)); align-items: center; min-height: calc(84 * var(--u)); padding: calc(8 * var(--u)) calc(14 * var(--u)); font-weight: 640; }
    li b { font-weight: 800; text-align: right; }
    li small { font-size: calc(34 * var(--u)); font-weight: 500; }
    li button:focus, ol:not(:focus-within) [data-next] { background: var(--ink); color: var(--sheet); outline: none; }
    .foot { display: flex; gap: calc(24 * var(--u)); align-items: center; font-size: calc(34 * var(--u)); color: var(--ink2); }
    .foot span { display: flex; gap: calc(14 * var(--u)); align-items: center; }
    .foot span:last-of-type { flex: 1; }
    kbd { font: inherit; font-size: calc(34 * var(--u)); font-weight: 640; border: calc(3 * var(--u)) solid currentcolor; padding: 0 calc(12 * var(--u)); line-height: 1.1; white-space: nowrap; }
  `;

  #buttons(): readonly HTMLButtonElement[] {
    return [...this.renderRoot.querySelectorAll<HTMLButtonElement>('li button')];
  }

  /** The one that is marked: that with the focus, else the next that there is to teach. */
  #marked(): number {
    const all = this.#buttons();
    const { activeElement } = this.renderRoot as ShadowRoot;
    const at = all.indexOf(activeElement as HTMLButtonElement);
    return at < 0 ? all.findIndex((b) => b.hasAttribute('data-next')) : at;
  }

  /** Marks another one, round and round. */
  mark(by: number): void {
    const all = this.#buttons();
    all[(this.#marked() + by + all.length) % all.length]?.focus();
  }

  /** Begins the marked one, or goes on with it. */
  begin(): void {
    this.#buttons()[this.#marked()]?.click();
  }

  /** Begins the lesson of a number. */
  beginNumber(number: number): void {
    this.renderRoot.querySelector<HTMLButtonElement>(`[data-number="${number}"]`)?.click();
  }

  override render() {
    const { session } = this;
    const all = [...shipped, ...keptLessons(session.moment)];
    const far = all.map(({ name, steps }) => {
      const { step, answers } = progressOf(session.moment, name);
      return {
        step,
        over: step >= steps.length,
        begun: step > 0 || answers.some((a) => a !== null),
      };
    });
    // After the last that was taken to its end comes the next.
    const last = far.findLastIndex(({ over }) => over);
    const after = far.findIndex(({ over }, i) => i > last && !over);
    const next = Math.max(after, 0);
    const one = (lesson: Lesson, i: number): TemplateResult => {
      const { step = 0, over = false, begun = false } = far[i] ?? {};
      const { length } = lesson.steps;
      const told = over ? words.taken : begun ? words.atOf(step + 1, length) : '';
      return html`<li><button ?data-next=${i === next} data-number=${lesson.number ?? nothing} @click=${() => deskOf(LessonDesk, session).open(lesson)}><b>${lesson.number ?? ''}</b><span>${lesson.title}</span>${told ? html`<small>${told}</small>` : nothing}</button></li>`;
    };
    return html`<h1>${labelWords.lessons}</h1><ol>${all.map(one)}</ol>
      <div class="foot"><span><kbd>${words.space}</kbd>${words.begin}</span><span><kbd>${words.pageUp}</kbd>${words.another}</span>
      <button aria-label=${words.keys} @click=${this.turnKeys}><kbd>?</kbd></button><button aria-label=${words.leaveTheWall} @click=${() => session.showOnWall(false)}><kbd>${words.esc}</kbd></button></div>`;
  }
}
customElements.define('takeup-wall-lessons', WallLessons);

/** What a key of the list does on the wall. @returns it was taken */
export function wallListKey(list: WallLessons, e: KeyboardEvent, keys: boolean): boolean {
  const { key } = e;
  if (key === 'PageDown' || key === 'ArrowRight') list.begin();
  else if (key === ' ' || key === 'Enter') {
    // A button that has the focus is pressed by itself.
    if ((e.composedPath()[0] as Element).closest('button')) return false;
    list.begin();
  } else if (key === 'PageUp' || key === 'ArrowLeft' || key === 'ArrowDown') list.mark(1);
  else if (key === 'ArrowUp') list.mark(-1);
  else if (keys && /^[1-9]$/.test(key)) list.beginNumber(Number(key));
  else return false;
  return true;
}
