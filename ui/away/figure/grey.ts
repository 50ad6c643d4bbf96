import { printTheme, type Theme } from '../../theme.ts';

/**
 * Black and white: told apart by hatch and by a grey of its own, for a copier. Leading stays solid, trailing
 * open, as in colour; hotter is darker.
 */
export const greyTheme: Theme = {
  ...printTheme,
  heat: ['#F2F2F2', '#D6D6D6', '#B4B4B4', '#8C8C8C', '#5E5E5E', '#2E2E2E'],
  colours: {
    ...printTheme.colours,
    leadFill: '#8A8A8A',
    trailFill: '#FFFFFF',
    plate: '#FAFAFA',
    cylinder: '#DEDEDE',
    piston: '#F6F6F6',
    lining: '#C6C6C6',
    rubberSeen: '#A8A8A8',
    strut: '#EDEDED',
    strutPlate: '#F5F5F5',
    keeper: '#DCDCDC',
    warn: '#D8D8D8',
  },
};

/** Any colour that a shape brings along itself, as its grey. Weights: Rec. ITU-R BT.709, luma. */
export function greyOf(hex: string): string {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  const grey = Math.round(0.2126 * r + 0.7152 * g + 0.0722 * b);
  return `#${grey.toString(16).padStart(2, '0').repeat(3)}`;
}

/** Colours in marks of the drawing alone: a text that speaks of one stays as it is. */
export const greyed = (svg: string): string =>
  svg.replace(
    /((?:fill|stroke)=")(#[0-9a-fA-F]{6})"/g,
    (_, mark: string, hex: string) => `${mark}${greyOf(hex)}"`,
  );
