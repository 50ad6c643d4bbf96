import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { labelWords, awayCutCutWay as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { numberField, withDigits } from '../../pieces/number-field.ts';
import { NARROW } from '../../pieces/page-sizes.ts';
import { printPages } from '../../pieces/paper-sheet.ts';
import { type PaperSize, paperSizes } from '../../pieces/papers.ts';
import { Kept } from '../../record/kept.ts';
import { type Kind, plainName, saveFile } from '../save.ts';
import type { Stand, WayElement } from '../stand.ts';
import { wayStyles } from '../way-styles.ts';
import { assemblySheet, movesText, sizeText } from './assembly.ts';
import { type Layout, layOut } from './layout.ts';
import { factors, type Material, materials, settingsFor } from './materials.ts';
import { type Moves, movesOf } from './moves.ts';
import type { CutPart, CutSettings } from './part.ts';
import { cutParts } from './parts.ts';
import { cutPicture } from './picture.ts';
import { cutSvg } from './svg.ts';

const SVG: Kind = { tells: words.drawingForACutter, type: 'image/svg+xml', endings: ['.svg'] };
const DXF: Kind = { tells: words.drawingForACutter, type: 'image/vnd.dxf', endings: ['.dxf'] };
const PDF: Kind = { tells: words.pagesToPrint, type: 'application/pdf', endings: ['.pdf'] };

/** Numbers that can be set by hand: name, what they are, least, most, step; mm. */
const fields = [
  ['kerf', labelWords.kerf, 0, 1, 0.05],
  ['play', labelWords.gapOfCuts, 0, 1, 0.05],
  ['pin', labelWords.pins, 2, 8, 0.5],
] as const;

/** The brake as flat parts to cut out: of card, plywood or acrylic. */
export class CutWay extends LitElement implements WayElement {
  static override properties = {
    stand: { attribute: false },
    material: { state: true },
    set: { state: true },
    paper: { state: true },
    moves: { state: true },
    said: { state: true },
  };
  declare stand: Stand;
  declare material: Material;
  declare set: CutSettings;
  declare paper: PaperSize;
  /** What the check found; undefined while it is at work. */
  declare moves: Moves | null | undefined;
  declare said: string;
  readonly #parts = new Kept<readonly CutPart[]>();
  readonly #layout = new Kept<Layout>();

  constructor() {
    super();
    this.material = materials[1] ?? materials[0];
    this.paper = 'A4';
    this.said = '';
  }

  static override styles = [
    wayStyles,
    css`
      .look { display: grid; grid-template-columns: minmax(0, 5fr) minmax(0, 4fr); gap: 18px; }
      .look svg { display: block; width: 100%; max-height: 46vh; border: 1px solid var(--rule); background: #FFFFFF; }
      .nums { display: grid; grid-template-columns: 1fr 1fr 1fr; gap: 8px; }
      .check { border-left: 6px solid var(--good); padding-left: 12px; }
      .check.bad { border-color: var(--bad); }
      @media ${NARROW} { .look { grid-template-columns: 1fr; } }
    `,
  ];

  override willUpdate(): void {
    this.set ??= settingsFor(this.stand.session.brake, this.material);
  }

  override firstUpdated(): void {
    this.#check();
  }

  /** Asks anew whether the parts move; after the dialog has shown what was chosen. */
  async #check(): Promise<void> {
    const { set } = this;
    this.moves = undefined;
    await new Promise((done) => setTimeout(done, 60));
    if (this.set === set) this.moves = movesOf(this.stand.session.brake, set);
  }

  #put(set: CutSettings): void {
    this.set = set;
    this.said = '';
    this.#check();
  }

  get #cut(): readonly CutPart[] {
    const { brake, rest, state } = this.stand.session;
    return this.#parts.of([brake, state, rest, this.set], () =>
      cutParts(brake, state, rest, this.set),
    );
  }
  get #sheet(): Layout {
    return this.#layout.of([this.#cut], () => layOut(this.#cut, this.set, 600));
  }
  get #about(): string {
    const { kerf, pin, play } = this.set;
    return words.kerfPlayPinsMm(
      this.stand.session.brake.title,
      sizeText(this.stand.session, this.set),
      number(kerf, 2),
      number(play, 2),
      number(pin, 1),
    );
  }

  async #save(kind: Kind, make: () => BlobPart | Promise<BlobPart>): Promise<void> {
    const name = `${plainName(words.cutOutX(this.stand.session.brake.name, this.set.factor))}${kind.endings[0]}`;
    const blob = Promise.resolve()
      .then(make)
      .then((part) => new Blob([part], { type: kind.type }));
    try {
      this.said = await saveFile(name, kind, blob);
    } catch (error: unknown) {
      this.said = words.itCouldNotBeSaved(String(error));
    }
  }

  #choose(material: Material): void {
    this.material = material;
    this.#put(settingsFor(this.stand.session.brake, material));
  }

  #settings(): TemplateResult {
    const { material, set } = this;
    return html`<div><div class="lab" id="of">${words.toBeCutOf}</div>
      <div class="seg" role="group" aria-labelledby="of">${materials.map((m) => html`<button class=${m === material ? 'on' : ''} aria-pressed=${m === material} @click=${() => this.#choose(m)}>${m.name}</button>`)}</div>
      <p class="dim">${material.tells}</p>
      <div class="lab" id="size">${words.timesItsSize}</div>
      <div class="seg" role="group" aria-labelledby="size">${factors.map((f) => html`<button class=${f === set.factor ? 'on' : ''} aria-pressed=${f === set.factor} @click=${() => this.#put({ ...set, factor: f })}>${number(f, f % 1 ? 1 : 0)}</button>`)}</div>
      <div class="nums">${fields.map(
        ([key, name, least, most, step]) =>
          html`<div><label class="lab" for=${key}>${name}, mm</label>${numberField(
            {
              name,
              unit: 'mm',
              allowed: [least, most],
              told: withDigits(2),
              put: (value) => this.#put({ ...this.set, [key]: value }),
              say: (text) => {
                this.said = text;
              },
            },
            set[key],
            step,
            { id: key },
          )}</div>`,
      )}</div><p class="dim">${words.kerfIsWhatTheCut}</p></div>`;
  }

  override render() {
    const { moves, paper, set, stand } = this;
    const sheet = this.#sheet;
    const bad = moves !== undefined && moves !== null && !moves.sound;
    return html`<div class="part look">${unsafeSVG(cutPicture(this.#cut, false))}${this.#settings()}</div>
      <div class="part"><p><b>${sizeText(stand.session, set)}</b> ${words.allPartsOnOneSheet(number(sheet.width, 0), number(sheet.height, 0))}</p>
        <p class=${bad ? 'check bad' : 'check'} role="status">${moves === undefined ? words.tryingTheLeverAtEvery : movesText(moves)}</p></div>
      <div class="part"><h3>${words.forACutter}</h3><div class="acts"><button class="main" @click=${() => this.#save(SVG, () => cutSvg(sheet, [this.#about]))}>${words.svgWord}</button>
        <button @click=${() => this.#save(DXF, async () => (await import('./dxf.ts')).cutDxf(sheet))}>${words.dxf}</button></div>
        <p class="dim">${words.redIsCutBlueAre}</p>
        <h3>${words.onPaper}</h3><div class="seg" role="group" aria-label=${words.sizeOfPaper}>${paperSizes.map(
          (p) =>
            html`<button class=${p === paper ? 'on' : ''} aria-pressed=${p === paper} @click=${() => {
              this.paper = p;
            }}>${p}</button>`,
        )}</div>
        <div class="acts"><button @click=${() => this.#save(PDF, async () => (await import('./pdf.ts')).cutPdf(sheet, paper, this.#about))}>${words.pdfToGlueTogether}</button>
          <button ?disabled=${moves === undefined} @click=${() => printPages(assemblySheet(stand.session, this.#cut, set, moves ?? null), paper)}>${words.printHowItGoesTogether}</button></div>
        ${this.said ? html`<p class="said" role="status">${this.said}</p>` : nothing}</div>`;
  }
}
customElements.define('takeup-away-cut', CutWay);
