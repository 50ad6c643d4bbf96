import { css, html, LitElement, nothing } from 'lit';
import { language, seeLikely as words } from '../../../sim/words/en.ts';
import { neverSeen } from '../../../sim/workshop/index.ts';
import { cautions } from '../../cautions.ts';
import { caution } from '../../pieces/icons.ts';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import type { Session } from '../../session.ts';
import { look } from '../faults/look.ts';
import { deskOf } from '../station.ts';
import { SeeDesk, type ToldCause } from './desk.ts';
import { answers } from './sign-row.ts';
import { seeLook } from './styles.ts';

/** What speaks for a cause and what it leaves unexplained, as sentences. */
const why = (c: ToldCause): string =>
  [
    c.fitsTo.length > 0 ? words.because(c.fitsTo.join('; ')) : words.nothingThatYouSaidPoints,
    c.against.length > 0 ? words.itDoesNotExplainThat(c.against.join('; ')) : '',
  ]
    .filter(Boolean)
    .join(' ');

/** The cheapest next check with its answers, and the likely causes, best first. */
export class LikelyList extends LitElement {
  static override properties = { session: { attribute: false }, rev: { type: Number } };
  declare session: Session;
  declare rev: number;

  static override styles = [
    look,
    seeLook,
    css`
      :host { background: var(--sheet); display: block; border: 2px solid var(--ink); }
      .check { background: var(--ink); color: var(--sheet); padding: 12px 18px 14px; }
      .check i { font-style: normal; font-size: 15.5px; font-weight: 560; }
      .check h2 { font-size: 22px; line-height: 1.2; font-weight: 740; margin: 2px 0 3px; }
      .check p { font-size: 15.5px; line-height: 1.3; margin-bottom: 9px; }
      .check .opts { margin-bottom: 4px; }
      .check button:focus-visible { outline-color: var(--sheet); }
      .would { border-top: 1px solid var(--rule); margin-top: 9px; padding-top: 8px; display: grid; gap: 3px; font-size: 15.5px; line-height: 1.3; }
      .head { display: flex; justify-content: space-between; padding: 8px 18px 5px; font-size: 15px; color: var(--ink2); font-weight: 560; }
      .two { padding: 9px 18px; font-size: 16.5px; font-weight: 640; border-bottom: 1px solid var(--rule); }
      ol { list-style: none; margin: 0; padding: 0; }
      li { border-top: 1px solid var(--rule); }
      li button { width: 100%; display: grid; grid-template-columns: 30px minmax(0, 1fr) auto; gap: 1px 8px; padding: 8px 18px 10px; align-items: start; text-align: left; }
      li button:hover { background: var(--panel); }
      li .n { font-style: normal; font-size: 21px; font-weight: 740; grid-row: 1 / span 3; }
      li b { font-size: 19px; font-weight: 720; line-height: 1.2; }
      .fit { display: inline-flex; gap: 3px; margin-top: 4px; }
      .fit u { width: 13px; height: 15px; border: 2px solid var(--ink); }
      .fit u.on { background: var(--ink); }
      li span, li small { grid-column: 2 / 4; font-size: 15.5px; line-height: 1.3; }
      li small { color: var(--ink2); font-size: 14.5px; }
      .never, .danger { padding: 9px 18px; font-size: 15px; line-height: 1.3; color: var(--ink2); border-top: 1px solid var(--rule); }
      .danger { display: flex; gap: 10px; color: var(--ink); font-weight: 680; font-size: 16px; }
      .danger svg { width: 30px; height: 27px; flex: none; }
      @media ${COMPACT} { .check { padding: 9px 14px 11px; } .check h2 { font-size: 18px; } .check p, .would { font-size: 14px; } li b { font-size: 16px; } li span { font-size: 14px; } li small { font-size: 13.5px; } li button { padding: 5px 14px 7px; } .head { padding: 5px 14px 3px; font-size: 14px; } .never, .danger { padding: 7px 14px; font-size: 14px; } }
      @media ${NARROW} { :host { border-width: 2px 0 0; } .check { padding: 12px 14px 14px; } .check h2 { font-size: 21px; } .check p, .would { font-size: 15.5px; } li b { font-size: 19px; } li span { font-size: 16px; } li small { font-size: 14.5px; } li button { padding: 9px 14px 10px; } .danger { font-size: 16px; } }
    `,
  ];

  #check(desk: SeeDesk) {
    const { signs, check } = desk.asked;
    const [first] = signs;
    if (!first)
      return Object.keys(desk.said).length === 0
        ? nothing
        : html`<div class="check"><i>${words.noCheckPartsWhatIs}</i><h2>${words.theyAreAlikeInAll}</h2><p>${words.openTheDrumAndLook}</p></div>`;
    const would = desk.wouldShow(first.key);
    const plain = this.#would(desk, first.key, would);
    return html`<div class="check" data-check-next=${check?.check.id ?? 'first'}>
      <i>${check ? words.cheapestNextCheck(check.minutes, check.minutes === 1 ? words.minute : words.minutes, check.check.name) : words.toBeginWith}</i>
      ${signs.map((a) => html`<h2>${a.ask}</h2>${a.how ? html`<p>${a.how}</p>` : nothing}${answers(desk, a)}`)}
      ${would.length > 1 ? html`<div class="would"><div>${words.askedBecauseTheAnswerParts}</div>${would.map((w) => html`<div><b>${w.shows}</b>: ${w.faults.map((f) => f.name).join(', ')}</div>`)}${plain}</div>` : nothing}
    </div>`;
  }

  /** What the check would show of rigid shoes, where the bench's bend. */
  #would(desk: SeeDesk, key: string, own: ReturnType<SeeDesk['wouldShow']>) {
    const { rigidTable } = desk;
    if (!rigidTable) return nothing;
    const line = (all: typeof own): string =>
      all.map((w) => `${w.shows}: ${w.faults.map((f) => f.name).join(', ')}`).join('; ');
    const plain = line(desk.wouldShow(key, rigidTable));
    return html`<div data-rigid>${words.rigid(plain === line(own) ? words.theSame : plain)}</div>`;
  }

  #cause(desk: SeeDesk, c: ToldCause, at: number) {
    return html`<li data-cause=${c.fault.id}><button @click=${() => desk.lookAt(c.fault.id)}>
      <i class="n">${at + 1}</i><b>${c.fault.name}</b>
      <div class="fit" role="img" aria-label=${words.fitsOf5(c.fits)}>${[1, 2, 3, 4, 5].map((n) => html`<u class=${n <= c.fits ? 'on' : ''}></u>`)}</div>
      <span data-why>${why(c)}</span>
      <small data-also>${c.also.length > 0 ? words.thenYouWouldAlsoFind(c.also.join('; ')) : c.fault.tells}</small>${c.rigid === null ? nothing : html`<small class="rigid">${words.rigid2(c.rigid)}</small>`}
    </button></li>`;
  }

  override render() {
    const desk = deskOf(SeeDesk, this.session);
    const { causes, pair, unseen, working } = desk;
    const [first] = causes;
    return html`${unseen.map((u) => html`<div class=${u.danger ? 'danger' : 'never'}>${u.danger ? caution : nothing}<span>${u.text}</span></div>`)}
      ${this.#check(desk)}
      ${working ? html`<p class="never" role="status">${words.workedOutOf(this.session.bending ? words.ofRigidShoesUntilWhat : words.figuresOfTheQuayVan, working.done, working.of)}</p>` : nothing}
      ${pair ? html`<p class="two" data-pair>${words.noSingleCauseShowsAll(language.and(pair.map((f) => f.name)))}</p>` : nothing}
      ${causes.length > 0 ? html`<div class="head"><span>${words.likelyBestFirst}</span><span>${words.fitsWhatISee}</span></div><ol aria-label=${words.likelyCauses}>${causes.map((c, i) => this.#cause(desk, c, i))}</ol>` : nothing}
      <p class="never">${neverSeen}</p>
      ${first ? html`<div class="danger">${caution}<span>${cautions[first.fault.caution]}</span></div>` : nothing}`;
  }
}
customElements.define('takeup-likely', LikelyList);
