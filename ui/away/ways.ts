import type { Way } from './stand.ts';

/**
 * Everything that can be taken from the bench, in the order in which it is offered. A new one is a row here
 * and an element that is handed the stand (`stand.ts`); nothing of it is loaded before it is chosen.
 */
export const ways: readonly [Way, ...Way[]] = [
  {
    id: 'figure',
    key: 'F',
    name: 'Figure',
    tells:
      'The drawing as it stands, for a text, a slide or a wall: lines or points, true to scale.',
    load: () => import('./figure/figure-way.ts'),
    element: 'takeup-away-figure',
  },
  {
    id: 'data',
    key: 'D',
    name: 'Data',
    tells: 'Readings, a life, the curves of What if: as a table for a spreadsheet or a program.',
    load: () => import('./data/data-way.ts'),
    element: 'takeup-away-data',
  },
  {
    id: 'share',
    key: 'S',
    name: 'Share',
    tells: 'This moment as a link, as a code for a phone’s camera, or as a file.',
    load: () => import('./share/share-way.ts'),
    element: 'takeup-away-share',
  },
  {
    id: 'sheets',
    key: 'P',
    name: 'Sheets',
    tells: 'Worksheets, measurements, reports and orders of work, for A4 and Letter.',
    load: () => import('./sheets/sheets-way.ts'),
    element: 'takeup-away-sheets',
  },
  {
    id: 'cut',
    key: 'M',
    name: 'Cut-out model',
    tells: 'The brake as flat parts, to cut of card, plywood or acrylic: SVG, DXF, pages.',
    load: () => import('./cut/cut-way.ts'),
    element: 'takeup-away-cut',
  },
  {
    id: 'clip',
    key: 'C',
    name: 'Clip',
    tells: 'What the brake does as a film with its clicks, a short loop, or a strip for paper.',
    load: () => import('./clip/clip-way.ts'),
    element: 'takeup-away-clip',
  },
];

/** The way of an id; the first for an unknown one. */
export const wayOf = (id: string): Way => ways.find((w) => w.id === id) ?? ways[0];
