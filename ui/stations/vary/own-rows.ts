import { html, nothing, type TemplateResult } from 'lit';
import { type Instant, LessonValues, quantitiesOf, SET, UNHELD } from '../../../sim/index.ts';
import { varyOwnRows as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { read, sceneOf } from '../../record/derive.ts';
import { brakes } from '../../scenes.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import { VaryDesk } from './desk.ts';
import { asAnswer } from './formulas.ts';

/** Formulas of one's own, told of the moment on the stage: a table like the others of the sheet. */
export function ownRows(session: Session, instant: Instant): TemplateResult | typeof nothing {
  const { bench, parts } = session.moment;
  if (parts.vary.formulas.length === 0) return nothing;
  const { own } = deskOf(VaryDesk, session);
  const { rig, shown: state, moment } = session;
  const { pressure, turning, cableForce: cable } = instant;
  const press = { pressure, turning, cable };
  const scene = read(sceneOf(bench.brake, moment.shelf) ?? brakes[0]).scene;
  const base = { scene, state, press, bending: false, steps: false };
  const stand = { rig, state, ...press, moreSlack: 0, held: UNHELD, rows: [], events: [] };
  const values = new LessonValues(stand);
  const sizes = new Map(quantitiesOf(base, rig.brake).map((q) => [`${SET}${q.id}`, q.value]));
  const of = (key: string): number => sizes.get(key) ?? values.of(key)?.value ?? Number.NaN;
  const rows = own.map((f) => {
    const value = f.read.ok ? f.read.worth(f.read.uses.map((k) => of(k.key))) : Number.NaN;
    return { f, value, told: asAnswer(f, value) };
  });
  return html`<h3>${words.ownFormulas}</h3><table aria-label=${words.ownFormulas}><thead><tr><th scope="col">${words.reading}</th><th scope="col">${words.value}</th><th scope="col">${words.from}</th></tr></thead>
    <tbody>${rows.map(
      ({ f, value, told }) =>
        html`<tr data-own=${f.own.name}><td>${f.own.name}</td><td class="v">${number(value, told.digits)}${told.unit ? html`<small>${told.unit}</small>` : nothing}</td><td class="f">${f.own.text}${f.read.ok ? nothing : html` ${words.atCharacterFoundAllowed(f.read.at + 1, f.read.found, f.read.why)}`}</td></tr>`,
    )}</tbody></table>`;
}
