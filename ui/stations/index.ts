import type { CSSResult } from 'lit';
import type { StationId } from '../record/moment.ts';
import { apply } from './apply.ts';
import { drumStyles } from './drum-off/styles.ts';
import { pageStyles } from './inspect/page-styles.ts';
import { shoesStyles } from './new-shoes/styles.ts';
import { ownPageStyles } from './own/styles.ts';
import { parkStyles } from './park/styles.ts';
import { questionsStyles } from './questions/styles.ts';
import { seePageStyles } from './see/page-styles.ts';
import { startStyles } from './start/page-styles.ts';
import type { Station } from './station.ts';

/** What the page knows of a station before it is opened. */
export interface Entry {
  readonly id: StationId;
  /** Key that opens it. */
  readonly key: string;
  /** Has no tab: it is opened from the head of the page, from Start, or by another station. */
  readonly noTab?: true;
  /** Reads sizes as people type them: it is shown once their reader is loaded (`ui/app/waiting.ts`). */
  readonly readsSizes?: true;
  /** Rules for what only this station shows. */
  readonly styles?: CSSResult;
  /** Loads the station itself, once. */
  readonly load: () => Promise<Station>;
}

/** The stations in the order of their tabs; the first is open at first, and the only one that the page brings along. */
export const stations: readonly [Entry, ...Entry[]] = [
  { id: 'apply', key: '1', load: async () => apply },
  { id: 'wear', key: '2', load: async () => (await import('./wear.ts')).wear },
  {
    id: 'drum-off',
    key: '3',
    styles: drumStyles,
    load: async () => (await import('./drum-off/index.ts')).drumOff,
  },
  {
    id: 'park',
    key: '4',
    styles: parkStyles,
    load: async () => (await import('./park/index.ts')).park,
  },
  {
    id: 'inspect',
    key: '5',
    readsSizes: true,
    styles: pageStyles,
    load: async () => (await import('./inspect/index.ts')).inspect,
  },
  {
    id: 'new-shoes',
    key: '6',
    styles: shoesStyles,
    load: async () => (await import('./new-shoes/index.ts')).newShoes,
  },
  {
    id: 'faults',
    key: '7',
    load: async () => (await import('./faults/station.ts')).faultsStation,
  },
  {
    id: 'own',
    key: '8',
    readsSizes: true,
    styles: ownPageStyles,
    load: async () => (await import('./own/index.ts')).own,
  },
  {
    id: 'questions',
    key: '9',
    styles: questionsStyles,
    load: async () => (await import('./questions/station.ts')).questionsStation,
  },
  {
    id: 'start',
    key: 's',
    noTab: true,
    styles: startStyles,
    load: async () => (await import('./start/index.ts')).start,
  },
  {
    id: 'ask',
    key: '/',
    noTab: true,
    load: async () => (await import('./ask/index.ts')).askStation,
  },
  {
    id: 'see',
    key: 'i',
    noTab: true,
    styles: seePageStyles,
    load: async () => (await import('./see/index.ts')).see,
  },
  {
    id: 'kind',
    key: 'k',
    noTab: true,
    load: async () => (await import('./kind/index.ts')).kind,
  },
];

/** The station of an id; the first for an unknown one. */
export const stationOf = (id: string): Entry => stations.find((s) => s.id === id) ?? stations[0];
