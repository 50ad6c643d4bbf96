import { kindNames } from '../ask/entries.ts';
import { ask } from '../ask/rank.ts';
import { lessonTexts } from '../ask/said/lessons.ts';
import { orderTexts, topicTexts } from '../ask/texts.ts';
import type { Leads } from '../ask/types.ts';
import { questions } from '../questions/index.ts';
import { stationNames } from '../record/moment.ts';
import type { Arguments } from './args.ts';
import { asJson } from './json.ts';
import type { Say } from './print.ts';

/** So many are told. */
const MOST = 10;

/** Where an entry leads, as the page names it. */
function placeOf(leads: Leads): string {
  switch (leads.to) {
    case 'question': {
      const station = questions.find((q) => q.id === leads.id)?.station;
      return station ? stationNames[station] : '';
    }
    case 'fault':
      return stationNames.faults;
    case 'station':
      return stationNames[leads.id];
    case 'see':
      return `${stationNames.see}: ${topicTexts[leads.topic]?.title ?? leads.topic}`;
    case 'lesson':
      return `${stationNames.lessons}: ${lessonTexts[leads.name]?.title ?? leads.name}`;
    case 'order':
      return `${stationNames.order}: ${orderTexts[leads.page].title}`;
    case 'figures':
      return stationNames[leads.figures.to];
    case 'names':
      return `${stationNames.apply}, names on`;
    case 'bending':
      return `${stationNames.apply}, key b`;
    case 'dials':
      return `${stationNames.apply}, key u`;
    case 'polygons':
      return `${stationNames.apply}, key p`;
    case 'table':
      return 'Table';
    case 'away':
      return 'Take away, key e';
    case 'bench':
      return 'Bench';
    case 'words':
      return 'Words of the trade here, key d';
    case 'nothing':
      return '';
  }
}

/** The same list as the page's: what was read, and what is found, best first. */
export function tell(args: Arguments, say: Say): number {
  const { read, found } = ask(args.scene, MOST);
  const told = found.map(({ entry }) => ({
    kind: kindNames[entry.kind],
    title: entry.title,
    text: entry.text,
    leads: placeOf(entry.leads),
  }));
  if (args.flags.has('json')) {
    const terms = read.map((t) => t.term);
    say(asJson({ command: 'ask', words: args.scene, read: terms, found: told }));
    return 0;
  }
  for (const { kind, title, text, leads } of told)
    say(`${kind}: ${title}\n  ${text}${leads === '' ? '' : `\n  → ${leads}`}`);
  return 0;
}
