import { css, html, LitElement, nothing, svg, type TemplateResult } from 'lit';
import { awayShareShareWay as words } from '../../../sim/words/en.ts';
import { NARROW } from '../../pieces/page-sizes.ts';
import { pickInstead } from '../save.ts';
import type { Stand, WayElement } from '../stand.ts';
import { wayStyles } from '../way-styles.ts';
import { type Code, codeOf } from './code.ts';
import {
  addressOf,
  forCode,
  JSON_FILE,
  momentBlob,
  momentName,
  openMoment,
  saveMoment,
} from './moment.ts';

/** An address that only this computer knows: no phone can follow it. */
export const onlyHere = ({
  protocol,
  hostname,
}: Pick<Location, 'protocol' | 'hostname'>): boolean =>
  protocol === 'file:' || /^(localhost|127\.|\[::1\]$)/.test(hostname);

/** A code as a picture, always dark on light: cameras want it so. */
export const codePicture = ({ size, path }: Code): TemplateResult =>
  html`<svg class="code" viewBox="0 0 ${size} ${size}" shape-rendering="crispEdges" role="img" aria-label=${words.codeWithTheLinkOf}>${svg`<rect width=${size} height=${size} fill="#FFFFFF" /><path d=${path} fill="#000000" />`}</svg>`;

/** Link, code, the system's own sharing, file: this moment of the bench for somebody else. */
export class ShareWay extends LitElement implements WayElement {
  static override properties = {
    stand: { attribute: false },
    address: { state: true },
    coded: { state: true },
    said: { state: true },
  };
  declare stand: Stand;
  /** Undefined until it is made; null where it is too much for a link. */
  declare address: string | null | undefined;
  /** The address in the code: without a kept moment, which would double its modules. */
  declare coded: string | null;
  declare said: string;

  constructor() {
    super();
    this.said = '';
    this.address = undefined;
    this.coded = null;
  }

  static override styles = [
    wayStyles,
    css`
      .link { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 18px; align-items: start; }
      .code { width: min(300px, 100%); border: 2px solid var(--ink); display: block; }
      @media ${NARROW} { .link { grid-template-columns: 1fr; } .code { width: 100%; max-width: 340px; } }
    `,
  ];

  override async firstUpdated(): Promise<void> {
    const { moment } = this.stand.session;
    [this.address, this.coded] = await Promise.all([addressOf(moment), addressOf(forCode(moment))]);
  }

  async #copy(): Promise<void> {
    this.#aboutFile = false;
    try {
      await navigator.clipboard.writeText(this.address ?? '');
      this.said = words.linkCopied;
    } catch {
      this.said = words.theBrowserDoesNotLet;
      this.renderRoot.querySelector<HTMLInputElement>('#link')?.select();
    }
  }

  /** What the system shares: the link where there is one, else the file. Null: this browser cannot. */
  get #shares(): ShareData | null {
    if (typeof navigator.share !== 'function') return null;
    const title = words.title(this.stand.session.brake.title);
    if (this.address) return { title, url: this.address };
    const file = new File([momentBlob(this.stand.session)], momentName(this.stand.session), {
      type: 'application/json',
    });
    const data = { title, files: [file] };
    return navigator.canShare?.(data) ? data : null;
  }

  /** What is said stands by the button that it answers: on a phone the other part is out of sight. */
  #aboutFile = false;

  async #share(data: ShareData): Promise<void> {
    this.#aboutFile = data.url === undefined;
    try {
      await navigator.share(data);
      this.said = words.handedToTheSystem;
    } catch (error: unknown) {
      // Left by the reader: nothing to say.
      if (error instanceof DOMException && error.name === 'AbortError') return;
      this.said = words.theSystemDidNotTake;
    }
  }

  async #save(): Promise<void> {
    this.#aboutFile = true;
    this.said = await saveMoment(this.stand.session);
  }

  async #open(e: Event): Promise<void> {
    const input = e.target as HTMLInputElement;
    const file = input.files?.[0];
    input.value = '';
    if (file) await this.#take(file);
  }

  async #take(file: File): Promise<void> {
    const { session, home } = this.stand;
    await openMoment(session, home, file);
    // What came of it stands on the page behind.
    this.dispatchEvent(new Event('leave', { bubbles: true, composed: true }));
  }

  #link(address: string): TemplateResult {
    const code = codeOf(this.coded ?? address);
    const less = this.coded !== null && this.coded !== address;
    const shares = this.#shares;
    return html`<div class="link"><div>
        <p>${words.itOpensThisBenchJust}</p>
        <label class="lab" for="link">${words.linkLetters(address.length)}</label>
        <input id="link" type="text" readonly .value=${address} @focus=${(e: Event) => (e.target as HTMLInputElement).select()} />
        <div class="acts"><button class="main" @click=${() => this.#copy()}>${words.copyLink}</button>${shares ? html`<button @click=${() => this.#share(shares)}>${words.share}</button>` : nothing}</div>
        <p class="said" role="status">${this.#aboutFile ? '' : this.said}</p>
        ${onlyHere(location) ? html`<p class="dim"><b>${words.thisPageRunsOnThis}</b> ${words.theLinkAndTheCode(location.protocol === 'file:' ? words.aFile : location.hostname)}</p>` : nothing}
      </div>
      ${code ? html`<div>${codePicture(code)}${less ? html`<p class="dim" data-less>${words.theKeptMomentIsNot}</p>` : nothing}</div>` : html`<p class="dim">${words.tooLongForACode(address.length)}</p>`}
    </div>`;
  }

  override render() {
    const { address } = this;
    return html`<div class="part"><h3>${words.linkAndCode}</h3>${
      address === undefined
        ? nothing
        : address === null
          ? html`<p>${words.thereIsTooMuchOn}</p>`
          : this.#link(address)
    }</div>
      <div class="part"><h3>${words.file}</h3><p>${words.theSameMomentAsA}</p>
        <div class="acts"><button @click=${() => this.#save()}>${words.saveAsAFile}</button>${address === null && this.#shares ? html`<button @click=${() => this.#share(this.#shares as ShareData)}>${words.shareTheFile}</button>` : nothing}<label class="file">${words.openAFile}<input type="file" accept=".json,application/json" aria-label=${words.openAMomentsFile} @click=${(e: Event) => pickInstead(e, JSON_FILE, (file) => this.#take(file))} @change=${(e: Event) => this.#open(e)} /></label></div>
        <p class="said" role="status">${this.#aboutFile || this.address === null ? this.said : ''}</p></div>`;
  }
}
customElements.define('takeup-away-share', ShareWay);
