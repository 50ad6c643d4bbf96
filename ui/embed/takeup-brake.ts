import { embedLabel } from '../../sim/words/embed.ts';

/**
 * `<takeup-brake>`: places the embedded view (embed.html) in a page of somebody else. It stands alone: a page that lets
 * in scripts of its own site, and frames of the bench's, needs nothing more.
 *
 * - `bench`: address of the folder that the bench is served from. Where left out: where this script is from.
 * - `moment`: a link of the bench as it was copied, or what stands behind its question mark.
 * - `station`, `brake`, `state`: as in such a link, each by itself.
 * - `controls`: `none`, or some of `pedal,drum,readings,names,zoom,link`.
 * - `view`: `sheet` or `board`.
 * - `lang`: `en` or `de`, the language that it speaks.
 * - `label`: what the frame is called for who hears the page.
 */

const passed = ['station', 'brake', 'state', 'controls', 'view', 'lang'] as const;

/** Node, where a page may be made beforehand, knows no elements. */
const Base = (globalThis.HTMLElement ?? class {}) as typeof HTMLElement;

/** Address of the embedded view that an element asks for. */
export function embedAddress(
  attribute: (name: string) => string | null,
  script: string = import.meta.url,
): string {
  const bench = attribute('bench');
  const folder = new URL(bench ?? './', bench === null ? script : document.baseURI);
  const address = new URL('embed.html', folder.href.endsWith('/') ? folder : `${folder.href}/`);
  const moment = attribute('moment');
  if (moment !== null) {
    const link = new URL(moment, address);
    const from = link.searchParams;
    for (const name of ['station', 'brake', 'state', 'more']) {
      const value = from.get(name);
      if (value !== null) address.searchParams.set(name, value);
    }
    address.hash = link.hash;
  }
  for (const name of passed) {
    const value = attribute(name);
    if (value !== null) address.searchParams.set(name, value);
  }
  return address.href;
}

export class TakeupBrake extends Base {
  static readonly observedAttributes = ['bench', 'moment', 'label', ...passed];
  #frame: HTMLIFrameElement | null = null;

  connectedCallback(): void {
    if (this.#frame) return;
    const root = this.attachShadow({ mode: 'open' });
    const rules = new CSSStyleSheet();
    rules.replaceSync(
      ':host { display: block; aspect-ratio: 4 / 3; min-height: 240px } iframe { display: block; width: 100%; height: 100%; border: 0 }',
    );
    root.adoptedStyleSheets = [rules];
    const frame = document.createElement('iframe');
    // Scripts of the bench's own site, and its link in a new window; nothing else of what a page can do.
    frame.setAttribute('sandbox', 'allow-scripts allow-same-origin allow-popups');
    frame.setAttribute('allow', '');
    frame.loading = 'lazy';
    frame.referrerPolicy = 'no-referrer';
    this.#frame = frame;
    this.#show();
    root.append(frame);
  }

  attributeChangedCallback(): void {
    if (this.#frame) this.#show();
  }

  #show(): void {
    const frame = this.#frame;
    if (!frame) return;
    const language = this.getAttribute('lang') === 'de' ? 'de' : 'en';
    frame.title = this.getAttribute('label') ?? embedLabel[language];
    const address = embedAddress((name) => this.getAttribute(name));
    if (frame.src !== address) frame.src = address;
  }
}

if (globalThis.customElements && !customElements.get('takeup-brake')) {
  customElements.define('takeup-brake', TakeupBrake);
}
