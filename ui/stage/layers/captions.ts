import {
  type Brake,
  type Instant,
  type Point,
  type Role,
  roleOf,
  type Side,
} from '../../../sim/index.ts';
import { labelWords, stageLayersCaptions as words } from '../../../sim/words/en.ts';
import { fixed } from '../../format.ts';
import { degrees, polar } from '../geometry.ts';
import { rimRadius } from '../parts/drum.ts';
import type { Label, Shape } from '../shapes.ts';
import { toMm, type View } from '../view.ts';
import { arcArrowPath } from './arrows.ts';
import { lookOf, SIDES } from './band.ts';
import { label, sizeOf } from './label.ts';

/** Where the arrow of turning stands outside the rim, mm, and its half arc. */
const ABOVE = 7;
/** The same where the brake takes the whole height. */
const CLOSE = 3.4;
const HALF = degrees(17);

/** Arrow of turning outside the rim; none when the drum stands. */
export function turnArrow(brake: Brake, instant: Instant, tall = false): Shape[] {
  if (instant.turning === 0) return [];
  const top = Math.PI / 2;
  const swing = instant.turning * HALF;
  return [
    {
      key: 'turn arrow',
      path: arcArrowPath(rimRadius(brake) + (tall ? CLOSE : ABOVE), top - swing, top + swing, 3.1),
      style: { fill: 'ink' },
      group: 'turning',
    },
  ];
}

const turningText = words.turningText;

const SHORT = { 1: labelWords.forward, 0: '', '-1': labelWords.backward };

export function turnLabel(brake: Brake, instant: Instant, view: View): Label {
  // The brake takes the whole height: the word stands in the lower corner.
  if (view.tall) {
    return label(view, {
      key: 'turning',
      text: SHORT[instant.turning],
      at: toMm(view, [view.width - 17 * view.text, view.height - 17 * view.text]),
      anchor: 'end',
      style: 'turning',
      colour: 'ink',
    });
  }
  return label(view, {
    key: 'turning',
    text: view.wall ? SHORT[instant.turning] : turningText[instant.turning],
    at: [0, rimRadius(brake) + ABOVE],
    dy: -21 * view.text - 3.6 * view.scale + 8,
    anchor: 'middle',
    style: 'turning',
    colour: 'ink',
  });
}

/** On a wall, how many times as wide as they are the gaps are drawn; elsewhere the caption says it. */
export const fanLabel = (factor: number, view: View): Label =>
  label(view, {
    key: 'turning fan',
    text: words.gapsTimes(factor),
    at: toMm(view, [17 * view.text, view.height - 17 * view.text]),
    anchor: 'start',
    style: 'turning',
    colour: 'ink',
  });

const notes = words.notes;

/** What a shoe is called: by its role while the drum turns, by its place while it stands. */
const called = (side: Side, instant: Instant): Side | Role =>
  instant.turning === 0 ? side : roleOf(side, instant.turning);

/** "Leading shoe" in the upper corners with what the drum does to it. */
export function roleLabels(instant: Instant, view: View, framed: boolean): Label[] {
  return SIDES.flatMap((side) => {
    const look = lookOf(side, instant);
    const left = side === 'front';
    const inset = framed ? 58 : 20;
    const size = sizeOf(view, 'role');
    const top = framed ? 158 : 40 * view.text + 16;
    const put = (style: 'role' | 'role note', text: string, down: number, n: number) =>
      label(view, {
        key: `role ${side} ${n}`,
        text,
        at: toMm(view, [left ? inset : view.width - inset, top + down]),
        anchor: left ? 'start' : 'end',
        style,
        colour: style === 'role' ? look.colour : 'ink',
        block: words.role(side),
      });
    const line = sizeOf(view, 'role note') * 1.3;
    return [
      put('role', words.shoe(called(side, instant)), 0, 0),
      // A drum that stands drags neither shoe.
      ...(look.role ? notes[look.role] : []).map((text, i) =>
        put('role note', text, size * 0.86 + line * i + 4, i + 1),
      ),
    ];
  });
}

/** "Leading" close to the lining's toe, for a brake that shares the stage. */
export function shortRoleLabels(brake: Brake, instant: Instant, view: View): Label[] {
  return SIDES.map((side) => {
    const look = lookOf(side, instant);
    const front = side === 'front';
    const at: Point = polar(rimRadius(brake) + 32, front ? degrees(129) : degrees(51));
    return label(view, {
      key: `role ${side} 0`,
      text: words.alone[called(side, instant)],
      at,
      anchor: front ? 'end' : 'start',
      style: 'role',
      size: 22 * view.text,
      colour: look.colour,
    });
  });
}

/** Role and highest pressure in the corners: the lower ones of a narrow stage, the upper ones on a phone or a wall. */
export function cornerLabels(instant: Instant, view: View, peaks: boolean): Label[] {
  return SIDES.flatMap((side) => {
    const look = lookOf(side, instant);
    const left = side === 'front';
    const u = view.wall ? view.text / 2 : 1;
    const inset = view.wall ? 34 * u : 14;
    const put = (text: string, up: number, size: number, n: number) =>
      label(view, {
        key: `corner ${side} ${n}`,
        text,
        at: toMm(view, [
          left ? inset : view.width - inset,
          view.wall || view.upper ? up : view.height - (view.foot ?? 0) - up,
        ]),
        anchor: left ? 'start' : 'end',
        style: 'role',
        size,
        colour: look.colour,
        block: words.corner(side),
      });
    const low = peaks && !view.upper ? 38 : 16;
    const word = view.wall
      ? put(words.alone[called(side, instant)], 56 * u, 52 * u, 0)
      : put(words.alone[called(side, instant)], low, 20, 0);
    if (!peaks) return [word];
    const highest = instant.shoes[side].pressure.reduce((a, b) => Math.max(a, b), 0);
    // A lining that does not press has no peak to be told.
    if (view.wall && highest < 0.005) return [word];
    const text = `${fixed(highest, 2)}\u00a0MPa`;
    return [
      word,
      view.wall ? put(text, 106 * u, 38 * u, 1) : put(text, view.upper ? 38 : 15, 18, 1),
    ];
  });
}
