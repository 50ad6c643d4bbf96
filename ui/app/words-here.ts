import { css, html, nothing, type TemplateResult } from 'lit';
import { appWordsHere as said } from '../../sim/words/en.ts';
import { hasPairs, type Land, named, type Term, wordsIn } from '../glossary.ts';

/**
 * Words of the trade where they stand: underlined in the texts beside the stage, and told by a tap; for
 * keys, all that stand there in one list (d). Which of two countries' words comes first is a habit of this
 * device, not of the brake on the bench: it stands in the browser's storage, not in the record.
 */
const KEY = 'takeup-terms';
/** Texts are looked through this often, ms. */
const EVERY = 700;

/** What holds sentences beside the stage; figures, lists and buttons are left alone. */
const SENTENCES = '.side .h p, .side .try, .side .why, .side .note, .side p';

const store = (): Storage | null => {
  try {
    return localStorage;
  } catch {
    return null;
  }
};

export class WordsHere {
  #at = 0;
  #found: readonly Term[] = [];
  #ranges: readonly { readonly range: Range; readonly term: Term }[] = [];
  /** The word that was tapped in a text. */
  #told: Term | null = null;
  #list = false;
  #root: ParentNode | null = null;
  readonly #changed: () => void;

  constructor(changed: () => void) {
    this.#changed = changed;
  }

  get first(): Land {
    return store()?.getItem(KEY) === 'American' ? 'American' : 'British';
  }
  set first(land: Land) {
    try {
      store()?.setItem(KEY, land);
    } catch {
      // A storage that is full: the other order for now, that one after a reload.
    }
    this.#changed();
  }

  /** Looks through the texts that stand there now, once in a while. */
  #look(root: ParentNode): void {
    const now = performance.now();
    if (now - this.#at < EVERY) return;
    this.#at = now;
    if (this.#root !== root) {
      this.#root = root;
      root.addEventListener('click', this.#tap as EventListener);
      // Told by a tap, the card has no focus of its own.
      document.addEventListener('keydown', this.#key, true);
    }
    const ranges: { range: Range; term: Term }[] = [];
    const seen = new Set<Term>();
    for (const e of root.querySelectorAll(SENTENCES)) {
      if (e.closest('.wd')) continue;
      const walker = document.createTreeWalker(e, NodeFilter.SHOW_TEXT);
      for (let node = walker.nextNode(); node; node = walker.nextNode()) {
        if (node.parentElement?.closest('button, select, summary')) continue;
        for (const { at, length, term } of wordsIn(node.textContent ?? '')) {
          if (seen.has(term)) continue;
          seen.add(term);
          const range = document.createRange();
          range.setStart(node, at);
          range.setEnd(node, at + length);
          ranges.push({ range, term });
        }
      }
    }
    this.#ranges = ranges;
    this.#found = [...seen];
    // Browsers without it have the list alone.
    if ('highlights' in CSS)
      CSS.highlights.set('trade', new Highlight(...ranges.map((r) => r.range)));
  }

  #tap = (e: MouseEvent): void => {
    // What lies over a word, such as a button that stays while the words scroll under it, is what was tapped.
    const under = e.composedPath();
    const hit = this.#ranges.find(
      ({ range }) =>
        under.includes(range.startContainer.parentElement as Element) &&
        [...range.getClientRects()].some(
          (b) =>
            e.clientX >= b.left - 2 &&
            e.clientX <= b.right + 2 &&
            e.clientY >= b.top - 4 &&
            e.clientY <= b.bottom + 4,
        ),
    );
    if (!hit) return;
    this.#told = hit.term;
    this.#list = false;
    this.#changed();
  };

  #one(term: Term): TemplateResult {
    const pair = named(term, this.first);
    return html`<div data-term=${term.id}><dt>${term.word}</dt><dd>${term.means}${pair ? html` <em>${pair}.</em>` : nothing}</dd></div>`;
  }

  /** Opens the list of all words that stand there, or closes it. */
  turn(open = !this.#list): void {
    this.#list = open;
    this.#told = null;
    this.#changed();
    // Who opened it by a key reads on in it.
    if (this.#list)
      requestAnimationFrame(() => this.#root?.querySelector<HTMLElement>('.wd .close')?.focus());
  }

  #close = (): void => {
    this.#told = null;
    this.#list = false;
    this.#changed();
  };

  #key = (e: KeyboardEvent): void => {
    if (e.key !== 'Escape' || !(this.#told || this.#list)) return;
    this.#close();
    e.stopPropagation();
    e.preventDefault();
  };

  /** The word that was tapped, or all that stand there, and which country's comes first. */
  card(root: ParentNode): TemplateResult | typeof nothing {
    this.#look(root);
    const shown = this.#list ? this.#found : this.#told ? [this.#told] : [];
    if (shown.length === 0) return nothing;
    const land = (l: Land) =>
      html`<button class="btn" aria-pressed=${this.first === l} @click=${() => {
        this.first = l;
      }}>${said.first(l)}</button>`;
    return html`<section class="wd" role="group" aria-label=${said.wordsOfTheTrade}>
      <button class="btn close" @click=${this.#close}>${said.close}</button>
      <div role="status"><dl>${shown.map((t) => this.#one(t))}</dl></div>
      ${hasPairs ? html`<div class="wd-l" role="group" aria-label=${said.whoseWordsFirst}>${land('British')}${land('American')}</div>` : nothing}</section>`;
  }
}

export const wordsStyles = css`
  ::highlight(trade) { text-decoration: underline dotted; text-underline-offset: 3px; text-decoration-thickness: 2px; }
  .wd { position: fixed; right: 20px; bottom: 20px; z-index: 8; width: min(440px, calc(100vw - 24px)); max-height: 70vh; overflow-y: auto; background: var(--sheet); border: 2px solid var(--ink); padding: 10px 16px 12px; font-size: 16px; line-height: 1.32; }
  .wd .close { float: right; margin: 0 0 6px 12px; }
  .wd dl { margin: 0; }
  .wd dl div { border-top: 1px solid var(--rule); padding: 5px 0; }
  .wd dl div:first-child { border: 0; }
  .wd dt { font-weight: 720; display: inline; }
  .wd dt::after { content: ':'; }
  .wd dd { display: inline; margin: 0 0 0 4px; }
  .wd em { font-style: normal; color: var(--ink2); }
  .wd-l { display: grid; grid-template-columns: 1fr 1fr; gap: 8px; margin: 8px 0 0; clear: both; }
  .wd .btn { min-height: 38px; font-size: 15px; background: var(--sheet); }
  .wd-l .btn[aria-pressed='true'] { background: var(--ink); color: var(--sheet); }
  @media (max-width: 900px) { .wd { right: 12px; bottom: 12px; } .wd .btn { min-height: 56px; } }
`;
