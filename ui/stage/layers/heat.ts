import type { Brake, BrakeState, Instant, Side } from '../../../sim/index.ts';
import { stageLayersHeat as words } from '../../../sim/words/en.ts';
import { heatColour, type Theme } from '../../theme.ts';
import { type Frame, polar } from '../geometry.ts';
import { rimRadius } from '../parts/drum.ts';
import { liningPath } from '../parts/lining.ts';
import { circlePath, type Path } from '../path.ts';
import { hatched, type Label, type Shape, WEIGHT } from '../shapes.ts';
import { toMm, type View } from '../view.ts';
import { SIDES } from './band.ts';
import { label } from './label.ts';

/** Dots grow with the temperature from this share of their pitch, to full at 500 °C. */
const dotShare = (celsius: number): number => 0.24 + 0.72 * Math.max(0, Math.min(1, celsius / 500));

/** Temperature in steps of 5 °C: finer cannot be seen. */
const step = (celsius: number): number => Math.round(celsius / 5) * 5;

interface HeatInput {
  readonly brake: Brake;
  readonly state: BrakeState;
  readonly instant: Instant;
  readonly theme: Theme;
  readonly view: View;
  /** Its temperatures stand beside it. */
  readonly named: boolean;
}

/** Heat as a dot screen over drum and linings: larger dots and another colour where it is hotter. */
export function heat(
  { brake, state, instant, theme, view, named }: HeatInput,
  frames: Readonly<Record<Side, Frame>>,
): { shapes: Shape[]; labels: Label[] } {
  const celsius = step(state.temperature);
  const colour = heatColour(theme, celsius);
  // The edge is drawn again over the dots.
  const veil = (key: string, path: Path, alpha: number, edge: number, place?: Frame): Shape => ({
    key: `heat ${key}`,
    path,
    style: hatched({ dots: dotShare(celsius), colour, veil: alpha }, edge),
    group: 'heat',
    evenOdd: true,
    ...(place ? { place } : {}),
  });
  const rim = [...circlePath([0, 0], rimRadius(brake)), ...circlePath([0, 0], instant.drumRadius)];
  const shapes = [
    ...SIDES.map((side) => {
      const path = liningPath(brake.shoes[side].lining, state.wear[side]);
      return veil(side, path, 0.45, WEIGHT.wide, frames[side]);
    }),
    veil('drum', rim, 0.3, WEIGHT.heavy),
  ];
  // Above the names' columns where they are shown, over the drum on a phone, else below the rim at the right.
  const low = polar(rimRadius(brake) + 14, (-59 * Math.PI) / 180);
  const high = toMm(
    view,
    view.upper
      ? [view.width / 2, 13]
      : [view.width - (view.narrow ? 14 : 60), view.narrow ? 22 : 46],
  );
  return {
    shapes,
    labels: [
      label(view, {
        key: 'heat drum',
        text: words.drumC(Math.round(state.temperature)),
        at: named || view.narrow ? high : low,
        anchor: view.upper ? 'middle' : named || view.narrow ? 'end' : 'start',
        style: 'heat',
        colour: 'ink',
      }),
    ],
  };
}
