import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { language, ownPhotoSide as words } from '../../../../sim/words/en.ts';
import { number } from '../../../format.ts';
import { Hears } from '../../../pieces/hears.ts';
import { marks } from '../../../pieces/marks.ts';
import { PRESS_BAR } from '../../../record/bench.ts';
import { LONGEST_TEXT } from '../../../record/shelf.ts';
import type { Session } from '../../../session.ts';
import { deskOf } from '../../station.ts';
import { ownStyles } from '../styles.ts';
import { pixelsPerMm, tiltOf } from './camera.ts';
import { type Banded, PhotoDesk } from './desk.ts';
import type { Fit } from './fit.ts';
import { numberOf, type PointInfo, points } from './points.ts';
import { ALARM, nameOf, photoFields, TOO_TILTED, TOO_WIDE } from './read-photo.ts';
import { photoStyles } from './styles.ts';

const PAD = [
  ['◀', 'left', [-1, 0]],
  ['▲', 'up', [0, -1]],
  ['▼', 'down', [0, 1]],
  ['▶', 'right', [1, 0]],
] as const;

/** A picture with fewer pixels along its longer side is too coarse for its taps. */
const FEW_PIXELS = 2000;

/** Beside the picture: what is asked, what it comes to, what is known of the answers. */
export class PhotoSide extends LitElement {
  static override properties = { session: { attribute: false } };
  static override styles = [ownStyles, photoStyles];
  declare session: Session;

  constructor() {
    super();
    this.addController(new Hears(this));
  }

  get desk(): PhotoDesk {
    return deskOf(PhotoDesk, this.session);
  }

  /** The largest residual's tap, and how far it is off. */
  #widest(fit: Fit): string {
    const photo = this.desk.photo;
    const tapped = (prefix: string): PointInfo[] =>
      points.filter(({ id }) => id.startsWith(prefix) && photo?.taps[id]);
    const all = [
      ...tapped('edge').map((p, i) => [p, Math.abs(fit.off.edge[i] ?? 0)] as const),
      ...tapped('rim').map((p, i) => [p, Math.abs(fit.off.rim[i] ?? 0)] as const),
    ].sort((a, b) => b[1] - a[1]);
    const [worst] = all;
    return worst
      ? words.widestMm(numberOf(worst[0].id), language.inside(worst[0].name), number(worst[1], 1))
      : '';
  }

  #alarms(fit: Fit): readonly string[] {
    const { read } = this.desk;
    const wide = [...(read?.places.values() ?? [])].some(({ band }) => band > TOO_WIDE);
    const { width = 0, height = 0 } = this.desk.photo ?? {};
    return [
      ...(Math.max(width, height) < FEW_PIXELS ? [words.thePictureHasPixelsA(width, height)] : []),
      ...fit.suspects.map(({ name, off }) =>
        words.andItsPartnerAreNo(nameOf(name), number(off, 1)),
      ),
      ...(fit.alarm > ALARM ? [words.theTapsDoNotFit(this.#widest(fit))] : []),
      ...(tiltOf(fit.camera) > TOO_TILTED || wide ? [words.takenTooMuchFromThe] : []),
    ];
  }

  #state(): TemplateResult {
    const { desk } = this;
    const { read, photo } = desk;
    const count = Object.keys(photo?.taps ?? {}).length;
    if (!read?.fit) {
      const edges = points.filter(({ id }) => id.startsWith('edge') && photo?.taps[id]).length;
      const left = Math.max(0, 5 - edges);
      return html`<p data-fit>${left > 0 ? words.itLiesOnceTheLinings(left) : words.nowTheHubsMiddleAnd}</p>`;
    }
    const { fit } = read;
    const tilt = (tiltOf(fit.camera) * 180) / Math.PI;
    const far = fit.camera.focal / pixelsPerMm(fit.camera) / 1000;
    const alarms = [...this.#alarms(fit), ...read.findings];
    return html`<div class="fit" data-fit>${alarms.length > 0 ? marks.watch : marks.good}<span><b>${words.liesWithinMm(number(fit.within, 1))}</b> ${words.takenAsideFromM(number(tilt, 0), number(far, 2), this.#widest(fit))}</span></div>
      ${alarms.map((a) => html`<p class="bad" data-alarm>${a}</p>`)}
      <p class="small">${words.tapped(count, count === 1 ? words.point : words.points)}</p>`;
  }

  #now(point: PointInfo): TemplateResult {
    const { desk } = this;
    const { photo, read, points: all } = desk;
    const place = read?.places.get(point.id);
    const at = desk.at(point.id);
    const proposal = at && !at.set;
    const no = numberOf(point.id);
    const cell = (name: string, value: string) =>
      html`<div><span>${name}</span><b>${value}</b></div>`;
    const nudge = ([dx, dy]: readonly [number, number]): void => {
      const [x, y] = at?.tap ?? [(photo?.width ?? 0) / 2, (photo?.height ?? 0) / 2];
      desk.tap(point.id, [x + dx, y + dy]);
    };
    return html`<section class="now"><h2><i>${no}</i> ${point.name}</h2><p>${point.what}${proposal ? words.proposedAsTheMirrorImage : ''}</p>
      <div class="cells">${cell(words.fromTheHubMm, place ? `${number(place.at[0], 1)}, ${number(place.at[1], 1)}` : '–')}${cell(words.goodToMm, place ? `±${number(place.band, 1)}` : '–')}</div>
      <div class="dots" aria-hidden="true">${all.map((p) => html`<i class=${p === point ? 'now' : photo?.taps[p.id] ? 'done' : photo?.unseen.includes(p.id) ? 'none' : ''}></i>`)}</div>
      <div class="pad">${PAD.map(([sign, way, by]) => html`<button class="btn" aria-label=${words.onePixel(way)} @click=${() => nudge(by)}>${sign}</button>`)}</div>
      <button class="btn p set" ?disabled=${!at} @click=${() => desk.set(point.id)}>${words.set(no, all.at(-1) === point ? '' : words.goOn)}</button>
      <div class="two"><button class="btn" ?disabled=${all[0] === point} @click=${() => desk.go(-1)}>${words.back}</button><button class="btn" @click=${() => desk.cannotSee(point.id)}>${words.cannotSeeIt}</button></div></section>`;
  }

  #sizes(): TemplateResult {
    const { desk } = this;
    const { read, photo } = desk;
    return html`<section><h2>${words.measuredBesideThePicture}</h2>${photoFields.map(
      ({ key, name, how }) => {
        const wrong = read?.wrong[key];
        const r = read?.reads[key];
        const text = photo?.texts[key] ?? '';
        const id = `photo-${key}`;
        return html`<div class="field ${text.trim() === '' ? 'open' : ''}" data-photo=${key}><label for=${id}>${name}, mm<small>${how}</small></label><input id=${id} type="text" maxlength=${LONGEST_TEXT} autocomplete="off" spellcheck="false" aria-invalid=${wrong !== undefined} aria-describedby=${`${id}-said`} .value=${text} @input=${(e: Event) => desk.size(key, (e.target as HTMLInputElement).value)} /><div class="told" id=${`${id}-said`}>${wrong ? html`<span class="bad">${marks.bad} ${wrong}</span>` : r?.ok ? r.echo : html`<span class="assumed"><b>${words.assumed}</b></span>`}</div></div>`;
      },
    )}<p class="small">${words.drumDiameterAndLiningWidth}</p></section>`;
  }

  #list(): TemplateResult {
    const { desk } = this;
    const { photo, read, point } = desk;
    return html`<section><h2>${words.points2}</h2><ol class="points">${desk.points.map((p) => {
      const place = read?.places.get(p.id);
      const told = place
        ? html`${number(place.at[0], 1)}, ${number(place.at[1], 1)} <b>±${number(place.band, 1)}</b>`
        : photo?.taps[p.id]
          ? 'tapped'
          : html`<em>${words.assumed}</em>`;
      return html`<li data-id=${p.id}><button class=${p === point ? 'on' : ''} aria-current=${p === point ? 'step' : nothing} @click=${() => desk.goTo(p.id)}><i>${numberOf(p.id)}</i><span>${p.name}</span><span>${told}</span></button></li>`;
    })}</ol></section>`;
  }

  #banded(name: string, unit: string, b: Banded, by: number, digits: number): TemplateResult {
    const [least, most, picture, value] = [b.least, b.most, b.picture, b.value].map(
      (x) => x * by,
    ) as [number, number, number, number];
    const share = (x: number): number => (100 * (x - least)) / (most - least || 1);
    const from = share(value - picture);
    const to = share(value + picture);
    return html`<div class="answer"><div><span>${name}</span><b>${number(value, digits)}<small> ${unit}</small></b></div><div class="bar"><span>${number(least, digits)}</span><i><u .style=${`left:${Math.max(0, from)}%;right:${Math.max(0, 100 - to)}%`}></u></i><span>${number(most, digits)}</span></div></div>`;
  }

  #answers(): TemplateResult | typeof nothing {
    const { desk } = this;
    const { answers, own, photo } = desk;
    if (!own || !answers) return nothing;
    const { told, working, rigid } = answers;
    const percent = (100 * told.factor.picture) / told.factor.value;
    const lever = photo?.taps.pivot && photo.taps.hook && photo.taps.seatR;
    const room = own.photo?.seen?.clearance;
    return html`<section data-answers><p class="small key"><i class="solid"></i> ${words.fromThePictureWithFriction(number(percent, 1), working ? words.soFar : '', html`<i></i>`)}</p>
      ${this.#banded(words.brakeFactorAfterSprings, '', told.factor, 1, 2)}
      ${this.#banded(words.torqueAtBar(PRESS_BAR), 'N·m', told.torque, 1e-3, 0)}
      ${rigid ? html`<p class="small" data-rigid>${words.withShoesThatBendRigid(number(rigid.factor, 2), number(rigid.torque * 1e-3, 0))}</p>` : nothing}
      <div class="answer"><div><span>${words.parkingLeverStrutsForceOver}</span><b>${number(told.ratio.value, 1)}<small> ±${number(told.ratio.picture, 1)}${lever ? '' : words.assumed2}</small></b></div></div>
      <p>${words.clearanceAtRestByCaliper(room === null || room === undefined ? words.notMeasured : html`<b>${number(room, 2)} mm</b>`)}</p>
      <p class="small">${words.geometryIsGoodToAbout}</p></section>`;
  }

  #foot(): TemplateResult {
    const { desk } = this;
    const { photo } = desk;
    return html`<section class="acts"><button class="btn" @click=${() => desk.mirror()} data-wheel>${words.itIsTheOther(photo?.wheel === 'right' ? words.aRightHandWheel : words.aLeftHandWheel)}</button>
      <label class="tick"><input type="checkbox" .checked=${desk.isKept} ?disabled=${!desk.picture} @change=${(e: Event) => desk.keep((e.target as HTMLInputElement).checked)} /> ${desk.isKept ? words.thePictureIsKeptIn : words.keepThePictureInThis}</label>
      <button class="btn" @click=${() => desk.goTo(null)}>${words.backToAllSizes}</button></section>`;
  }

  override render() {
    const { desk } = this;
    const { point } = desk;
    if (!point) return nothing;
    const { said, findings } = this.session.moment.parts.own;
    return html`<div class="top"><h1>${words.myBrakeFromAPicture}</h1>${this.#state()}</div>
      ${said || findings.length > 0 ? html`<div class="said" role="status">${said}${findings.map((f) => html`<p class="bad">${f}</p>`)}</div>` : nothing}
      <div class="scroll">${this.#now(point)}${this.#answers()}${this.#sizes()}${this.#list()}${this.#foot()}</div>
      <div class="note"><span>${words.thePictureStaysOnThis}</span></div>`;
  }
}
customElements.define('takeup-photo-side', PhotoSide);
