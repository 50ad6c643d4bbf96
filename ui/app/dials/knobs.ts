import type { Brake, Point } from '../../../sim/index.ts';
import { label } from '../../stage/layers/label.ts';
import { circlePath, polyline } from '../../stage/path.ts';
import type { Label, Shape } from '../../stage/shapes.ts';
import { toMm, toPx, type View } from '../../stage/view.ts';
import type { DialDesk } from './desk.ts';
import type { Dial } from './dials.ts';

/** Where the handles of the dials stand on the stage, and how they are drawn. */

export interface Knob {
  readonly dial: Dial;
  /** Where it is, before any mirroring, and where it is at home, px. */
  readonly at: Point;
  readonly home: Point;
  /** The place of the brake that it is of, px. */
  readonly of: Point;
}

/** Radius of a handle, and what lies between two of them, px. */
export const KNOB = 11;
const apartOf = (view: View): number => (view.narrow ? 44 : 34) * Math.max(1, view.text);
/** A handle goes so far to either side of its home, px, over its usual range and no further. */
const WAY = 80;
/** Value for each px across, of a dial that is no place. */
export const perPx = ({ sets: [q] }: Dial): number =>
  q ? (q.usual[1] - q.usual[0]) / (2 * WAY) : 0;

/** On a narrower stage the dial that was chosen alone has its value beside it, px. */
const LEAST_WORDS = 520;
/** Handles that would lie on each other go apart; places stay where they are. */
function apart(homes: readonly Point[], fixed: readonly boolean[], least: number): Point[] {
  const out = homes.map(([x, y]): [number, number] => [x, y]);
  for (let n = 0; n < 60; n++) {
    let moved = false;
    for (let i = 0; i < out.length; i++) {
      for (let j = i + 1; j < out.length; j++) {
        const [a, b] = [out[i] as [number, number], out[j] as [number, number]];
        const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
        const far = Math.hypot(dx, dy);
        if (far >= least - 0.01) continue;
        moved = true;
        const [ux, uy] = far > 0.5 ? [dx / far, dy / far] : [0, 1];
        const free = (fixed[i] ? 0 : 1) + (fixed[j] ? 0 : 1);
        if (free === 0) continue;
        const by = (least - far) / free;
        if (!fixed[i]) out[i] = [a[0] - ux * by, a[1] - uy * by];
        if (!fixed[j]) out[j] = [b[0] + ux * by, b[1] + uy * by];
      }
    }
    if (!moved) break;
  }
  return out;
}

/** @param sense −1 where the finished drawing is mirrored: a way to the right is more on the screen */
export function knobsOf(desk: DialDesk, brake: Brake, view: View, sense: 1 | -1): readonly Knob[] {
  const { dials } = desk;
  const of = dials.map((d) => toPx(view, d.at(brake)));
  const homes = apart(
    of,
    dials.map((d) => d.place),
    apartOf(view),
  );
  return dials.map((dial, i): Knob => {
    const home = homes[i] as Point;
    const [now, was] = [desk.at(dial)[0] as number, desk.home(dial)[0] as number];
    const off = dial.place ? 0 : (now - was) / perPx(dial);
    const at: Point = [home[0] + sense * Math.max(-WAY, Math.min(WAY, off)), home[1]];
    return { dial, home, at, of: of[i] as Point };
  });
}

/** A value stands over its handle; those of the pins under them, one lower than the other: their forces go upward. */
function besideOf(
  { id, place }: Dial,
  radius: number,
  view: View,
): Pick<Label, 'dx' | 'dy' | 'anchor'> {
  const line = 11 * view.text;
  const under = id.startsWith('front') ? line : 2.7 * line;
  return { dx: 0, dy: place ? radius + under : -(radius + line), anchor: 'middle' };
}

/** Handles with their values as shapes and texts of the drawing: the others give way to them. */
export function drawKnobs(
  desk: DialDesk,
  brake: Brake,
  view: View,
  sense: 1 | -1,
): { readonly shapes: readonly Shape[]; readonly labels: readonly Label[] } {
  const shapes: Shape[] = [];
  const labels: Label[] = [];
  const radius = (KNOB * Math.max(1, view.text)) / view.scale;
  for (const { dial, at, home, of } of knobsOf(desk, brake, view, sense)) {
    const [place, start, part] = [toMm(view, at), toMm(view, home), toMm(view, of)];
    const chosen = desk.chosen === dial.id;
    const turned = desk.isTurned(dial);
    const put = (what: string, path: Shape['path'], style: Shape['style']): void => {
      shapes.push({
        key: `dial ${dial.id} ${what}`,
        path,
        style,
        group: 'dial',
      });
    };
    if (Math.hypot(home[0] - of[0], home[1] - of[1]) > 2)
      put('leader', polyline(part, start), { stroke: 'ink', width: 1.2 });
    if (Math.abs(at[0] - home[0]) > 1) {
      put('way', polyline(start, place), { stroke: 'ink', width: 2.4 });
      put('home', circlePath(start, radius * 0.34), {
        fill: 'sheet',
        stroke: 'ink',
        width: 1.6,
      });
    }
    put('knob', circlePath(place, radius), {
      fill: chosen ? 'warn' : 'sheet',
      stroke: chosen ? 'warnInk' : 'ink',
      width: chosen ? 3.2 : 2.2,
    });
    put('core', circlePath(place, radius * (turned ? 0.52 : 0.26)), {
      fill: chosen ? 'warnInk' : 'ink',
    });
    if (view.width < LEAST_WORDS && !chosen) continue;
    labels.push(
      label(view, {
        key: `dial ${dial.id}`,
        text: `${dial.short} ${desk.told(dial)}`,
        at: place,
        ...besideOf(dial, radius * view.scale, view),
        style: 'dial',
        colour: 'ink',
      }),
    );
  }
  return { shapes, labels };
}
