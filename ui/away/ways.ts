import { labelWords, awayWays as words } from '../../sim/words/en.ts';
import type { Way } from './stand.ts';

/**
 * Everything that can be taken from the bench, in the order in which it is offered. A new one is a row here
 * and an element that is handed the stand (`stand.ts`); nothing of it is loaded before it is chosen.
 */
export const ways: readonly [Way, ...Way[]] = [
  {
    id: 'figure',
    key: 'F',
    name: words.figureName,
    tells: words.figureTells,
    load: () => import('./figure/figure-way.ts'),
    element: 'takeup-away-figure',
  },
  {
    id: 'data',
    key: 'D',
    name: words.dataName,
    tells: words.dataTells,
    load: () => import('./data/data-way.ts'),
    element: 'takeup-away-data',
  },
  {
    id: 'share',
    key: 'S',
    name: labelWords.share,
    tells: words.shareTells,
    load: () => import('./share/share-way.ts'),
    element: 'takeup-away-share',
  },
  {
    id: 'sheets',
    key: 'P',
    name: words.sheetsName,
    tells: words.sheetsTells,
    load: () => import('./sheets/sheets-way.ts'),
    element: 'takeup-away-sheets',
  },
  {
    id: 'cut',
    key: 'M',
    name: words.cutName,
    tells: words.cutTells,
    load: () => import('./cut/cut-way.ts'),
    element: 'takeup-away-cut',
  },
  {
    id: 'clip',
    key: 'C',
    name: words.clipName,
    tells: words.clipTells,
    load: () => import('./clip/clip-way.ts'),
    element: 'takeup-away-clip',
  },
];

/** The way of an id; the first for an unknown one. */
export const wayOf = (id: string): Way => ways.find((w) => w.id === id) ?? ways[0];
