import { css, html, LitElement, nothing } from 'lit';
import { labelWords, seeSaid as texts } from '../../../sim/words/en.ts';
import { caution } from '../../pieces/icons.ts';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import type { Session } from '../../session.ts';
import { look } from '../faults/look.ts';
import { doesNotCarry } from '../kind/carry.ts';
import { deskOf } from '../station.ts';
import { SeeDesk } from './desk.ts';
import { answers } from './sign-row.ts';
import { seeLook } from './styles.ts';
import { askedOf, groups, onRollers, UNSURE, valueText } from './words.ts';

/** What was said so far, as tiles to change; and everything else that can be said, by where one stands. */
export class SaidBoard extends LitElement {
  static override properties = {
    session: { attribute: false },
    rev: { type: Number },
    all: { type: Boolean },
    bare: { type: Boolean },
  };
  declare session: Session;
  declare rev: number;
  /** Everything that can be said is shown, not only what was. */
  declare all: boolean;
  /** What was said stands elsewhere. */
  declare bare: boolean;

  static override styles = [
    look,
    seeLook,
    css`
      :host { background: var(--sheet); display: block; }
      .tiles { display: flex; flex-wrap: wrap; gap: 10px; padding: 14px 22px; }
      .tile { border: 2px solid var(--ink); padding: 5px 14px 7px; text-align: left; min-height: 54px; background: var(--sheet); }
      .tile i { display: block; font-style: normal; font-size: 14.5px; font-weight: 540; color: var(--ink2); line-height: 1.2; }
      .tile b { display: block; font-size: 18px; font-weight: 700; line-height: 1.2; }
      .tile u { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
      .tile span { font-size: 14px; color: var(--ink2); }
      .grp { border-top: 2px solid var(--ink); padding: 4px 22px 12px; }
      .grp h2 { font-size: 20px; font-weight: 760; padding: 9px 0 3px; }
      .row { display: grid; grid-template-columns: minmax(200px, 34%) minmax(0, 1fr); gap: 4px 16px; padding: 7px 0; border-top: 1px solid var(--rule); align-items: center; }
      .row p { font-size: 16px; line-height: 1.25; font-weight: 600; }
      .row small { display: block; font-size: 14px; font-weight: 500; color: var(--ink2); }
      details summary { min-height: 56px; display: flex; align-items: center; padding: 0 14px; font-weight: 680; font-size: 18px; cursor: pointer; border-top: 2px solid var(--ink); }
      .figs { display: grid; grid-template-columns: repeat(4, minmax(0, 1fr)); gap: 8px; padding: 8px 0; }
      .figs label { font-size: 14px; color: var(--ink2); }
      .figs input { width: 100%; min-height: 44px; border: 2px solid var(--ink); background: var(--sheet); color: inherit; font: inherit; font-weight: 650; padding: 0 8px; }
      .kindnote { display: flex; gap: 10px; padding: 10px 22px; font-size: 16px; font-weight: 600; border-top: 1px solid var(--rule); }
      .kindnote svg { width: 28px; height: 26px; flex: none; }
      @media ${COMPACT} { .tiles { padding: 10px 16px; gap: 8px; } .tile b { font-size: 16px; } .grp { padding: 2px 16px 8px; } .grp h2 { font-size: 17px; } .row p { font-size: 15px; } .row { padding: 5px 0; } }
      @media ${NARROW} {
        .tiles { padding: 12px 14px; } .tile b { font-size: 18px; } .grp { padding: 2px 14px 12px; } .grp h2 { font-size: 20px; }
        .row { grid-template-columns: minmax(0, 1fr); padding: 10px 0; } .row p { font-size: 17px; }
        .figs { grid-template-columns: repeat(2, minmax(0, 1fr)); } .figs input { min-height: 54px; }
        .kindnote { padding: 10px 14px; }
      }
    `,
  ];

  #tiles(desk: SeeDesk) {
    const said = Object.entries(desk.part.said);
    if (said.length === 0)
      return html`<div class="tiles"><p>${this.all ? texts.tapWhatYouNoticeIn : texts.nothingSaidYetAnswerBelow}</p></div>`;
    return html`<div class="tiles" aria-label=${texts.whatISee} role="group">${said.map(
      ([key, value]) => {
        const asked = askedOf(key);
        if (!asked) return nothing;
        const text = value === UNSURE ? texts.notSure : valueText(key, value);
        return html`<button class="tile" data-tile=${key} @click=${() => desk.say(key, null)}><i>${asked.name}</i><b>${text} <span aria-hidden="true">×</span></b><u>${texts.takeItBack}</u></button>`;
      },
    )}</div>`;
  }

  #figures(desk: SeeDesk) {
    const read = (): void => {
      const of = (id: string): number => {
        const e = this.renderRoot.querySelector<HTMLInputElement>(`#${id}`);
        const text = e?.value.trim().replace(',', '.') ?? '';
        return text === '' ? Number.NaN : Number(text);
      };
      desk.rollers({ left: of('fl'), right: of('fr'), leftBack: of('bl'), rightBack: of('br') });
    };
    const field = (id: string, label: string) =>
      html`<div><label for=${id}>${label}</label><input id=${id} inputmode="decimal" @change=${read} /></div>`;
    return html`<p>${texts.aPrintOutForceA}</p><div class="figs">${field('fl', labelWords.left)}${field('fr', labelWords.right)}${field('bl', texts.leftBackwards)}${field('br', texts.rightBackwards)}</div>`;
  }

  #groups(desk: SeeDesk) {
    return groups.map(
      ([title, keys]) =>
        html`<section class="grp"><h2>${title}</h2>${title === onRollers ? this.#figures(desk) : nothing}${keys.map(
          (k) => {
            const a = askedOf(k);
            return a
              ? html`<div class="row" data-sign=${k}><p>${a.ask}${a.how ? html`<small>${a.how}</small>` : nothing}</p>${answers(desk, a, false)}</div>`
              : nothing;
          },
        )}</section>`,
    );
  }

  override render() {
    const desk = deskOf(SeeDesk, this.session);
    const note = doesNotCarry(this.session.moment.parts.kind);
    return html`${this.all && this.bare ? nothing : this.#tiles(desk)}${note && !this.bare ? html`<div class="kindnote">${caution}<span>${note}</span></div>` : nothing}
      ${this.all ? this.#groups(desk) : nothing}`;
  }
}
customElements.define('takeup-said', SaidBoard);
