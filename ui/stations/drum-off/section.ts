import { css, html, LitElement, unsafeCSS } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { type LipFit, liningAt } from '../../../sim/index.ts';
import { drumOffSection as words } from '../../../sim/words/en.ts';
import type { Session } from '../../session.ts';
import { LabelLayer, labelStyles } from '../../stage/labels.ts';
import { sectionBB } from '../../stage/section-bb.ts';
import { shapesText } from '../../stage/svg.ts';
import { themes } from '../../theme.ts';
import { deskOf } from '../station.ts';
import { DrumDesk } from './desk.ts';

/** Where section B–B is cut: at the front lining's end or middle that stands highest over the lip. */
export function cutAt(fit: LipFit): {
  readonly word: 'toe' | 'centre' | 'heel';
  readonly mm: number;
} {
  const { toe, centre, heel } = fit.front;
  if (heel >= toe && heel >= centre) return { word: 'heel', mm: heel };
  return toe >= centre ? { word: 'toe', mm: toe } : { word: 'centre', mm: centre };
}

/** The section as a picture that follows the pull, with its labels over it. */
export class DrumSection extends LitElement {
  static override properties = {
    session: { attribute: false },
    narrow: { type: Boolean },
    rev: { type: Number },
  };
  declare session: Session;
  declare narrow: boolean;
  /** Changes whenever the picture must be drawn again. */
  declare rev: number;
  #frame = 0;
  #slide = Number.NaN;
  #flash = 0;
  #labels: LabelLayer | null = null;
  #size = { width: 0, height: 0 };
  readonly #watch = new ResizeObserver(([entry]) => {
    if (!entry) return;
    this.#size = { width: entry.contentRect.width, height: entry.contentRect.height };
    this.requestUpdate();
  });

  static override styles = [
    unsafeCSS(labelStyles),
    css`
      :host { position: relative; display: block; overflow: hidden; }
      svg.cut { position: absolute; inset: 0; width: 100%; height: 100%; display: block; }
    `,
  ];

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watch.observe(this);
    const tick = (): void => {
      const { flash } = deskOf(DrumDesk, this.session);
      if (deskOf(DrumDesk, this.session).slide() !== this.#slide || flash !== this.#flash)
        this.requestUpdate();
      this.#frame = requestAnimationFrame(tick);
    };
    this.#frame = requestAnimationFrame(tick);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watch.disconnect();
    cancelAnimationFrame(this.#frame);
    this.#labels?.destroy();
    this.#labels = null;
  }

  #drawing() {
    const desk = deskOf(DrumDesk, this.session);
    const cut = cutAt(desk.fit);
    this.#slide = desk.slide();
    this.#flash = desk.flash;
    return sectionBB({
      brake: this.session.brake,
      overlap: cut.mm,
      lip: desk.fit.height,
      lining: liningAt(this.session.rig, this.session.state, 'front')[cut.word],
      slide: this.#slide,
      caught: desk.now.signs.slides === 'a little',
      flash: this.#flash,
      width: this.#size.width,
      height: this.#size.height,
      narrow: this.narrow,
    });
  }

  protected override updated(): void {
    if (this.#size.width === 0) return;
    this.#labels ??= new LabelLayer(this.renderRoot as unknown as HTMLElement);
    this.#labels.draw([this.#drawing()]);
  }

  override render() {
    if (this.#size.width === 0) return html``;
    const drawing = this.#drawing();
    const { width, height } = this.#size;
    const word = cutAt(deskOf(DrumDesk, this.session).fit).word;
    return html`<svg class="cut" viewBox="0 0 ${width} ${height}" role="img" aria-label=${words.sectionThroughRimLipAnd(word)}>${unsafeSVG(shapesText(drawing, themes[this.session.theme], 'bb'))}</svg>`;
  }
}
customElements.define('takeup-section', DrumSection);
