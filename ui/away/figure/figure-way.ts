import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { labelWords, awayFigureFigureWay as texts } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { NARROW } from '../../pieces/page-sizes.ts';
import { saveFile } from '../save.ts';
import type { Stand, WayElement } from '../stand.ts';
import { wayStyles } from '../way-styles.ts';
import { type Choices, keepChoices, lastChoices } from './choices.ts';
import {
  fileOf,
  kindOf,
  type Made,
  makeFigure,
  nameOf,
  stageWorks,
  type Words,
  wordsOf,
} from './make.ts';

type Row<K extends keyof Choices> = readonly (readonly [value: Choices[K], name: string])[];

const frames: Row<'frame'> = [
  ['stage', texts.asOnTheStage],
  ['whole', texts.wholeBrake],
];
const names: Row<'names'> = [
  ['as', texts.asShown],
  ['with', labelWords.with],
  ['without', labelWords.without],
];
const looks: Row<'look'> = [
  ['light', labelWords.light],
  ['dark', labelWords.dark],
  ['grey', texts.blackAndWhite],
];
const scales: Row<'scale'> = [
  ['2:1', '2:1'],
  ['1:1', '1:1'],
  ['1:2', '1:2'],
  ['1:5', '1:5'],
];
const kinds: Row<'kind'> = [
  ['svg', texts.drawingSvg],
  ['png', texts.picturePng],
];
const wides: Row<'wide'> = [
  [1280, '1280'],
  [1920, '1920'],
  [2560, '2560'],
  [3840, '3840'],
];
const parts = [
  ['title', labelWords.title],
  ['bar', texts.scaleBar],
  ['facts', texts.readingsThatMatter],
  ['legend', labelWords.legend],
  ['caption', labelWords.caption],
] as const;

/** The drawing of the stage as a file: choices at the side, and the figure as it will be. */
export class FigureWay extends LitElement implements WayElement {
  static override properties = {
    stand: { attribute: false },
    choices: { state: true },
    words: { state: true },
    made: { state: true },
    said: { state: true },
  };
  declare stand: Stand;
  declare choices: Choices;
  declare words: Words | null;
  declare made: Made | null;
  declare said: string;
  /** The figure that was begun last; an older one that comes late is left out. */
  #newest: Promise<Made> | null = null;
  #url = '';

  constructor() {
    super();
    this.choices = lastChoices();
    this.words = null;
    this.made = null;
    this.said = '';
  }

  static override styles = [
    wayStyles,
    css`
      .two { display: grid; grid-template-columns: 372px minmax(0, 1fr); }
      .ask { border-right: 1px solid var(--rule); padding: 6px 16px 14px 18px; }
      .show { padding: 14px 18px; position: sticky; top: 62px; align-self: start; }
      .seen { display: block; width: 100%; max-height: min(600px, calc(100vh - 250px)); object-fit: contain; border: 2px solid var(--ink); background: repeating-conic-gradient(#C4CCCC 0 25%, #F4F6F6 0 50%) 0 0 / 22px 22px; }
      .lab { margin: 9px 0 3px; }
      .ticks { display: grid; grid-template-columns: 1fr 1fr; margin-top: 6px; }
      .tick { min-height: 34px; font-size: 15.5px; }
      .seg button { min-height: 38px; }
      @media ${NARROW} {
        .two { display: flex; flex-direction: column-reverse; }
        .ask { border-right: 0; }
        .show { position: static; }
        .seen { max-height: 320px; }
        .seg button { min-height: 56px; }
        .tick { min-height: 48px; }
      }
    `,
  ];

  override firstUpdated(): void {
    this.words = wordsOf(this.stand);
    this.#make();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    URL.revokeObjectURL(this.#url);
  }

  async #make(): Promise<void> {
    if (!this.words) return;
    const newest = makeFigure(this.stand, this.choices, this.words);
    this.#newest = newest;
    const made = await newest;
    if (newest !== this.#newest) return;
    URL.revokeObjectURL(this.#url);
    this.#url = URL.createObjectURL(new Blob([made.svg], { type: 'image/svg+xml' }));
    this.made = made;
  }

  #choose(change: Partial<Choices>): void {
    this.choices = { ...this.choices, ...change };
    keepChoices(this.choices);
    this.said = '';
    this.#make();
  }

  #write(change: Partial<Words>): void {
    if (!this.words) return;
    this.words = { ...this.words, ...change };
    this.#make();
  }

  /** The file of what is chosen now, though the figure that is seen may still be the one before. */
  #file(choices: Choices): Promise<Blob> | null {
    return this.#newest?.then((made) => fileOf(made, choices)) ?? null;
  }

  async #save(): Promise<void> {
    const { choices } = this;
    const file = this.#file(choices);
    if (!file) return;
    try {
      this.said = await saveFile(nameOf(this.stand, choices), kindOf(choices), file);
    } catch (error: unknown) {
      this.said = error instanceof Error ? error.message : String(error);
    }
  }

  async #copy(): Promise<void> {
    const png = this.#file({ ...this.choices, kind: 'png' });
    if (!png) return;
    try {
      await navigator.clipboard.write([new ClipboardItem({ 'image/png': png })]);
      this.said = texts.pictureCopied;
    } catch {
      this.said = texts.theBrowserDoesNotLet;
    }
  }

  #row<K extends keyof Choices>(key: K, label: string, all: Row<K>): TemplateResult {
    const now = this.choices[key];
    return html`<span class="lab" id=${`fig-${key}`}>${label}</span><div class="seg" role="group" aria-labelledby=${`fig-${key}`}>${all.map(([value, name]) => html`<button class=${value === now ? 'on' : ''} aria-pressed=${value === now} @click=${() => this.#choose({ [key]: value } as Partial<Choices>)}>${name}</button>`)}</div>`;
  }

  #tick(key: 'clear' | (typeof parts)[number][0], name: string): TemplateResult {
    return html`<label class="tick"><input type="checkbox" .checked=${this.choices[key]} @change=${(e: Event) => this.#choose({ [key]: (e.target as HTMLInputElement).checked })} />${name}</label>`;
  }

  #told({ paper, smallest }: Made): string {
    const [wide, high] = paper.map((mm) => number(mm, 0));
    const words = Number.isFinite(smallest) ? texts.smallestWordsPt(number(smallest, 1)) : '';
    return texts.mmOnPaper(wide, high, words);
  }

  override render() {
    const { choices, words, made } = this;
    return html`<div class="two"><div class="ask">
        ${stageWorks(this.stand) ? this.#row('frame', labelWords.what, frames) : nothing}
        ${this.#row('names', texts.namesOfTheParts, names)}
        ${this.#row('look', labelWords.look, looks)}
        ${this.#tick('clear', texts.noGroundWhatLiesBehind)}
        ${this.#row('scale', texts.scaleOnPaperBrakeDrawn, scales)}
        <div class="ticks">${parts.map(([key, name]) => this.#tick(key, name))}</div>
        ${choices.title ? html`<label class="lab" for="fig-title">${texts.title}</label><input id="fig-title" type="text" maxlength="120" .value=${words?.title ?? ''} @input=${(e: Event) => this.#write({ title: (e.target as HTMLInputElement).value })} />` : nothing}
        ${choices.caption ? html`<label class="lab" for="fig-caption">${texts.caption}</label><textarea id="fig-caption" rows="2" maxlength="600" .value=${words?.caption ?? ''} @input=${(e: Event) => this.#write({ caption: (e.target as HTMLTextAreaElement).value })}></textarea>` : nothing}
        ${this.#row('kind', labelWords.file, kinds)}
        ${choices.kind === 'png' ? this.#row('wide', texts.widthOfThePicturePx, wides) : nothing}
      </div>
      <div class="show">
        ${made ? html`<img class="seen" src=${this.#url} alt=${texts.theFigureAsItWill} />` : html`<p role="status">${texts.theFigureIsBeingMade}</p>`}
        <div class="acts"><button class="main" ?disabled=${!made} @click=${() => this.#save()}>${texts.saveFigure}</button><button ?disabled=${!made} @click=${() => this.#copy()}>${texts.copyPicture}</button></div>
        <p class="said" role="status">${this.said || (made ? this.#told(made) : '')}</p>
        <p class="dim">${texts.sceneVersionAndThisMoments}</p>
      </div></div>`;
  }
}
customElements.define('takeup-away-figure', FigureWay);
