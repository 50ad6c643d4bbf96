import { html, LitElement, nothing, type TemplateResult } from 'lit';
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
      ? `Widest: ${numberOf(worst[0].id)}, ${worst[0].name.toLowerCase()}, ${number(worst[1], 1)} mm.`
      : '';
  }

  #alarms(fit: Fit): readonly string[] {
    const { read } = this.desk;
    const wide = [...(read?.places.values() ?? [])].some(({ band }) => band > TOO_WIDE);
    const { width = 0, height = 0 } = this.desk.photo ?? {};
    return [
      ...(Math.max(width, height) < FEW_PIXELS
        ? [`The picture has ${width} × ${height} pixels: a tap in it is worth some 1.5 mm.`]
        : []),
      ...fit.suspects.map(
        ({ name, off }) =>
          `${nameOf(name)} and its partner are no mirror images, ${number(off, 1)} mm apart. One of them is tapped beside it: both are left out until mended.`,
      ),
      ...(fit.alarm > ALARM
        ? [
            `The taps do not fit together. ${this.#widest(fit)} Look at that tap and at the sizes; use the whole picture as taken, not a cropped one.`,
          ]
        : []),
      ...(tiltOf(fit.camera) > TOO_TILTED || wide
        ? ['Taken too much from the side. Another one from straight in front will do better.']
        : []),
    ];
  }

  #state(): TemplateResult {
    const { desk } = this;
    const { read, photo } = desk;
    const count = Object.keys(photo?.taps ?? {}).length;
    if (!read?.fit) {
      const edges = points.filter(({ id }) => id.startsWith('edge') && photo?.taps[id]).length;
      const left = Math.max(0, 5 - edges);
      return html`<p data-fit>${left > 0 ? `It lies once the linings (1–6) and the hub or the rim are tapped; ${left} more of the linings.` : 'Now the hub’s middle; and the plate’s rim, once its Ø is typed below.'}</p>`;
    }
    const { fit } = read;
    const tilt = (tiltOf(fit.camera) * 180) / Math.PI;
    const far = fit.camera.focal / pixelsPerMm(fit.camera) / 1000;
    const alarms = [...this.#alarms(fit), ...read.findings];
    return html`<div class="fit" data-fit>${alarms.length > 0 ? marks.watch : marks.good}<span><b>Lies within ${number(fit.within, 1)} mm.</b> Taken ${number(tilt, 0)}° aside, from ${number(far, 2)} m. ${this.#widest(fit)}</span></div>
      ${alarms.map((a) => html`<p class="bad" data-alarm>${a}</p>`)}
      <p class="small">${count} ${count === 1 ? 'point' : 'points'} tapped.</p>`;
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
    return html`<section class="now"><h2><i>${no}</i> ${point.name}</h2><p>${point.what}${proposal ? ' Proposed as the mirror image of its partner; it counts once you set it.' : ''}</p>
      <div class="cells">${cell('From the hub, mm', place ? `${number(place.at[0], 1)}, ${number(place.at[1], 1)}` : '–')}${cell('Good to, mm', place ? `±${number(place.band, 1)}` : '–')}</div>
      <div class="dots" aria-hidden="true">${all.map((p) => html`<i class=${p === point ? 'now' : photo?.taps[p.id] ? 'done' : photo?.unseen.includes(p.id) ? 'none' : ''}></i>`)}</div>
      <div class="pad">${PAD.map(([sign, way, by]) => html`<button class="btn" aria-label=${`One pixel ${way}`} @click=${() => nudge(by)}>${sign}</button>`)}</div>
      <button class="btn p set" ?disabled=${!at} @click=${() => desk.set(point.id)}>Set ${no}${all.at(-1) === point ? '' : ', go on'}</button>
      <div class="two"><button class="btn" ?disabled=${all[0] === point} @click=${() => desk.go(-1)}>Back</button><button class="btn" @click=${() => desk.cannotSee(point.id)}>Cannot see it</button></div></section>`;
  }

  #sizes(): TemplateResult {
    const { desk } = this;
    const { read, photo } = desk;
    return html`<section><h2>Measured beside the picture</h2>${photoFields.map(
      ({ key, name, how }) => {
        const wrong = read?.wrong[key];
        const r = read?.reads[key];
        const text = photo?.texts[key] ?? '';
        const id = `photo-${key}`;
        return html`<div class="field ${text.trim() === '' ? 'open' : ''}" data-photo=${key}><label for=${id}>${name}, mm<small>${how}</small></label><input id=${id} type="text" maxlength=${LONGEST_TEXT} autocomplete="off" spellcheck="false" aria-invalid=${wrong !== undefined} aria-describedby=${`${id}-said`} .value=${text} @input=${(e: Event) => desk.size(key, (e.target as HTMLInputElement).value)} /><div class="told" id=${`${id}-said`}>${wrong ? html`<span class="bad">${marks.bad} ${wrong}</span>` : r?.ok ? r.echo : html`<span class="assumed"><b>assumed</b></span>`}</div></div>`;
      },
    )}<p class="small">Drum Ø and lining width are typed under My brake.</p></section>`;
  }

  #list(): TemplateResult {
    const { desk } = this;
    const { photo, read, point } = desk;
    return html`<section><h2>Points</h2><ol class="points">${desk.points.map((p) => {
      const place = read?.places.get(p.id);
      const told = place
        ? html`${number(place.at[0], 1)}, ${number(place.at[1], 1)} <b>±${number(place.band, 1)}</b>`
        : photo?.taps[p.id]
          ? 'tapped'
          : html`<em>assumed</em>`;
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
    return html`<section data-answers><p class="small key"><i class="solid"></i> from the picture, ±${number(percent, 1)} %${working ? ' so far' : ''} <i></i> with friction assumed to ±10 %</p>
      ${this.#banded('Brake factor, after springs', '', told.factor, 1, 2)}
      ${this.#banded(`Torque at ${PRESS_BAR} bar`, 'N·m', told.torque, 1e-3, 0)}
      ${rigid ? html`<p class="small" data-rigid>With shoes that bend. Rigid: factor ${number(rigid.factor, 2)}, ${number(rigid.torque * 1e-3, 0)} N·m.</p>` : nothing}
      <div class="answer"><div><span>Parking lever, strut’s force over the cable’s</span><b>${number(told.ratio.value, 1)}<small> ±${number(told.ratio.picture, 1)}${lever ? '' : ', assumed'}</small></b></div></div>
      <p>Clearance at rest: ${room === null || room === undefined ? 'not measured' : html`<b>${number(room, 2)} mm</b>`} by caliper, never from the picture: a millimetre at the strut’s seat is as much as there is.</p>
      <p class="small">Geometry is good to about 2 %; friction is not known to better than 10 %, and that is what the brake factor hangs on.</p></section>`;
  }

  #foot(): TemplateResult {
    const { desk } = this;
    const { photo } = desk;
    return html`<section class="acts"><button class="btn" @click=${() => desk.mirror()} data-wheel>${photo?.wheel === 'right' ? 'A right-hand wheel' : 'A left-hand wheel'}: it is the other</button>
      <label class="tick"><input type="checkbox" .checked=${desk.isKept} ?disabled=${!desk.picture} @change=${(e: Event) => desk.keep((e.target as HTMLInputElement).checked)} /> ${desk.isKept ? 'The picture is kept in this browser' : 'Keep the picture in this browser'}</label>
      <button class="btn" @click=${() => desk.goTo(null)}>Back to all sizes</button></section>`;
  }

  override render() {
    const { desk } = this;
    const { point } = desk;
    if (!point) return nothing;
    const { said, findings } = this.session.moment.parts.own;
    return html`<div class="top"><h1>My brake from a picture</h1>${this.#state()}</div>
      ${said || findings.length > 0 ? html`<div class="said" role="status">${said}${findings.map((f) => html`<p class="bad">${f}</p>`)}</div>` : nothing}
      <div class="scroll">${this.#now(point)}${this.#answers()}${this.#sizes()}${this.#list()}${this.#foot()}</div>
      <div class="note"><span>The picture stays on this device: it is in no file, link or report.</span></div>`;
  }
}
customElements.define('takeup-photo-side', PhotoSide);
