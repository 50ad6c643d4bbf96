import { css, html, LitElement } from 'lit';
import { appDrop as words } from '../../sim/words/en.ts';
import { TAKEN, takeFile } from '../away/share/dropped.ts';
import type { Home } from '../record/home.ts';
import type { Session } from '../session.ts';

/** Files dragged over the page: a hint while they are, and where they are let go they are taken. */
export class DropHint extends LitElement {
  static override properties = { over: { type: Boolean, reflect: true } };
  declare over: boolean;
  readonly #session: Session;
  readonly #home: Home;

  constructor(session: Session, home: Home) {
    super();
    this.#session = session;
    this.#home = home;
    this.over = false;
  }

  static override styles = css`
    :host { display: none; }
    :host([over]) { display: grid; place-items: center; position: fixed; inset: 0; z-index: 9; pointer-events: none; background: color-mix(in srgb, var(--ink) 45%, transparent); }
    div { background: var(--sheet); color: var(--ink); border: 6px dashed var(--ink); padding: 26px 34px; max-width: 620px; margin: 16px; font-size: 19px; line-height: 1.36; }
    b { display: block; font-size: 30px; font-weight: 800; line-height: 1.2; }
  `;

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('dragenter', this.#drag);
    window.addEventListener('dragover', this.#drag);
    window.addEventListener('dragleave', this.#leave);
    window.addEventListener('drop', this.#drop);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('dragenter', this.#drag);
    window.removeEventListener('dragover', this.#drag);
    window.removeEventListener('dragleave', this.#leave);
    window.removeEventListener('drop', this.#drop);
  }

  /** Text that is dragged about in a field is no file. */
  #drag = (e: DragEvent): void => {
    if (!e.dataTransfer?.types.includes('Files')) return;
    e.preventDefault();
    e.dataTransfer.dropEffect = 'copy';
    this.over = true;
  };

  /** Left for good, not from one thing of the page to the next. */
  #leave = (e: DragEvent): void => {
    if (e.relatedTarget === null) this.over = false;
  };

  #drop = (e: DragEvent): void => {
    this.over = false;
    const files = [...(e.dataTransfer?.files ?? [])];
    if (files.length === 0) return;
    e.preventDefault();
    this.take(files);
  };

  /** Takes the first of them. */
  take(files: readonly File[]): void {
    const [file] = files;
    if (!file) return;
    takeFile(this.#session, this.#home, file, files.length - 1).catch((error: unknown) => {
      this.#home.tell(words.wasNotOpenedNothingElse(file.name, String(error)));
    });
  }

  override render() {
    return html`<div><b>${words.letGoToOpenIt}</b>${TAKEN}</div>`;
  }
}
customElements.define('takeup-drop', DropHint);
