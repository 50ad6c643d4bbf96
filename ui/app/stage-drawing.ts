import { type Instant, tiltOf } from '../../sim/index.ts';
import { appStageDrawing as texts } from '../../sim/words/en.ts';
import { fanFactor } from '../fan-factor.ts';
import { paceName } from '../pace.ts';
import { NARROW_STAGE } from '../pieces/page-sizes.ts';
import { restOf } from '../record/derive.ts';
import type { Kept } from '../record/kept.ts';
import type { Layers, Zoom } from '../record/view.ts';
import type { Session } from '../session.ts';
import { edgeOn } from '../stage/edge-on.ts';
import type { NumberedName } from '../stage/layers/names.ts';
import { type Lens, loupe } from '../stage/loupe.ts';
import { mirrorDrawing } from '../stage/mirror.ts';
import { type BrakeDrawing, drawBrake, type StageInput } from '../stage/scene.ts';
import { type Box, giveWay } from '../stage/settle.ts';
import type { Drawing, Label } from '../stage/shapes.ts';
import { panView, type View, zoomView } from '../stage/view.ts';
import type { PageSize, Station } from '../stations/station.ts';
import { type Theme, themes } from '../theme.ts';
import { edgeBox } from './edge-card.ts';
import { brakeView, lensFor, ZOOM_HIGH } from './layout.ts';

/** Scale from which the values of the forces have room on the brake, px per mm. */
const FORCES_FROM = 1.6;
/** The edge of the tooth stays lit so long after the hit, s. */
const LIT = 0.6;
/** Least width that what stands beside the brake can be read in, with its margins, px. */
const LEAST_BESIDE = 280;

/** What the stage shows: a session at a station, on a stage of a size. */
export interface StageAt {
  readonly session: Session;
  readonly station: Station;
  /** px */
  readonly width: number;
  readonly height: number;
  /** px kept free at the foot. */
  readonly foot: number;
  readonly size: PageSize;
  readonly zoom: Zoom;
  /** Draws the bow of shoes that bend. */
  readonly bow?:
    | ((session: Session, input: StageInput) => Pick<Drawing, 'shapes' | 'labels'> | null)
    | undefined;
  /** What leaves the page is of one moment: in place of the one that the session has now. */
  readonly instant?: Instant;
  /** Layers that are turned the other way for a sheet alone; loupe and edge-on go with the session. */
  readonly layers?: Partial<Layers>;
  readonly theme?: Theme;
  /** Times larger words and heavier lines. */
  readonly words?: number;
  /** A sheet: nothing of the page lies over the drawing. */
  readonly bare?: boolean;
  /** Where the stage is drawn again and again: the brake as it was last drawn. */
  readonly last?: Kept<BrakeDrawing>;
}

/** All that a drawing is made of: where none of it is another, neither is the drawing. */
const madeOf = ({ layers, view, ...rest }: StageInput): readonly unknown[] => [
  ...Object.entries(rest).flat(),
  ...Object.entries(layers).flat(),
  ...Object.entries(view).flat(2),
];

/** A stage on which the brake and what a station lays over it stand one at a time. */
export const isSmall = ({ size, width }: Pick<StageAt, 'size' | 'width'>): boolean =>
  size !== 'narrow' && width < NARROW_STAGE;

/** Share of the width that the station keeps for what it draws beside the brake. */
export function besideAt({ station, size, width }: StageAt): number {
  // A small stage shows one at a time: the brake in full, or what is laid over it.
  const share = isSmall({ size, width }) ? 0 : (station.beside?.[size] ?? 0);
  return share > 0 && size !== 'narrow' ? Math.max(share, LEAST_BESIDE / width) : share;
}

/** The view before any zoom. */
export function homeAt(at: StageAt): View {
  const { session, width, height, foot, size, words = 1 } = at;
  const view = brakeView(session, width, height, foot, size, session.wall ? 0 : besideAt(at));
  return words === 1 ? view : { ...view, k: view.k * words, text: view.text * words };
}

/** Is the brake a small key beside the loupe or the shoe edge-on, and so not zoomed? */
export const isKey = (at: StageAt): boolean => keyIn(at, homeAt(at));

const keyIn = ({ session: { layers } }: StageAt, view: View): boolean =>
  (view.narrow || view.wall === true) && (layers.loupe || layers.edge || layers.polygons);

export function viewAt(at: StageAt): View {
  const view = homeAt(at);
  const { factor, dx, dy } = at.zoom;
  return factor === 1 || keyIn(at, view)
    ? view
    : panView(zoomView(view, factor, view.origin), dx, dy);
}

export function lensAt(at: StageAt): Lens | null {
  const { session, width, height, foot } = at;
  // A narrow stage has room for one of the two.
  const { edge, polygons } = session.layers;
  if ((edge || polygons) && (session.wall || homeAt(at).narrow)) return null;
  return session.layers.loupe ? lensFor(session, width, height, foot) : null;
}

/** The front shoe edge-on, beside the brake. */
function edgeAt(at: StageAt, { brake, state, instant, view }: StageInput): Drawing[] {
  const { session } = at;
  if (!session.layers.edge || session.wall) return [];
  const cause = session.tiltCause;
  const place = edgeBox(at.width, at.height, at.foot);
  const tilt = tiltOf(brake, instant, 'front', cause);
  const drawn = edgeOn({ brake, state, side: 'front', tilt, cause }, view, place);
  // It is a section: a right-hand wheel's is the same, and stands where it stood.
  return [session.wheel === 'right' ? mirrorDrawing(drawn) : drawn];
}

/** What draws the forces on each shoe; null until it is loaded (class-kit.ts brings it). */
let bodies: ((at: StageAt, input: StageInput) => Drawing[]) | null = null;
export function bringBodies(drawn: NonNullable<typeof bodies>): void {
  bodies = drawn;
}

/** What lies over the stage's drawing, px: the zoom's buttons (stage-view.ts gives them their place) and what a station lays beside the brake. */
export function takenAt(at: StageAt): Box[] {
  const { width, height, foot, size, session } = at;
  if (at.bare) return [];
  const out: Box[] = [];
  const share = session.wall || size === 'narrow' ? 0 : besideAt(at);
  if (share > 0) out.push({ left: width * (1 - share), top: 0, right: width, bottom: height });
  if (foot > 0) out.push({ left: 0, top: height - foot, right: width, bottom: height });
  if (session.wall || isKey(at) || at.station.draws) return out;
  const [left, top, wide, high] =
    size === 'narrow'
      ? [0, height - foot - ZOOM_HIGH, 168, ZOOM_HIGH]
      : size === 'wide'
        ? [30, 30, 150, 32]
        : [14, 4, 150, 32];
  return [...out, { left, top, right: left + wide, bottom: top + high }];
}

/** Said with the drawing, pressed or at rest: its shoes bend, or will once their linings are bedded in. */
const withShoes = ({ bending, bends }: Session, text: string): string =>
  [text, bends ? texts.shoesBend : bending ? texts.rigidShoesStill : '']
    .filter(Boolean)
    .join(' · ');

const outside = ({ wheel }: Session): string =>
  texts.handWheelFromOutsideDrum(wheel === 'left' ? texts.left : texts.right);

/** A caption does not speak of a gap fan that gave way to names. */
function withoutFan(
  session: Session,
  { labels }: Pick<Drawing, 'labels'>,
  caption: string | undefined,
): readonly Label[] {
  const left = labels.filter(({ key }) => key !== 'turning fan');
  return left.map((l) =>
    l.style === 'caption' && l.text === caption
      ? { ...l, text: withShoes(session, outside(session)) }
      : l,
  );
}

/** What the brake is drawn from at an instant. */
export function inputAt(at: StageAt, instant: Instant): StageInput {
  const { session, station } = at;
  const layers = { ...session.layers, ...at.layers };
  const view = viewAt(at);
  const small = keyIn(at, view);
  const age = session.clock - session.clickedAt;
  const slowed =
    session.pace === 1 && session.paceNow > 1 ? texts.time(paceName(session.paceNow)) : '';
  return {
    brake: session.brake,
    state: session.shown,
    instant,
    rest: restOf(session.rig, session.shown),
    layers: small
      ? {}
      : {
          fan: layers.fan ? fanFactor(session) : 0,
          comb: layers.comb,
          forces: layers.forces && view.scale >= FORCES_FROM,
          names: layers.names,
          ghost: layers.ghost,
          heat: layers.heat,
        },
    view,
    theme: at.theme ?? themes[session.theme],
    flash: Math.max(0, 1 - age / LIT),
    ...(session.revealed && station.namesOnly ? { only: session.revealed } : {}),
    ...(session.revealed ? { revealed: session.revealed } : {}),
    roles:
      small || layers.names
        ? 'none'
        : (station.rolesNow?.(session) ??
          station.roles ??
          (layers.loupe || layers.polygons || station.beside ? 'short' : 'full')),
    frame: at.width > 1000 && at.height > 640 && at.foot < 100 && !view.wall,
    ...(view.narrow || view.wall
      ? {}
      : {
          caption: withShoes(
            session,
            station.caption
              ? station.caption(session)
              : layers.fan
                ? texts.gapFanMm(fanFactor(session), slowed)
                : outside(session),
          ),
        }),
  };
}

/** All drawings of the stage at the session's moment, from the lowest to the topmost, and the numbered names. */
export function drawStage(at: StageAt): {
  readonly drawings: readonly Drawing[];
  readonly names: readonly NumberedName[];
  readonly numbered: boolean;
} {
  const { session, station } = at;
  const own = station.draws?.(session, at);
  if (own) return { drawings: own, names: [], numbered: false };
  const now = at.instant ?? station.shown?.(session) ?? session.instant();
  const input = inputAt(at, station.drawn?.(session, now) ?? now);
  const draw = () => drawBrake(input);
  const plain = at.last ? at.last.of(madeOf(input), draw) : draw();
  const extra = station.extra?.(session, input);
  const bow = at.bow?.(session, input);
  const without = station.without?.(session) ?? [];
  const has = (name: string) => without.includes(name);
  const lacks = station.lacks?.(session) ?? (() => false);
  const shapes = plain.shapes.filter((s) => !has(s.group) && !lacks(s));
  const labels = plain.labels.filter((l) => !has(l.key.split(' ')[0] ?? '') && !lacks(l));
  const all = {
    ...plain,
    shapes: [...shapes, ...(extra?.shapes ?? []), ...(bow?.shapes ?? [])],
    labels: [...labels, ...(extra?.labels ?? []), ...(bow?.labels ?? [])],
  };
  const given = giveWay(all);
  const fans = (d: Pick<Drawing, 'shapes'>): boolean => d.shapes.some((s) => s.group === 'fan');
  // A station's own words are of something else.
  const fanSays = station.caption ? undefined : input.caption;
  const brake =
    fans(all) && !fans(given) ? { ...given, labels: withoutFan(session, given, fanSays) } : given;
  const lens = lensAt(at);
  const whole: Drawing[] = [
    brake,
    ...(lens ? loupe(input, lens) : []),
    ...edgeAt(at, input),
    ...(session.layers.polygons ? (bodies?.(at, input) ?? []) : []),
  ];
  return {
    drawings: session.wheel === 'right' ? whole.map(mirrorDrawing) : whole,
    names: brake.names,
    numbered: brake.numbered,
  };
}
