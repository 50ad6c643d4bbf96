import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { number } from '../../format.ts';
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

const SVG: Kind = { tells: 'Drawing for a cutter', type: 'image/svg+xml', endings: ['.svg'] };
const DXF: Kind = { tells: 'Drawing for a cutter', type: 'image/vnd.dxf', endings: ['.dxf'] };
const PDF: Kind = { tells: 'Pages to print', type: 'application/pdf', endings: ['.pdf'] };

/** Numbers that can be set by hand: name, what they are, least, most, step; mm. */
const fields = [
  ['kerf', 'Kerf', 0, 1, 0.05],
  ['play', 'Play', 0, 1, 0.05],
  ['pin', 'Pins', 2, 8, 0.5],
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
    return `${this.stand.session.brake.title}. ${sizeText(this.stand.session, this.set)} Kerf ${number(kerf, 2)}, play ${number(play, 2)}, pins ${number(pin, 1)} mm.`;
  }

  async #save(kind: Kind, make: () => BlobPart | Promise<BlobPart>): Promise<void> {
    const name = `${plainName(`cut-out ${this.stand.session.brake.name} x${this.set.factor}`)}${kind.endings[0]}`;
    const blob = Promise.resolve()
      .then(make)
      .then((part) => new Blob([part], { type: kind.type }));
    try {
      this.said = await saveFile(name, kind, blob);
    } catch (error: unknown) {
      this.said = `It could not be saved (${String(error)}).`;
    }
  }

  #choose(material: Material): void {
    this.material = material;
    this.#put(settingsFor(this.stand.session.brake, material));
  }

  #settings(): TemplateResult {
    const { material, set } = this;
    return html`<div><div class="lab" id="of">To be cut of</div>
      <div class="seg" role="group" aria-labelledby="of">${materials.map((m) => html`<button class=${m === material ? 'on' : ''} aria-pressed=${m === material} @click=${() => this.#choose(m)}>${m.name}</button>`)}</div>
      <p class="dim">${material.tells}</p>
      <div class="lab" id="size">Times its size</div>
      <div class="seg" role="group" aria-labelledby="size">${factors.map((f) => html`<button class=${f === set.factor ? 'on' : ''} aria-pressed=${f === set.factor} @click=${() => this.#put({ ...set, factor: f })}>${number(f, f % 1 ? 1 : 0)}</button>`)}</div>
      <div class="nums">${fields.map(
        ([key, name, least, most, step]) =>
          html`<div><label class="lab" for=${key}>${name}, mm</label><input id=${key} type="number" min=${least} max=${most} step=${step} .value=${String(set[key])} @change=${(
            e: Event,
          ) => {
            const value = (e.target as HTMLInputElement).valueAsNumber;
            if (value >= least && value <= most) this.#put({ ...set, [key]: value });
          }} /></div>`,
      )}</div><p class="dim">Kerf is what the cut takes away; play, how much wider holes and slots are than their pins.</p></div>`;
  }

  override render() {
    const { moves, paper, set, stand } = this;
    const sheet = this.#sheet;
    const bad = moves !== undefined && moves !== null && !moves.sound;
    return html`<div class="part look">${unsafeSVG(cutPicture(this.#cut, false))}${this.#settings()}</div>
      <div class="part"><p><b>${sizeText(stand.session, set)}</b> All parts on one sheet take ${number(sheet.width, 0)} × ${number(sheet.height, 0)} mm. They are cut from the outlines that the bench draws and reckons with, as this brake stands now.</p>
        <p class=${bad ? 'check bad' : 'check'} role="status">${moves === undefined ? 'Trying the lever at every tooth…' : movesText(moves)}</p></div>
      <div class="part"><h3>For a cutter</h3><div class="acts"><button class="main" @click=${() => this.#save(SVG, () => cutSvg(sheet, [this.#about]))}>SVG</button>
        <button @click=${() => this.#save(DXF, async () => (await import('./dxf.ts')).cutDxf(sheet))}>DXF</button></div>
        <p class="dim">Red is cut, blue are names. The lines run half a kerf outside of each part.</p>
        <h3>On paper</h3><div class="seg" role="group" aria-label="Size of paper">${paperSizes.map(
          (p) =>
            html`<button class=${p === paper ? 'on' : ''} aria-pressed=${p === paper} @click=${() => {
              this.paper = p;
            }}>${p}</button>`,
        )}</div>
        <div class="acts"><button @click=${() => this.#save(PDF, async () => (await import('./pdf.ts')).cutPdf(sheet, paper, this.#about))}>PDF to glue together</button>
          <button ?disabled=${moves === undefined} @click=${() => printPages(assemblySheet(stand.session, this.#cut, set, moves ?? null), paper)}>Print how it goes together…</button></div>
        ${this.said ? html`<p class="said" role="status">${this.said}</p>` : nothing}</div>`;
  }
}
customElements.define('takeup-away-cut', CutWay);
