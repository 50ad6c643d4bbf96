import { html, nothing, type TemplateResult } from 'lit';
import { type Instant, isTold, type Reading, readingOf } from '../../sim/index.ts';
import { language, appKept as texts } from '../../sim/words/en.ts';
import { number } from '../format.ts';
import type { Session } from '../session.ts';
import { comb } from '../stage/layers/comb.ts';
import { fan } from '../stage/layers/fan.ts';
import { forces } from '../stage/layers/forces.ts';
import { liftLimit } from '../stage/parts/strut.ts';
import { placesOf } from '../stage/place.ts';
import type { StageInput } from '../stage/scene.ts';
import type { Shape } from '../stage/shapes.ts';
import { type One, oneOf } from '../stations/compare/one.ts';
import { beside, forget, haunt, keep, keptNow } from '../stations/compare/wants.ts';
import { differences, titleOf } from '../stations/compare/words.ts';
import type { Station } from '../stations/station.ts';

/** A moment that is kept, beside what stands on the bench: a thin grey ghost, and a second figure. */

/** The kept one, where there is one and it is to be seen. */
function keptOne(session: Session): One | null {
  const { kept, ghost } = session.moment.parts.compare;
  return kept && ghost ? oneOf(kept, session.moment) : null;
}

/** Thin and grey, whatever it was: outlines alone, behind nothing. */
const pale = (s: Shape): Shape => ({
  key: `kept ${s.key}`,
  path: s.path,
  ...(s.place ? { place: s.place } : {}),
  ...(s.evenOdd ? { evenOdd: true } : {}),
  style: { stroke: 'ink2', width: 1.5 },
  group: 'kept',
});

/** Gap fan, comb and forces of the kept moment, in the layers that are on. */
export function ghostShapes(session: Session, input: StageInput): readonly Shape[] {
  const one = keptOne(session);
  if (!one) return [];
  const { brake, asKept: instant, state } = one;
  const { layers, view } = input;
  const told = isTold(instant);
  const out: Shape[] = [];
  // What stands for an area is drawn by its edge.
  if (layers.fan)
    out.push(
      ...fan(brake, instant, layers.fan, view).shapes.filter((s) => !s.key.endsWith('area')),
    );
  if (layers.comb && told)
    out.push(...comb(brake, instant, view, false).shapes.filter((s) => !s.key.endsWith('bars')));
  if (layers.forces && told) {
    const { shoes } = placesOf(brake, instant, liftLimit(brake, state.temperature));
    out.push(...forces(brake, instant, shoes, view, false).shapes);
  }
  return out.map(pale);
}

/** Readings of the kept moment, where one is kept. */
export function keptReadings(session: Session): readonly Reading[] | null {
  const one = keptOne(session);
  return one?.readings(one.asKept) ?? null;
}

export const keepNow = (session: Session): void => session.do(keep);

/** What is read of both: what tells a moment from another. */
const TOLD: readonly string[] = [
  'linePressure',
  'torque',
  'clearanceMean',
  'restClearanceMean',
  'strutForce',
  'tooth',
];

/** Kept and now, side by side in figures, where something is kept. */
export function keptBeside(
  session: Session,
  instant: Instant,
  station: Station,
): TemplateResult | typeof nothing {
  const { kept, ghost } = session.moment.parts.compare;
  if (!kept || station.draws || station.covers?.(session)) return nothing;
  const one = oneOf(kept, session.moment);
  const was = one.readings(one.asKept);
  const is = session.readings(instant);
  const now = { ...keptNow(session.moment), cable: kept.cable };
  const causes = differences(one, oneOf(now, session.moment)).filter((d) => !d.follows);
  const pressed = kept.pedal !== session.pedal;
  const count = causes.length + (pressed ? 1 : 0);
  const names = [
    ...causes.map((d) => language.inside(d.name)),
    ...(pressed ? [texts.thePedal] : []),
  ];
  const rows = TOLD.filter(
    (key) => was.some((r) => r.key === key) && is.some((r) => r.key === key),
  );
  return html`<section class="blk kept" aria-labelledby="kept"><h2 id="kept">${texts.keptAsAGhost}</h2>
    <p>${titleOf(one)}${kept.pedal > 0 ? `, ${number(kept.pedal, 0)} bar` : ''}. ${count === 0 ? texts.nothingDiffersYet : count === 1 ? texts.oneThingDiffers(names[0]) : html`<b>${texts.thingsDiffer(count)}</b>: ${names.join('; ')}.`}</p>
    <table><thead><tr><td></td><th scope="col">${texts.kept}</th><th scope="col">${texts.now}</th></tr></thead>
      <tbody>${rows.map((key) => {
        const [a, b] = [readingOf(was, key), readingOf(is, key)];
        return html`<tr data-kept=${key}><th scope="row">${a.name}${a.unit ? html` <small>${a.unit}</small>` : nothing}</th><td>${number(a.value, a.digits)}</td><td>${number(b.value, b.digits)}</td></tr>`;
      })}</tbody></table>
    <div><button class="btn" @click=${() => session.do(beside)}>${texts.sideBySide(html`<kbd aria-hidden="true">x</kbd>`)}</button>
      <button class="btn" aria-pressed=${ghost} @click=${() => session.do(haunt, !ghost)}>${ghost ? texts.hideIt : texts.drawIt}</button>
      <button class="btn" @click=${() => session.do(forget)}>${texts.forget}</button></div>
  </section>`;
}
