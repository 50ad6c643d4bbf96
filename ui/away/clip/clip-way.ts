import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { labelWords, language, awayClipClipWay as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { benchTitle } from '../../record/guest-title.ts';
import { type Kind, plainName, saveFile } from '../save.ts';
import { addressOf } from '../share/moment.ts';
import type { Stand, WayElement } from '../stand.ts';
import { wayStyles } from '../way-styles.ts';
import { canEncode } from './can-encode.ts';
import { type FilmKind, filmKinds, talkOf, whyNot } from './kinds.ts';
import { type Clip, makeClip } from './maker.ts';
import { type FileKind, SHEET, SMALL_SHEET } from './picture.ts';

const WHAT: Readonly<Record<FilmKind, readonly [name: string, tells: string]>> = {
  press: [words.aPress, words.theBrakeAsItStands],
  clicks: [words.tenClicks, words.itsNextTenClicksEach],
  life: [words.aLifeInTwelveSeconds, words.fromNewToItsLimit],
  pull: [words.aPullAtTheDrum, words.whatHoldsTheDrumOr],
  step: [words.theOpenLessonsStep, words.itsQuestionWhatHappensAnd],
  talk: [words.theWholeTalk, words.fourMinutesWithWhatIs],
};

const FILES: Readonly<Record<FileKind, readonly [name: string, tells: string]>> = {
  mp4: ['MP4', words.h264PlaysNearlyEverywhere],
  webm: ['WebM', words.vp9OrVp8PlaysIn],
  loop: [labelWords.loop, words.anAnimatedPngForA],
  strip: [labelWords.strip, words.eightPicturesOnASheet],
};

/** A loop runs at so many pictures a second, and is no longer than this, s. */
const LOOP = { rate: 15, most: 20 };
const HEIGHTS = [720, 1080] as const;
const RATES = [30, 60] as const;

/** Films too long for a loop or for eight pictures. */
const LONG: readonly FilmKind[] = ['clicks', 'step', 'talk'];
const isFilm = (file: FileKind): boolean => file === 'mp4' || file === 'webm';

/** Films, loops and strips of what the brake does. */
export class ClipWay extends LitElement implements WayElement {
  static override properties = {
    stand: { attribute: false },
    what: { state: true },
    file: { state: true },
    height: { state: true },
    rate: { state: true },
    inPicture: { state: true },
    can: { state: true },
    share: { state: true },
    clip: { state: true },
    said: { state: true },
  };
  declare stand: Stand;
  declare what: FilmKind;
  declare file: FileKind;
  declare height: (typeof HEIGHTS)[number];
  declare rate: (typeof RATES)[number];
  declare inPicture: boolean;
  /** What this browser can encode; null until it has told. */
  declare can: Readonly<Record<'mp4' | 'webm', boolean>> | null;
  /** How much of it is made, 0 to 1; null: nothing is being made. */
  declare share: number | null;
  declare clip: Clip | null;
  declare said: string;
  #quit: AbortController | null = null;
  /** Addresses of what was made, for its preview; given back when another is made. */
  #seen: { readonly film: string; readonly captions: string } | null = null;

  constructor() {
    super();
    this.what = 'press';
    this.file = 'mp4';
    this.height = 720;
    this.rate = 30;
    this.inPicture = false;
    this.can = null;
    this.share = null;
    this.clip = null;
    this.said = '';
  }

  static override styles = [
    wayStyles,
    css`
      .whats { display: grid; grid-template-columns: repeat(auto-fill, minmax(250px, 1fr)); gap: 8px; }
      .whats label { display: flex; gap: 10px; border: 2px solid var(--rule); padding: 8px 12px; font-size: 15px; line-height: 1.3; cursor: pointer; }
      .whats b { display: block; font-size: 16.5px; font-weight: 680; }
      .whats label.on { border-color: var(--ink); background: var(--panel); }
      .whats label.off { color: var(--off); cursor: default; }
      .whats label:focus-within { outline: 4px solid var(--trail); outline-offset: 2px; }
      .whats input { width: 21px; height: 21px; margin: 1px 0 0; accent-color: var(--ink); flex: none; }
      .sizes { display: grid; grid-template-columns: 1fr 1fr; gap: 0 18px; }
      .seen { display: block; width: 100%; max-width: 720px; max-height: 46vh; border: 2px solid var(--ink); background: var(--sheet); object-fit: contain; }
      progress { width: 100%; height: 18px; accent-color: var(--ink); }
    `,
  ];

  override connectedCallback(): void {
    super.connectedCallback();
    canEncode().then((can) => {
      this.can = can;
      if (!can.mp4 && this.file === 'mp4') this.file = can.webm ? 'webm' : 'loop';
    });
  }

  /** Whoever closes the dialog stops it. */
  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#quit?.abort();
    this.#keep(null);
  }

  /** What was made, to be looked at before it is saved. */
  #keep(clip: Clip | null): void {
    if (this.#seen) for (const url of Object.values(this.#seen)) URL.revokeObjectURL(url);
    this.#seen = clip && {
      film: URL.createObjectURL(new Blob([clip.made.bytes], { type: clip.made.type })),
      captions: URL.createObjectURL(new Blob([clip.captions], { type: 'text/vtt' })),
    };
    this.clip = clip;
  }

  #choose(change: Partial<Pick<this, 'what' | 'file' | 'height' | 'rate' | 'inPicture'>>): void {
    Object.assign(this, change);
    if (!isFilm(this.file) && LONG.includes(this.what)) this.file = this.can?.mp4 ? 'mp4' : 'webm';
    this.#keep(null);
    this.said = '';
  }

  async #make(): Promise<void> {
    const { file, stand, what } = this;
    const { session } = stand;
    const quit = new AbortController();
    this.#quit = quit;
    this.share = 0;
    this.#keep(null);
    this.said = '';
    const strip = file === 'strip';
    const sheet = strip ? SMALL_SHEET : SHEET;
    // Eight pictures at 300 dots an inch; a loop as large as its sheet.
    const height = strip ? 1.5 * sheet.height : file === 'loop' ? sheet.height : this.height;
    const address = await addressOf(session.moment);
    try {
      const clip = await makeClip(
        {
          kind: what,
          moment: session.moment,
          draw: stand.drawer,
          file,
          theme: strip ? 'print' : session.theme,
          on: sheet,
          sheet: sheet.width,
          width: (height * sheet.width) / sheet.height,
          height,
          rate: file === 'loop' ? LOOP.rate : this.rate,
          inPicture: this.inPicture || strip,
          head: [benchTitle(session.moment), ...(address ? [words.madeWithTakeup(address)] : [])],
        },
        (share) => {
          this.share = share;
        },
        quit.signal,
      );
      // The dialog may have been closed in the last moment.
      if (!this.isConnected) return;
      this.#keep(clip);
      this.said = words.itIsMade;
    } catch (error: unknown) {
      const why = error instanceof Error ? error.message : String(error);
      this.said = quit.signal.aborted ? words.stoppedNothingWasKeptOf : why;
    } finally {
      if (this.#quit === quit) {
        this.share = null;
        this.#quit = null;
      }
    }
  }

  async #save(name: string, kind: Kind, content: BlobPart): Promise<void> {
    this.said = await saveFile(name, kind, new Blob([content], { type: kind.type }));
  }

  #whats(): TemplateResult {
    const { moment } = this.stand.session;
    return html`<div class="whats" role="radiogroup" aria-label=${words.whatIsFilmed}>${filmKinds.map(
      (kind) => {
        const why = whyNot(kind, moment);
        const [name, tells] = WHAT[kind];
        const title = kind === 'talk' ? (talkOf(moment)?.title ?? name) : name;
        const on = kind === this.what;
        return html`<label class=${why ? 'off' : on ? 'on' : ''}><input type="radio" name="what" ?disabled=${why !== null} .checked=${on} @change=${() => this.#choose({ what: kind })} /><span><b>${title}</b>${why ?? tells}</span></label>`;
      },
    )}</div>`;
  }

  #seg<T extends string | number>(
    name: string,
    all: readonly (readonly [T, string, boolean])[],
    now: T,
    put: (value: T) => void,
  ): TemplateResult {
    return html`<span class="lab" id=${name.replace(/\W/g, '')}>${name}</span><div class="seg" role="group" aria-labelledby=${name.replace(/\W/g, '')}>${all.map(
      ([value, text, can]) =>
        html`<button class=${value === now ? 'on' : ''} aria-pressed=${value === now} ?disabled=${!can} @click=${() => put(value)}>${text}</button>`,
    )}</div>`;
  }

  #how(): TemplateResult {
    const { can, file } = this;
    const short = !LONG.includes(this.what);
    const there = (kind: FileKind): boolean =>
      kind === 'mp4' || kind === 'webm' ? can?.[kind] === true : short;
    const kinds = (Object.keys(FILES) as FileKind[]).map(
      (kind) => [kind, FILES[kind][0], there(kind)] as const,
    );
    return html`${this.#seg('As', kinds, file, (f) => this.#choose({ file: f }))}
      <p class="dim">${FILES[file][1]}${short ? '' : words.thisOneIsTooLong}${can && !can.mp4 && !can.webm ? words.thisBrowserEncodesNoFilms : ''}</p>
      ${
        isFilm(file)
          ? html`<div class="sizes"><div>${this.#seg(
              labelWords.size,
              HEIGHTS.map((h) => [h, `${(h * 16) / 9} × ${h}`, true] as const),
              this.height,
              (height) => this.#choose({ height }),
            )}</div><div>${this.#seg(
              words.picturesASecond,
              RATES.map((r) => [r, String(r), true] as const),
              this.rate,
              (rate) => this.#choose({ rate }),
            )}</div></div>`
          : nothing
      }
      ${file === 'strip' ? nothing : html`<label class="tick"><input type="checkbox" .checked=${this.inPicture} @change=${(e: Event) => this.#choose({ inPicture: (e.target as HTMLInputElement).checked })} />${words.whatIsSaidStandsIn}</label>`}`;
  }

  /** The film with its captions, or the picture, as it will be saved. */
  #preview({ title }: Clip): TemplateResult | typeof nothing {
    const seen = this.#seen;
    if (!seen) return nothing;
    return isFilm(this.file)
      ? html`<video class="seen" controls playsinline src=${seen.film} aria-label=${words.preview(title)}><track kind="captions" srclang="en" label=${words.captions} default src=${seen.captions} /></video>`
      : html`<img class="seen" src=${seen.film} alt=${words.preview(title)} />`;
  }

  #saves({ captions, lasts, made, pictures, rate, svg, title, transcript }: Clip): TemplateResult {
    const name = plainName(title);
    const film = isFilm(this.file);
    const told = film
      ? words.sPicturesAtASecond(
          number(lasts, 1),
          number(pictures, 0),
          rate,
          made.codecs.join(' and '),
        )
      : made.codecs.join(' and ');
    const kind: Kind = {
      tells: FILES[this.file][0],
      type: made.type.split(';')[0] as string,
      endings: [made.extension as `.${string}`],
    };
    return html`<p>${words.kBTheSameBench(html`<b>${title}</b>`, told, number(made.bytes.byteLength / 1024, 0))}</p>
      <div class="acts"><button class="main" @click=${() => this.#save(`${name}${made.extension}`, kind, made.bytes)}>${words.save(film ? words.theFilm : language.inside(FILES[this.file][0]))}</button>
      ${svg ? html`<button @click=${() => this.#save(`${name}.svg`, { tells: labelWords.drawing, type: 'image/svg+xml', endings: ['.svg'] }, svg)}>${words.saveAsSvg}</button>` : nothing}
      ${film ? html`<button @click=${() => this.#save(`${name}.vtt`, { tells: labelWords.captions, type: 'text/vtt', endings: ['.vtt'] }, captions)}>${words.saveCaptions}</button><button @click=${() => this.#save(`${name}.txt`, { tells: labelWords.transcript, type: 'text/plain', endings: ['.txt'] }, transcript)}>${words.saveTranscript}</button>` : nothing}</div>`;
  }

  override render() {
    const { share } = this;
    const why = whyNot(this.what, this.stand.session.moment);
    // One button for both, so that whoever came to it by keys is still there.
    const making = share !== null;
    const cannot = !making && (why !== null || this.can === null);
    return html`<div class="part"><h3>${words.what}</h3>${this.#whats()}</div>
      <div class="part"><h3>${words.how}</h3>${this.#how()}</div>
      <div class="part">${making ? html`<progress max="1" .value=${share} aria-label=${words.howMuchOfItIs}></progress>` : nothing}
      <div class="acts"><button class=${making ? '' : 'main'} ?disabled=${cannot} @click=${() => (making ? this.#quit?.abort() : this.#make())}>${making ? words.stop : words.makeIt}</button>${making ? html`<p class="dim">${words.thePageGoesOnMeanwhile}</p>` : nothing}</div>
      <p class="said" role="status">${this.said}</p>${this.clip ? html`${this.#preview(this.clip)}${this.#saves(this.clip)}` : nothing}
      <p class="dim">${words.everyPictureTellsThePace(isFilm(this.file) ? words.captionsAreInTheFilms : '')}</p></div>`;
  }
}
customElements.define('takeup-away-clip', ClipWay);
