import { css, html, nothing, type TemplateResult } from 'lit';
import type { Instant, Point } from '../../sim/index.ts';
import { labelWords, appPartPointer as words } from '../../sim/words/en.ts';
import { number } from '../format.ts';
import { NARROW } from '../pieces/page-sizes.ts';
import { sceneName } from '../record/scene-names.ts';
import type { Session } from '../session.ts';
import { outlineOf, type Pointed, partAt, partsOf } from '../stage/hit.ts';
import { type PartId, partNames } from '../stage/part-names.ts';
import { springPart } from '../stage/parts/return-springs.ts';
import type { Drawing } from '../stage/shapes.ts';
import { toMm } from '../stage/view.ts';

/** What is read off a part: a reading's key; with a star, one for each shoe. */
const shows: Partial<Record<PartId, readonly string[]>> = {
  lining: ['clearance*', 'peak*', 'lining*'],
  table: ['clearance*'],
  web: ['toeForce*', 'clearance*'],
  piston: ['pistonTravel*'],
  boot: ['pistonTravel*'],
  cylinder: ['linePressure', 'pistonForce'],
  fluid: ['linePressure'],
  cup: ['linePressure'],
  'bleed port': ['linePressure'],
  'anchor pin': ['anchorForce*'],
  abutment: ['anchorForce*'],
  strut: ['strutForce'],
  'toothed lever': ['tooth'],
  'star wheel': ['tooth'],
  drum: ['torque'],
};

interface Figure {
  readonly name: string;
  readonly value: string;
}

function figures({ part, side }: Pointed, session: Session, instant: Instant): Figure[] {
  const where = side === 'front' ? 'Front' : 'Rear';
  const keys = (shows[part] ?? []).map((k) => k.replace('*', where));
  const read = session
    .readings(instant)
    .filter((r) => keys.includes(r.key))
    .map((r) => ({ name: r.name, value: `${number(r.value, r.digits)}\u00a0${r.unit}`.trim() }));
  if (part !== 'upper spring' && part !== 'lower spring' && part !== 'return spring') return read;
  // Return springs are told one by one, under the scene's names.
  return instant.springs.flatMap((s, i) =>
    springPart(session.brake, i) === part
      ? [
          {
            name: sceneName(session.brake.springs[i]?.name ?? labelWords.spring),
            value: `${number(s.force, 0)}\u00a0N`,
          },
        ]
      : [],
  );
}

const title = ({ part, side }: Pointed): string =>
  `${partNames[part][0]}${side ? words.shoe(side) : ''}`;

/** Which part is pointed at, and what is told of it. */
export class PartPointer {
  at: Pointed | null = null;
  /** Told to assistive software: set by keys and taps, not by the mouse passing over. */
  said = '';

  /** Points at what lies under a place of the screen (px); the uppermost drawing counts. */
  point(drawings: readonly Drawing[], px: Point): void {
    this.at = null;
    for (const d of [...drawings].reverse()) {
      const { clip } = d;
      if (clip && Math.hypot(px[0] - clip.at[0], px[1] - clip.at[1]) > clip.radius) continue;
      this.at = partAt(d, toMm(d.view, px));
      if (this.at || clip) return;
    }
  }

  /** Goes on to the next part, or back. */
  step(drawing: Drawing, by: 1 | -1): void {
    const all = partsOf(drawing);
    const now = all.findIndex((p) => p.part === this.at?.part && p.side === this.at?.side);
    const first = by === 1 ? 0 : all.length - 1;
    this.at = all[now < 0 ? first : (now + by + all.length) % all.length] ?? null;
  }

  clear(): void {
    this.at = null;
    this.said = '';
  }

  say(session: Session): void {
    if (!this.at) return;
    if (session.asked) {
      this.said = words.enterThisOne(partNames[this.at.part][1]);
      return;
    }
    const told = figures(this.at, session, session.instant());
    this.said = `${title(this.at)}. ${partNames[this.at.part][1]} ${told.map((f) => `${f.name} ${f.value}.`).join(' ')}`;
  }

  /** The drawings with the part's outline over them. */
  outlined(drawings: readonly Drawing[]): readonly Drawing[] {
    const { at } = this;
    if (!at) return drawings;
    return drawings.map((d) => ({ ...d, shapes: [...d.shapes, ...outlineOf(d, at)] }));
  }

  card(session: Session, foot: number): TemplateResult {
    const { at } = this;
    return html`${at && !session.asked ? html`<div class="part" data-part=${at.part} .style=${`bottom:${foot + 14}px`}><b>${title(at)}</b><p>${partNames[at.part][1]}</p>${figures(at, session, session.instant()).map((f) => html`<div>${f.name} <strong>${f.value}</strong></div>`)}</div>` : nothing}
      <div class="said" role="status">${this.said}</div>`;
  }
}

export const pointerStyles = css`
  .part { position: absolute; left: 34px; width: 250px; padding: 8px 12px; border: 2px solid var(--ink); background: var(--sheet); color: var(--ink); font-size: 15px; line-height: 1.3; pointer-events: none; }
  .part b { font-size: 17px; font-weight: 700; }
  .part p { margin: 2px 0 4px; color: var(--ink2); }
  .said { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  :host([wall]) .part { left: 24px; bottom: 24px !important; width: calc(100% - 48px); font-size: 34px; border-width: 4px; }
  :host([wall]) .part b { font-size: 40px; }
  #host:focus-visible { outline: 4px solid var(--trail); outline-offset: -4px; }
  @media ${NARROW} { .part { left: 8px; width: 210px; font-size: 14px; } }
`;
