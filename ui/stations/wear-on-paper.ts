import { html, type TemplateResult } from 'lit';
import { KM, type LifeRow } from '../../sim/index.ts';
import { wearOnPaper as words } from '../../sim/words/en.ts';
import { cautions } from '../cautions.ts';
import { down, number } from '../format.ts';
import { paperChart, roundStep } from '../pieces/paper-chart.ts';
import { sheetPage } from '../pieces/paper-sheet.ts';
import { laneOf } from '../plot/lanes.ts';
import type { Session } from '../session.ts';
import { deskOf } from './station.ts';
import { WearDesk } from './wear-desk.ts';
import { forecastCell } from './wear-forecast.ts';

/** The wear report: the life on the bench as two charts, what it stands at, what happened, and what ends first. */

/** Events told on the page, the latest. */
const EVENTS = 12;
/** Dashes of a lane's curves in their order: one whole, one dashed, on paper without colours. */
const DASHES = [undefined, '7 4'] as const;

const km = (distance: number): string => number(Math.round(distance / KM), 0);

function chart(session: Session, rows: readonly LifeRow[], id: 'clearance' | 'lining') {
  const lane = laneOf(id, session.brake, rows);
  const to = Math.max(1000, (rows.at(-1)?.distance ?? 0) / KM);
  const from = (rows[0]?.distance ?? 0) / KM;
  const step = roundStep(lane.high - lane.low, 4);
  return paperChart({
    title: words.overKm(lane.title, lane.unit),
    x: { from: Math.min(from, to - 1000), to, step: roundStep(to - Math.min(from, to - 1000)) },
    y: { from: Math.floor(lane.low / step) * step, to: Math.ceil(lane.high / step) * step, step },
    tell: { x: (v) => number(v, 0), y: (v) => number(v, step < 0.1 ? 2 : 1) },
    lines: lane.series.map((s, i) => {
      const last = rows.at(-1);
      return {
        points: rows.map((r) => [r.distance / KM, s.value(r)] as const),
        name: last ? s.end(s.value(last)) : '',
        ...(DASHES[i] ? { dash: DASHES[i] } : {}),
      };
    }),
    limits: lane.limits.map(({ at, text }) => ({ at, name: text })),
  });
}

export function wearReport(session: Session): TemplateResult {
  const desk = deskOf(WearDesk, session);
  const { rows, told } = desk;
  const { brake } = session;
  const { drum, shoes } = brake;
  const first = rows[0];
  const now = rows[desk.at] ?? first;
  const mm = (v: number): string => number(down(v, 2), 2);
  const line = (name: string, of: (r: LifeRow) => number, limit: string, digits = 2) =>
    html`<tr><th>${name}</th><td>${first ? number(of(first), digits) : ''}</td><td><b>${now ? number(of(now), digits) : ''}</b></td><td>${limit}</td></tr>`;
  return sheetPage(
    session,
    {
      title: words.wearReport,
      under: words.fromToKm(
        session.guest ?? brake.title,
        km(first?.distance ?? 0),
        km(now?.distance ?? 0),
        desk.soFar.whole ? '' : words.partOfItIsStill,
      ),
      ...{
        kind: words.wearReport2,
        asks: words.asks,
        caution: `${cautions.wear} ${cautions.forecast}`,
      },
    },
    html`${chart(session, rows, 'clearance')}${chart(session, rows, 'lining')}
    <table><thead><tr><th>mm</th><th>${words.atTheStart}</th><th>${words.now}</th><th>${words.limit}</th></tr></thead><tbody>
      ${line(words.frontLiningThinnest, (r) => r.liningFront, words.least(mm(shoes.front.lining.thicknessMin)))}
      ${line(words.rearLiningThinnest, (r) => r.liningRear, words.least(mm(shoes.rear.lining.thicknessMin)))}
      ${line(words.drumDiameter, (r) => 2 * r.drumRadius, words.most(mm(2 * drum.radiusMax)))}
      ${line(words.clearanceBothLinings, (r) => r.clearance, '')}
      ${line(words.pedalTravel, (r) => r.pedalTravel, '', 1)}
      ${line(words.stepOfTheAdjuster, (r) => r.tooth, words.of(brake.adjuster.teeth), 0)}</tbody></table>
    <div class="forecast">${forecastCell(desk.forecast())}</div>
    <h2>${words.whatHappened(told.length > EVENTS ? words.theLastOf(EVENTS, told.length) : '')}</h2>
    ${told.length === 0 ? html`<p>${words.nothingYet}</p>` : html`<ul class="columns small">${told.slice(-EVENTS).map((e) => html`<li>${e.text}</li>`)}</ul>`}`,
  );
}
