import { css, html, LitElement, type TemplateResult } from 'lit';
import { language, kindCard as words } from '../../../sim/words/en.ts';
import { caution } from '../../pieces/icons.ts';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import type { Session } from '../../session.ts';
import { look } from '../faults/look.ts';
import { markOf } from '../park/marks.ts';
import { doesNotCarry } from './carry.ts';
import { type KindId, kindIds, type SetBy, setByIds, tellKind, tellSetBy } from './part.ts';
import { kindPictures, setByPictures } from './pictures.ts';

/** Pictures by which one's own kind is told, and what of the bench holds for it. How they are told apart is common practice. */

type Holds = 'all' | 'some' | 'not';

interface Told {
  readonly name: string;
  readonly tell: string;
  readonly holds: Holds;
  readonly says: string;
}

const kinds: Readonly<Record<KindId, Told>> = {
  pins: {
    name: words.pinsName,
    tell: words.pinsTell,
    holds: 'all',
    says: words.pinsSays,
  },
  flats: {
    name: words.flatsName,
    tell: words.flatsTell,
    holds: 'all',
    says: words.flatsSays,
  },
  servo: {
    name: words.servoName,
    tell: words.servoTell,
    holds: 'not',
    says: words.servoSays,
  },
  'in disc': {
    name: words.inDiscName,
    tell: words.inDiscTell,
    holds: 'not',
    says: words.inDiscSays,
  },
};

const setBys: Readonly<Record<SetBy, Told>> = {
  toothed: {
    name: words.toothedName,
    tell: words.toothedTell,
    holds: 'all',
    says: words.toothedSays,
  },
  shoe: {
    name: words.shoeName,
    tell: words.shoeTell,
    holds: 'all',
    says: words.shoeSays,
  },
  lever: {
    name: words.leverName,
    tell: words.leverTell,
    holds: 'some',
    says: words.leverSays,
  },
  reverse: {
    name: words.reverseName,
    tell: words.reverseTell,
    holds: 'not',
    says: words.reverseSays,
  },
  taper: {
    name: words.taperName,
    tell: words.taperTell,
    holds: 'all',
    says: words.taperSays,
  },
  hand: {
    name: words.handName,
    tell: words.handTell,
    holds: 'some',
    says: words.handSays,
  },
};

const sign = (holds: Holds): TemplateResult =>
  holds === 'some' ? caution : markOf(holds === 'all' ? 'tick' : 'cross');

export class KindCard extends LitElement {
  static override properties = { session: { attribute: false }, rev: { type: Number } };
  declare session: Session;
  declare rev: number;

  static override styles = [
    look,
    css`
      :host { background: var(--sheet); display: block; }
      .four, .six { display: grid; border-bottom: 2px solid var(--ink); }
      .four { grid-template-columns: repeat(4, minmax(0, 1fr)); }
      .six { grid-template-columns: repeat(6, minmax(0, 1fr)); }
      .one { display: flex; flex-direction: column; gap: 3px; padding: 12px 18px 14px; border-left: 1px solid var(--rule); text-align: left; font-size: 16px; line-height: 1.3; }
      .one:first-child { border-left: 0; }
      .one.on { background: var(--panel); box-shadow: inset 0 7px 0 var(--ink); }
      .one:hover { background: var(--panel); }
      .pic { display: block; width: 100%; max-width: 210px; margin: 4px auto 8px; }
      .six .pic { max-width: 120px; }
      .one b { font-size: 18px; font-weight: 740; line-height: 1.15; }
      .is { display: flex; gap: 8px; align-items: flex-start; font-weight: 640; margin-top: auto; padding-top: 6px; }
      .is svg { width: 20px; height: 20px; flex: none; margin-top: 1px; }
      h2 { font-size: 20px; font-weight: 760; padding: 11px 18px 9px; border-bottom: 1px solid var(--rule); }
      .mine { display: flex; flex-wrap: wrap; gap: 8px 20px; padding: 12px 18px; align-items: center; font-size: 17px; }
      .mine p { flex: 1 1 240px; display: flex; gap: 10px; align-items: flex-start; font-weight: 600; }
      .mine p svg { width: 28px; height: 26px; flex: none; }
      .pic * { stroke: var(--ink); stroke-width: 1.6; }
      .drum { fill: var(--drum); } .plate { fill: var(--plate); } .web { fill: var(--web); } .lining { fill: var(--lining); }
      .cyl { fill: var(--fluid); } .strut { fill: var(--strut); } .pic .adj { fill: var(--adj-fill); stroke: var(--adj); } .hub { fill: var(--hub); }
      .pin { fill: var(--ink); } .block { fill: var(--rule); } .disc { fill: var(--drum); } .caliper { fill: var(--rule); } .cable, .lever { fill: var(--rule); }
      .pic .push { fill: none; stroke-width: 3; } .tip { fill: var(--ink); } .pic .thin { fill: none; stroke-width: 1.1; }
      @media ${COMPACT} { .one { font-size: 14px; padding: 8px 12px 10px; } .one b { font-size: 15.5px; } h2 { font-size: 17px; padding: 7px 14px; } .pic { max-width: 150px; } .six .pic { max-width: 84px; } .mine { font-size: 15px; padding: 8px 14px; } }
      @media ${NARROW} {
        .four, .six { grid-template-columns: minmax(0, 1fr); }
        .one { border-left: 0; border-top: 1px solid var(--rule); display: grid; grid-template-columns: 108px minmax(0, 1fr); gap: 2px 14px; font-size: 16px; padding: 10px 14px; }
        .one:first-child { border-top: 0; } .one.on { box-shadow: inset 8px 0 0 var(--ink); }
        .pic { grid-row: 1 / span 3; width: 108px; margin: 0; align-self: center; } .six .pic { width: 84px; }
        .one b { font-size: 19px; } h2 { font-size: 20px; padding: 11px 14px 9px; } .is { margin: 0; } .mine { font-size: 17px; padding: 12px 14px; }
      }
    `,
  ];

  #one(
    id: string,
    t: Told,
    picture: TemplateResult,
    box: string,
    on: boolean,
    tell: () => void,
  ): TemplateResult {
    return html`<button class="one ${on ? 'on' : ''}" data-kind=${id} aria-pressed=${on} @click=${tell}>
      <svg class="pic" viewBox=${box} role="img" aria-label=${words.drawnFromOutside(t.name)}>${picture}</svg>
      <b>${t.name}</b><span>${t.tell}</span><span class="is">${sign(t.holds)}<span>${t.says}</span></span></button>`;
  }

  override render() {
    const { session } = this;
    const mine = session.moment.parts.kind;
    const note = doesNotCarry(mine);
    return html`<div class="kinds" data-kinds>
      <div class="four" role="group" aria-label=${words.kind}>${kindIds.map((id) => this.#one(id, kinds[id], kindPictures[id], '-102 -102 204 204', mine.kind === id, () => session.do(tellKind, mine.kind === id ? null : id)))}</div>
      <h2>${words.whatSetsItsLength}</h2>
      <div class="six" role="group" aria-label=${words.whatSetsItsLength2}>${setByIds.map((id) => this.#one(id, setBys[id], setByPictures[id], '-56 -56 112 112', mine.setBy === id, () => session.do(tellSetBy, mine.setBy === id ? null : id)))}</div>
      <div class="mine" role="status"><b>${words.mine(mine.kind ? kinds[mine.kind].name : words.notTold, mine.setBy ? ` · ${language.inside(setBys[mine.setBy].name)}` : '')}</b>
        <p>${note ? html`${caution}<span>${words.eachAnswerSaysSoAgain(note)}</span>` : mine.kind ? words.allThatIsSaidHere : words.tapWhatLooksLikeYours}</p></div></div>`;
  }
}
customElements.define('takeup-kind', KindCard);
