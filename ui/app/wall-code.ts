import { css, html, LitElement } from 'lit';
import { appWallCode as words } from '../../sim/words/en.ts';
import { codeOf } from '../away/share/code.ts';
import { addressOf, forCode } from '../away/share/moment.ts';
import { codePicture, onlyHere } from '../away/share/share-way.ts';
import { openModal, stillOpen } from '../pieces/modal.ts';
import { NARROW, WALL_PX } from '../pieces/page-sizes.ts';
import type { Session } from '../session.ts';

/** The moment on the wall as a code for the class's phones, as large as the wall has room, its address under it. */

/** A longer address nobody types: it would be four lines and more under the code. */
const TYPED = 180;

export class WallCode extends LitElement {
  static override properties = { address: { state: true } };
  /** Null where it is too much for a link. */
  declare address: string | null;

  constructor() {
    super();
    this.address = null;
  }

  static override styles = css`
    :host { --u: ${WALL_PX}; }
    dialog { border: 0; padding: calc(24 * var(--u)) calc(40 * var(--u)); margin: 0; width: 100vw; height: 100vh; max-width: none; max-height: none; box-sizing: border-box; background: var(--sheet); color: var(--ink); font: 560 calc(36 * var(--u)) / 1.16 'Encode Sans Variable', 'Encode Sans', sans-serif; }
    dialog[open] { display: grid; grid-template-rows: auto minmax(0, 1fr) auto; gap: calc(16 * var(--u)); }
    header { display: flex; justify-content: space-between; align-items: center; }
    h2 { margin: 0; font-size: calc(52 * var(--u)); font-weight: 760; }
    button { font: inherit; font-weight: 640; color: inherit; background: none; border: calc(4 * var(--u)) solid var(--ink); padding: calc(6 * var(--u)) calc(22 * var(--u)); cursor: pointer; }
    button:focus-visible { outline: 4px solid var(--trail); outline-offset: 4px; }
    .code { display: block; margin: 0 auto; height: 100%; max-width: 100%; }
    .none { align-self: center; text-align: center; margin: 0 auto; max-width: 30em; }
    footer { text-align: center; }
    footer p { margin: 0; }
    .address { overflow-wrap: anywhere; font-weight: 700; user-select: all; }
    @media ${NARROW} { :host { --u: 0.55px; } }
  `;

  /** What the phones open is the desk, not a wall of their own. */
  async open(session: Session): Promise<void> {
    const { moment } = session;
    this.address = await addressOf(forCode({ ...moment, view: { ...moment.view, wall: false } }));
    await this.updateComplete;
    openModal(this.renderRoot.querySelector('dialog'));
  }

  #close = (): void => this.renderRoot.querySelector('dialog')?.close();

  /** The key that opened it closes it; the wall behind keeps still. */
  #key = (e: KeyboardEvent): void => {
    if (!stillOpen(e)) return;
    e.stopPropagation();
    if (e.key.toLowerCase() !== 'q' || e.ctrlKey || e.metaKey || e.altKey || e.repeat) return;
    this.#close();
    e.preventDefault();
  };

  override render() {
    const { address } = this;
    const code = address === null ? null : codeOf(address);
    const [page = '', rest = ''] = (address ?? '').split(/(?=[?#])(.*)/s);
    return html`<dialog aria-label=${words.codeForPhones} @keydown=${this.#key} @close=${() => this.remove()}>
      <header><h2>${words.thisMomentOnYourPhone}</h2><button @click=${this.#close}>${words.closeQ}</button></header>
      ${code ? codePicture(code) : html`<p class="none">${words.thereIsTooMuchOn}</p>`}
      <footer>
        ${address === null ? '' : html`<p class="address">${address.length > TYPED ? page : address}</p>`}
        ${code && address !== null && address.length > TYPED ? html`<p>${words.thatIsTheBenchThis(rest.length)}</p>` : ''}
        ${onlyHere(location) ? html`<p>${words.thisPageRunsOnThis}</p>` : ''}
      </footer></dialog>`;
  }
}
customElements.define('takeup-wall-code', WallCode);

/** Shows the code over the wall; it leaves the page when it is closed. */
export async function showCode(
  root: DocumentFragment | HTMLElement,
  session: Session,
): Promise<void> {
  if (root.querySelector('takeup-wall-code')) return;
  const code = document.createElement('takeup-wall-code') as WallCode;
  root.append(code);
  await code.open(session);
}
