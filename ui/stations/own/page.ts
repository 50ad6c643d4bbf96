import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { sizeAt } from '../../../sim/index.ts';
import { language, ownPage as words } from '../../../sim/words/en.ts';
import { lettersText } from '../../../sim/workshop/index.ts';
import { adjusterWords } from '../../adjusters.ts';
import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import { Hears } from '../../pieces/hears.ts';
import { caution } from '../../pieces/icons.ts';
import { marks } from '../../pieces/marks.ts';
import { unlessTyped } from '../../pieces/unless-typed.ts';
import { PRESS_BAR } from '../../record/bench.ts';
import { LONGEST_TEXT, type OwnBrake } from '../../record/shelf.ts';
import type { Session } from '../../session.ts';
import { deskOf, type PageSize } from '../station.ts';
import { whatIf } from '../vary/tap.ts';
import { OwnDesk } from './desk.ts';
import { assumed, type OwnField, ownGroups } from './measures.ts';
import { PhotoDesk } from './photo/desk.ts';
import { ownStyles } from './styles.ts';
import { changedRows, foundSection, frictionBar, saysSection } from './told.ts';
import { varyId } from './vary-size.ts';

/** Own brakes: make one from the nearest teaching brake, type what was measured, keep it. */
export class OwnPage extends LitElement {
  static override properties = {
    session: { attribute: false },
    size: { type: String },
  };
  static override styles = ownStyles;
  declare session: Session;
  declare size: PageSize;

  constructor() {
    super();
    this.addController(new Hears(this));
  }

  get desk(): OwnDesk {
    return deskOf(OwnDesk, this.session);
  }

  #make(): TemplateResult {
    const { desk } = this;
    return html`<section><h2>${words.startABrakeOfYour}</h2>
      <div class="row"><label for="drum">${words.drumDiameterOfYoursNew}</label><input id="drum" type="text" maxlength=${LONGEST_TEXT} autocomplete="off" .value=${desk.drumText} @input=${(e: Event) => desk.typeDrum((e.target as HTMLInputElement).value)} /></div>
      <div class="row"><label for="from">${words.startFrom(desk.hasChosen ? '' : words.theNearest)}</label><select id="from" @change=${(e: Event) => desk.startFrom((e.target as HTMLSelectElement).value)}>${desk.teaching.map((s, i) => html`<option value=${s.name} ?selected=${i === desk.start}>${s.title}, Ø ${number(s.drum.diameterNew, 0)}, ${s.shoes.front.anchor.kind === 'pin' ? words.onPins : words.onAbutments}, ${language.inside(adjusterWords[s.adjuster.kind].name)}</option>`)}</select></div>
      <div class="acts"><button class="btn p" @click=${() => desk.make()}>${words.makeItMine}</button>
      <label class="btn file">${words.readASceneFile}<input type="file" accept=".json,application/json" aria-label=${words.readASceneFile} @change=${(e: Event) => this.#read(e)} /></label></div></section>`;
  }

  async #read(e: Event): Promise<void> {
    const input = e.target as HTMLInputElement;
    const file = input.files?.[0];
    if (!file) return;
    const text = await file.text();
    input.value = '';
    this.desk.take(file.name, text);
  }

  #list(): TemplateResult | typeof nothing {
    const { desk } = this;
    const here = desk.own?.name;
    const { brakes: list, removed } = desk.shelf;
    if (list.length === 0 && !removed) return nothing;
    return html`<section><h2>${words.keptInThisBrowser}</h2><ul class="kept">${list.map(
      (b) =>
        html`<li class=${b.name === here ? 'on' : ''}><span>${b.title}<small>${words.from(b.base.title)}</small></span>${
          desk.asking === b.name
            ? html`<button class="btn" @click=${() => desk.remove(b)}>${words.deleteWord(b.title)}</button><button class="btn" @click=${() => desk.ask(null)}>${words.keepIt}</button>`
            : html`<button class="btn" ?disabled=${b.name === here} @click=${() => desk.choose(b)}>${b.name === here ? words.onTheBench : words.putOnTheBench}</button><button class="btn" aria-label=${words.deleteWord(b.title)} @click=${() => desk.ask(b.name)}>${words.deleteWord2}</button>`
        }</li>`,
    )}</ul>${removed ? html`<button class="btn" @click=${() => desk.restore()}>${words.bringBack(removed.title)}</button>` : nothing}</section>`;
  }

  #field(own: OwnBrake, field: OwnField): TemplateResult {
    const judged = this.desk.judged;
    const r = judged?.reads[field.key];
    const wrong = judged?.wrong[field.key];
    const text = own.texts[field.key] ?? '';
    const base = sizeAt(judged?.draft ?? own.base, field.key);
    const unit = field.unit ? ` ${field.unit}` : '';
    const said = wrong
      ? html`<span class="bad">${marks.bad} ${wrong}</span>`
      : r?.ok
        ? html`<span>${r.echo}</span>`
        : html`<span class="assumed"><b>${words.assumed}</b> ${number(base, field.digits)}${unit}</span>`;
    const id = `own-${field.key}`;
    const of = varyId(field.key, judged?.draft ?? own.base);
    const ask = of ? html` ${whatIf(this.session, field.name, { of })}` : nothing;
    const { changed } = this.desk;
    return html`<div class="field ${text.trim() === '' ? 'open' : ''}" data-own=${field.key}><label for=${id}>${field.name}${field.unit ? `, ${field.unit}` : ''}<small>${field.how}</small></label>
      <input id=${id} type="text" maxlength=${LONGEST_TEXT} autocomplete="off" spellcheck="false" aria-invalid=${wrong !== undefined} aria-describedby=${`${id}-said`} .value=${text} @input=${(e: Event) => this.desk.write(own, field.key, (e.target as HTMLInputElement).value)} /><div class="told"><span id=${`${id}-said`}>${said}</span>${ask}</div></div>${field.key === 'friction' ? frictionBar(this.desk, own) : nothing}${changed?.key === field.key ? changedRows(changed) : nothing}`;
  }

  /** From a picture: taken or chosen here, gone on with, or taken away. */
  #photo(own: OwnBrake): TemplateResult {
    const desk = deskOf(PhotoDesk, this.session);
    const taps = Object.keys(own.photo?.taps ?? {}).length;
    const take = async (e: Event): Promise<void> => {
      const input = e.target as HTMLInputElement;
      const [file] = input.files ?? [];
      if (file) await desk.take(own, file);
      input.value = '';
    };
    return html`<section><h2>${words.itsPlacesFromAPicture}</h2>
      <p>${words.withTheDrumOffCable}</p>
      <p class="small">${cautions.springs} ${cautions.wearShort} ${cautions.stands}</p>
      <div class="acts">${own.photo ? html`<button class="btn p" @click=${() => desk.goOn()}>${words.goOnTapped(taps)}</button>` : nothing}<label class="btn file">${own.photo ? words.anotherPicture : words.takeOrChooseAPicture}<input type="file" accept="image/*" aria-label=${own.photo ? words.anotherPicture : words.takeOrChooseAPicture} @change=${take} /></label>${own.photo ? html`<button class="btn" @click=${() => desk.forget(own)}>${words.takeItsPointsAndPicture}</button>` : nothing}</div>
      <p class="small">${words.thePictureStaysOnThis}</p></section>`;
  }

  /** A blank name is none: the one that stands is there again. */
  #rename(own: OwnBrake, input: HTMLInputElement): void {
    this.desk.rename(own, input.value);
    input.value = this.desk.own?.title ?? own.title;
  }

  #edit(own: OwnBrake): TemplateResult {
    const { desk } = this;
    const judged = desk.judged;
    const count = Object.values(own.texts).filter((t) => t.trim() !== '').length;
    return html`<section class="head"><div class="row"><label for="title">${words.name}</label><input id="title" type="text" maxlength="40" autocomplete="off" .value=${unlessTyped(own.title)} @change=${(e: Event) => this.#rename(own, e.target as HTMLInputElement)} /></div>
      <p>${words.fromOfMeasuredTheRest(
        own.base.title,
        count,
        ownGroups.reduce((n, g) => n + g.fields.length, 0),
      )}</p>
      ${judged?.other.map((o) => html`<p class="bad">${o}</p>`)}</section>
      ${this.#photo(own)}
      ${ownGroups.map((g, i) => html`<section><h2>${g.name}</h2>${g.fields.map((f) => this.#field(own, f))}</section>${i === 0 ? html`${foundSection(desk, own)}${saysSection(desk)}` : nothing}`)}
      <section><h2>${words.assumedSinceItIsNot}</h2><ul class="plain">${assumed.map((a) => html`<li>${a}</li>`)}</ul><p data-letters>${lettersText(this.session.brake, own.texts.friction)}</p><p>${words.theseAreSWhatFollows(own.base.title)}</p>
        <div class="acts"><button class="btn" @click=${() => this.#save(own)}>${words.saveAsASceneFile}</button></div></section>`;
  }

  /** What stands on the bench, or what is to be mended first. */
  #sum(): TemplateResult {
    const { desk } = this;
    const { judged } = desk;
    const { gap, factor, drags } = desk.preview;
    const plain = desk.rigidPreview;
    const wrongs = judged ? Object.keys(judged.wrong).length + judged.other.length : 0;
    return html`<div class="sum" role="status" data-sum>${wrongs > 0 ? html`${marks.bad}<span><b>${words.toMend(wrongs, wrongs === 1 ? words.place : words.places)}</b> ${words.theLastSoundBrakeStays}</span>` : drags ? html`${marks.watch}<span><b>${words.drags}</b> ${words.aNewLiningTouchesThe}</span>` : Number.isNaN(factor) ? html`${marks.watch}<span>${words.atBarNoFactorCan(html`<b>${words.locks}</b>`, PRESS_BAR)}</span>` : html`${marks.good}<span>${words.onTheBenchNewClearance(html`<b data-gap>${number(gap, 2)}</b>`, html`<b data-factor>${number(factor, 2)}</b>`, PRESS_BAR, plain ? html` ${words.withShoesThatBendRigid(number(plain.gap, 2), html`<span data-rigid>${number(plain.factor, 2)}</span>`)}` : nothing)}</span>`}</div>`;
  }

  #save(own: OwnBrake): void {
    const url = URL.createObjectURL(
      new Blob([this.desk.fileOf(own)], { type: 'application/json' }),
    );
    const a = document.createElement('a');
    a.href = url;
    a.download = `${
      own.title
        .toLowerCase()
        .replace(/[^a-z0-9]+/g, '-')
        .replace(/^-|-$/g, '') || own.name
    }.json`;
    a.click();
    setTimeout(() => URL.revokeObjectURL(url), 1000);
    this.desk.tell(words.savedAs(a.download));
  }

  override render() {
    const { desk } = this;
    const { own } = desk;
    return html`<div class="top"><h1>${words.myBrake}</h1>${own ? this.#sum() : html`<p>${words.typeWhatYouMeasuredOn}</p>`}</div>
      <div class=${desk.said ? 'said' : 'hidden'} role="status" data-said>${desk.said}${desk.findings.length > 0 ? html`<ul class="bad">${desk.findings.map((f) => html`<li>${f}</li>`)}</ul>` : nothing}</div>
      <div class="scroll">${own ? this.#edit(own) : nothing}${this.#list()}${this.#make()}</div>
      <div class="note">${caution}<span>${words.springsStoreForceUseThe}</span></div>`;
  }
}
customElements.define('takeup-own', OwnPage);
