import { forAll, keep, recall } from '../../record/store.ts';

/** How a figure is made. Kept on the device: the one key takes the next figure with the last choices. */
export interface Choices {
  /** As the stage shows it, zoom and loupe too; or the whole brake on a sheet of its own. */
  readonly frame: 'stage' | 'whole';
  readonly names: 'as' | 'with' | 'without';
  readonly look: 'light' | 'dark' | 'grey';
  /** Without a ground: what lies behind shows through. */
  readonly clear: boolean;
  /** Millimetres of the brake for one of the paper. */
  readonly scale: '2:1' | '1:1' | '1:2' | '1:5';
  readonly title: boolean;
  readonly bar: boolean;
  readonly facts: boolean;
  readonly legend: boolean;
  readonly caption: boolean;
  readonly kind: 'svg' | 'png';
  /** Of the picture made of points, px. */
  readonly wide: 1280 | 1920 | 2560 | 3840;
}

export const PLAIN: Choices = {
  frame: 'stage',
  names: 'as',
  look: 'light',
  clear: false,
  scale: '1:2',
  title: true,
  bar: true,
  facts: true,
  legend: false,
  caption: true,
  kind: 'svg',
  wide: 1920,
};

/** What each may be. */
export const MAY_BE: { readonly [K in keyof Choices]: readonly Choices[K][] } = {
  frame: ['stage', 'whole'],
  names: ['as', 'with', 'without'],
  look: ['light', 'dark', 'grey'],
  clear: [false, true],
  scale: ['2:1', '1:1', '1:2', '1:5'],
  title: [false, true],
  bar: [false, true],
  facts: [false, true],
  legend: [false, true],
  caption: [false, true],
  kind: ['svg', 'png'],
  wide: [1280, 1920, 2560, 3840],
};

const KEY = 'away-figure';

/** The last choices; what is none of what it may be is as at first. */
export function lastChoices(): Choices {
  let kept: unknown;
  try {
    kept = JSON.parse(recall(forAll, KEY).text ?? '{}');
  } catch {
    kept = {};
  }
  const data = typeof kept === 'object' && kept !== null ? (kept as Record<string, unknown>) : {};
  const all = Object.entries(MAY_BE).map(([key, may]) => {
    const is = data[key];
    return [key, (may as readonly unknown[]).includes(is) ? is : PLAIN[key as keyof Choices]];
  });
  return Object.fromEntries(all) as unknown as Choices;
}

export const keepChoices = (choices: Choices): void => {
  keep(forAll, KEY, JSON.stringify(choices));
};

/** Millimetres of the brake in one of the paper: 2 of a scale 1:2. */
export const reduction = (scale: Choices['scale']): number => {
  const [paper = 1, brake = 1] = scale.split(':').map(Number);
  return brake / paper;
};
