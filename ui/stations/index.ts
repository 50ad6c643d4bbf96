import type { StationId } from '../record/moment.ts';
import { apply } from './apply.ts';
import type { Station } from './station.ts';

/** What is loaded when it is wanted. */
export interface Loaded {
  readonly id: StationId | 'hands';
  /** Reads sizes as people type them: it is shown once their reader is loaded (`ui/app/waiting.ts`). */
  readonly readsSizes?: true;
  /** Loads the station itself, once. */
  readonly load: () => Promise<Station>;
}

/** What the page knows of a station before it is opened. */
export interface Entry extends Loaded {
  readonly id: StationId;
  /** Key that opens it. */
  readonly key: string;
  /** Has no tab: it is opened from the head of the page, from Start, or by another station. */
  readonly noTab?: true;
}

/** The stations in the order of their tabs; the first is open at first, and the only one that the page brings along. */
export const stations: readonly [Entry, ...Entry[]] = [
  { id: 'apply', key: '1', load: async () => apply },
  { id: 'wear', key: '2', load: async () => (await import('./wear.ts')).wear },
  {
    id: 'drum-off',
    key: '3',
    load: async () => (await import('./drum-off/index.ts')).drumOff,
  },
  {
    id: 'park',
    key: '4',
    load: async () => (await import('./park/index.ts')).park,
  },
  {
    id: 'inspect',
    key: '5',
    readsSizes: true,
    load: async () => (await import('./inspect/index.ts')).inspect,
  },
  {
    id: 'new-shoes',
    key: '6',
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
    load: async () => (await import('./own/index.ts')).own,
  },
  {
    id: 'questions',
    key: '9',
    load: async () => (await import('./questions/station.ts')).questionsStation,
  },
  {
    id: 'start',
    key: 's',
    noTab: true,
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
    load: async () => (await import('./see/index.ts')).see,
  },
  {
    id: 'kind',
    key: 'k',
    noTab: true,
    load: async () => (await import('./kind/index.ts')).kind,
  },
  {
    id: 'lessons',
    key: 'l',
    noTab: true,
    load: async () => (await import('./lessons/index.ts')).lessonsStation,
  },
  {
    id: 'vary',
    key: 'v',
    noTab: true,
    load: async () => (await import('./vary/index.ts')).vary,
  },
  {
    id: 'order',
    key: 'o',
    noTab: true,
    load: async () => (await import('./order/index.ts')).orderStation,
  },
  {
    id: 'compare',
    key: 'x',
    noTab: true,
    load: async () => (await import('./compare/index.ts')).compare,
  },
  {
    id: 'apart',
    key: 'a',
    noTab: true,
    load: async () => (await import('./apart/index.ts')).apart,
  },
];

/** Hands in the brake take the place of a station while they are open. */
export const handsEntry: Loaded = {
  id: 'hands',
  load: async () => (await import('./hands/index.ts')).hands,
};

/** The station of an id; the first for an unknown one. */
export const stationOf = (id: string): Entry => stations.find((s) => s.id === id) ?? stations[0];
