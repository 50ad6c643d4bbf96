import { css, html, LitElement, nothing, svg, type TemplateResult } from 'lit';
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
  html`<svg class="code" viewBox="0 0 ${size} ${size}" shape-rendering="crispEdges" role="img" aria-label="Code with the link of this moment">${svg`<rect width=${size} height=${size} fill="#FFFFFF" /><path d=${path} fill="#000000" />`}</svg>`;

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
      this.said = 'Link copied.';
    } catch {
      this.said = 'The browser does not let the page copy: mark the link and copy it by hand.';
      this.renderRoot.querySelector<HTMLInputElement>('#link')?.select();
    }
  }

  /** What the system shares: the link where there is one, else the file. Null: this browser cannot. */
  get #shares(): ShareData | null {
    if (typeof navigator.share !== 'function') return null;
    const title = `Takeup: ${this.stand.session.brake.title}`;
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
      this.said = 'Handed to the system.';
    } catch (error: unknown) {
      // Left by the reader: nothing to say.
      if (error instanceof DOMException && error.name === 'AbortError') return;
      this.said = 'The system did not take it: copy the link, or save the file.';
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
        <p>It opens this bench just as it stands: brake, wear, tooth, pressure, layers. Nothing is sent anywhere: the link itself holds it all.</p>
        <label class="lab" for="link">Link, ${address.length} letters</label>
        <input id="link" type="text" readonly .value=${address} @focus=${(e: Event) => (e.target as HTMLInputElement).select()} />
        <div class="acts"><button class="main" @click=${() => this.#copy()}>Copy link</button>${shares ? html`<button @click=${() => this.#share(shares)}>Share…</button>` : nothing}</div>
        <p class="said" role="status">${this.#aboutFile ? '' : this.said}</p>
        ${onlyHere(location) ? html`<p class="dim"><b>This page runs on this computer alone</b> (${location.protocol === 'file:' ? 'a file' : location.hostname}). The link and the code open here, not on a phone. For another device save the file and open it there.</p>` : nothing}
      </div>
      ${code ? html`<div>${codePicture(code)}${less ? html`<p class="dim" data-less>The kept moment is not in the code, so that it can be read at once. The link has it.</p>` : nothing}</div>` : html`<p class="dim">Too long for a code that a phone reads at once (${address.length} letters, at most 1 273). Copy the link, or send the file.</p>`}
    </div>`;
  }

  override render() {
    const { address } = this;
    return html`<div class="part"><h3>Link and code</h3>${
      address === undefined
        ? nothing
        : address === null
          ? html`<p>There is too much on the bench for a link (a brake of your own with a long life, say). Send it as a file.</p>`
          : this.#link(address)
    }</div>
      <div class="part"><h3>File</h3><p>The same moment as a file of a few kilobytes, for mail or a memory stick, or where a messenger cuts a long link short. Drop it on the page, or open it here.</p>
        <div class="acts"><button @click=${() => this.#save()}>Save as a file</button>${address === null && this.#shares ? html`<button @click=${() => this.#share(this.#shares as ShareData)}>Share the file…</button>` : nothing}<label class="file">Open a file<input type="file" accept=".json,application/json" aria-label="Open a moment’s file" @click=${(e: Event) => pickInstead(e, JSON_FILE, (file) => this.#take(file))} @change=${(e: Event) => this.#open(e)} /></label></div>
        <p class="said" role="status">${this.#aboutFile || this.address === null ? this.said : ''}</p></div>`;
  }
}
customElements.define('takeup-away-share', ShareWay);
