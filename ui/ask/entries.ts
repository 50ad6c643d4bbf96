import { askMore, askEntries as words } from '../../sim/words/en.ts';
import { faults, notShown } from '../../sim/workshop/index.ts';
import { cautions } from '../cautions.ts';
import { named, terms } from '../glossary.ts';
import { questions } from '../questions/index.ts';
import { type StationId, stationNames } from '../record/moment.ts';
import { type PartId, partNames } from '../stage/part-names.ts';
import { orderPages } from '../stations/order/plan.ts';
import { readingEntries } from './readings.ts';
import { awaySaid } from './said/away.ts';
import { faultsSaid } from './said/faults.ts';
import { lessonTexts } from './said/lessons.ts';
import { orderSaid } from './said/order.ts';
import {
  bendingSaid,
  computedSaid,
  dialsSaid,
  glossary,
  notHere,
  polygonsSaid,
  stationsSaid,
  topicsSaid,
} from './said/other.ts';
import { cautionsSaid, partsSaid } from './said/parts.ts';
import { questionsSaid } from './said/questions.ts';
import { linesOf, toldOf } from './said/told-faults.ts';
import { toldOther } from './said/told-other.ts';
import { toldQuestions } from './said/told-questions.ts';
import { orderTexts, stationTexts, topicTexts } from './texts.ts';
import type { Entry, Kind } from './types.ts';

/** As they are told on the page. */
export const kindNames: Readonly<Record<Kind, string>> = words.kindNames;

const plainly = (text: string): string => text.replaceAll('’', "'");

const told: readonly Entry[] = [
  ...questions.map(
    (q): Entry => ({
      key: `question:${q.id}`,
      kind: 'question',
      title: q.ask,
      text: q.answer || q.steps,
      leads: q.station ? { to: 'question', id: q.id } : { to: 'nothing' },
      says: [plainly(q.ask), ...(questionsSaid[q.id] ?? []), ...linesOf(toldQuestions[q.id] ?? '')],
    }),
  ),
  ...faults.map(
    (f): Entry => ({
      key: `fault:${f.id}`,
      kind: 'fault',
      title: f.name,
      text: f.tells,
      leads: { to: 'fault', id: f.id },
      says: [plainly(f.name), plainly(f.short), ...faultsSaid[f.id], ...toldOf(f.id)],
    }),
  ),
  ...notShown.map(
    (n): Entry => ({
      key: `not here:${n.id}`,
      kind: 'not here',
      title: n.name,
      text: words.notShown(n.because),
      leads: { to: 'see', topic: 'noise' },
      says: [n.name],
    }),
  ),
  ...(Object.keys(stationTexts) as StationId[]).map(
    (id): Entry => ({
      key: `station:${id}`,
      kind: 'station',
      title: stationTexts[id]?.title ?? stationNames[id],
      text: stationTexts[id]?.text ?? '',
      leads: { to: 'station', id },
      says: stationsSaid[id] ?? [],
    }),
  ),
  ...Object.entries(topicTexts).map(
    ([topic, { title, text }]): Entry => ({
      key: `check:${topic}`,
      kind: 'check',
      title,
      text,
      leads: { to: 'see', topic },
      says: topicsSaid[topic] ?? computedSaid[topic] ?? [],
    }),
  ),
  ...notHere.map(
    (n): Entry => ({
      key: `not here:${n.id}`,
      kind: 'not here',
      title: n.title,
      text: n.text,
      leads:
        n.id === 'servo' || n.id === 'in disc' || n.id === 'other kinds'
          ? { to: 'station', id: 'kind' }
          : { to: 'nothing' },
      says: n.says,
      ...(n.danger ? { danger: true } : {}),
    }),
  ),
  ...orderPages.map(
    (page): Entry => ({
      key: `order:${page}`,
      kind: 'station',
      ...orderTexts[page],
      leads: { to: 'order', page },
      says: orderSaid[page],
    }),
  ),
  ...Object.entries(lessonTexts).map(
    ([name, { title, idea, says }]): Entry => ({
      key: `lesson:${name}`,
      kind: 'lesson',
      title,
      text: idea,
      leads: { to: 'lesson', name },
      says,
    }),
  ),
  ...(Object.keys(partNames) as PartId[]).map(
    (id): Entry => ({
      key: `part:${id}`,
      kind: 'part',
      title: partNames[id][0],
      text: partNames[id][1],
      leads: { to: 'names' },
      says: [id, words.whereIsThe(id), ...(partsSaid[id] ?? [])],
    }),
  ),
  ...terms
    .filter((t) => t.pair)
    .map(
      (t): Entry => ({
        key: `term:${t.id}`,
        kind: 'word',
        title: `${t.word.charAt(0).toUpperCase()}${t.word.slice(1)}`,
        text: `${t.means} ${named(t, 'British')}.`,
        leads: { to: 'nothing' },
        says: [...(t.pair ?? [])],
      }),
    ),
  ...glossary.map(
    ([id, word, means, ...says]): Entry => ({
      key: `word:${id}`,
      kind: 'word',
      title: word,
      text: means,
      leads: { to: 'names' },
      says: [word, ...says],
    }),
  ),
  ...awaySaid,
  { key: 'word:dials', kind: 'word', ...dialsSaid, leads: { to: 'dials' } },
  { key: 'word:force polygons', kind: 'word', ...polygonsSaid, leads: { to: 'polygons' } },
  { key: 'word:shoes that bend', kind: 'word', ...bendingSaid, leads: { to: 'bending' } },
  ...(Object.keys(cautionsSaid) as (keyof typeof cautionsSaid)[]).map(
    (id): Entry => ({
      key: `caution:${id}`,
      kind: 'caution',
      title: cautions[id].split(/(?<=[.:;]) /)[0] ?? '',
      text: cautions[id],
      leads: { to: 'nothing' },
      says: cautionsSaid[id] ?? [],
    }),
  ),
  ...readingEntries,
];

/** Everything that can be found, in no order that matters. */
export const entries: readonly Entry[] = told.map((e) => ({
  ...e,
  says: [...e.says, ...linesOf(toldOther[e.key] ?? ''), ...(askMore.lines[e.key] ?? [])],
}));
