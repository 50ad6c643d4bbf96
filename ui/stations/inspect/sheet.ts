import { html, LitElement, nothing, type TemplateResult } from 'lit';
import type { Wheel } from '../../../sim/index.ts';
import { language, inspectSheet as texts } from '../../../sim/words/en.ts';
import { largestBore, outOfRound, wheels } from '../../../sim/workshop/index.ts';
import { cautions } from '../../cautions.ts';
import { down, number } from '../../format.ts';
import { Hears } from '../../pieces/hears.ts';
import { caution } from '../../pieces/icons.ts';
import { marks } from '../../pieces/marks.ts';
import type { Session } from '../../session.ts';
import type { PageSize } from '../station.ts';
import { deskOf } from '../station.ts';
import { whatIfOf } from '../vary/tap.ts';
import { cutSection, cutStyles } from './cut.ts';
import { InspectDesk } from './desk.ts';
import { historySection, historyStyles } from './history.ts';
import { hows } from './hows.ts';
import { type AskLine, axleLines, heads, type Line, limitWords, lines } from './lines.ts';
import { noteStyles, photoNote } from './notes.ts';
import { LONGEST, type Paper } from './paper.ts';
import { PartDesk, partStyles, partsSection } from './parts.ts';
import { PastDesk } from './past.ts';
import { phonePage, phoneStyles } from './phone.ts';
import { printSheet } from './print.ts';
import { readAt, textAt } from './read.ts';
import { sheetStyles } from './styles.ts';
import { forecastText } from './words.ts';

const titled: Readonly<Record<Wheel, string>> = texts.titled;

/** What stands beside a place that is asked once while nothing is typed. */
const askedHint: Readonly<Record<AskLine['key'], string>> = texts.askedHint;

/** What is allowed, without the words about other units: those stand in the stage's foot. */
const brief = (allowed: string): string =>
  allowed.replace(/^a size such as /, '').replace(/, or in another unit.*$/, '');

/** The measurement sheet beside the stage. */
export class InspectSheet extends LitElement {
  static override properties = {
    session: { attribute: false },
    size: { type: String },
  };
  static override styles = [
    sheetStyles,
    phoneStyles,
    cutStyles,
    historyStyles,
    noteStyles,
    partStyles,
  ];
  declare session: Session;
  declare size: PageSize;

  constructor() {
    super();
    this.addController(new Hears(this));
  }

  get desk(): InspectDesk {
    return deskOf(InspectDesk, this.session);
  }

  #parts(): TemplateResult {
    return partsSection(deskOf(PartDesk, this.session));
  }

  get past(): PastDesk {
    return deskOf(PastDesk, this.session);
  }

  /** Enter goes to the next place of the same wheel, as on paper. */
  #enter = (e: KeyboardEvent): void => {
    if (e.key !== 'Enter') return;
    const all = [
      ...this.renderRoot.querySelectorAll<HTMLElement>(
        `[data-ask], [data-wheel="${this.desk.wheel}"]`,
      ),
    ];
    all[all.indexOf(e.currentTarget as HTMLElement) + 1]?.focus();
    e.preventDefault();
  };

  /** A row that is asked once for both wheels. */
  #asked(line: AskLine, i: number): TemplateResult {
    const { desk } = this;
    const { read } = desk.judged;
    const r = readAt(read, line, desk.wheel);
    const id = `v-${line.key}`;
    const told = r
      ? r.ok
        ? html`<small>${r.echo}</small>`
        : html`<span class="bad">${marks.bad} ${texts.foundAllowed(r.found, brief(r.allowed))}</span>`
      : html`<small>${askedHint[line.key]}</small>`;
    return html`<td class="f"><input type="text" maxlength=${LONGEST} autocomplete="off" spellcheck="false" aria-label=${line.name} aria-invalid=${r !== null && !r.ok} aria-describedby=${id} data-ask=${line.key} .value=${textAt(desk.paper, read, line, desk.wheel)} @focus=${() => desk.focus(desk.wheel, i)} @keydown=${this.#enter} @input=${(e: Event) => desk.writeAsked(line, (e.target as HTMLInputElement).value)} /></td><td class="v" colspan="3" id=${id}>${told}</td>`;
  }

  #field(line: Exclude<Line, AskLine>, i: number, wheel: Wheel): TemplateResult {
    const { desk } = this;
    const { read } = desk.judged;
    const label = texts.label(line.name, wheel);
    if (line.kind === 'worked') {
      const found = read.found[wheel];
      const value = line.key === 'largest' ? largestBore(found) : outOfRound(found);
      // A bore is read up, never towards good.
      return html`<output>${number(-down(-value, 2), 2)}</output>`;
    }
    const text = textAt(desk.paper, read, line, wheel);
    if (line.kind === 'look') {
      return html`<select aria-label=${label} data-wheel=${wheel} data-key=${line.key} @focus=${() => desk.focus(wheel, i)} @change=${(e: Event) => desk.write(wheel, line.key, (e.target as HTMLSelectElement).value)}>
        <option value="" ?selected=${text === ''}></option><option value="good" ?selected=${text === 'good'}>${line.good}</option><option value="bad" ?selected=${text === 'bad'}>${line.bad}</option></select>`;
    }
    const r = read.sizes[wheel][line.key] ?? null;
    return html`<input type="text" inputmode="text" maxlength=${LONGEST} autocomplete="off" spellcheck="false" aria-label=${label} aria-invalid=${r !== null && !r.ok} aria-describedby=${`v-${wheel}-${line.key}`} data-wheel=${wheel} data-key=${line.key} .value=${text} @focus=${() => desk.focus(wheel, i)} @keydown=${this.#enter} @input=${(e: Event) => desk.write(wheel, line.key, (e.target as HTMLInputElement).value)} />`;
  }

  #verdict(line: Line, wheel: Wheel): TemplateResult {
    const { read, verdict } = this.desk.judged;
    const r = readAt(read, line, wheel);
    const id = `v-${wheel}-${line.key}`;
    if (r && !r.ok) {
      return html`<div id=${id} class="bad">${marks.bad}<span>${texts.foundAllowed(r.found, brief(r.allowed))}</span></div>`;
    }
    const v = line.verdict ? verdict.wheels[wheel][line.verdict] : null;
    const other = r?.ok && r.echo.includes(' = ') ? r.echo : '';
    return html`<div id=${id} class=${v?.level === 'bad' ? 'bad' : ''}>${v?.words ? html`${marks[v.level]}<span>${v.words}</span>` : nothing}</div>${other ? html`<small>${other}</small>` : nothing}${this.#apart(line, wheel)}`;
  }

  /** What this wheel has more or less than the other; told once, at the right one. */
  #apart(line: Line, wheel: Wheel): TemplateResult | typeof nothing {
    const { differences } = this.desk.judged.verdict;
    const d = differences.find((x) => x.line === line.verdict);
    if (!d || wheel === 'left' || Math.abs(d.by) < 0.005) return nothing;
    return html`<small data-apart=${d.line}>${d.uneven ? html`${marks.watch} ` : nothing}${texts.thanLeft(number(Math.abs(d.by), 2), d.by < 0 ? texts.more : texts.less)}</small>`;
  }

  #limit(line: Line): TemplateResult | typeof nothing {
    const { desk } = this;
    const { read } = desk.judged;
    if (line.kind === 'ask') {
      return html`<small>${line.key === 'drumNew' ? texts.partsListOrItsUnworn : read.whose[line.key] || texts.noneSet}</small>`;
    }
    const key = line.limit;
    if (!key) return nothing;
    const [sense, name] = limitWords[key];
    if (key === 'drumMax') {
      // Asked for at the top of the sheet, and typed there.
      const mark = read.limits.drumMax;
      return html`${sense} ${mark === null ? '–' : number(mark, 2)}<small>${read.whose.drumMax || texts.typeTheMarkAbove}</small>`;
    }
    const r = read.limitReads[key];
    const set = read.limits[key];
    const text = desk.paper.limits[key] ?? (set === null ? '' : set.toFixed(2));
    return html`${sense} <input type="text" maxlength=${LONGEST} autocomplete="off" aria-label=${texts.limit(name)} aria-invalid=${r !== undefined && r !== null && !r.ok} data-limit=${key} .value=${text} @input=${(e: Event) => desk.writeLimit(key, (e.target as HTMLInputElement).value)} />
      <small>${r && !r.ok ? html`${texts.foundAllowed2(r.found, r.allowed)}` : read.whose[key] || texts.noneSet}</small>`;
  }

  #table(): TemplateResult {
    const { desk } = this;
    const head = (w: Wheel) =>
      html`<th colspan="2" class=${desk.wheel === w ? 'on' : ''} scope="colgroup">${titled[w]}</th>`;
    return html`<table><colgroup><col class="num" /><col class="name" /><col class="fc" /><col /><col class="fc" /><col /><col class="limc" /></colgroup><thead><tr><th class="num"><span class="hidden">${texts.balloon}</span></th><th scope="col">${texts.measureMm}</th>${head('left')}${head('right')}<th class="lim" scope="col">${texts.limitAndWhose}</th></tr></thead>
      <tbody>${lines.map((line, i) => html`<tr class=${desk.line === i ? 'now' : ''} data-line=${line.key}><td class="num"><i>${line.number}</i></td><th scope="row"><div class="named"><span>${line.name}</span>${whatIfOf(this.session, line.key, line.name)}</div></th>${line.kind === 'ask' ? this.#asked(line, i) : wheels.map((w) => html`<td class="f">${this.#field(line, i, w)}</td><td class="v">${this.#verdict(line, w)}</td>`)}<td class="lim">${this.#limit(line)}</td></tr>`)}</tbody></table>`;
  }

  #axle(): TemplateResult {
    const { desk } = this;
    const { read, verdict } = desk.judged;
    const r = read.limitReads.notches;
    const notches = desk.paper.limits.notches ?? '';
    return html`<div class="axle" role="group" aria-label=${texts.wholeAxle}>${axleLines.map(
      (l) => {
        const it = read.axle[l.key] ?? null;
        const note = it
          ? it.ok
            ? l.key === 'notchesAfter' || l.key === 'notchesBefore'
              ? ''
              : it.echo
            : texts.foundAllowed2(it.found, it.allowed)
          : hows[l.key];
        return html`<label><span>${l.name}${l.unit ? `, ${l.unit}` : ''}</span><input type="text" maxlength=${LONGEST} autocomplete="off" data-axle=${l.key} aria-invalid=${it !== null && !it.ok} .value=${desk.paper.axle[l.key] ?? ''} @input=${(e: Event) => desk.writeAxle(l.key, (e.target as HTMLInputElement).value)} /><span class="wide ${it && !it.ok ? 'bad' : ''}">${note}</span></label>`;
      },
    )}
      <label><span>${texts.notchesMostAllowed}</span><input type="text" maxlength=${LONGEST} autocomplete="off" data-limit="notches" aria-invalid=${r !== undefined && r !== null && !r.ok} .value=${notches} @input=${(e: Event) => desk.writeLimit('notches', (e.target as HTMLInputElement).value)} /><span class="wide ${verdict.notches.level === 'bad' ? 'bad' : ''}">${verdict.notches.words || texts.theMakersFigureUsualHand}</span></label></div>
      <div class="heads" role="group" aria-label=${texts.headingForThePrint}>${heads.map(([key, name]) => html`<label>${name}<input type="text" maxlength=${LONGEST} autocomplete="off" data-head=${key} .value=${desk.paper.head[key] ?? ''} @input=${(e: Event) => desk.writeHead(key, (e.target as HTMLInputElement).value)} /></label>`)}</div>`;
  }

  #tools(): TemplateResult {
    const { desk } = this;
    const { paper, limitSet } = desk;
    const { otherDrum } = desk.judged.read;
    const short = limitSet.id === 'teaching' || limitSet.id === 'maker';
    return html`<div class="tools"><label>${texts.limitsOf} <select data-set aria-label=${texts.limitsOf} @change=${(e: Event) => desk.chooseLimits((e.target as HTMLSelectElement).value as Paper['limitsFrom'])}>${desk.limitSets.map((s) => html`<option value=${s.id} ?selected=${s.id === paper.limitsFrom}>${s.name}</option>`)}</select></label>
      <label>${texts.aPlainNumberIsIn} <select aria-label=${texts.aPlainNumberIsIn} @change=${(e: Event) => desk.choosePlain((e.target as HTMLSelectElement).value === 'in' ? 'in' : 'mm')}><option value="mm" ?selected=${paper.plain === 'mm'}>mm</option><option value="in" ?selected=${paper.plain === 'in'}>${texts.inches}</option></select></label>
      <span class="about">${short ? limitSet.about : ''}</span></div>${short ? nothing : html`<div class="said">${limitSet.about}</div>`}${otherDrum ? html`<div class="said" data-other-drum>${texts.theDrumOnTheSheet(language.inside(limitSet.name))} <button class="btn" data-to-own @click=${() => desk.toOwn()}>${texts.makeItInMyBrake}</button></div>` : nothing}`;
  }

  #verdictBand(): TemplateResult {
    const { verdict } = this.desk.judged;
    const told = forecastText(this.desk.forecast);
    return html`<section class="verdict ${verdict.level}" aria-label=${texts.verdictOfTheSheet} data-verdict=${verdict.level}>${marks[verdict.level]}<div><div role="status"><h2>${verdict.title}</h2></div><div class="why" tabindex="0" role="group" aria-label=${texts.reasons}>${told && verdict.level !== 'bad' ? html`<p data-forecast>${told}</p>` : nothing}${verdict.reasons.map((r) => html`<p>${r}</p>`)}${told && verdict.level === 'bad' ? html`<p data-forecast>${told}</p>` : nothing}${verdict.level === 'good' ? html`<p>${texts.aPassOnASheet}</p>` : nothing}</div></div></section>`;
  }

  #acts(): TemplateResult {
    const { desk } = this;
    if (desk.asking) {
      return html`<div class="acts"><div class="ask" role="group" aria-label=${texts.clearTheSheet}>${texts.clearBothWheelsAndThe}
        <button class="btn" @click=${() => desk.clear()}>${texts.clearTheSheet2}</button><button class="btn" @click=${() => desk.ask(false)}>${texts.keepIt}</button></div></div>`;
    }
    return html`<div class="acts">
      <button class="btn" ?disabled=${desk.blank} @click=${() => desk.ask(true)}>${texts.clearSheet}</button>
      ${desk.canBringBack ? html`<button class="btn" title=${texts.theSheetAsItWas} @click=${() => desk.bringBack()}>${texts.bringBack}</button>` : nothing}
      <button class="btn" @click=${() => printSheet(desk, false)}>${texts.printSheet}</button>
      <button class="btn" @click=${() => printSheet(desk, true)} title=${texts.aBlankSheetForThe}>${texts.blank}</button>
      <div class="seg" role="group" aria-label=${texts.wheelOnTheStage}>${wheels.map((w) => html`<button class=${desk.wheel === w ? 'on' : ''} aria-pressed=${desk.wheel === w} @click=${() => desk.select(w, desk.line)}>${w === 'left' ? texts.left : texts.right}</button>`)}</div>
      <button class="btn" @click=${() => desk.take()}>${texts.takeTheValuesFromThe}</button>
      <button class="btn p" @click=${() => desk.load()}>${texts.loadTheWheelIntoThe(desk.wheel)}</button></div>`;
  }

  #said(): TemplateResult {
    const { desk } = this;
    return html`<div class=${desk.said ? 'said' : 'hidden'} role="status">${desk.said}${desk.findings.length > 0 ? html`<ul class="bad">${desk.findings.map((f) => html`<li>${f}</li>`)}</ul>` : nothing}</div>`;
  }

  override render() {
    const { desk } = this;
    if (this.size === 'narrow') {
      const parts = {
        acts: this.#acts(),
        said: this.#said(),
        tools: this.#tools(),
        axle: html`${this.#axle()}${this.#parts()}${historySection(this.past)}`,
        note: photoNote(this.past),
      };
      return phonePage(desk, parts);
    }
    return html`${this.#tools()}
      <div class="scroll" tabindex="0" role="region" aria-label=${texts.measurements}>${this.#table()}${cutSection(desk)}${this.#axle()}${this.#parts()}${historySection(this.past)}</div>
      ${this.#verdictBand()}${this.#said()}
      <div class="note">${caution}<span>${cautions.inspect}</span></div>
      ${this.#acts()}`;
  }
}
customElements.define('takeup-inspect', InspectSheet);
