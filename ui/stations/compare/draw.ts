import type { AtTravel } from '../../../sim/index.ts';
import { compareDraw as texts } from '../../../sim/words/en.ts';
import type { LayerName, Session } from '../../session.ts';
import { label, sizeOf, textWidth } from '../../stage/layers/label.ts';
import { mirrorDrawing } from '../../stage/mirror.ts';
import { drawingOf } from '../../stage/parts/adjuster.ts';
import { drawBrake } from '../../stage/scene.ts';
import type { Drawing, Label } from '../../stage/shapes.ts';
import { toMm, type View, weightFor } from '../../stage/view.ts';
import { themes } from '../../theme.ts';
import type { StageSize } from '../station.ts';
import type { CompareDesk } from './desk.ts';
import type { One } from './one.ts';

/** Both brakes on one stage, at one scale. */

/** Layers that two small brakes have room for. */
export const LAYERS: readonly LayerName[] = ['fan', 'comb', 'heat', 'ghost'];

/** mm beside the rim for the outer band. */
const SIDE = { narrow: 24, wall: 29, other: 40 } as const;

function views(session: Session, desk: CompareDesk, stage: StageSize): readonly [View, View] {
  const { width, height, foot } = stage;
  const { wall } = session;
  const half = width / 2;
  const free = height - foot;
  const narrow = half < 420 && !wall;
  const rim = Math.max(...[desk.a, desk.b].map(({ brake: { drum } }) => drum.radiusNew + drum.rim));
  const k = wall ? Math.max(1, height / 760) : weightFor(Math.min(half, free));
  const text = wall ? 2 * Math.min(1, height / 1080) : narrow ? 0.8 : Math.min(1, 0.4 + 0.6 * k);
  // Two lines of words above, a line below.
  const head = wall ? 118 * (text / 2) : narrow ? 46 : 74;
  const band = SIDE[wall ? 'wall' : narrow ? 'narrow' : 'other'];
  const scale = Math.max(
    0.05,
    Math.min(half / (2 * (rim + band)), (free - head - (narrow ? 22 : 34)) / (2 * (rim + 8))),
  );
  const view = (left: number): View => ({
    width: half,
    height,
    scale,
    origin: [left + half / 2, head + (free - head) / 2],
    k,
    text,
    narrow: true,
    foot,
    ...(wall ? { wall, narrow: false, tall: true } : {}),
  });
  return [view(0), view(half)];
}

/** Right of the zoom's buttons, px. */
const BESIDE_ZOOM = 190;

/** As many letters of a title as there is room for. */
function fitted(text: string, room: number, size: number): string {
  const letters = Math.floor((room / textWidth('x', size)) * 1);
  return text.length <= letters ? text : `${text.slice(0, Math.max(1, letters - 1)).trimEnd()}…`;
}

function words(letter: 'A' | 'B', title: string, told: string, view: View, left: number): Label[] {
  const wall = view.wall === true;
  const wide = view.width / 2;
  const big = sizeOf(view, 'role');
  const small = sizeOf(view, 'role note');
  const margin = wall ? 24 : wide < 300 ? 8 : 20;
  // The left one's begin right of the zoom's buttons.
  const start = letter === 'A' && !wall && wide >= 300 ? BESIDE_ZOOM : margin;
  const room = wide - start - margin;
  const at = (y: number) => toMm(view, [left + start, y]);
  const top = wall ? big * 0.8 : 8 + big / 2;
  return [
    label(view, {
      key: `side ${letter}`,
      text: letter,
      at: at(top),
      anchor: 'start',
      style: 'role',
      colour: 'ink',
    }),
    label(view, {
      key: `title ${letter}`,
      text: fitted(title, room - big * 1.1, small),
      at: at(top),
      dx: big * 1.1,
      anchor: 'start',
      style: 'role note',
      colour: 'ink',
    }),
    label(view, {
      key: `told ${letter}`,
      text: fitted(told, room, small),
      at: at(top + (wall ? big : big * 0.62 + small * 0.7)),
      anchor: 'start',
      style: 'role note',
      colour: 'ink2',
    }),
  ];
}

function half(
  session: Session,
  desk: CompareDesk,
  one: One,
  pushed: AtTravel,
  view: View,
  letter: 'A' | 'B',
): Drawing {
  const { layers } = session;
  const left = letter === 'A' ? 0 : view.width;
  const local: View = {
    ...view,
    origin: [view.origin[0] - left, view.origin[1]],
  };
  const drawn = drawBrake({
    brake: one.brake,
    state: one.state,
    instant: pushed.instant,
    rest: one.rest,
    layers: {
      fan: layers.fan ? session.magnification : 0,
      comb: layers.comb,
      ghost: layers.ghost,
      heat: layers.heat,
    },
    view: local,
    theme: themes[session.theme],
    roles: 'none',
  });
  // A gap's figures crowd a small brake: they stand in the table.
  // A spring that is not there is not drawn.
  const gone = one.state.condition.leverSpring > 0 ? undefined : drawingOf(one.brake).springs[0];
  const shapes = drawn.shapes.filter((s) => gone === undefined || s.part !== gone);
  const plain: Drawing = { ...drawn, shapes, labels: [], view: local };
  const turned = session.wheel === 'right' ? mirrorDrawing(plain) : plain;
  const placed: View = {
    ...turned.view,
    // Words of the right one stand on the whole stage.
    width: 2 * view.width,
    origin: [turned.view.origin[0] + left, turned.view.origin[1]],
  };
  const tag = letter.toLowerCase();
  const told = [
    layers.fan ? texts.gapFan(session.magnification) : '',
    layers.comb ? texts.pressureComb : '',
  ];
  const [a, b] = desk.titles;
  return {
    ...turned,
    view: placed,
    shapes: turned.shapes.map((s) => ({ ...s, key: `${tag} ${s.key}` })),
    labels: words(letter, letter === 'A' ? a : b, told.filter(Boolean).join(', '), placed, left),
  };
}

export function drawTwo(session: Session, desk: CompareDesk, stage: StageSize): Drawing[] {
  const [left, right] = views(session, desk, stage);
  const [a, b] = desk.pushed;
  return [half(session, desk, desk.a, a, left, 'A'), half(session, desk, desk.b, b, right, 'B')];
}
